#pragma once

#include "model/sketch/first_tree.hpp"

namespace model::sketch {

/// How the limbs of a habit are laid out. Heights are shares of the crown's depth, from the lowest
/// limb (0) to where the highest wood ends (1). All assumed: drawn after the habits' names, and
/// held as whole trees against published ones (docs/methods/sketch.md, K1).
struct HabitShape {
    double stemTop{1.0};          ///< where the stem ends; below a half it forks
    int scaffolds{9};             ///< limbs of the stem, in a spiral or round a fork
    int tiers{};                  ///< or in as many tiers ...
    int perTier{};                ///< ... of so many
    double highest{0.8};          ///< where the last limb leaves the stem
    double rise{0.4};             ///< of a limb's tip over its union, per reach
    double tipTo{};               ///< or the height that tips rise to; 0: by `rise`
    double tipStagger{};          ///< every second tip so much lower
    double bowOut{0.5};           ///< where the limb's curve bows to, share of the reach
    double bowUp{0.7};            ///< and of the rise
    double arch{};                ///< an arch over its tip, share of the reach
    int laterals{2};              ///< of each limb
    double lateralRise{0.3};      ///< of a lateral's tip, per length
    double lateralBow{};          ///< upwards, per length
    double leaf{0.13};            ///< radius of the leafy bodies over the spread
    double leader{0.25};          ///< the leafy end of the stem
    double hanging{};             ///< length of hanging shoots over the tree's height
    double (*reach)(double at){}; ///< of a limb that leaves the stem at this height, share of half
                                  ///< the spread
};

[[nodiscard]] HabitShape habitShape(Habit habit);

} // namespace model::sketch
