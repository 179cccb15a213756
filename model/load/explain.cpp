#include "model/load/explain.hpp"

#include "model/constants.hpp"
#include "model/load/drag.hpp"
#include "model/load/governing.hpp"
#include "model/load/strength.hpp"
#include "model/load/wind.hpp"

#include <cmath>

namespace model::load {
namespace {

/// The steps, as they are added.
class Chain {
public:
    void add(Quantity quantity, double value, const char* formula, std::string source)
    {
        steps_.push_back({quantity, value, formula, std::move(source)});
    }
    [[nodiscard]] std::vector<Step> take() { return std::move(steps_); }

private:
    std::vector<Step> steps_;
};

struct Question {
    const Tree& tree;
    std::size_t limb{};
    const Species& species;
    const Place& place;
    Exposure exposure{};
    double gust_m_s{};
    double air_C{};
};

void addWind(Chain& chain, const Question& asks, const Governing& worst, const Asked& asked,
             Vec3 direction)
{
    const auto& drag = worst.beyond.drag;
    if (asks.gust_m_s <= 0.0 || drag.force_N <= 0.0)
        return;
    const double height = drag.up_Nm / drag.force_N;
    const double gust = asks.gust_m_s * gustShare(asks.exposure, height);
    const double density = airDensity_kg_m3(asks.place.altitude_m, asks.air_C);
    const double coefficient = crownDragCoefficient(asks.species.wood.dragGroup, gust);
    const double force = worst.beyond.share * drag.force_N;
    const double moment = bending_Nm(asked.windMoment_Nm, direction);
    chain.add(Quantity::gustHere, gust, "L3", "ASCE 7-16, Table 26.10-1");
    chain.add(Quantity::airDensity, density, "L1", "ISO 2533 standard atmosphere");
    chain.add(Quantity::dragCoefficient, coefficient, "L4",
              "Vollsinger et al. 2005; Rudnicki et al. 2004; Wessolly & Erb 1998");
    chain.add(Quantity::outline, force / (dynamicPressure_Pa(density, gust) * coefficient), "L9",
              "drawn; Pavlis et al. 2008");
    chain.add(Quantity::windForce, force, "L4", "");
    chain.add(Quantity::windArm, moment / force, "L19", "drawn");
    chain.add(Quantity::windMoment, moment, "L19", "");
}

void addWeight(Chain& chain, const Weights& weights, const Asked& asked, Vec3 direction,
               const Species& species)
{
    const double mass = weights.wood.mass_kg + weights.leafy.mass_kg + weights.fruit.mass_kg +
                        weights.weather.mass_kg;
    chain.add(Quantity::woodMass, weights.wood.mass_kg, "L18",
              species.wood.limbDensity_kg_m3.source);
    chain.add(Quantity::leafyMass, weights.leafy.mass_kg, "L18", "Martin et al. 1998");
    chain.add(Quantity::fruitMass, weights.fruit.mass_kg, "", "drawn");
    if (weights.weather.mass_kg > 0.0)
        chain.add(Quantity::weatherMass, weights.weather.mass_kg, "L24",
                  "McPherson et al. 2017; ASCE 7-16, 10.4.1");
    const double propped = -weights.props.mass_kg;
    if (propped > 0.0)
        chain.add(Quantity::propForce, propped * kGravity_m_s2, "L30", "");
    chain.add(Quantity::weightArm,
              norm(asked.weightMoment_Nm) / (kGravity_m_s2 * std::abs(mass - propped)), "L19",
              "drawn");
    chain.add(Quantity::weightMoment, bending_Nm(asked.weightMoment_Nm, direction), "L19", "");
}

/// The formula by which a cavity drawn at this place weakens it most; "" where there is none.
const char* hollowFormula(const Limb& limb, double at_m, double diameter_m)
{
    constexpr double kSameDefect_m = 1e-6;
    const char* formula = "";
    double least = solidSection(diameter_m).bending_m3;
    for (const auto& defect : limb.defects) {
        const double left = sectionAt(defect, diameter_m).bending_m3;
        if (std::abs(defect.at_m - at_m) > kSameDefect_m || left >= least)
            continue;
        least = left;
        formula = defect.kind == DefectKind::openCavity ? "L12"
                  : defect.thickestWall_m               ? "L13"
                                                        : "L11";
    }
    return formula;
}

void addStress(Chain& chain, const Section& section, double diameter_m, const char* hollow,
               const Asked& asked)
{
    const auto& forces = asked.forces;
    chain.add(Quantity::bendingMoment, forces.bending_Nm, "L19", "");
    chain.add(Quantity::torsion, std::abs(forces.torsion_Nm), "L19", "");
    chain.add(Quantity::axialForce, forces.axial_N, "L19", "");
    chain.add(Quantity::diameter, diameter_m, "", "drawn");
    if (*hollow != '\0')
        chain.add(Quantity::hollowFactor, section.bending_m3 / solidSection(diameter_m).bending_m3,
                  hollow, "drawn");
    chain.add(Quantity::sectionModulus, section.bending_m3, "L10", "handbook");
    chain.add(Quantity::bendingStress, forces.bending_Nm / section.bending_m3, "L10", "");
    chain.add(Quantity::torsionStress, std::abs(forces.torsion_Nm) / section.torsion_m3, "L10", "");
    chain.add(Quantity::axialStress, std::abs(forces.axial_N) / section.area_m2, "L10", "");
    chain.add(Quantity::principalStress, principalStress_Pa(section, forces), "L10", "");
}

void addStrength(Chain& chain, const Question& asks, const LimbOrder& order, const Governing& worst,
                 double factor)
{
    const bool stem = !asks.tree.limbs[asks.limb].parent;
    const double limbFactor = stem ? kStemFactor : kLimbFactor;
    const auto& clear = asks.species.wood.greenMor_Pa;
    chain.add(Quantity::clearWoodStrength, clear.value, "L14", clear.source);
    chain.add(Quantity::limbFactor, limbFactor, "L14",
              stem ? "Gardiner, Peltola & Kellomaki 2000" : "Kane 2007, Table 3");
    if (!stem)
        chain.add(Quantity::aspectRatio, aspectRatio(asks.tree, order, asks.limb), "L15", "drawn");
    chain.add(Quantity::unionFactor, factor / limbFactor, "L15",
              "Kane & Clouston 2008; Slater & Ennos 2015");
    if (worst.duration < 1.0)
        chain.add(Quantity::durationFactor, worst.duration, "L27", "Wood 1951; Gerhards 1977");
    chain.add(Quantity::strength, worst.hasStrength ? clear.value * factor * worst.duration : 0.0,
              "L14", "");
    if (worst.hasStrength)
        chain.add(Quantity::utilisation, worst.utilisation, "L17", "");
}

} // namespace

std::vector<Step> explain(const Tree& tree, std::size_t limb, const Foliation& foliation,
                          const Species& species, const Place& place, Exposure exposure,
                          const Conditions& conditions)
{
    (void)tree.limbs.at(limb);
    const auto load = loadCase(tree, foliation, species, place, exposure, conditions);
    const auto worst = governingForLong(load, limb);
    const auto& piece = load.limbs[limb].pieces[worst.piece];
    const auto asked = askedAt(piece, worst.along_m, worst.beyond, worst.wind);
    const auto weights = weightsBeyond(load, limb, worst.piece, worst.along_m, weightsByKind(load));
    const double share = worst.along_m / piece.length_m;
    const double diameter = piece.thick_m + share * (piece.thin_m - piece.thick_m);
    const bool within = worst.along_m > 0.0;
    const double gust = worst.duration < 1.0 ? 0.0 : conditions.gust_m_s;
    const Question asks{tree, limb, species, place, exposure, gust, conditions.air_C};
    Chain chain;
    addWind(chain, asks, worst, asked, piece.direction);
    addWeight(chain, weights, asked, piece.direction, species);
    const char* hollow = within ? "" : hollowFormula(tree.limbs[limb], piece.at_m, diameter);
    addStress(chain, within ? solidSection(diameter) : piece.section, diameter, hollow, asked);
    addStrength(chain, asks, load.order, worst, within ? piece.factorWithin : piece.factorAtStart);
    return chain.take();
}

} // namespace model::load
