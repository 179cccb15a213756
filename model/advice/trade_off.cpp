#include "model/advice/trade_off.hpp"

#include "model/advice/allowance.hpp"
#include "model/advice/cleaning.hpp"
#include "model/advice/goal_results.hpp"
#include "model/advice/prune.hpp"
#include "model/load/sag.hpp"

#include <algorithm>
#include <limits>

namespace model::advice {
namespace {

constexpr double kStep = 0.05;          // of the leaf
constexpr double kWorthTelling_h = 0.1; // of sun a day
constexpr long kNodes = 1000;
constexpr long kAsked = 200;
constexpr long kMeasures = 400;

std::vector<double> shares(double allowance)
{
    std::vector<double> all;
    for (int i = 1; i * kStep < allowance - 1e-9; ++i)
        all.push_back(i * kStep);
    if (allowance > 0.0)
        all.push_back(allowance);
    return all;
}

/// One thing wanted, by itself.
class Question {
public:
    /// \param cleaned   the tree on which everything is reckoned
    /// \param cleaning  the cuts that made it of the patient
    Question(const Patient& patient, const Patient& cleaned, const std::vector<Cut>& cleaning,
             Lack lack, std::vector<Goal> goals)
        : patient_(patient), cleaned_(cleaned), cleaning_(cleaning), goals_(std::move(goals)),
          targets_(cleaned, goals_)
    {
        tradeOff_.lack = lack;
        if (lack == Lack::headroom)
            for (const auto strip : targets_.lackingStrips())
                tradeOff_.subjects.push_back(patient.garden.strips[strip].id);
        else
            tradeOff_.subjects.push_back(goals_.back().subject);
        tradeOff_.now = measured(patient.tree, tradeOff_.wanted);
    }

    [[nodiscard]] bool isIdle() const
    {
        switch (tradeOff_.lack) {
        case Lack::headroom:
            return tradeOff_.subjects.empty();
        case Lack::relief:
            return !targets_.lacksRelief() || !tradeOff_.now.front();
        case Lack::light:
            break;
        }
        return !targets_.lacksLight();
    }

    TradeOff answer(double allowance, const std::atomic<bool>* cancel)
    {
        std::optional<Closest> known;
        for (const double share : shares(allowance)) {
            if (cancel && cancel->load(std::memory_order_relaxed))
                break;
            const Guideline guideline(cleaned_.tree, cleaned_.foliation, share, cancel,
                                      {.nodes = kNodes, .asked = kAsked, .measures = kMeasures});
            const auto found = closest(guideline, targets_, tradeOff_.lack, known);
            if (!found.choice.found)
                continue;
            known = found;
            Offer offer{share, found.choice.leaf, cleaning_, {}, found.choice.proven};
            offer.cuts.insert(offer.cuts.end(), found.choice.cuts.begin(), found.choice.cuts.end());
            std::vector<std::optional<double>> wanted;
            offer.reached = measured(afterCuts(patient_.tree, offer.cuts), wanted);
            // Coming closest ends within a hair: what less leaf does, more does too.
            if (!tradeOff_.offers.empty() && !isBetter(offer, tradeOff_.offers.back())) {
                offer = tradeOff_.offers.back();
                offer.leafMost = share;
            }
            tradeOff_.offers.push_back(std::move(offer));
        }
        return std::move(tradeOff_);
    }

private:
    /// In anything at all.
    [[nodiscard]] bool isBetter(const Offer& offer, const Offer& than) const
    {
        const bool relief = tradeOff_.lack == Lack::relief;
        const double clear = relief ? 0.0 : std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < offer.reached.size(); ++i) {
            const double ours = offer.reached[i].value_or(clear);
            const double theirs = than.reached[i].value_or(clear);
            if (relief ? ours < theirs : ours > theirs)
                return true;
        }
        return false;
    }

