#pragma once

#include "app/command/arguments.hpp"
#include "model/advice/suggestion.hpp"

namespace app {

/// The visit that was typed, of the day and the tree asked for, without an id. Cuts are the plan's
/// by number ("2", or "plan" for all of them), or free: "removal:old limb", "lifting:limb=2.1 m". A
/// free cut may name a limb that is not drawn any more. The share of leaf is that of the plan's
/// cuts where only those are named and no share was given.
/// \throws Refusal  on what can't be read, with what may stand there
[[nodiscard]] model::Visit visitOf(const Arguments& arguments, const Units& units,
                                   const model::Garden& garden, const model::Tree& tree,
                                   const model::advice::Suggestion& plan);

} // namespace app
