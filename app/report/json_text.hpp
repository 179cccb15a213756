#pragma once

#include <nlohmann/json.hpp>

#include <chrono>
#include <optional>
#include <string>

namespace app {

/// JSON values keep the order they were given in, so that the same garden gives the same bytes.
using Json = nlohmann::ordered_json;

/// The value as text, two spaces a level, a line break at the end. Numbers stand in the shortest
/// form that reads back to the same double (the library's own writer adds figures to some: 1.1
/// can become 1.1000000000000001), and lists of numbers on one line.
[[nodiscard]] std::string jsonText(const Json& value);

/// A day as ISO 8601 writes it: "2025-07-14".
[[nodiscard]] std::string isoDate(std::chrono::year_month_day date);
/// The same, or null.
[[nodiscard]] Json dateOrNull(const std::optional<std::chrono::year_month_day>& date);

} // namespace app
