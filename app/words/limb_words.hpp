#pragma once

#include "app/words/wording.hpp"

namespace app {

/// Words for what a gardener says of a tree or a limb, each list in the order of its enumeration.
[[nodiscard]] QStringList vigourWords();
[[nodiscard]] QStringList protectionWords();
[[nodiscard]] QStringList unionWords();
[[nodiscard]] QStringList measuredWords();
[[nodiscard]] QStringList defectWords();
[[nodiscard]] QStringList densityWords();

/// What a limb is called that nobody has named: its id, which for a limb drawn here is "limb 7".
[[nodiscard]] QString limbIdWords(const std::string& id);

} // namespace app
