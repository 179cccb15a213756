#pragma once

#include "model/garden/limb.hpp"

#include <QString>

namespace app {

/// What a limb is called on the screen: the gardener's name for it, or its id.
[[nodiscard]] inline QString limbTitle(const model::Limb& limb)
{
    return QString::fromStdString(limb.name.empty() ? limb.id : limb.name);
}

} // namespace app
