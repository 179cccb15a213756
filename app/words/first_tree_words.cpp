#include "app/words/first_tree_words.hpp"

#include "model/geometry/angle.hpp"

#include <cmath>

namespace app {
namespace {

QString direction(const model::Limb& limb)
{
    const auto out = limb.stations.back().position_m - limb.stations.front().position_m;
    const double bearing = model::degrees(std::atan2(out.x, out.y));
    return Units::bearing(std::fmod(bearing + 360.0, 360.0));
}

} // namespace

QStringList habitWords()
{
    return {Words::tr("Vase: a low fork, steep limbs that lean out"),
            Words::tr("Spreading: a round head, limbs all round"),
            Words::tr("Weeping: limbs arch over, shoots hang"),
            Words::tr("Conical: a stem to the top, limbs shorter above"),
            Words::tr("Columnar: a stem to the top, short steep limbs"),
            Words::tr("Open centre: few limbs, light in the middle"),
            Words::tr("Central leader: limbs in tiers round a stem"),
            Words::tr("Espalier: flat, in level tiers")};
}

QString sentence(model::sketch::MeasureFault fault, const model::sketch::FirstMeasures& measures,
                 const Units& units)
{
    using model::sketch::MeasureFault;
    switch (fault) {
    case MeasureFault::stem:
        return Words::tr("Stem: between %1 and %2 thick.")
            .arg(units.diameter(0.01), units.diameter(4.0));
    case MeasureFault::height:
        return Words::tr("Height: between %1 and %2.")
            .arg(units.roughLength(0.8), units.roughLength(80.0));
    case MeasureFault::spread:
        return Words::tr("Spread: between %1 and %2.")
            .arg(units.roughLength(0.4), units.roughLength(50.0));
    case MeasureFault::lowestLimb:
        return Words::tr("Lowest limb: between %1 and %2 above the ground, four fifths of the "
                         "height.")
            .arg(units.roughLength(0.1), units.roughLength(0.8 * measures.height_m));
    case MeasureFault::slender:
        break;
    }
    return Words::tr("A stem of %1 can't carry a tree of %2: is the girth right?")
        .arg(units.diameter(measures.stemDiameter_m), units.roughLength(measures.height_m));
}

void nameLimbs(model::Tree& tree)
{
    int number = 0;
    int branch = 0;
    for (auto& limb : tree.limbs) {
        if (!limb.parent) {
            limb.name = Words::tr("stem").toStdString();
        } else if (*limb.parent == "stem") {
            ++number;
            branch = 0;
            limb.name = Words::tr("limb %1, %2", "number from below, compass direction")
                            .arg(number)
                            .arg(direction(limb))
                            .toStdString();
        } else {
            ++branch;
            limb.name = Words::tr("branch %2 of limb %1").arg(number).arg(branch).toStdString();
        }
    }
}

} // namespace app
