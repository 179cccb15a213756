#pragma once

#include "app/format/units.hpp"
#include "model/advice/day_check.hpp"
#include "model/assessment/assessment.hpp"
#include "model/document/fault.hpp"

#include <stdexcept>
#include <string>
#include <vector>

namespace app {

/// What was typed, word by word. Blank: not given.
struct Arguments {
    std::string garden;
    std::string to; ///< the file to write
    std::string tree;
    std::string gust;
    std::string air;
    std::string explain;
    std::string ice;
    bool rain{};
    std::string date;
    std::string month;
    std::string planting;
    std::string spare;
    bool tradeOff{};
    std::string humidity;
    std::string relief;           ///< "100 %"
    std::vector<std::string> sun; ///< "hedge=4"
    std::vector<std::string> dli; ///< "bed=12"
    std::string bear;             ///< "90 km/h"
    std::vector<std::string> keep;
    std::vector<std::string> lose;
    bool openCentre{};
    std::string leaf; ///< "15 %"
    std::string output;
    std::string paper;   ///< "a4", "letter"
    std::string csv;     ///< "inventory", "visits", "loads"
    std::string figures; ///< a folder
    bool geojson{};
    bool forArborist{};
    std::string dayAir; ///< of the day of work
    std::string dayHumidity;
    std::string dayGust;
    std::string measures;
    std::string language; ///< "de", "en"
    bool json{};
    bool failOnAttention{};
    // A visit to be written into the diary
    bool add{};
    std::vector<std::string> cuts;     ///< "plan", "2", "removal:old limb", "lifting:limb=2.1 m"
    std::vector<std::string> headroom; ///< "path=1.9 m..2.4 m"
    std::vector<std::string> tips;     ///< "north limb", "north limb=1.2 m,0.4 m,3.1 m"
    std::string by;
    std::string note;
    std::string nextDue;
    std::vector<std::string> photos; ///< files
    std::string closed;              ///< number of a wound that was seen closed
    bool apply{};                    ///< the cuts are made on the sketch too
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

/// A day typed for another option. \throws Refusal  naming the option
[[nodiscard]] std::chrono::year_month_day dayOf(const char* option, const std::string& text);

/// The month asked for by number or name, in any language that the program speaks; blank: none.
/// \throws Refusal  on anything else
[[nodiscard]] std::optional<std::chrono::month> monthOf(const Arguments& arguments);

/// The day, the gust and the air asked about. A gust is a speed, in m/s without a unit, or words of
/// a forecast (model/load/forecast.hpp), read for the garden's time zone; blank when none was
/// given. \throws Refusal  on anything but a speed of 0-100 m/s or known words, and air of -50 to
/// 60 °C
[[nodiscard]] model::Question questionOf(const Arguments& arguments, const model::Garden& garden,
                                         const Units& units);

/// A limb of a tree.
struct ChosenLimb {
    std::string tree; ///< id
    std::size_t limb{};
};

/// The limb to explain, by name or id, in capitals or not, in the tree asked for or in any.
/// \throws Refusal  when no limb, or more than one, is called that
[[nodiscard]] ChosenLimb limbOf(const Arguments& arguments, const model::Garden& garden);

/// The thickness of glaze asked for in m, 0 when none was. A number without a unit is in mm.
/// \throws Refusal  on anything but 0-100 mm
[[nodiscard]] double glazeOf(const Arguments& arguments, const Units& units);

/// The headroom to spare asked for in m, 0 when none was. A number without a unit is in the units'
/// own.
/// \throws Refusal  on anything but a length of 0-10 m
[[nodiscard]] double spareOf(const Arguments& arguments, const Units& units);

/// The weather of a day of work, as far as it was given.
/// \throws Refusal  on what can't be read
[[nodiscard]] model::advice::DayWeather weatherOf(const Arguments& arguments, const Units& units);

/// The goals asked for, besides those of the garden file; all of them musts.
/// \throws Refusal  on a share, an hour or a planting that can't be read
[[nodiscard]] std::vector<model::Goal> goalsOf(const Arguments& arguments, const Units& units,
                                               const model::Garden& garden);

/// Whether a thing's name or id is the one wanted, in capitals or not.
[[nodiscard]] bool isCalled(const std::string& name, const std::string& id,
                            const std::string& wanted);

/// Id of the tree asked for by name or id, in capitals or not; empty when none was.
/// \throws Refusal  when no tree, or more than one, is called that
[[nodiscard]] std::string treeOf(const Arguments& arguments, const model::Garden& garden);
/// The same for a planting.
[[nodiscard]] std::string plantingOf(const Arguments& arguments, const model::Garden& garden);

} // namespace app
