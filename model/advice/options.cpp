#include "model/advice/options.hpp"

#include "model/advice/cleaning.hpp"
#include "model/advice/limb_faults.hpp"
#include "model/advice/limb_part.hpp"
#include "model/advice/limits.hpp"

#include <algorithm>
#include <limits>
#include <numbers>
#include <ranges>

namespace model::advice {
namespace {

constexpr double kNoLimit = std::numeric_limits<double>::infinity();

// Help smaller than this is rounding.
constexpr double kNoHelp = 1e-6;

double discArea_m2(double diameter_m)
{
    return std::numbers::pi / 4.0 * diameter_m * diameter_m;
}

class Planner {
public:
    Planner(const Tree& tree, const Foliation& foliation, const Wanted& wanted, LimbRules rules)
        : tree_(tree), foliation_(foliation), wanted_(wanted), rules_(rules),
          order_(limbOrder(tree)), faulty_m_(faultyFrom_m(tree)), limbs_(tree.limbs.size())
    {
        for (const auto limb : std::views::reverse(order_.rootFirst))
            sumUp(limb);
    }

    Decisions decisions() const
    {
        Decisions all;
        all.root = order_.trunk;
        all.goals = wanted_.goals;
        for (std::size_t limb = 0; limb < tree_.limbs.size(); ++limb)
            all.options.push_back(optionsFor(limb));
        return all;
    }

private:
    /// What is known of a limb before anything is decided.
    struct About {
        double ownLeaf_m2{};
        double leaf_m2{};         ///< with all that grows from it
        std::vector<double> help; ///< of taking it with all that grows from it
        bool inTheWay{};          ///< it or something that grows from it
        bool serves{};            ///< cutting it, or something that grows from it, serves something
        bool holdsKept{};         ///< it or something that grows from it is to be kept
    };

    Hanging hanging(std::size_t limb) const
    {
        return {tree_.limbs[limb],
                wanted_.sagging ? std::optional(wanted_.sagging->limbs[limb]) : std::nullopt};
    }

    bool wants(const std::vector<bool>& list, std::size_t limb) const
    {
        return limb < list.size() && list[limb];
    }

    /// A side branch on the outer part of a limb whose end may be cut back.
    bool isAtEnd(std::size_t limb) const
    {
        const auto parent = order_.parent[limb];
        return parent != kNoLimb && wants(wanted_.ends, parent) &&
               tree_.limbs[limb].attachedAt_m > innerLength_m(tree_.limbs[parent]);
    }

    std::vector<double> helpOf(Taken taken) const
    {
        return wanted_.help ? wanted_.help(taken) : std::vector<double>(wanted_.goals, 0.0);
    }

    double mostShoots() const
    {
        const auto& steps = wanted_.shoots.steps;
        return steps.empty() ? 0.0 : steps.back();
    }

    static void add(std::vector<double>& sum, const std::vector<double>& more)
    {
        for (std::size_t i = 0; i < sum.size(); ++i)
            sum[i] += more[i];
    }

    static bool any(const std::vector<double>& help)
    {
        return std::ranges::any_of(help, [](double h) { return h > kNoHelp; });
    }

    void sumUp(std::size_t limb)
    {
        About& about = limbs_[limb];
        const bool isTrunk = limb == order_.trunk;
        about.ownLeaf_m2 = ownLeaf_m2(tree_.limbs[limb], foliation_);
        about.leaf_m2 = about.ownLeaf_m2;
        about.inTheWay = blocksAny(hanging(limb), wanted_.headroom);
        about.help = helpOf(isTrunk ? Taken{limb, 0.0, mostShoots()} : Taken{limb, 0.0, 1.0});
        about.serves = about.inTheWay || any(about.help) || faulty_m_[limb] ||
                       wants(wanted_.lose, limb) || wants(wanted_.ends, limb) || isAtEnd(limb);
        about.holdsKept = wants(wanted_.keep, limb);
        for (const auto child : order_.children[limb]) {
            const About& other = limbs_[child];
            about.leaf_m2 += other.leaf_m2;
            about.inTheWay = about.inTheWay || other.inTheWay;
            about.serves = about.serves || other.serves;
            about.holdsKept = about.holdsKept || other.holdsKept;
            add(about.help, other.help);
        }
    }

    std::vector<Option> optionsFor(std::size_t limb) const
    {
        std::vector<Option> all;
        const bool goes = wants(wanted_.lose, limb) || (faulty_m_[limb] && !limbs_[limb].holdsKept);
        if (!goes || limb == order_.trunk) // a dead top is no gardener's work
            keepWhole(limb, all);
        if (!limbs_[limb].serves || limb == order_.trunk)
            return all;
        if (!wants(wanted_.lose, limb) && !wants(wanted_.keep, limb))
            for (const auto lateral : order_.children[limb])
                shortenTo(limb, lateral, all);
        if (!limbs_[limb].holdsKept)
            all.push_back(removal(limb));
        return all;
    }

