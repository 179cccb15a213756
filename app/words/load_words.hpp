#pragma once

#include "app/words/wording.hpp"
#include "model/load/limb_load.hpp"

namespace app {

/// A limb asked for more than this share of its expected strength is pointed out. Assumed: the
/// strength of green wood alone scatters by a sixth (Wood Handbook, clear wood in bending), and a
/// sketch's diameters enter with their third power.
inline constexpr double kNotableUtilisation = 0.5;

/// One limb's load at the gust asked for, in one or two sentences.
[[nodiscard]] QString sentence(const model::load::LimbLoad& load, const Wording& wording);

} // namespace app
