#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <cmath>
#include <numbers>
#include <random>
#include <string>

namespace model::load {

/// Green wood of red maple: Wood Handbook (FPL-GTR-282), Table 5-3a, green: bending strength
/// 53 MPa, stiffness 9.6 GPa; specific gravity 0.49, Miles & Smith 2009 (NRS-RN-38). Density of
/// limb wood 897 kg/m3: 0.60 of its voids filled with water.
inline Species redMaple()
{
    Species maple;
    maple.latin = "Acer rubrum";
    maple.wood.woodClass = WoodClass::hardwood;
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

/// A spreading tree drawn at random: a stem, `scaffolds` leafy limbs that arch outwards in four
/// stretches, each with `laterals` of its own.
inline Tree spreading(unsigned seed, int scaffolds, int laterals, double hanging_m = 0.0)
{
    std::mt19937 random(seed);
    const auto between = [&random](double low, double high) {
        return low + (high - low) * (static_cast<double>(random()) / 4294967296.0);
    };
    Tree tree = cantilever(straight("stem", {0, 0, 0}, {0, 0, 3.5}, 0.40, 0.30));
    for (int i = 0; i < scaffolds; ++i) {
        const double at = between(2.0, 3.5);
        Vec3 place{0, 0, at};
        double heading = 2.0 * std::numbers::pi * (i + between(-0.3, 0.3)) / scaffolds;
        double slope = between(0.5, 1.2);
        const double thick = between(0.10, 0.18);
        Limb limb = growing(straight(std::to_string(i), place, place, thick, thick), "stem", at);
        limb.stations.pop_back();
        for (int s = 1; s <= 4; ++s) {
            const double step = between(0.8, 1.4);
            place += step * Vec3{std::cos(slope) * std::sin(heading),
                                 std::cos(slope) * std::cos(heading), std::sin(slope)};
            limb.stations.push_back({place, thick * (1.0 - 0.18 * s), {}});
            slope -= between(0.0, 0.3);
            heading += between(-0.2, 0.2);
        }
        limb = leafy(limb, 1.5, between(0.5, 0.9), hanging_m);
        for (int k = 0; k < laterals; ++k) {
            const double along = 1.2 + 2.5 * k / laterals;
            const auto joint = axisPoint(limb, along);
            const double turn = heading + (k % 2 == 0 ? 0.8 : -0.8);
            const Vec3 tip =
                joint.position_m +
                between(1.0, 2.0) * Vec3{std::sin(turn), std::cos(turn), between(0.0, 0.6)};
            tree.limbs.push_back(
                leafy(growing(straight(limb.id + std::string(1, static_cast<char>('a' + k)),
                                       joint.position_m, tip, 0.45 * joint.diameter_m, 0.02),
                              limb.id, along),
                      0.4, between(0.35, 0.6), hanging_m));
        }
        tree.limbs.push_back(limb);
    }
    return tree;
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
