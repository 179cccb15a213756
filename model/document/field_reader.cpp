#include "model/document/field_reader.hpp"

#include <array>
#include <charconv>
#include <cmath>

namespace model {
namespace {

using Kind = JsonValue::Kind;

/// All characters of `text` as a number, or nothing.
template <typename Number>
std::optional<Number> wholeNumber(std::string_view text)
{
    Number value{};
    const auto* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, value);
    return error == std::errc() && stop == end ? std::optional(value) : std::nullopt;
}

/// The digits of a JSON number as the nearest double. Too small to hold becomes 0 as JSON allows;
/// too large was refused by the parser.
double nearestDouble(std::string_view digits)
{
    double value = 0.0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return value;
}

template <std::size_t Count>
bool readCoordinates(const JsonValue& value, const Path& path, Faults& faults,
                     std::array<double*, Count> into, const char* expected)
{
    if (value.kind != Kind::list || value.items.size() != Count) {
        const auto found = value.kind == Kind::list
                               ? "a list of " + std::to_string(value.items.size())
                               : described(value);
        tell(faults, path, found, expected);
        return false;
    }
    for (std::size_t i = 0; i < Count; ++i)
        readValue(value.items[i], path / i, faults, *into[i]);
    return true;
}

/// Whether a text has the form: a digit for each 0, all else as it stands.
bool isFormed(const JsonValue& value, std::string_view form)
{
    const std::string_view text = value.text;
    bool formed = value.kind == Kind::text && text.size() == form.size();
    for (std::size_t i = 0; formed && i < text.size(); ++i)
        formed = form[i] == '0' ? text[i] >= '0' && text[i] <= '9' : text[i] == form[i];
    return formed;
}

} // namespace

std::string described(const JsonValue& value)
{
    switch (value.kind) {
    case Kind::list:
        return "a list";
    case Kind::object:
        return "an object";
    case Kind::text:
        return inQuotes(value.text);
    case Kind::null:
    case Kind::boolean:
    case Kind::number:
        break;
    }
    return value.text;
}

void readValue(const JsonValue& value, const Path& path, Faults& faults, double& into)
{
    if (value.kind == Kind::number)
        into = nearestDouble(value.text);
    else
        tell(faults, path, described(value), "a number");
}

void readValue(const JsonValue& value, const Path& path, Faults& faults, int& into)
{
    const auto number =
        value.kind == Kind::number ? wholeNumber<int>(value.text) : std::optional<int>();
    if (number)
        into = *number;
    else
        tell(faults, path, described(value), "a whole number");
}

void readValue(const JsonValue& value, const Path& path, Faults& faults, std::string& into)
{
    if (value.kind == Kind::text)
        into = value.text;
    else
        tell(faults, path, described(value), "a text in double quotes");
}

void readValue(const JsonValue& value, const Path& path, Faults& faults, Point2& into)
{
    readCoordinates<2>(value, path, faults, {&into.x, &into.y},
                       "a place on plan: [metres east, metres north]");
}

void readValue(const JsonValue& value, const Path& path, Faults& faults, Vec3& into)
{
    readCoordinates<3>(value, path, faults, {&into.x, &into.y, &into.z},
                       "a place: [metres east, metres north, metres up]");
}

void readValue(const JsonValue& value, const Path& path, Faults& faults,
               std::chrono::year_month_day& into)
{
    const std::string_view text = value.text;
    if (!isFormed(value, "0000-00-00"))
        return tell(faults, path, described(value), "a date such as \"2024-05-31\"");
    into = std::chrono::year(*wholeNumber<int>(text.substr(0, 4))) /
           std::chrono::month(*wholeNumber<unsigned>(text.substr(5, 2))) /
           std::chrono::day(*wholeNumber<unsigned>(text.substr(8, 2)));
}

void readValue(const JsonValue& value, const Path& path, Faults& faults,
               std::chrono::month_day& into)
{
    const std::string_view text = value.text;
    if (!isFormed(value, "00-00"))
        return tell(faults, path, described(value), "a month and a day such as \"05-31\"");
    into = std::chrono::month(*wholeNumber<unsigned>(text.substr(0, 2))) /
           std::chrono::day(*wholeNumber<unsigned>(text.substr(3, 2)));
}

const JsonValue* FieldReader::find(std::string_view name)
{
    const auto found = std::ranges::find(object_.names, name);
    if (found == object_.names.end())
        return nullptr;
    const auto index = static_cast<std::size_t>(found - object_.names.begin());
    taken_[index] = true;
    return &object_.items[index];
}

void FieldReader::constant(std::string_view name, std::string_view value)
{
    const auto* found = find(name);
    if (found == nullptr || found->kind != Kind::text || found->text != value)
        tell(faults_, path_ / name, found == nullptr ? "nothing" : described(*found),
             inQuotes(value) + "; is this a garden document?");
}

void FieldReader::version(std::string_view name, int newest)
{
    const auto* found = find(name);
    const auto number = found != nullptr && found->kind == Kind::number
                            ? wholeNumber<long long>(found->text)
                            : std::nullopt;
    if (number && *number >= 1 && *number <= newest)
        return;
    const auto form = "version " + std::to_string(newest) + " of the garden form";
    tell(faults_, path_ / name, found == nullptr ? "nothing" : described(*found),
         number && *number > newest
             ? form + " or older: a newer Underbough wrote this garden, open it with that one"
             : form);
}

void FieldReader::extras(Extras& rest) const
{
    for (std::size_t i = 0; i < object_.items.size(); ++i)
        if (!taken_[i])
            rest.emplace(object_.names[i], compactJson(object_.items[i]));
}

} // namespace model
