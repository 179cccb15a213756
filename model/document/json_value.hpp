#pragma once

#include "model/document/fault.hpp"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace model {

/// A JSON value. Numbers keep the digits they were written with, so that a field nobody here knows
/// goes back as it came; members keep their order.
struct JsonValue {
    enum class Kind { null, boolean, number, text, list, object };
    Kind kind{Kind::null};
    std::string text;             ///< number: its digits; text: its content; boolean: true or false
    std::vector<JsonValue> items; ///< of a list; of an object the members' values
    std::vector<std::string> names; ///< of an object's members, one for each item
};

/// The value of a JSON text (RFC 8259, UTF-8, a byte order mark is passed over), or the first
/// thing wrong with it. Doubled names, numbers beyond a double and what limits.hpp forbids are
/// refused; what is too deep or too much is refused while reading, before it is stored.
[[nodiscard]] std::variant<JsonValue, Fault> parseJson(std::string_view text);

/// On one line, with a space after each comma and colon.
[[nodiscard]] std::string compactJson(const JsonValue& value);

/// For people: what fits into 100 columns stands on one line, the rest is indented by two.
[[nodiscard]] std::string laidOutJson(const JsonValue& value);

/// A text in quotes, escaped; bytes that are not UTF-8 become U+FFFD.
[[nodiscard]] std::string quotedJson(const std::string& text);

} // namespace model
