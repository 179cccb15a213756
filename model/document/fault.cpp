#include "model/document/fault.hpp"

#include "model/escaped.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace model {
namespace {

bool continuesCharacter(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

} // namespace

std::string oneLine(const Fault& fault)
{
    std::string whole = fault.pointer;
    whole += whole.empty() ? "found " : ": found ";
    whole += fault.found + ", expected " + fault.expected;
    return escaped(whole);
}

std::string inQuotes(std::string_view text)
{
    constexpr std::size_t kShown = 40;
    std::size_t end = std::min(kShown, text.size());
    while (end > 0 && end < text.size() && continuesCharacter(text[end]))
        --end;
    std::string shown(1, '"');
    shown += text.substr(0, end);
    shown += end < text.size() ? "...\"" : "\"";
    return shown;
}

std::string plain(double value)
{
    if (std::isnan(value))
        return "NaN";
    if (std::isinf(value))
        return value > 0.0 ? "infinity" : "-infinity";
    if (value == 0.0) // a JSON reader would take -0 for the whole number 0 and lose the sign
        return std::signbit(value) ? "-0.0" : "0";
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value).ptr;
    return {digits.data(), end};
}

} // namespace model
