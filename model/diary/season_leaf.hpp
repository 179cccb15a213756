#pragma once

#include "model/diary/growing_year.hpp"
#include "model/species/species.hpp"

#include <vector>

namespace model::diary {

/// The leaf that the visits of one growing year took, against what they may take together.
struct SeasonLeaf {
    GrowingYear season;
    double taken{};     ///< shares of the leaf, summed, 0..
    double guideline{}; ///< advice::seasonShare()
    int unknown{};      ///< visits with cuts whose share nobody noted: `taken` may be more
    [[nodiscard]] double left() const { return taken < guideline ? guideline - taken : 0.0; }
};

/// Every growing year from that of the first visit to that of `date`, oldest first; only that of
/// `date` without visits. Visits after `date` don't count (D2).
[[nodiscard]] std::vector<SeasonLeaf> leafBySeason(const Tree& tree, const Species& species,
                                                   const Place& place,
                                                   std::chrono::year_month_day date);

} // namespace model::diary
