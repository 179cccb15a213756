#include "app/report/json_text.hpp"

#include "model/document/fault.hpp"

#include <algorithm>
#include <array>
#include <cstdio>

namespace app {
namespace {

bool onOneLine(const Json& list)
{
    return std::ranges::none_of(list, [](const Json& item) { return item.is_structured(); }) &&
           std::ranges::none_of(list, [](const Json& item) { return item.is_string(); });
}

void write(const Json& value, const std::string& margin, std::string& text);

void writeList(const Json& list, const std::string& margin, std::string& text)
{
    const bool flat = onOneLine(list);
    const std::string inner = margin + "  ";
    bool first = true;
    text += '[';
    for (const Json& item : list) {
        text += first ? "" : flat ? ", " : ",";
        if (!flat)
            text += '\n' + inner;
        write(item, inner, text);
        first = false;
    }
    if (!flat)
        text += '\n' + margin;
    text += ']';
}

void writeObject(const Json& object, const std::string& margin, std::string& text)
{
    const std::string inner = margin + "  ";
    bool first = true;
    text += '{';
    for (const auto& [name, item] : object.items()) {
        text += first ? "\n" : ",\n";
        text += inner + Json(name).dump() + ": ";
        write(item, inner, text);
        first = false;
    }
    text += first ? "}" : '\n' + margin + '}';
}

void write(const Json& value, const std::string& margin, std::string& text)
{
    if (value.is_array())
        writeList(value, margin, text);
    else if (value.is_object())
        writeObject(value, margin, text);
    else if (value.is_number_float())
        text += model::plain(value.get<double>());
    else
        text += value.dump();
}

} // namespace

std::string jsonText(const Json& value)
{
    std::string text;
    write(value, {}, text);
    return text + '\n';
}

std::string isoDate(std::chrono::year_month_day date)
{
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", int(date.year()),
                  unsigned(date.month()), unsigned(date.day()));
    return text.data();
}

Json dateOrNull(const std::optional<std::chrono::year_month_day>& date)
{
    return date ? Json(isoDate(*date)) : Json(nullptr);
}

} // namespace app