    [[nodiscard]] std::vector<std::optional<double>>
    measured(const Tree& standing, std::vector<std::optional<double>>& wanted) const
    {
        wanted.clear();
        if (tradeOff_.lack == Lack::headroom)
            return headroomOver(standing, wanted);
        const auto result = goalResults(patient_, {goals_.back()}, standing, 0.0).front();
        wanted.push_back(tradeOff_.lack == Lack::relief ? 1.0 : needed_h());
        return {&standing == &patient_.tree ? result.before : result.after};
    }

    [[nodiscard]] std::vector<std::optional<double>>
    headroomOver(const Tree& standing, std::vector<std::optional<double>>& wanted) const
    {
        const auto strips = headroom::treeHeadroom(
            patient_.garden, standing,
            load::sagUnder(standing, patient_.foliation, patient_.species, load::kHeaviest).tree);
        std::vector<std::optional<double>> all;
        for (const auto& id : tradeOff_.subjects) {
            const auto strip = std::ranges::find(strips, id, &headroom::StripHeadroom::strip);
            wanted.emplace_back(strip->needed_m);
            all.push_back(strip->worstHeight_m());
        }
        return all;
    }

    /// What the plant needs, though more was asked for.
    [[nodiscard]] std::optional<double> needed_h() const
    {
        Goal plain = goals_.back();
        plain.value.reset();
        const auto hours = wantedLight(plain, patient_.garden, patient_.around->tables);
        return hours;
    }

    const Patient& patient_;
    const Patient& cleaned_;
    const std::vector<Cut>& cleaning_;
    std::vector<Goal> goals_;
    Targets targets_;
    TradeOff tradeOff_;
};

/// The gardener's goals that say what becomes of single limbs: they hold whatever is bought.
std::vector<Goal> aboutLimbs(const std::vector<Goal>& goals, const Patient& patient)
{
    std::vector<Goal> all;
    for (const auto& goal : goals)
        if (goal.want == Want::must &&
            (goal.kind == GoalKind::keep || goal.kind == GoalKind::lose) &&
            canBeAsked(goal, patient))
            all.push_back(goal);
    return all;
}

/// For every planting that lacks sun, a goal to have all that the tree keeps from it.
std::vector<Goal> lightWanted(const Patient& patient)
{
    std::vector<Goal> all;
    if (!patient.around)
        return all;
    for (const auto& planting : patient.garden.plantings) {
        Goal need{GoalKind::light, Want::must, planting.id, {}, {}, {}};
        if (!canBeAsked(need, patient))
            continue;
        const auto now = goalResults(patient, {need}, patient.tree, 0.0).front();
        if (*now.before >= *now.wanted || *now.atBest < *now.before + kWorthTelling_h)
            continue;
        need.value = *now.atBest;
        all.push_back(std::move(need));
    }
    return all;
}

} // namespace

std::vector<TradeOff> tradeOffs(const Garden& garden, const Tree& tree, const Foliation& foliation,
                                const Species& species, std::chrono::year_month_day date,
                                const Aim& aim, const std::atomic<bool>* cancel)
{
    const Patient patient{garden, tree, foliation, species, date, aim.around};
    const auto goals = goalsOf(tree, aim);
    const auto cleaning = cleaningOf(tree, goals);
    const Tree standing = afterCuts(tree, cleaning);
    const Patient cleaned{garden, standing, foliation, species, date, aim.around};
    const auto limbs = aboutLimbs(goals, cleaned);
    const double most = allowance(tree, species, date).share;
    std::vector<TradeOff> all;
    const auto ask = [&](Lack lack, const std::optional<Goal>& goal) {
        auto asked = limbs;
        if (goal)
            asked.push_back(*goal);
        Question question(patient, cleaned, cleaning, lack, asked);
        if (question.isIdle() || (cancel && cancel->load(std::memory_order_relaxed)))
            return;
        auto answer = question.answer(most, cancel);
        if (!answer.offers.empty())
            all.push_back(std::move(answer));
    };
    ask(Lack::headroom, std::nullopt);
    ask(Lack::relief, Goal{GoalKind::relief, Want::must, "", 0.0, {}, {}});
    for (const auto& light : lightWanted(cleaned))
        ask(Lack::light, light);
    return all;
}

} // namespace model::advice
