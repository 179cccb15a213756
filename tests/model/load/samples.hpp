#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <cmath>
#include <numbers>
#include <string>

namespace model::load {

/// Green wood of red maple: Wood Handbook (FPL-GTR-282), Table 5-3a, green: bending strength
/// 53 MPa, stiffness 9.6 GPa; specific gravity 0.49, Miles & Smith 2009 (NRS-RN-38). Density of
/// limb wood 897 kg/m3: 0.60 of its voids filled with water.
inline Species redMaple()
{
    Species maple;
    maple.latin = "Acer rubrum";
    maple.wood.basicSpecificGravity.value = 0.49;
    maple.wood.limbDensity_kg_m3.value = 897.0;
    maple.wood.greenMor_Pa.value = 53e6;
    maple.wood.greenMoe_Pa.value = 9.6e9;
    maple.wood.dragGroup = DragGroup::medium;
    return maple;
}

/// Wood that weighs next to nothing, for loads that are meant to be alone.
inline Species weightless()
{
    Species species = redMaple();
    species.wood.limbDensity_kg_m3.value = 1e-9;
    return species;
}

/// At sea level.
inline const Place kSeaside{50.0, 0.0, 0.0, "", {}};

/// A straight limb.
inline Limb straight(std::string id, Vec3 from, Vec3 to, double thick_m, double thin_m)
{
    Limb limb;
    limb.id = std::move(id);
    limb.stations = {{from, thick_m}, {to, thin_m}};
    return limb;
}

inline Limb growing(Limb limb, std::string parent, double attachedAt_m)
{
    limb.parent = std::move(parent);
    limb.attachedAt_m = attachedAt_m;
    return limb;
}

inline Limb leafy(Limb limb, double from_m, double radius_m, double hanging_m = 0.0)
{
    limb.foliage.emplace();
    limb.foliage->from_m = from_m;
    limb.foliage->radius_m = radius_m;
    limb.foliage->hanging_m = hanging_m;
    return limb;
}

/// A tree of one limb, held at its first station.
inline Tree cantilever(Limb limb)
{
    Tree tree;
    tree.limbs.push_back(std::move(limb));
    return tree;
}

/// A weight hung on the tip of limb "beam" by a thread: a short upright lateral that weighs
/// nothing.
inline void hangOnTip(Tree& tree, double mass_kg)
{
    const auto& beam = tree.limbs.front();
    const Vec3 tip = beam.stations.back().position_m;
    Limb thread = growing(straight("thread", tip, tip - Vec3{0.0, 0.0, 0.01}, 0.01, 0.01), beam.id,
                          length_m(beam));
    thread.fruit_kg = mass_kg;
    tree.limbs.push_back(thread);
}

/// Turns a tree about its stem, clockwise from above.
inline Tree turned(Tree tree, double angle_deg)
{
    const double angle = angle_deg * std::numbers::pi / 180.0;
    for (auto& limb : tree.limbs)
        for (auto& station : limb.stations) {
            const Vec3 p = station.position_m;
            station.position_m = {p.x * std::cos(angle) + p.y * std::sin(angle),
                                  p.y * std::cos(angle) - p.x * std::sin(angle), p.z};
        }
    return tree;
}

} // namespace model::load
