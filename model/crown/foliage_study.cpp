#include "model/crown/foliage_study.hpp"

#include "model/crown/plan_outlines.hpp"

#include <algorithm>
#include <utility>

namespace model {

FoliageStudy::FoliageStudy(const Species& species)
    : species_(species), bearings_deg_(halfTurn_deg(kOutlineStep_deg)), silhouettes_(bearings_deg_)
{
}

Foliation FoliageStudy::redraw(const Tree& tree)
{
    const auto order = limbOrder(tree);
    const auto redrawn = learn(tree, order);
    std::vector<LeafyBody> bodies;
    for (std::size_t i = 0; i < known_.size(); ++i)
        for (auto body : known_[i].bodies) {
            body.limb = i;
            bodies.push_back(body);
        }
    (void)silhouettes_.redraw(tree, order, bodies, redrawn);
    order_ = order;
    if (bodies.empty())
        return leafOf(species_, {}, {}, 0.0);
    if (std::exchange(stillIsOld_, false))
        keepStill();
    return leafOf(species_, bodies, {crownArea_m2(), outlineArea_m2(order)}, 0.0);
}

/// What was redrawn since last time. A limb that moves and did not before makes `still_` old.
Redrawn FoliageStudy::learn(const Tree& tree, const LimbOrder& order)
{
    const std::size_t count = tree.limbs.size();
    auto before = std::exchange(known_, std::vector<Known>(count));
    Redrawn redrawn{std::vector(count, kNoLimb), std::vector(count, true),
                    std::vector(count, false)};
    std::vector<bool> moves(count, true);
    std::size_t carried = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const auto& limb = tree.limbs[i];
        const auto same = [&limb](const Known& known) { return known.limb.id == limb.id; };
        auto found = i < before.size() && same(before[i])
                         ? before.begin() + static_cast<std::ptrdiff_t>(i)
                         : std::ranges::find_if(before, same);
        if (found != before.end()) {
            ++carried;
            redrawn.from[i] = static_cast<std::size_t>(found - before.begin());
            redrawn.own[i] = found->limb != limb;
            moves[i] = redrawn.own[i];
            stillIsOld_ = stillIsOld_ || (moves[i] && !found->moves);
            known_[i] = std::move(*found);
        }
        if (!redrawn.own[i])
            continue;
        known_[i].limb = limb;
        known_[i].bodies.clear();
        appendLeafyBodies(limb, i, known_[i].bodies);
    }
    if (carried != before.size() || carried != count)
        stillIsOld_ = true;
    if (stillIsOld_)
        for (std::size_t i = 0; i < count; ++i)
            known_[i].moves = moves[i];
    const auto sameChildren = [&](std::size_t limb) {
        const auto& now = order.children[limb];
        const auto& then = order_.children[redrawn.from[limb]];
        return now.size() == then.size() &&
               std::ranges::equal(now, then, {}, [&](std::size_t i) { return redrawn.from[i]; });
    };
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb)
        redrawn.beyond[*limb] = redrawn.own[*limb] || !sameChildren(*limb) ||
                                std::ranges::any_of(order.children[*limb], [&](std::size_t child) {
                                    return redrawn.beyond[child];
                                });
    return redrawn;
}

std::vector<LeafyBody> FoliageStudy::bodiesThat(bool move) const
{
    std::vector<LeafyBody> bodies;
    for (std::size_t i = 0; i < known_.size(); ++i)
        for (auto body : known_[i].bodies) {
            if (known_[i].moves != move)
                break;
            body.limb = i;
            bodies.push_back(body);
        }
    return bodies;
}

void FoliageStudy::keepStill()
{
    still_ = unite(planOutlines(bodiesThat(false)));
}

/// The limbs that don't move, and those that do, less what they share.
double FoliageStudy::crownArea_m2() const
{
    const Region moving = unite(planOutlines(bodiesThat(true)));
    return area_m2(still_) + area_m2(moving) - area_m2(intersect(still_, moving));
}

double FoliageStudy::outlineArea_m2(const LimbOrder& order) const
{
    const auto all = order.children[order.trunk].size();
    double largest = 0.0;
    for (std::size_t i = 0; i < bearings_deg_.size(); ++i)
        largest = std::max(largest, silhouettes_.visible(order.trunk, all, i).leaf_m2);
    return largest;
}

} // namespace model
