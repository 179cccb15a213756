#include "model/growth/grown.hpp"

#include "model/crown/foliage.hpp"
#include "model/growth/shoot_rate.hpp"

#include <algorithm>

namespace model::growth {
namespace {

bool isDead(const Limb& limb)
{
    return std::ranges::any_of(limb.defects, [](const Defect& d) {
        return (d.kind == DefectKind::dead || d.kind == DefectKind::broken) && d.at_m <= 0.0;
    });
}

/// On a scale of its own.
double leafOn(const Limb& limb)
{
    Foliation unit;
    unit.leafPerSharingVolume_1_m = 1.0;
    Tree alone;
    alone.limbs = {limb};
    double sum = 0.0;
    for (const auto& body : leafyBodies(alone))
        sum += leafArea_m2(body, unit);
    return sum;
}

/// A wider body with the same leaf in it.
void spread(Limb& limb, double by_m)
{
    const double before = leafOn(limb);
    limb.foliage->radius_m += by_m;
    const double after = leafOn(limb);
    if (after > 0.0)
        limb.foliage->thinned = 1.0 - (1.0 - limb.foliage->thinned) * before / after;
}

} // namespace

Tree grown(const Tree& tree, double shoot_m)
{
    Tree later = tree;
    for (auto& limb : later.limbs) {
        if (!limb.foliage || isDead(limb) || shoot_m <= 0.0)
            continue;
        auto& foliage = *limb.foliage;
        if (foliage.hanging_m <= 0.0)
            spread(limb, kUndersideShare * shoot_m);
        else if (foliage.hem_m) // shoots that were lifted to a hem grow down from there
            foliage.hem_m = std::max(0.0, *foliage.hem_m - shoot_m);
        else
            foliage.hanging_m += shoot_m;
    }
    return later;
}

} // namespace model::growth
