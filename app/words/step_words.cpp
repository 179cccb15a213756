#include "app/words/step_words.hpp"

namespace app {

using model::load::Quantity;

StepPart partOf(Quantity quantity)
{
    if (quantity <= Quantity::windMoment)
        return StepPart::wind;
    if (quantity <= Quantity::weightMoment)
        return StepPart::weight;
    return quantity <= Quantity::principalStress ? StepPart::stress : StepPart::strength;
}

QString partName(StepPart part)
{
    switch (part) {
    case StepPart::wind:
        return Words::tr("The wind");
    case StepPart::weight:
        return Words::tr("The weight");
    case StepPart::stress:
        return Words::tr("What they ask of the wood");
    case StepPart::strength:
        break;
    }
    return Words::tr("What the wood bears");
}

QString stepName(Quantity quantity)
{
    switch (quantity) {
    case Quantity::gustHere:
        return Words::tr("gust at the height where the wind takes hold");
    case Quantity::airDensity:
        return Words::tr("density of the air");
    case Quantity::dragCoefficient:
        return Words::tr("drag coefficient of the leaves in that gust");
    case Quantity::outline:
        return Words::tr("outline of what grows beyond, as that wind meets it");
    case Quantity::windForce:
        return Words::tr("wind force = half the density x gust squared x coefficient x outline");
    case Quantity::windArm:
        return Words::tr("its lever arm about the place");
    case Quantity::windMoment:
        return Words::tr("bending by wind = force x arm");
    case Quantity::woodMass:
        return Words::tr("wood beyond the place");
    case Quantity::leafyMass:
        return Words::tr("leaf and twigs beyond it");
    case Quantity::fruitMass:
        return Words::tr("crop beyond it");
    case Quantity::weatherMass:
        return Words::tr("rain or ice beyond it");
    case Quantity::propForce:
        return Words::tr("what props beyond it push up with");
    case Quantity::weightArm:
        return Words::tr("level distance of their common centre");
    case Quantity::weightMoment:
        return Words::tr("bending by weight = mass x gravity x arm");
    case Quantity::bendingMoment:
        return Words::tr("bending by both, added as arrows are");
    case Quantity::torsion:
        return Words::tr("twisting by both");
    case Quantity::axialForce:
        return Words::tr("pull along the limb (less than nothing is push)");
    case Quantity::diameter:
        return Words::tr("thickness at the place");
    case Quantity::sectionModulus:
        return Words::tr("section modulus of the sound wood");
    case Quantity::hollowFactor:
        return Words::tr("share of the solid wood's section modulus that the cavity leaves");
    case Quantity::bendingStress:
        return Words::tr("stress by bending = moment / modulus");
    case Quantity::torsionStress:
        return Words::tr("stress by twisting");
    case Quantity::axialStress:
        return Words::tr("stress by pull or push");
    case Quantity::principalStress:
        return Words::tr("greatest stress, all three together");
    case Quantity::clearWoodStrength:
        return Words::tr("bending strength of clear green wood");
    case Quantity::limbFactor:
        return Words::tr("share of it that a whole limb or stem, over bark, reaches");
    case Quantity::aspectRatio:
        return Words::tr("thickness of the limb over that of the wood it grows from");
    case Quantity::unionFactor:
        return Words::tr("share that the union leaves");
    case Quantity::durationFactor:
        return Words::tr("share that is left under what hangs for hours, days or weeks");
    case Quantity::strength:
        return Words::tr("expected strength here = strength and shares multiplied");
    case Quantity::utilisation:
        break;
    }
    return Words::tr("share of its expected strength that is asked for = stress / strength");
}

QString stepValue(const model::load::Step& step, const Units& units)
{
    const double value = step.value;
    switch (step.quantity) {
    case Quantity::gustHere:
        return units.speed(value);
    case Quantity::airDensity:
        return units.density(value);
    case Quantity::outline:
        return units.area(value);
    case Quantity::windForce:
    case Quantity::propForce:
    case Quantity::axialForce:
        return units.force(value);
    case Quantity::windArm:
    case Quantity::weightArm:
        return units.length(value);
    case Quantity::woodMass:
    case Quantity::leafyMass:
    case Quantity::fruitMass:
    case Quantity::weatherMass:
        return units.mass(value);
    case Quantity::windMoment:
    case Quantity::weightMoment:
    case Quantity::bendingMoment:
    case Quantity::torsion:
        return units.moment(value);
    case Quantity::diameter:
        return units.diameter(value);
    case Quantity::sectionModulus:
        return units.sectionModulus(value);
    case Quantity::bendingStress:
    case Quantity::torsionStress:
    case Quantity::axialStress:
    case Quantity::principalStress:
    case Quantity::clearWoodStrength:
        return units.stress(value);
    case Quantity::strength:
        return value > 0.0 ? units.stress(value) : Words::tr("none is counted on");
    case Quantity::utilisation:
        return units.share(value);
    case Quantity::dragCoefficient:
    case Quantity::hollowFactor:
    case Quantity::limbFactor:
    case Quantity::unionFactor:
    case Quantity::aspectRatio:
    case Quantity::durationFactor:
        break;
    }
    return units.number(value, 2);
}

} // namespace app
