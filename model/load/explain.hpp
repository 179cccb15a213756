#pragma once

#include "model/load/limb_load.hpp"

#include <string>
#include <vector>

namespace model::load {

/// What a step of the chain gives.
enum class Quantity {
    gustHere,          ///< m/s, at the height where the drag of the limb acts
    airDensity,        ///< kg/m3
    dragCoefficient,   ///< of the leafy parts, at that gust
    outline,           ///< m2, leafy parts that grow beyond the place, seen from that bearing, lee
                       ///< and leaf taken into account (L9)
    windForce,         ///< N
    windArm,           ///< m, moment over force
    windMoment,        ///< N m, bending
    woodMass,          ///< kg beyond the place
    leafyMass,         ///< kg, leaf and twigs
    fruitMass,         ///< kg
    weatherMass,       ///< kg, rain and ice
    propForce,         ///< N, that props beyond the place push up with
    weightArm,         ///< m, level distance at which the mass, less the props, gives its moment
    weightMoment,      ///< N m, bending
    bendingMoment,     ///< N m, both together
    torsion,           ///< N m
    axialForce,        ///< N, positive: pull
    diameter,          ///< m
    sectionModulus,    ///< m3, of the sound wood
    hollowFactor,      ///< of the section modulus, what a cavity drawn here leaves
    bendingStress,     ///< Pa
    torsionStress,     ///< Pa
    axialStress,       ///< Pa
    principalStress,   ///< Pa
    clearWoodStrength, ///< Pa, green, of the species
    limbFactor,        ///< of clear wood: limb or stem
    unionFactor,       ///< 1 away from the union
    durationFactor,    ///< of the strength, under what hangs for hours, days or weeks
    aspectRatio,
    strength, ///< Pa
    utilisation,
};

/// One step from what was drawn to what it means.
struct Step {
    Quantity quantity{};
    double value{};      ///< SI, in the unit that the quantity names
    const char* formula; ///< of docs/methods/load.md, "L10"; "" for what was drawn
    std::string source;  ///< short: the publication, or a key into trees/sources.csv, or 'drawn'
};

/// The chain for one limb, from wind and weight to utilisation, at the place and in the wind that
/// treeLoad() finds to govern it. In still air the steps of the wind are left out; for wood without
/// strength the strength is 0 and the utilisation is left out.
/// \throws std::domain_error  on a tree or gust that treeLoad() refuses
/// \throws std::out_of_range  if there is no such limb
[[nodiscard]] std::vector<Step> explain(const Tree& tree, std::size_t limb,
                                        const Foliation& foliation, const Species& species,
                                        const Place& place, Exposure exposure,
                                        const Conditions& conditions);

} // namespace model::load
