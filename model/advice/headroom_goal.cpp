#include "model/advice/headroom_goal.hpp"

#include "model/advice/limits.hpp"
#include "model/headroom/headroom.hpp"

#include <algorithm>
#include <numbers>
#include <optional>

namespace model::advice {
namespace {

// A tenth of a millimetre: far below what a tape shows, far above what rounding makes.
constexpr double kTouch_m = 1e-4;

double discArea_m2(double diameter_m)
{
    return std::numbers::pi / 4.0 * diameter_m * diameter_m;
}

/// A stretch of one limb by itself, as a limb.
Limb part(const Limb& limb, double from_m, double to_m)
{
    Limb piece = limb;
    piece.stations = stretch(limb, from_m, to_m);
    if (piece.foliage) {
        piece.foliage->from_m = std::max(0.0, limb.foliage->from_m - from_m);
        if (piece.foliage->from_m >= to_m - from_m)
            piece.foliage.reset();
    }
    return piece;
}

std::vector<LeafyBody> bodiesOf(const Limb& limb)
{
    Tree alone;
    alone.limbs = {limb};
    return leafyBodies(alone);
}

double leafOf_m2(const Limb& limb, const Foliation& foliation)
{
    double leaf = 0.0;
    for (const auto& body : bodiesOf(limb))
        leaf += leafArea_m2(body, foliation);
    return leaf;
}

bool below(const Curtain& solid, const HeadroomGoal& goal)
{
    if (lowestPoint(solid).z >= goal.height_m - kTouch_m)
        return false; // spares the plan geometry for all that hangs high
    const auto low = headroom::lowestOver(solid, goal.outline_m);
    return low && low->height_m < goal.height_m - kTouch_m;
}

/// True if any wood or leaf of the limb is too low over the goal's strip.
bool blocks(const Limb& limb, const HeadroomGoal& goal)
{
    const bool walkedRound = !limb.parent && goal.stemStandsIn;
    return (!walkedRound &&
            std::ranges::any_of(woodSolids(limb), [&](const auto& s) { return below(s, goal); })) ||
           std::ranges::any_of(bodiesOf(limb), [&](const auto& b) { return below(b.solid, goal); });
}

bool blocksAny(const Limb& limb, const std::vector<HeadroomGoal>& goals)
{
    return std::ranges::any_of(goals, [&](const auto& goal) { return blocks(limb, goal); });
}

/// How a stretch of limb can stay: as it is, or with its shoots lifted.
struct Stay {
    std::optional<double> lift_m; ///< blank: as it is
    double leaf_m2{};             ///< that stays on it
};

std::optional<Stay> howToStay(const Limb& limb, const Foliation& foliation,
                              const std::vector<HeadroomGoal>& goals)
{
    double lift_m = 0.0;
    for (const auto& goal : goals)
        if (blocks(limb, goal))
            lift_m = std::max(lift_m, goal.height_m);
    if (lift_m == 0.0)
        return Stay{std::nullopt, leafOf_m2(limb, foliation)};
    if (!limb.foliage || limb.foliage->hanging_m <= 0.0)
        return std::nullopt;
    Limb lifted = limb;
    lifted.foliage->hem_m = std::max(lift_m, limb.foliage->hem_m.value_or(0.0));
    if (blocksAny(lifted, goals))
        return std::nullopt;
    return Stay{lift_m, leafOf_m2(lifted, foliation)};
}

class Planner {
public:
    Planner(const Tree& tree, const Foliation& foliation, const std::vector<HeadroomGoal>& goals,
            LimbRules rules)
        : tree_(tree), foliation_(foliation), goals_(goals), rules_(rules), order_(limbOrder(tree)),
          ownLeaf_m2_(tree.limbs.size()), leaf_m2_(tree.limbs.size()), inTheWay_(tree.limbs.size())
    {
        for (auto limb = order_.rootFirst.rbegin(); limb != order_.rootFirst.rend(); ++limb)
            sumUp(*limb);
    }

    Decisions decisions() const
    {
        Decisions all;
        all.root = order_.trunk;
        for (std::size_t limb = 0; limb < tree_.limbs.size(); ++limb)
            all.options.push_back(optionsFor(limb));
        return all;
    }

private:
    void sumUp(std::size_t limb)
    {
        ownLeaf_m2_[limb] = leafOf_m2(tree_.limbs[limb], foliation_);
        leaf_m2_[limb] = ownLeaf_m2_[limb];
        inTheWay_[limb] = blocksAny(tree_.limbs[limb], goals_);
        for (const auto child : order_.children[limb]) {
            leaf_m2_[limb] += leaf_m2_[child];
            inTheWay_[limb] = inTheWay_[limb] || inTheWay_[child];
        }
    }

    std::vector<Option> optionsFor(std::size_t limb) const
    {
        std::vector<Option> options;
        keepWhole(limb, options);
        if (!inTheWay_[limb] || limb == order_.trunk)
            return options;
        for (const auto lateral : order_.children[limb])
            shortenTo(limb, lateral, options);
        options.push_back(removal(limb));
        return options;
    }

