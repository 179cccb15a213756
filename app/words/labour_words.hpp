#pragma once

#include "app/words/wording.hpp"
#include "model/advice/labour.hpp"

namespace app {

/// Who should do it: "Do it yourself", "Do it with a helper", "Hire a certified arborist".
[[nodiscard]] QString whoWords(model::advice::Who who);

/// Every reason, one sentence each, the gravest first.
[[nodiscard]] QStringList reasons(const model::advice::Labour& labour, const Wording& wording);

} // namespace app
