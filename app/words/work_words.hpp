#pragma once

#include "app/words/wording.hpp"
#include "model/advice/shared_work.hpp"

namespace app {

/// "secateurs", "pole saw".
[[nodiscard]] QString toolWords(model::advice::Tool tool);

/// Everything that the cuts are made with, each once, the lightest first: "secateurs, loppers".
[[nodiscard]] QStringList toolsOf(const std::vector<model::advice::PlannedCut>& cuts);

/// How one cut is made: with what, in how many lengths, each with its place, length and weight.
[[nodiscard]] QStringList workLines(const model::advice::PlannedCut& cut, const Wording& wording);

/// One of the lengths: "1.9 m and about 6 kg, sawn off 2.1 m from the union where it is 3.4 cm
/// thick, with a pole saw".
[[nodiscard]] QString pieceWords(const model::advice::Piece& piece, const Wording& wording);

/// Where its pieces may come down, and what lies there.
[[nodiscard]] QString dropWords(const model::advice::PlannedCut& cut, const Wording& wording);

/// What has to be carried away.
[[nodiscard]] QString debrisWords(const model::advice::Debris& debris, const Wording& wording);

/// Which cuts remain for the gardener when an arborist is asked for; empty: no arborist is.
[[nodiscard]] QString sharedWords(const model::advice::SharedWork& shared, const Wording& wording);

} // namespace app
