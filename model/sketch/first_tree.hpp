#pragma once

#include "model/garden/tree.hpp"
#include "model/species/species.hpp"

#include <optional>

namespace model::sketch {

/// How a tree carries its limbs, by its nature or by training.
enum class Habit {
    vase,          ///< a low fork into steep limbs that lean outwards
    spreading,     ///< a stem with wide limbs all round it, a round head
    weeping,       ///< limbs that arch over, shoots that hang
    conical,       ///< a stem to the top, limbs shorter the higher they are
    columnar,      ///< a stem to the top, short steep limbs
    openCentre,    ///< trained: few limbs from a low stem, light in the middle
    centralLeader, ///< trained: a stem to the top, limbs in tiers
    espalier,      ///< trained: flat, in level tiers along a wall or wires
};
inline constexpr Habit kHabits[] = {Habit::vase,          Habit::spreading, Habit::weeping,
                                    Habit::conical,       Habit::columnar,  Habit::openCentre,
                                    Habit::centralLeader, Habit::espalier};

/// What a gardener measures of a tree from the ground.
struct FirstMeasures {
    double stemDiameter_m{}; ///< over bark at breast height, or below the lowest limb
    double height_m{};       ///< of the highest leaf
    double spread_m{};       ///< width of the crown, mean of all directions; espalier: its length
    double lowestLimb_m{};   ///< above the ground, where the lowest limb leaves the stem
    Habit habit{Habit::spreading};
    double along_deg{90.0}; ///< espalier: the bearing that it runs along
    friend bool operator==(const FirstMeasures&, const FirstMeasures&) = default;
};

/// Which measure can't be, or not beside the others.
enum class MeasureFault {
    stem,       ///< not 0.01 .. 4 m
    height,     ///< not 0.8 .. 80 m
    spread,     ///< not 0.4 .. 50 m
    lowestLimb, ///< not 0.1 m .. four fifths of the height
    slender,    ///< higher than 200 stems are thick: it could not stand
};
[[nodiscard]] std::optional<MeasureFault> measureFault(const FirstMeasures& measures);

/// Limbs and leafy parts of a plausible tree of these measures: a first guess to drag into shape,
/// every limb marked as guessed, always the same for the same measures (docs/methods/sketch.md,
/// K1, K2). Ids are "stem", then "limb-1" ... for the limbs of the stem, base first, each followed
/// by its laterals "limb-1-a" ... Species, place and names are left blank.
/// \throws std::domain_error  where measureFault() finds a fault
[[nodiscard]] Tree firstTree(const FirstMeasures& measures);

/// The habit that a species grows into by itself, or is mostly trained to.
[[nodiscard]] Habit usualHabit(const Species& species);

/// Height, spread and lowest limb that a tree of this species and girth mostly has (K3), as start
/// values for whoever has not measured them.
/// \throws std::domain_error  unless the stem is over 0
[[nodiscard]] FirstMeasures usualMeasures(const Species& species, double stemDiameter_m,
                                          Habit habit);

} // namespace model::sketch
