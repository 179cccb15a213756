#pragma once

#include "model/species/species.hpp"

namespace model::load {

/// A crown of 25 m2, held up at 10 m in open country, loaded by the whole model (foliage, outlines,
/// wind at height, drag, lee) and not by the drag law alone.
struct OneCrown {
    double outline_m2{};
    double force_N{};
    double airDensity_kg_m3{};
};

/// \param speed_m_s  of the gust at the crown
[[nodiscard]] OneCrown oneCrown(DragGroup group, double speed_m_s, bool inLeaf = true);

/// n of force ~ speed^n, between 10 and 20 m/s.
[[nodiscard]] double dragExponent(DragGroup group, bool inLeaf);

} // namespace model::load
