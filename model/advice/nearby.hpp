#pragma once

#include "model/advice/node_bound.hpp"

#include <atomic>
#include <functional>
#include <map>
#include <optional>
#include <vector>

namespace model::advice {

/// Good sets of cuts found by measuring those that differ from one in what one limb or two do: not
/// proven the least, but there where a search by bounds comes upon none
/// (docs/methods/advice.md, A1). Needs Decisions::missing.
class Nearby {
public:
    /// \param bounder  of the decisions; outlives this, as they do
    Nearby(const Decisions& decisions, const Bounder& bounder, const std::atomic<bool>* cancel);

    /// The best that comes of a complete choice by one change after the other, as long as each
    /// betters it; nothing if none of them does what is asked within the limits.
    /// \param measuresMost  cut trees that may be measured for it
    /// \param tell  called now and then meanwhile, if not empty
    [[nodiscard]] std::optional<Picks> from(const Picks& start, long measuresMost,
                                            std::function<void()> tell = {});

    [[nodiscard]] long measures() const { return measures_; }
    /// True if the last answer might have been better with more measures: asked again, it goes on
    /// from there.
    [[nodiscard]] bool cutShort() const { return measures_ >= measuresMost_; }

private:
    /// What every limb would do if it were left to be decided: an option each.
    using Plan = std::vector<std::uint32_t>;
    struct Standing {
        Plan plan;
        Picks picks;
        double cost{};
        bool allowed{};              ///< within leaf and wounds, and no rule forbids it
        std::vector<double> missing; ///< of each thing measured; empty: a rule forbids it
        double lacks{};              ///< all that is missing
    };
    /// What two limbs, or one, would do instead.
    struct Change {
        std::uint32_t option{};
        std::optional<std::uint32_t> second;
        double cost{};  ///< of all that is then done
        double worth{}; ///< as far as it can be foreseen
    };
    [[nodiscard]] Picks picksOf(const Plan& plan) const;
    [[nodiscard]] Standing standing(Plan plan);
    [[nodiscard]] Standing standing(const Standing& now, const Change& change);
    [[nodiscard]] const std::vector<double>& missing(const Picks& picks);
    [[nodiscard]] double foreseen(const Standing& now, std::uint32_t one,
                                  std::optional<std::uint32_t> two) const;
    [[nodiscard]] std::vector<Change> singles(const Standing& now) const;
    [[nodiscard]] std::vector<Change> pairs(const Standing& now,
                                            const std::vector<Change>& ones) const;
    [[nodiscard]] std::optional<Standing> step(const Standing& now, std::vector<Change> changes,
                                               std::size_t most);
    [[nodiscard]] std::optional<Standing> descend(Standing now, double known);
    [[nodiscard]] bool mustStop() const;

    const Decisions& decisions_;
    const Bounder& bounder_;
    const ChoiceTree& tree_;
    const std::atomic<bool>* cancel_;
    std::vector<char> hopeless_; ///< per option: leaves a limb open that nothing makes fit
    Plan atEase_;                ///< what takes the least leaf, goals forgotten
    /// Per option, as last measured: what is missing if its limb does that, less the same with the
    /// first option that was seen there. Empty: not measured yet.
    std::vector<std::vector<double>> effects_;
    std::vector<char> shunned_; ///< per option: not to be taken, to see what else would do
    std::map<Picks, std::vector<double>> known_;
    long measures_{};
    long measuresMost_{};
    std::function<void()> tell_;
};

} // namespace model::advice
