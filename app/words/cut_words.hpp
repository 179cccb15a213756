#pragma once

#include "app/words/wording.hpp"
#include "model/advice/suggestion.hpp"

namespace app {

/// The trade's name of a cut: "removal cut", "reduction cut", "thinning", "lifting".
[[nodiscard]] QString cutKindWords(model::CutKind kind);
/// The same of a cut of a plan, with the word that it cleans the tree.
[[nodiscard]] QString cutKindWords(const model::advice::PlannedCut& planned);

/// What to do, where: "Take off “south limb” at its union with “stem”, 2.3 m above the ground."
[[nodiscard]] QString instruction(const model::advice::PlannedCut& cut, const Wording& wording);

/// What it amounts to: "Wound 9 cm; piece 4.2 m and about 38 kg; 4.1 % of the leaf."
[[nodiscard]] QString measures(const model::advice::PlannedCut& cut, const Wording& wording);

/// What the suggestion comes to, in one or two sentences.
[[nodiscard]] QString outcomeWords(const model::advice::Suggestion& suggestion,
                                   const Wording& wording);

/// What goes for all of the cuts, a sentence each: how to saw what is thick, tools, debris, nests,
/// the month.
[[nodiscard]] QStringList jobNotes(const model::advice::Suggestion& suggestion,
                                   const Wording& wording);

} // namespace app
