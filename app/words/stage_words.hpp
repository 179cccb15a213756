#pragma once

#include "app/words/cut_words.hpp"
#include "model/advice/stages.hpp"

#include <QStringList>

namespace app {

/// How many visits, and whether fewer could do it.
[[nodiscard]] QString stagesWords(const model::advice::Stages& stages, const Wording& wording);

/// One visit: its date, its leaf, its cuts in working order, in one line.
[[nodiscard]] QString stageLine(const model::advice::Stage& stage, const Wording& wording);

/// Its cuts alone: "removal cut “path limb”, thinning “south limb”"; or that there are none.
[[nodiscard]] QString stageCuts(const model::advice::Stage& stage, const Wording& wording);

} // namespace app
