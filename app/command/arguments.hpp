#pragma once

#include "app/format/units.hpp"
#include "model/document/fault.hpp"
#include "model/garden/garden.hpp"

#include <stdexcept>
#include <string>
#include <vector>

namespace app {

/// What was typed, word by word. Blank: not given.
struct Arguments {
    std::string garden;
    std::string tree;
    std::string gust;
    std::string date;
    std::string month;
    std::string planting;
    std::string measures;
    bool json{};
    bool failOnAttention{};
    double latitude_deg{};
    double longitude_deg{};
    std::string at;
};

/// Input that can't be used; what() is the one line to show.
class Refusal : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// "garden.json: /trees/0/limbs/2: found ..., expected ... (and 3 more faults)".
[[nodiscard]] std::string refusalLine(const std::string& name,
                                      const std::vector<model::Fault>& faults);

/// The measures asked for, else those of the locale.
[[nodiscard]] Units unitsOf(const Arguments& arguments);

/// The day asked for, else today.
/// \throws Refusal  on anything but a day of 2000-2100, for which the sun's place is known well
[[nodiscard]] std::chrono::year_month_day dateOf(const Arguments& arguments);

/// The month asked for by number or name, in any language that the program speaks; blank: none.
/// \throws Refusal  on anything else
[[nodiscard]] std::optional<std::chrono::month> monthOf(const Arguments& arguments);

/// The gust asked for in m/s, blank when none was. A number without a unit is in m/s.
/// \throws Refusal  on anything but a speed of 0-100 m/s
[[nodiscard]] std::optional<double> gustOf(const Arguments& arguments, const Units& units);

/// Id of the tree asked for by name or id, in capitals or not; empty when none was.
/// \throws Refusal  when no tree, or more than one, is called that
[[nodiscard]] std::string treeOf(const Arguments& arguments, const model::Garden& garden);
/// The same for a planting.
[[nodiscard]] std::string plantingOf(const Arguments& arguments, const model::Garden& garden);

} // namespace app
