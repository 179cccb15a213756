#pragma once

#include "model/advice/allowance.hpp"
#include "model/diary/due.hpp"
#include "model/diary/season_leaf.hpp"
#include "model/diary/wound_closure.hpp"
#include "model/growth/measured_growth.hpp"

namespace model::diary {

/// What the visits to one tree add up to on a day. The visits themselves are in the tree.
struct TreeDiary {
    std::string tree;                           ///< id
    std::vector<SeasonLeaf> seasons;            ///< oldest first
    advice::Allowance allowance;                ///< what may still go on the day
    std::vector<growth::MeasuredGrowth> growth; ///< between visits
    growth::ShootRate shoots;                   ///< what they teach of this tree
    std::vector<WoundState> wounds;             ///< oldest first
    std::vector<Due> due;                       ///< the most urgent first
};

/// Visits after `date` are left out of everything.
/// \param plan  what a plan for the day still has to do (advice::suggest())
[[nodiscard]] TreeDiary treeDiary(const Garden& garden, const Tree& tree,
                                  const Foliation& foliation, const Species& species,
                                  const StillToDo& plan, std::chrono::year_month_day date);

} // namespace model::diary
