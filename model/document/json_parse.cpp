#include "model/document/json_value.hpp"

#include "model/document/limits.hpp"
#include "model/document/path.hpp"
#include "model/document/syntax_fault.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <set>

namespace model {
namespace {

using Json = nlohmann::json;

/// Builds the value as the parser reports its parts, and stops it at the first thing refused.
class Builder final : public nlohmann::json_sax<Json> {
public:
    explicit Builder(std::string_view text) : text_(text) {}

    JsonValue root;
    std::optional<Fault> fault;

    bool null() override { return put({JsonValue::Kind::null, "null", {}, {}}); }
    bool boolean(bool value) override
    {
        return put({JsonValue::Kind::boolean, value ? "true" : "false", {}, {}});
    }
    bool number_integer(number_integer_t value) override
    {
        return put({JsonValue::Kind::number, std::to_string(value), {}, {}});
    }
    bool number_unsigned(number_unsigned_t value) override
    {
        return put({JsonValue::Kind::number, std::to_string(value), {}, {}});
    }
    bool number_float(number_float_t, const string_t& digits) override
    {
        JsonValue number{JsonValue::Kind::number, digits, {}, {}};
        // The parser hands over the decimal sign of the process's locale, which may be a comma.
        std::ranges::replace_if(
            number.text,
            [](char c) {
                return !(c >= '0' && c <= '9') && c != '-' && c != '+' && c != 'e' && c != 'E';
            },
            '.');
        return put(std::move(number));
    }
    bool string(string_t& value) override
    {
        return put({JsonValue::Kind::text, std::move(value), {}, {}});
    }
    bool binary(binary_t&) override { return false; } // not in JSON text
    bool start_object(std::size_t) override { return open(JsonValue::Kind::object); }
    bool end_object() override { return close(); }
    bool start_array(std::size_t) override { return open(JsonValue::Kind::list); }
    bool end_array() override { return close(); }
    bool key(string_t& name) override;
    bool parse_error(std::size_t position, const std::string&,
                     const nlohmann::detail::exception& error) override
    {
        return refuse(syntaxFault(text_, position, error.what()));
    }

private:
    struct Level {
        JsonValue* value;
        std::set<std::string> names; ///< sorted, so that a million members stay quick to check
    };

    std::string_view text_;
    std::vector<Level> open_;
    std::size_t values_{0};

    bool put(JsonValue value);
    bool open(JsonValue::Kind kind);
    bool close();
    bool refuse(Fault what);
    std::string pointer() const;
};

bool Builder::refuse(Fault what)
{
    if (what.pointer.empty())
        what.pointer = pointer();
    fault = std::move(what);
    return false;
}

bool Builder::put(JsonValue value)
{
    if (++values_ > limits::kValues)
        return refuse({"", "more than " + std::to_string(limits::kValues) + " values",
                       "a garden; this is far more than one holds"});
    if (open_.empty())
        root = std::move(value);
    else
        open_.back().value->items.push_back(std::move(value));
    return true;
}

bool Builder::open(JsonValue::Kind kind)
{
    if (open_.size() >= limits::kNesting)
        return refuse({"",
                       "lists or objects more than " + std::to_string(limits::kNesting) + " deep",
                       "a garden, which is 8 deep"});
    if (!put({kind, {}, {}, {}}))
        return false;
    // Pointers stay good: a list only grows while none of its items is open.
    open_.push_back({open_.empty() ? &root : &open_.back().value->items.back(), {}});
    return true;
}

bool Builder::close()
{
    open_.pop_back();
    return true;
}

bool Builder::key(string_t& name)
{
    auto& level = open_.back();
    if (!level.names.insert(name).second)
        return refuse({pointer() + "/" + escapedToken(name), "the field a second time",
                       "each field once; keep the right one and delete the other"});
    level.value->names.push_back(std::move(name));
    return true;
}

/// The place being read: a step for each value that is open, and one into the innermost.
std::string Builder::pointer() const
{
    std::string place;
    for (std::size_t i = 0; i < open_.size(); ++i) {
        const auto& value = *open_[i].value;
        const bool innermost = i + 1 == open_.size();
        if (value.kind == JsonValue::Kind::list)
            (place += '/') += std::to_string(value.items.size() - (innermost ? 0 : 1));
        else if (!innermost || value.names.size() > value.items.size())
            (place += '/') += escapedToken(value.names.back());
    }
    return place;
}

} // namespace

std::variant<JsonValue, Fault> parseJson(std::string_view text)
{
    if (auto fault = unreadableText(text))
        return *fault;
    Builder builder{text};
    Json::sax_parse(text.begin(), text.end(), &builder);
    if (builder.fault)
        return *std::move(builder.fault);
    return std::move(builder.root);
}

std::string quotedJson(const std::string& text)
{
    return Json(text).dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace model
