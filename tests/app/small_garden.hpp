#pragma once

#include "model/garden/garden.hpp"

#include <cmath>

namespace app {

/// A small maple with a bough over a path, and a bed: invented, for tests of the window's parts.
inline model::Garden smallGarden()
{
    using namespace model;
    Limb trunk;
    trunk.id = "stem";
    trunk.stations = {{{0, 0, 0}, 0.30}, {{0, 0, 2}, 0.26}, {{0, 0, 5}, 0.12}};
    trunk.foliage.emplace();
    trunk.foliage->from_m = 3.0;
    trunk.foliage->radius_m = 1.6;

    Limb bough;
    bough.id = "bough";
    bough.name = "path bough";
    bough.parent = "stem";
    bough.attachedAt_m = 2.0;
    bough.stations = {{{0, 0, 2}, 0.10}, {{1, 0, 2.5}, 0.08}, {{2.5, 0, 2.8}, 0.03}};
    bough.foliage.emplace();
    bough.foliage->from_m = 1.0;
    bough.foliage->radius_m = 0.8;

    Tree tree;
    tree.id = "maple";
    tree.name = "the maple";
    tree.species = "Acer rubrum";
    tree.position_m = {4, 6};
    tree.limbs = {trunk, bough};

    Strip path;
    path.id = "path";
    path.name = "garden path";
    path.outline_m = {{6, 0}, {7.2, 0}, {7.2, 14}, {6, 14}};

    Planting bed;
    bed.id = "bed";
    bed.name = "bean bed";
    bed.plant = "Phaseolus vulgaris";
    bed.outline_m = {{1, 9}, {5, 9}, {5, 11}, {1, 11}};

    Garden garden;
    garden.name = "Test garden";
    garden.place = {47.4, 8.5, 430.0, "Europe/Zurich"};
    garden.designGust_m_s = 25.0;
    garden.trees = {tree};
    garden.strips = {path};
    garden.plantings = {bed};
    return garden;
}

} // namespace app
