#pragma once

#include "model/garden/extras.hpp"

#include <optional>
#include <string>

namespace model {

enum class CutKind {
    removal,   ///< the whole limb, just outside the branch collar
    reduction, ///< the end of the limb, back to a lateral that takes over
    thinning,  ///< a share of a limb's own small shoots, spread evenly
    lifting,   ///< hanging shoots shortened to a height above the ground
    renewal,   ///< fruit trees: a share of last year's shoots, with old fruiting wood
};

/// One cut, as planned or as made.
struct Cut {
    CutKind kind{};
    std::string limb;               ///< id of the limb cut
    double at_m{};                  ///< along the limb: 0 for a removal, the cut for a reduction
    std::optional<double> height_m; ///< lifting: the height that the shoots are lifted to
    std::optional<double> share;    ///< thinning, renewal: share of the limb's own leaf, 0..1
    Extras extras;
    friend bool operator==(const Cut&, const Cut&) = default;
};

} // namespace model