    void keepWhole(std::size_t limb, std::vector<Option>& options) const
    {
        const auto stay = howToStay(tree_.limbs[limb], foliation_, goals_);
        if (!stay)
            return;
        Option option;
        addLift(limb, *stay, option);
        option.leaf = share(ownLeaf_m2_[limb] - stay->leaf_m2);
        for (const auto child : order_.children[limb])
            if (inTheWay_[child])
                option.decide.push_back(child);
        options.push_back(std::move(option));
    }

    void shortenTo(std::size_t limb, std::size_t lateral, std::vector<Option>& options) const
    {
        const auto& whole = tree_.limbs[limb];
        const double at_m = tree_.limbs[lateral].attachedAt_m;
        const double length = length_m(whole);
        const double cut_m = axisPoint(whole, at_m).diameter_m;
        const double lateral_m = tree_.limbs[lateral].stations.front().diameter_m;
        if (at_m <= 0.0 || at_m >= length || lateral_m < kLateralLeast * cut_m ||
            thickerTwinAt(limb, lateral) || leaf_m2_[lateral] <= 0.0)
            return; // a lateral without a leaf, dead or bare, can't take over
        const auto stay = howToStay(part(whole, 0.0, at_m), foliation_, goals_);
        if (!stay)
            return;
        Option option;
        option.cuts.push_back({CutKind::reduction, whole.id, at_m, {}, {}, {}});
        addLift(limb, *stay, option);
        double gone_m2 = ownLeaf_m2_[limb] - stay->leaf_m2;
        bool serves = blocksAny(part(whole, at_m, length), goals_);
        for (const auto child : order_.children[limb]) {
            const bool stays = tree_.limbs[child].attachedAt_m <= at_m;
            if (stays && inTheWay_[child])
                option.decide.push_back(child);
            if (stays)
                continue;
            gone_m2 += leaf_m2_[child];
            serves = serves || inTheWay_[child];
        }
        const bool tooMuch = rules_.limbShare && gone_m2 > kLimbShareMost * leaf_m2_[limb];
        if (!serves || tooMuch)
            return;
        option.leaf = share(gone_m2);
        option.wound_m2 = discArea_m2(cut_m);
        options.push_back(std::move(option));
    }

    /// Of several laterals at one place only the thickest stands for the reduction.
    bool thickerTwinAt(std::size_t limb, std::size_t lateral) const
    {
        const auto& one = tree_.limbs[lateral];
        return std::ranges::any_of(order_.children[limb], [&](std::size_t i) {
            const auto& other = tree_.limbs[i];
            if (i == lateral || other.attachedAt_m != one.attachedAt_m)
                return false;
            const double thick = other.stations.front().diameter_m;
            const double thin = one.stations.front().diameter_m;
            return thick > thin || (thick == thin && i < lateral);
        });
    }

    Option removal(std::size_t limb) const
    {
        Option option;
        option.cuts.push_back({CutKind::removal, tree_.limbs[limb].id, 0.0, {}, {}, {}});
        option.leaf = share(leaf_m2_[limb]);
        option.wound_m2 = discArea_m2(tree_.limbs[limb].stations.front().diameter_m);
        return option;
    }

    void addLift(std::size_t limb, const Stay& stay, Option& option) const
    {
        if (stay.lift_m)
            option.cuts.push_back(
                {CutKind::lifting, tree_.limbs[limb].id, 0.0, stay.lift_m, {}, {}});
    }

    double share(double leaf_m2) const
    {
        return foliation_.leafArea_m2 > 0.0 ? leaf_m2 / foliation_.leafArea_m2 : 0.0;
    }

    const Tree& tree_;
    const Foliation& foliation_;
    const std::vector<HeadroomGoal>& goals_;
    LimbRules rules_;
    LimbOrder order_;
    std::vector<double> ownLeaf_m2_;
    std::vector<double> leaf_m2_; ///< with all that grows from the limb
    std::vector<bool> inTheWay_;  ///< likewise
};

} // namespace

std::vector<HeadroomGoal> headroomGoals(const Garden& garden, const Tree& tree)
{
    std::vector<HeadroomGoal> goals;
    for (const auto& strip : garden.strips) {
        HeadroomGoal goal{strip.outline_m, headroom::neededHeadroom_m(strip), false};
        for (auto& corner : goal.outline_m)
            corner = corner - tree.position_m;
        goal.stemStandsIn = headroom::stemStandsIn(tree, goal.outline_m);
        goals.push_back(std::move(goal));
    }
    return goals;
}

Decisions headroomDecisions(const Tree& tree, const Foliation& foliation,
                            const std::vector<HeadroomGoal>& goals, LimbRules rules)
{
    return Planner(tree, foliation, goals, rules).decisions();
}

} // namespace model::advice
