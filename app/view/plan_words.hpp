#pragma once

#include "app/view/plan_things.hpp"

#include <QString>
#include <QStringList>

namespace app {

/// What the plan's tools draw, in the order of PlanTool: "Path, drive, seat", "Hedge"...
[[nodiscard]] QStringList planToolWords();
/// What a thing is called before its owner names it: "hedge".
[[nodiscard]] QString usualName(PlanTool tool);
/// What the things of a kind may be, in the order of their enumeration; none for trees and wires.
[[nodiscard]] QStringList sortsOf(ThingKind kind);
/// Its name, or what it is.
[[nodiscard]] QString titleOf(const model::Garden& garden, ThingRef thing);

} // namespace app
