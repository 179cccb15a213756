#pragma once

#include "app/format/units.hpp"
#include "app/view/tick_model.hpp"
#include "model/garden/visit.hpp"

#include <QString>

#include <optional>
#include <span>
#include <vector>

namespace app {

/// The cuts that a visit may have made: those of the plan, each with a tick, and those that were
/// written by hand.
struct VisitCuts {
    struct Planned {
        model::Cut cut;
        double leafShare{}; ///< of the whole tree's leaf
    };
    std::vector<Planned> plan;
    std::vector<model::Cut> byHand;
};

/// Thinning or renewal: told by a share.
[[nodiscard]] bool isOfShoots(model::CutKind kind);

/// A cut made otherwise than planned.
/// \param amount  typed: a share for cuts of shoots, else a length
/// \returns none where the amount can't be read or no tree has it
[[nodiscard]] std::optional<model::Cut> changedCut(const model::Cut& cut, const QString& amount,
                                                   const Units& units);

/// What was cut, by the ticks of the plan's cuts and by hand. A changed cut that can't be read yet
/// stands as planned: readCuts() is where that is told.
[[nodiscard]] std::vector<model::Cut> madeCuts(const VisitCuts& cuts, std::span<const Tick> ticks,
                                               const Units& units);

/// Share of the tree's leaf that the ticked cuts take by the plan; none where a cut was changed or
/// made by hand, or nothing is ticked.
[[nodiscard]] std::optional<double> tickedLeaf(const VisitCuts& cuts, std::span<const Tick> ticks);

/// Reads the cuts, those left, and the share of the leaf into the visit.
/// \param leaf  typed; blank: by the plan
/// \returns a sentence on what can't be read and how to write it; empty: all could be
[[nodiscard]] QString readCuts(const VisitCuts& cuts, std::span<const Tick> ticks,
                               const QString& leaf, const Units& units, model::Visit& visit);

} // namespace app
