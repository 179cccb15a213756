#include "model/document/syntax_fault.hpp"

#include "model/document/limits.hpp"

#include <algorithm>
#include <array>

namespace model {
namespace {

using std::string_view_literals::operator""sv;

struct Wording {
    std::string_view phrase; ///< of the parser
    std::string_view expected;
};

constexpr std::array kWordings{
    Wording{"number overflow", "a number that is not beyond all measure"},
    Wording{"unexpected end of input", "the rest of the document: it is cut short"},
    Wording{"missing closing quote", "the rest of the document: it is cut short inside a text"},
    Wording{"control character", "a closing double quote before it; inside a text, write a line "
                                 "break as \\n and a tab as \\t"},
    Wording{"backslash", "one of \\n \\t \\\" \\\\ \\/ \\uXXXX after a backslash"},
    Wording{"'\\u'", "four hexadecimal digits after \\u"},
    Wording{"surrogate", "a whole character: \\uD800 to \\uDFFF only stand in pairs"},
    Wording{"invalid number", "a number such as 12, 0.5 or -3e2"},
    Wording{"; expected ']'", "a comma or a closing ]"},
    Wording{"; expected '}'", "a comma or a closing }"},
    Wording{"; expected ':'", "a colon after the field's name"},
    Wording{"; expected string literal", "a field's name in double quotes, and no comma before a "
                                         "closing }"},
    Wording{"; expected end of input", "nothing more after the document"},
};

std::string_view expectedInstead(std::string_view complaint)
{
    for (const auto& wording : kWordings)
        if (complaint.find(wording.phrase) != std::string_view::npos)
            return wording.expected;
    return "a number, a text in double quotes, a list, an object, true, false or null";
}

/// "line 3, column 7": both count from 1, columns in characters.
std::string lineAndColumn(std::string_view text, std::size_t offset)
{
    const auto before = text.substr(0, offset);
    const auto lines = std::ranges::count(before, '\n');
    const auto lineStart = before.rfind('\n');
    const auto line = lineStart == std::string_view::npos ? before : before.substr(lineStart + 1);
    const auto characters = std::ranges::count_if(
        line, [](char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; });
    return "line " + std::to_string(lines + 1) + ", column " + std::to_string(characters + 1);
}

/// The word or text that ends with the offending character, or that character alone.
std::string_view offendingWord(std::string_view text, std::size_t offset)
{
    constexpr std::size_t kLongest = 30;
    if (text[offset] == '"' && offset > 0) {
        const auto opening = text.rfind('"', offset - 1);
        if (opening != std::string_view::npos && offset - opening < kLongest)
            return text.substr(opening + 1, offset - opening - 1);
    }
    const auto inWord = [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
               c == '+' || c == '-' || c == '.' || c == '_';
    };
    std::size_t start = offset;
    while (start > 0 && offset - start < kLongest && inWord(text[start - 1]))
        --start;
    return text.substr(start, offset - start + 1);
}

std::string hexByte(char byte)
{
    constexpr std::string_view kHex = "0123456789ABCDEF";
    const auto value = static_cast<unsigned char>(byte);
    return {'0', 'x', kHex[value >> 4U], kHex[value & 0x0FU]};
}

/// Where the bytes stop being UTF-8, looking back a character's length from what was read last.
std::optional<std::size_t> foreignByte(std::string_view text, std::size_t offset,
                                       std::string_view complaint)
{
    const auto isForeign = [text](std::size_t i) {
        return i < text.size() && static_cast<unsigned char>(text[i]) >= 0x80;
    };
    if (isForeign(offset))
        return offset;
    if (complaint.find("UTF-8") == std::string_view::npos)
        return std::nullopt;
    for (std::size_t back = 1; back <= 3 && back <= offset; ++back)
        if (isForeign(offset - back))
            return offset - back;
    return std::nullopt;
}

bool isNotANumber(std::string_view text, std::size_t offset)
{
    constexpr std::array kWords{"NaN"sv, "nan"sv, "Infinity"sv, "inf"sv};
    return std::ranges::any_of(kWords, [&](std::string_view word) {
        for (std::size_t back = 0; back <= word.size() && back <= offset; ++back)
            if (text.substr(offset - back, word.size()) == word)
                return true;
        return false;
    });
}

} // namespace

std::optional<Fault> unreadableText(std::string_view text)
{
    if (text.size() > limits::kDocumentBytes)
        return Fault{"", std::to_string(text.size()) + " bytes",
                     "at most " + std::to_string(limits::kDocumentBytes) +
                         " bytes (32 MB); is this a garden?"};
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return Fault{"", "nothing: the text is empty", "a garden document"};
    constexpr std::string_view kUtf8 = "a garden document saved as UTF-8";
    constexpr std::array kMarks{"\xFF\xFE"sv, "\xFE\xFF"sv, "\0{"sv, "{\0"sv};
    if (std::ranges::any_of(kMarks, [text](auto mark) { return text.starts_with(mark); }))
        return Fault{"", "text in UTF-16 or UTF-32 (from byte 0)", std::string(kUtf8)};
    const auto head = text.substr(0, 4096);
    if (const auto nul = head.find('\0'); nul != std::string_view::npos)
        return Fault{"", "no text: byte 0x00 at offset " + std::to_string(nul), std::string(kUtf8)};
    return std::nullopt;
}

Fault syntaxFault(std::string_view text, std::size_t read, std::string_view complaint)
{
    const std::size_t offset = std::min(read > 0 ? read - 1 : 0, text.size());
    if (const auto foreign = foreignByte(text, offset, complaint))
        return {"",
                "byte " + hexByte(text[*foreign]) + " at offset " + std::to_string(*foreign) +
                    " (" + lineAndColumn(text, *foreign) + "), which is not UTF-8 text",
                "a garden document saved as UTF-8"};
    const std::string place = " at " + lineAndColumn(text, offset);
    if (isNotANumber(text, offset))
        return {"", "NaN or infinity" + place, "a number"};
    if (offset >= text.size())
        return {"", "the end of the text" + place, std::string(expectedInstead(complaint))};
    return {"", inQuotes(offendingWord(text, offset)) + place,
            std::string(expectedInstead(complaint))};
}

} // namespace model
