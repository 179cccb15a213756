#pragma once

#include "model/garden/tree.hpp"

#include <string>

/// A street tree whose stem, height, crown and leaf were measured
/// (tests/published/urban-trees.csv).
struct MeasuredTree {
    std::string species;
    double stem_cm{};
    double height_m{};
    double crown_m{};
    double leaf_m2{};
};

/// The same tree as a gardener sketches it from those three figures: a stem, then strokes outwards
/// in a spiral to the outline of an egg-shaped crown, each with two laterals. How thick the limbs
/// become is the sketch's own rule (model/sketch/grow.hpp).
[[nodiscard]] model::Tree sketchedTree(const MeasuredTree& measured);