    /// A limb that stays up to `to_m`: as it is or lifted, and thinned by nothing or a step.
    /// \param option      what the shortening itself does
    /// \param beyond_m2   leaf of the limbs that go with its end
    /// \param mostGone_m2  leaf that shortening and lifting may take together
    void stayUpTo(std::size_t limb, double to_m, Option option, double beyond_m2,
                  double mostGone_m2, std::vector<Option>& all) const
    {
        const auto& whole = tree_.limbs[limb];
        const auto stay = howToStay(to_m < length_m(whole) ? hangingPart(hanging(limb), 0.0, to_m)
                                                           : hanging(limb),
                                    foliation_, wanted_.headroom);
        if (!stay)
            return;
        const double gone_m2 = beyond_m2 + limbs_[limb].ownLeaf_m2 - stay->leaf_m2;
        if (gone_m2 > mostGone_m2)
            return;
        if (stay->lift_m) {
            option.cuts.push_back({CutKind::lifting, whole.id, 0.0, stay->lift_m, {}, {}});
            add(option.helps, helpOf({limb, 0.0, kAllShoots}));
        }
        option.leaf = share(gone_m2);
        all.push_back(option);
        if (!wanted_.thin || wants(wanted_.keep, limb) || stay->leaf_m2 <= 0.0)
            return;
        for (const double step : wanted_.shoots.steps) {
            const auto help = helpOf({limb, 0.0, step});
            if (!any(help) && !isAtEnd(limb))
                return;
            Option thinned = option;
            thinned.cuts.push_back({wanted_.shoots.kind, whole.id, 0.0, {}, step, {}});
            thinned.leaf = share(gone_m2 + step * stay->leaf_m2);
            add(thinned.helps, help);
            all.push_back(std::move(thinned));
        }
    }

    void keepWhole(std::size_t limb, std::vector<Option>& all) const
    {
        Option option;
        option.helps.assign(wanted_.goals, 0.0);
        for (const auto child : order_.children[limb])
            if (limbs_[child].serves)
                option.decide.push_back(child);
        stayUpTo(limb, length_m(tree_.limbs[limb]), std::move(option), 0.0, kNoLimit, all);
    }

    void shortenTo(std::size_t limb, std::size_t lateral, std::vector<Option>& all) const
    {
        const auto& whole = tree_.limbs[limb];
        const double at_m = tree_.limbs[lateral].attachedAt_m;
        const double length = length_m(whole);
        const double cut_m = axisPoint(whole, at_m).diameter_m;
        const double lateral_m = tree_.limbs[lateral].stations.front().diameter_m;
        const bool dead = faulty_m_[limb] && *faulty_m_[limb] < at_m;
        if (at_m <= 0.0 || at_m >= length || lateral_m < kLateralLeast * cut_m || dead ||
            faulty_m_[lateral] || thickerTwinAt(limb, lateral) || limbs_[lateral].leaf_m2 <= 0.0)
            return; // a lateral without a living leaf can't take over
        const Hanging end = hangingPart(hanging(limb), at_m, length);
        Option option;
        option.cuts.push_back({CutKind::reduction, whole.id, at_m, {}, {}, {}});
        option.helps = helpOf({limb, at_m, 1.0});
        option.wound_m2 = discArea_m2(cut_m);
        double beyond_m2 = 0.0;
        bool serves = blocksAny(end, wanted_.headroom) || any(option.helps) || faulty_m_[limb] ||
                      wants(wanted_.ends, limb);
        for (const auto child : order_.children[limb]) {
            const bool stays = tree_.limbs[child].attachedAt_m <= at_m;
            if (stays && limbs_[child].serves)
                option.decide.push_back(child);
            if (stays)
                continue;
            if (limbs_[child].holdsKept)
                return;
            beyond_m2 += limbs_[child].leaf_m2;
            serves = serves || limbs_[child].serves;
            add(option.helps, limbs_[child].help);
        }
        const double most_m2 =
            rules_.limbShare && !faulty_m_[limb] ? kLimbShareMost * limbs_[limb].leaf_m2 : kNoLimit;
        if (serves)
            stayUpTo(limb, at_m, std::move(option), beyond_m2, most_m2, all);
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
        option.leaf = share(limbs_[limb].leaf_m2);
        option.wound_m2 = discArea_m2(tree_.limbs[limb].stations.front().diameter_m);
        option.helps = limbs_[limb].help;
        return option;
    }

    double share(double leaf_m2) const
    {
        return foliation_.leafArea_m2 > 0.0 ? leaf_m2 / foliation_.leafArea_m2 : 0.0;
    }

    const Tree& tree_;
    const Foliation& foliation_;
    const Wanted& wanted_;
    LimbRules rules_;
    LimbOrder order_;
    std::vector<std::optional<double>> faulty_m_;
    std::vector<About> limbs_;
};

} // namespace

Decisions options(const Tree& tree, const Foliation& foliation, const Wanted& wanted,
                  LimbRules rules)
{
    return Planner(tree, foliation, wanted, rules).decisions();
}

} // namespace model::advice
