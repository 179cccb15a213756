#pragma once

#include "model/advice/closest.hpp"
#include "model/advice/suggestion.hpp"

#include <optional>
#include <string>
#include <vector>

namespace model::advice {

/// What one thing that the gardener may want can come to for a share of the leaf.
struct Offer {
    double leafMost{};     ///< share that was allowed
    double leafShare{};    ///< that the cuts take, no more than needed
    std::vector<Cut> cuts; ///< those that clean the tree, which take no leaf, come first
    std::vector<std::optional<double>>
        reached;   ///< for each TradeOff::subjects; blank: all is clear
    bool proven{}; ///< no set of cuts reaches as much for less leaf
};

/// The best that can be had of one thing for more and more of the leaf.
struct TradeOff {
    Lack lack{};
    /// headroom: ids of the strips that lack it; light: id of the planting; relief: one, empty: the
    /// hardest pressed limb.
    std::vector<std::string> subjects;
    /// headroom: m, dry or at its heaviest, whichever is less; relief: utilisation at the design
    /// gust in full leaf and crop; light: effective sun hours a day over the growing season.
    std::vector<std::optional<double>> now;
    std::vector<std::optional<double>> wanted; ///< what is needed; relief: 1; blank: not known
    std::vector<Offer> offers;                 ///< the more leaf the better, never the worse
};

/// For headroom, for the loads, and for each planting that lacks sun and could have more of it,
/// each looked at by itself: the closest (A3) to all of it that may be had for 5, 10, 15... % of
/// the leaf, up to what may go this season (A13). Limbs that are to stay or to go do so; the tree
/// is cleaned first.
/// \param cancel  looked at between search nodes: what is there so far comes back
[[nodiscard]] std::vector<TradeOff> tradeOffs(const Garden& garden, const Tree& tree,
                                              const Foliation& foliation, const Species& species,
                                              std::chrono::year_month_day date, const Aim& aim = {},
                                              const std::atomic<bool>* cancel = nullptr);

} // namespace model::advice
