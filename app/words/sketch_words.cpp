#include "app/words/sketch_words.hpp"

namespace app {
namespace {

using model::Plausible;
using model::SketchCause;
using model::SketchCheck;

QString weighs(const SketchCheck& check, const Units& units)
{
    const Plausible& mass = check.dryMass_kg;
    return Words::tr("trees with a stem %1 thick weigh %2 to %3 dry, the sketch %4")
        .arg(units.diameter(check.stemDiameter_m), units.mass(mass.low), units.mass(mass.high),
             units.mass(mass.drawn));
}

QString spreads(const SketchCheck& check, const Units& units)
{
    const Plausible& crown = check.crownSpread_m;
    return Words::tr("trees with a stem %1 thick have a crown %2 to %3 wide, the sketch %4")
        .arg(units.diameter(check.stemDiameter_m), units.roughLength(crown.low),
             units.roughLength(crown.high), units.roughLength(crown.drawn));
}

QString bears(const SketchCheck& check, const Units& units)
{
    const Plausible& leaf = check.leafArea_m2;
    return Words::tr("trees with a stem %1 thick bear %2 to %3 of leaf, the sketch %4")
        .arg(units.diameter(check.stemDiameter_m), units.area(leaf.low), units.area(leaf.high),
             units.area(leaf.drawn));
}

/// The figure that is the odder of wood and crown.
QString odder(const SketchCheck& check, const Units& units)
{
    return check.dryMass_kg.within() ? spreads(check, units) : weighs(check, units);
}

} // namespace

QString sketchDoubt(const SketchCheck& check, SketchCause cause, const Units& units)
{
    switch (cause) {
    case SketchCause::girthSmall:
        return Words::tr("The sketch is doubtful: %1. Wood and crown are both much for such a "
                         "stem: tape its girth again.")
            .arg(odder(check, units));
    case SketchCause::girthLarge:
        return Words::tr("The sketch is doubtful: %1. Wood and crown are both little for such a "
                         "stem: tape its girth again, or draw the limbs that are missing.")
            .arg(odder(check, units));
    case SketchCause::limbsThick:
        return Words::tr("The sketch is doubtful: %1. The crown fits the stem, so the limbs are "
                         "probably drawn too thick: tape the thickest ones.")
            .arg(weighs(check, units));
    case SketchCause::limbsThin:
        return Words::tr("The sketch is doubtful: %1. The crown fits the stem, so limbs are "
                         "probably drawn too thin, or are missing: tape the thickest ones.")
            .arg(weighs(check, units));
    case SketchCause::crownWide:
        return Words::tr("The sketch is doubtful: %1. Look again how far the leafy parts reach.")
            .arg(spreads(check, units));
    case SketchCause::crownNarrow:
        return Words::tr("The sketch is doubtful: %1. Look again how far the leafy parts reach, "
                         "and draw those that are missing.")
            .arg(spreads(check, units));
    case SketchCause::leafDense:
        return Words::tr("The sketch is doubtful: %1. Look again how dense its leaf is.")
            .arg(bears(check, units));
    case SketchCause::leafSparse:
        break;
    }
    return Words::tr("The sketch is doubtful: %1. Look again whether its leaf is so sparse.")
        .arg(bears(check, units));
}

QStringList sketchDoubts(const SketchCheck& check, const Units& units)
{
    QStringList doubts;
    for (const SketchCause cause : check.causes)
        doubts << sketchDoubt(check, cause, units);
    return doubts;
}

} // namespace app
