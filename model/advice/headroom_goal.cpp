#include "model/advice/headroom_goal.hpp"

#include "model/advice/limits.hpp"
#include "model/headroom/headroom.hpp"
#include "model/load/sag.hpp"

#include <algorithm>
#include <cmath>
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

/// A limb as it was drawn and, where that is looked at, as it hangs at its heaviest.
struct Hanging {
    Limb drawn;
    std::optional<Limb> heavy;
};

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

/// \param length_m  of the whole limb as drawn: bending makes its stations' chain a little shorter
Hanging part(const Hanging& limb, double from_m, double to_m, double length_m)
{
    Hanging piece{part(limb.drawn, from_m, to_m), {}};
    if (limb.heavy) {
        const double shrink = model::length_m(*limb.heavy) / length_m;
        piece.heavy = part(*limb.heavy, shrink * from_m, shrink * to_m);
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

bool blocks(const Hanging& limb, const HeadroomGoal& goal)
{
    return blocks(limb.drawn, goal) || (limb.heavy && blocks(*limb.heavy, goal));
}

bool blocksAny(const Hanging& limb, const std::vector<HeadroomGoal>& goals)
{
    return std::ranges::any_of(goals, [&](const auto& goal) { return blocks(limb, goal); });
}

/// How a stretch of limb can stay: as it is, or with its shoots lifted.
struct Stay {
    std::optional<double> lift_m; ///< blank: as it is
    double leaf_m2{};             ///< that stays on it
};

/// Shoots to be cut so high that they end at `lift_m` when the limb hangs at its heaviest, to the
/// next full centimetre.
double cutHeight_m(const Hanging& limb, double lift_m)
{
    constexpr double kPerMetre = 100.0;
    constexpr double kRounding = 1e-6;
    const double drop = limb.heavy ? load::largestDrop_m(limb.drawn, *limb.heavy) : 0.0;
    return drop > kTouch_m ? std::ceil((lift_m + drop) * kPerMetre - kRounding) / kPerMetre
                           : lift_m;
}

std::optional<Stay> howToStay(const Hanging& limb, const Foliation& foliation,
                              const std::vector<HeadroomGoal>& goals)
{
    double lift_m = 0.0;
    for (const auto& goal : goals)
        if (blocks(limb, goal))
            lift_m = std::max(lift_m, goal.height_m);
    if (lift_m == 0.0)
        return Stay{std::nullopt, leafOf_m2(limb.drawn, foliation)};
    if (!limb.drawn.foliage || limb.drawn.foliage->hanging_m <= 0.0)
        return std::nullopt;
    const double cut_m = cutHeight_m(limb, lift_m);
    Hanging lifted = limb;
    lifted.drawn.foliage->hem_m = std::max(cut_m, limb.drawn.foliage->hem_m.value_or(0.0));
    if (lifted.heavy && lifted.heavy->foliage)
        lifted.heavy->foliage->hem_m = std::max(lift_m, limb.heavy->foliage->hem_m.value_or(0.0));
    if (blocksAny(lifted, goals))
        return std::nullopt;
    return Stay{cut_m, leafOf_m2(lifted.drawn, foliation)};
}

class Planner {
public:
    Planner(const Tree& tree, const Tree* sagging, const Foliation& foliation,
            const std::vector<HeadroomGoal>& goals, LimbRules rules)
        : tree_(tree), sagging_(sagging), foliation_(foliation), goals_(goals), rules_(rules),
          order_(limbOrder(tree)), ownLeaf_m2_(tree.limbs.size()), leaf_m2_(tree.limbs.size()),
          inTheWay_(tree.limbs.size())
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
    [[nodiscard]] Hanging hanging(std::size_t limb) const
    {
        return {tree_.limbs[limb], sagging_ ? std::optional(sagging_->limbs[limb]) : std::nullopt};
    }

    void sumUp(std::size_t limb)
    {
        ownLeaf_m2_[limb] = leafOf_m2(tree_.limbs[limb], foliation_);
        leaf_m2_[limb] = ownLeaf_m2_[limb];
        inTheWay_[limb] = blocksAny(hanging(limb), goals_);
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
        const auto stay = howToStay(hanging(limb), foliation_, goals_);
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
        const auto stay = howToStay(part(hanging(limb), 0.0, at_m, length), foliation_, goals_);
        if (!stay)
            return;
        Option option;
        option.cuts.push_back({CutKind::reduction, whole.id, at_m, {}, {}, {}});
        addLift(limb, *stay, option);
        double gone_m2 = ownLeaf_m2_[limb] - stay->leaf_m2;
        bool serves = blocksAny(part(hanging(limb), at_m, length, length), goals_);
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
    const Tree* sagging_; ///< null: not looked at
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
                            const std::vector<HeadroomGoal>& goals, LimbRules rules,
                            const Tree* sagging)
{
    return Planner(tree, sagging, foliation, goals, rules).decisions();
}

} // namespace model::advice
