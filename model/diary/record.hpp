#pragma once

#include "model/garden/tree.hpp"

#include <string>
#include <vector>

namespace model::diary {

/// An id for a visit of this date that no other visit of the tree has: "2025-07-14",
/// "2025-07-14-2".
[[nodiscard]] std::string visitId(const Tree& tree, std::chrono::year_month_day date);

/// The wounds that cuts leave on the limbs that stay; cuts that name no limb of the tree are passed
/// over. Lifting and thinning leave none worth following.
[[nodiscard]] std::vector<Wound> woundsOf(const Tree& tree, const std::vector<Cut>& cuts);

/// The tree with a visit more, among the others by its date. An empty id is filled in, and so are
/// the wounds if there are none. Nothing else changes.
/// \param cutSketch  the cuts are made on the sketch too, and the visit keeps the limbs as they
///                   were drawn before, and where noted tips are drawn after them
/// \throws std::domain_error  with cutSketch, if a cut can't be made on the sketch (afterCut())
[[nodiscard]] Tree withVisit(Tree tree, Visit visit, bool cutSketch);

/// The sketch as it stood before and after one visit.
struct Sketches {
    std::string visit; ///< id
    Tree before;
    Tree after;
};

/// For every visit, newest first: the tree as drawn today, with what each later visit took put
/// back. What was redrawn by hand since shows as it is drawn today.
[[nodiscard]] std::vector<Sketches> sketches(const Tree& tree);

} // namespace model::diary
