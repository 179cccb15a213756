#pragma once

#include "model/advice/choice_tree.hpp"

#include <cstdint>
#include <memory>
#include <vector>

namespace model::advice {

/// What is known of all choices that take only allowed options.
struct NodeBound {
    double bound{}; ///< none of them costs less; infinite: there is none
    /// The cheapest blend of choices that reaches every goal: how much of each option is in it.
    PerOption weight;
    Picks cheapest;             ///< the choice that has the most of the blend
    bool whole{};               ///< it is all of the blend
    std::vector<double> prices; ///< at which it was found: of Reach's rows, then of limits
};

/// Bounds by the linear relaxation, in the form of Dantzig and Wolfe (1960, from memory): blends of
/// complete choices, each of them the cheapest at some prices (docs/methods/advice.md, A1).
class Bounder {
public:
    explicit Bounder(const Decisions& decisions);

    [[nodiscard]] const ChoiceTree& tree() const { return tree_; }

    /// Takes over what options help (Option::helps as long as nothing else is said).
    void set(const Reach& reach) { reach_ = reach; }
    /// Holds to this as well, where it says anything else.
    void add(const Reach& reach);
    [[nodiscard]] const Reach& reach() const { return reach_; }
    /// Of what was added, the rows that a bound rests on most: they hold for all parts of its set
    /// of choices as well.
    [[nodiscard]] Reach binding(const NodeBound& found) const;

    /// Bound over a set of choices. Options that no choice cheaper than `cutoff` takes are struck
    /// from `allowed`.
    [[nodiscard]] NodeBound bound(Allowed& allowed, double cutoff);

    /// Leaf, and a hair for each cut and its wound, to choose between equals.
    [[nodiscard]] double cost(const Picks& picks) const;
    /// That hair, for so many cuts with so much wound.
    [[nodiscard]] double hairs(std::size_t cuts, double wound_m2) const;
    [[nodiscard]] double leaf(const Picks& picks) const;
    [[nodiscard]] double wound_m2(const Picks& picks) const;
    [[nodiscard]] std::vector<Cut> cuts(const Picks& picks) const;
    /// True if everything that adds up is kept and reached.
    [[nodiscard]] bool fits(const Picks& picks) const;
    /// Those of Decisions::limits that are heeded.
    [[nodiscard]] std::vector<std::size_t> limiting() const;
    /// From now on bounds know of the limits that these break. \return false: of all already
    bool heed(const Picks& picks);

private:
    [[nodiscard]] static double taken(const Limit& limit, const Picks& picks);
    [[nodiscard]] std::vector<double> needs() const;
    [[nodiscard]] std::vector<double> gives(const Picks& picks) const;
    void charge(const std::vector<double>& prices);
    [[nodiscard]] bool allows(const Allowed& allowed, const Picks& picks) const;

    const Decisions& decisions_;
    ChoiceTree tree_;
    PerOption base_; ///< cost without prices
    Reach reach_;
    std::vector<Limit> limits_;       ///< with that of wounds, if there is one
    std::vector<double> scales_;      ///< in which limits are counted, to be like goals
    std::vector<std::size_t> heeded_; ///< limits that bounds know of: the fewer, the faster
    double woundScale_m2_{1.0};
    std::vector<Picks> known_; ///< choices met so far, the latest last
    PerOption charged_;
    PerOption through_;
    std::vector<double> least_;
};

} // namespace model::advice
