#include "model/load/load_case.hpp"

#include "model/constants.hpp"
#include "model/load/weather.hpp"

namespace model::load {

std::vector<double> standingFactors(const LimbOrder& order, const std::vector<LimbPieces>& limbs)
{
    struct Hung {
        double fruit_kg{};
        double rain_kg{};
        double ice_kg{};
    };
    std::vector<Hung> hung(limbs.size());
    std::vector<double> factors(limbs.size());
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb) {
        auto& here = hung[*limb];
        here.fruit_kg += limbs[*limb].fruit_kg;
        here.rain_kg += limbs[*limb].rain_kg;
        here.ice_kg += limbs[*limb].ice_kg;
        factors[*limb] = standingFactor(here.fruit_kg > 0.0, here.rain_kg > 0.0, here.ice_kg > 0.0);
        if (const auto parent = order.parent[*limb]; parent != kNoLimb) {
            hung[parent].fruit_kg += here.fruit_kg;
            hung[parent].rain_kg += here.rain_kg;
            hung[parent].ice_kg += here.ice_kg;
        }
    }
    return factors;
}

double bearing_deg(WindFrom wind)
{
    return kBearingStep_deg * static_cast<double>(wind.bearing) + (wind.opposite ? 180.0 : 0.0);
}

std::vector<Beyond> beyondPieces(const LoadCase& load, std::size_t limb, std::size_t bearing)
{
    const auto& cut = load.limbs[limb];
    const auto& children = load.order.children[limb];
    std::vector<Beyond> beyond(cut.pieces.size() + 1);
    Beyond sum;
    std::size_t outermost = 0;
    for (std::size_t i = cut.pieces.size() + 1; i-- > 0;) {
        if (i < cut.pieces.size()) {
            add(sum.weight, weightOf(cut.pieces[i], load.wood_kg_m3));
            add(sum.drag, dragOf(cut.pieces[i], load.wind.pieces[limb][i], bearing, 0.0));
        }
        for (; outermost < children.size(); ++outermost) {
            const std::size_t child = children.size() - 1 - outermost;
            if (cut.joinsAt[child] != i)
                break;
            add(sum.weight, load.weights[children[child]]);
            add(sum.drag, load.drags[children[child]].from(bearing));
        }
        sum.share = load.wind.share[limb][outermost][bearing];
        beyond[i] = sum;
    }
    return beyond;
}

Weight weightOfLimb(const LoadCase& load, std::size_t limb)
{
    const auto& cut = load.limbs[limb];
    const auto& children = load.order.children[limb];
    Weight weight;
    std::size_t outermost = 0;
    for (std::size_t i = cut.pieces.size() + 1; i-- > 0;) { // in walkToBase()'s order, to the digit
        if (i < cut.pieces.size())
            add(weight, weightOf(cut.pieces[i], load.wood_kg_m3));
        for (; outermost < children.size(); ++outermost) {
            const std::size_t child = children.size() - 1 - outermost;
            if (cut.joinsAt[child] != i)
                break;
            add(weight, load.weights[children[child]]);
        }
    }
    return weight;
}

Beyond beyondWithin(const LoadCase& load, std::size_t limb, std::size_t piece, double along_m,
                    const std::vector<Beyond>& ends, std::size_t bearing)
{
    Beyond rest = ends[piece + 1];
    add(rest.weight, weightOf(load.limbs[limb].pieces[piece], load.wood_kg_m3, along_m));
    add(rest.drag,
        dragOf(load.limbs[limb].pieces[piece], load.wind.pieces[limb][piece], bearing, along_m));
    return rest;
}

Weights weightsBeyond(const LoadCase& load, std::size_t limb, std::size_t piece, double along_m,
                      const std::vector<Weights>& ofLimbs)
{
    const auto& cut = load.limbs[limb];
    Weights sum = weightsOf(cut.pieces[piece], load.wood_kg_m3, along_m);
    for (std::size_t i = piece + 1; i < cut.pieces.size(); ++i)
        add(sum, weightsOf(cut.pieces[i], load.wood_kg_m3));
    const std::size_t first = along_m > 0.0 ? piece + 1 : piece;
    const auto& children = load.order.children[limb];
    for (std::size_t child = 0; child < children.size(); ++child)
        if (cut.joinsAt[child] >= first)
            add(sum, ofLimbs[children[child]]);
    return sum;
}

std::vector<Weights> weightsByKind(const LoadCase& load)
{
    std::vector<Weights> all(load.limbs.size());
    for (auto limb = load.order.rootFirst.rbegin(); limb != load.order.rootFirst.rend(); ++limb)
        all[*limb] = weightsBeyond(load, *limb, 0, 0.0, all);
    return all;
}

Asked askedAt(const Piece& piece, double along_m, const Beyond& beyond, WindFrom wind)
{
    const Vec3 at = piece.from_m + along_m * piece.direction;
    const Vec3 towards = (wind.opposite ? -1.0 : 1.0) * blowsTowards(wind.bearing);
    Asked asked;
    asked.weightMoment_Nm = momentAbout(beyond.weight, at);
    asked.windMoment_Nm = beyond.share * momentAbout(beyond.drag, towards, at);
    const Vec3 both = asked.weightMoment_Nm + asked.windMoment_Nm;
    const double torsion = dot(both, piece.direction);
    const Vec3 force = beyond.share * beyond.drag.force_N * towards -
                       Vec3{0.0, 0.0, beyond.weight.mass_kg * kGravity_m_s2};
    asked.forces = {norm(both - torsion * piece.direction), torsion, dot(force, piece.direction)};
    return asked;
}

double bending_Nm(Vec3 moment_Nm, Vec3 direction)
{
    return norm(moment_Nm - dot(moment_Nm, direction) * direction);
}

} // namespace model::load
