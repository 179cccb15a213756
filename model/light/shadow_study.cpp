#include "model/light/shadow_study.hpp"

#include "model/light/shadow.hpp"

#include <utility>

namespace model::light {

Shadows ShadowStudy::redraw(const Garden& garden, const SunPosition& sun)
{
    if (sun != sun_ || garden.slope != slope_) {
        limbs_.clear();
        neighbours_.clear();
    }
    sun_ = sun;
    slope_ = garden.slope;
    const Ground ground(garden.slope);
    Shadows all;
    auto limbsBefore = std::exchange(limbs_, {});
    for (const auto& tree : garden.trees)
        for (const auto& limb : tree.limbs) {
            // As a rule limbs stay in their places; one that doesn't is reckoned anew.
            const std::size_t at = limbs_.size();
            const bool isKnown = at < limbsBefore.size() && limbsBefore[at].limb == limb &&
                                 limbsBefore[at].tree_m == tree.position_m;
            limbs_.push_back(isKnown ? std::move(limbsBefore[at])
                                     : KnownLimb{limb, tree.position_m,
                                                 std::make_shared<const Region>(
                                                     shadow(limb, tree.position_m, sun, ground))});
            all.push_back(limbs_.back().shadow);
        }
    auto neighboursBefore = std::exchange(neighbours_, {});
    for (const auto& neighbour : garden.neighbours) {
        const std::size_t at = neighbours_.size();
        const bool isKnown =
            at < neighboursBefore.size() && neighboursBefore[at].neighbour == neighbour;
        neighbours_.push_back(isKnown
                                  ? std::move(neighboursBefore[at])
                                  : KnownNeighbour{neighbour, std::make_shared<const Region>(
                                                                  shadow(neighbour, sun, ground))});
        all.push_back(neighbours_.back().shadow);
    }
    return all;
}

} // namespace model::light
