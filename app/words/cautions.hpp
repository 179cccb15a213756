#pragma once

#include <QStringList>

namespace app {

/// What stands under every result, on paper, on the screen and in JSON: the limits of a sketch, the
/// law, the wires, and who to ask. One whole sentence or two each.
[[nodiscard]] QStringList cautions();

} // namespace app
