#pragma once

#include "app/words/limb_words.hpp"
#include "model/garden/limb.hpp"

#include <QString>

namespace app {

/// What a limb is called on the screen: the gardener's name for it, or its id.
[[nodiscard]] inline QString limbTitle(const model::Limb& limb)
{
    return limb.name.empty() ? limbIdWords(limb.id) : QString::fromStdString(limb.name);
}

} // namespace app
