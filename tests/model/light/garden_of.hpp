#pragma once

#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

/// Small gardens and trees for the light tests; every measure is invented.
namespace made {

inline model::Tables tables(model::LeafHabit habit = model::LeafHabit::evergreen)
{
    model::Species species;
    species.latin = "Arbor testis";
    species.practice.leafHabit = habit;
    species.leaf.crownLai = model::Sourced{3.0, "none", model::Evidence::assumed};
    model::Tables all;
    all.species.push_back(species);
    return all;
}

/// A post with one round body of leaf on top, whose middle is at `height_m`.
inline model::Tree ballTree(const std::string& id, model::Point2 at, double height_m,
                            double radius_m)
{
    model::Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0.0, 0.0, 0.0}, 0.2}, {{0.0, 0.0, height_m}, 0.1}};
    model::Foliage leaf;
    leaf.from_m = height_m - 0.02;
    leaf.radius_m = radius_m;
    trunk.foliage = leaf;
    model::Tree tree;
    tree.id = id;
    tree.species = "Arbor testis";
    tree.position_m = at;
    tree.limbs.push_back(trunk);
    return tree;
}

inline model::Planting bed(model::Point2 middle, double half_m, double height_m = 0.0)
{
    model::Planting planting;
    planting.id = "bed";
    planting.height_m = height_m;
    planting.outline_m = {{middle.x - half_m, middle.y - half_m},
                          {middle.x + half_m, middle.y - half_m},
                          {middle.x + half_m, middle.y + half_m},
                          {middle.x - half_m, middle.y + half_m}};
    return planting;
}

inline model::Garden garden(double latitude_deg)
{
    model::Garden garden;
    garden.place.latitude_deg = latitude_deg;
    garden.plantings.push_back(bed({0.0, 0.0}, 1.0));
    return garden;
}

} // namespace made
