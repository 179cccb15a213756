#include "model/load/limb_load.hpp"

#include "model/constants.hpp"
#include "model/load/load_study.hpp"

#include <algorithm>

namespace model::load {
namespace {

/// What props under a limb and under all that grows from it push up with.
double propsUnder_N(const LoadCase& load, std::size_t limb)
{
    double sum = 0.0;
    for (const auto& piece : load.limbs[limb].pieces)
        sum += piece.prop_kg * kGravity_m_s2;
    for (const auto child : load.order.children[limb])
        sum += propsUnder_N(load, child);
    return sum;
}

} // namespace

LimbLoad limbLoad(const LoadCase& load, std::size_t limb, const Governing& worst)
{
    const auto& piece = load.limbs[limb].pieces[worst.piece];
    const auto asked = askedAt(piece, worst.along_m, worst.beyond, worst.wind);
    const double share = worst.along_m / piece.length_m;
    const double factor = worst.along_m > 0.0 ? piece.factorWithin : piece.factorAtStart;
    LimbLoad result;
    result.limb = limb;
    result.props_N = load.propped ? propsUnder_N(load, limb) : 0.0;
    // The weights have the props taken off.
    result.mass_kg = load.weights[limb].mass_kg + result.props_N / kGravity_m_s2;
    result.duration = worst.duration;
    result.wind_N = worst.duration < 1.0 ? 0.0
                                         : load.drags[limb].force_N[worst.wind.bearing] *
                                               load.wind.share[limb].back()[worst.wind.bearing];
    result.governingAt_m = piece.at_m + worst.along_m;
    result.governingBearing_deg = bearing_deg(worst.wind);
    result.weightMoment_Nm = bending_Nm(asked.weightMoment_Nm, piece.direction);
    result.windMoment_Nm = bending_Nm(asked.windMoment_Nm, piece.direction);
    result.moment_Nm = asked.forces.bending_Nm;
    result.torsion_Nm = std::abs(asked.forces.torsion_Nm);
    result.diameter_m = piece.thick_m + share * (piece.thin_m - piece.thick_m);
    result.stress_Pa = worst.stress_Pa;
    result.hasStrength = worst.hasStrength;
    result.strength_Pa = worst.hasStrength ? load.greenMor_Pa * factor * worst.duration : 0.0;
    result.utilisation = worst.hasStrength ? worst.utilisation : std::max(1.0, worst.utilisation);
    return result;
}

double worstBaseMoment_Nm(const LoadCase& load)
{
    const std::size_t trunk = load.order.trunk;
    const Vec3 foot = load.limbs[trunk].pieces.front().from_m;
    const Vec3 still = momentAbout(load.weights[trunk], foot);
    double most = 0.0;
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        const Vec3 blown = load.wind.share[trunk].back()[i] *
                           momentAbout(load.drags[trunk].from(i), blowsTowards(i), foot);
        most = std::max({most, bending_Nm(still + blown, {0.0, 0.0, 1.0}),
                         bending_Nm(still - blown, {0.0, 0.0, 1.0})});
    }
    return most;
}

TreeLoad treeLoad(const Tree& tree, const Foliation& foliation, const Species& species,
                  const Place& place, Exposure exposure, const Conditions& conditions)
{
    return LoadStudy(tree, foliation, species, place, exposure, conditions).load();
}

} // namespace model::load
