#pragma once

#include "model/garden/tree.hpp"

#include <cmath>

namespace model {

/// A stem with one bough to the east and a branch on that: invented, for tests of the sketch.
inline Tree smallTree()
{
    Limb trunk;
    trunk.id = "stem";
    trunk.stations = {{{0, 0, 0}, 0.30}, {{0, 0, 2}, 0.26}, {{0, 0, 4}, 0.20}};

    Limb bough;
    bough.id = "bough";
    bough.parent = "stem";
    bough.attachedAt_m = 2.0;
    bough.stations = {{{0, 0, 2}, 0.12}, {{1, 0, 2.5}, 0.10}, {{2, 0, 3}, 0.05}};
    bough.foliage.emplace();
    bough.foliage->from_m = std::sqrt(1.25);
    bough.foliage->radius_m = 0.5;

    Limb branch;
    branch.id = "branch";
    branch.parent = "bough";
    branch.attachedAt_m = std::sqrt(1.25);
    branch.stations = {{{1, 0, 2.5}, 0.04}, {{1, 1, 2.5}, 0.02}};

    Tree tree;
    tree.id = "tree";
    tree.limbs = {trunk, bough, branch};
    return tree;
}

} // namespace model
