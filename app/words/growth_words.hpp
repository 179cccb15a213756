#pragma once

#include "app/words/wording.hpp"
#include "model/advice/hold.hpp"

#include <QStringList>

namespace app {

/// How long something holds: "till about 12 May 2027 (between ... and ...)".
[[nodiscard]] QString holdsTill(const model::growth::GrownOn& lost, const Wording& wording);

/// When the headroom over one strip is lost again, and how often a year it wants cutting.
[[nodiscard]] QString sentence(const model::growth::Regrowth& regrowth, const Wording& wording);

/// How fast the shoots grow, and whose word that is: the species' or the diary's.
[[nodiscard]] QString shootWords(const model::growth::ShootRate& shoots, const Wording& wording);

/// What cutting higher costs and how long it holds, a line for each height.
[[nodiscard]] QStringList holdLines(const std::vector<model::advice::Hold>& holds,
                                    const Wording& wording);

} // namespace app
