#pragma once

#include "app/words/wording.hpp"
#include "model/crown/sketch_check.hpp"

namespace app {

/// Where a sketch falls outside published trees of its girth: what is odd, and what to look at
/// again; one entry for each likely cause, none when nothing is odd.
[[nodiscard]] QStringList sketchDoubts(const model::SketchCheck& check, const Units& units);

/// One of them.
[[nodiscard]] QString sketchDoubt(const model::SketchCheck& check, model::SketchCause cause,
                                  const Units& units);

} // namespace app
