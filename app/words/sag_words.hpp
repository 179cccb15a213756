#pragma once

#include "app/words/wording.hpp"
#include "model/load/sag.hpp"

namespace app {

/// Sags below this are not told: rain moves every leaf a little.
inline constexpr double kToldSag_m = 0.03;

/// "wet and in fruit" or "wet": how this tree is when it hangs at its heaviest.
[[nodiscard]] QString heaviestWords(const model::Tree& tree);

/// How far one limb hangs below where it was drawn when the tree is at its heaviest, in one
/// sentence; and how far its tip springs back by the suggested cuts, where that is worth telling.
/// \param springBack_m  blank: no cuts, or none of it is left
[[nodiscard]] QString sentence(const model::load::LimbSag& sag,
                               const std::optional<double>& springBack_m, const Wording& wording);

} // namespace app
