#pragma once

#include <QString>

#include <string>

namespace app::why {

/// What WhyViewModel::ask() can be asked about, as a name that a page hands back to it.
enum class Kind {
    limb,     ///< load and breaking gust; id of the limb
    strip,    ///< headroom; id of the strip
    planting, ///< direct sun on the day; id of the planting
    year,     ///< light of the place chosen in the year of light; its month, or kSeason
    gain,     ///< what a cut alone gives the place chosen in the year of light; its row
    cut,      ///< leaf and weight of a suggested cut; its row
    cuts,     ///< of all suggested cuts
    tried,    ///< of a cut that is tried out; its row
    allTried, ///< of all of those
    who,      ///< who should do the work
};

/// In place of a month: the growing season.
inline constexpr auto kSeason = "season";

struct Question {
    Kind kind{};
    std::string id;
    friend bool operator==(const Question&, const Question&) = default;
};

/// "limb:stem"
[[nodiscard]] QString key(Kind kind, const std::string& id = {});

/// The other way round. \throws std::out_of_range  on what key() never makes
[[nodiscard]] Question question(const QString& key);

} // namespace app::why
