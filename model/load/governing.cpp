#include "model/load/governing.hpp"

#include <numbers>
#include <utility>

namespace model::load {
namespace {

/// True if `b` asks more than `a`; a place without strength asks more than any with.
bool worse(const Governing& a, const Governing& b)
{
    if (a.hasStrength != b.hasStrength)
        return a.hasStrength;
    return b.utilisation > a.utilisation;
}

/// The worst of the sections at the ends of pieces.
Governing worstSection(const LoadCase& load, std::size_t limb, double windScale)
{
    const auto& pieces = load.limbs[limb].pieces;
    Governing worst;
    walkToBase(
        load, limb,
        [&](std::size_t i, const Weight& weight, const DragSums& drag, const PerBearing& share) {
            const auto& piece = pieces[i];
            if (piece.thick_m < kLeastChecked_m && i > 0)
                return;
            PerBearing scaled = share;
            for (double& each : scaled)
                each *= windScale;
            const Peak peak = worstStress(piece, weight, drag, scaled);
            const Governing here{i,
                                 0.0,
                                 {peak.bearing, peak.opposite},
                                 peak.stress_Pa,
                                 peak.stress_Pa / (load.greenMor_Pa * piece.factorAtStart),
                                 piece.hasStrength};
            if (worse(worst, here) || i + 1 == pieces.size())
                worst = here;
        });
    return worst;
}

/// Seeks the peak inside the pieces either side of the worst section by golden-section search.
Governing seekWithin(const LoadCase& load, std::size_t limb, Governing worst,
                     const std::vector<Beyond>& ends)
{
    const auto& pieces = load.limbs[limb].pieces;
    const WindFrom wind = worst.wind;
    const std::size_t middle = worst.piece;
    const auto stressAt = [&](std::size_t i, double along) {
        const auto& piece = pieces[i];
        const double diameter =
            piece.thick_m + along / piece.length_m * (piece.thin_m - piece.thick_m);
        const auto rest = beyondWithin(load, limb, i, along, ends, wind.bearing);
        return principalStress_Pa(solidSection(diameter), askedAt(piece, along, rest, wind).forces);
    };
    for (std::size_t i = middle > 0 ? middle - 1 : 0; i <= middle; ++i) {
        constexpr double kGolden = 1.0 / std::numbers::phi;
        double low = 0.0;
        double high = pieces[i].length_m;
        double left = high - kGolden * (high - low);
        double right = low + kGolden * (high - low);
        double atLeft = stressAt(i, left);
        double atRight = stressAt(i, right);
        for (int step = 0; step < 12; ++step) { // one of the two places serves the next step too
            if (atLeft > atRight) {
                high = std::exchange(right, left);
                atRight = atLeft;
                left = high - kGolden * (high - low);
                atLeft = stressAt(i, left);
            } else {
                low = std::exchange(left, right);
                atLeft = atRight;
                right = low + kGolden * (high - low);
                atRight = stressAt(i, right);
            }
        }
        const double along = (low + high) / 2.0;
        const double stress = stressAt(i, along);
        const double utilisation = stress / (load.greenMor_Pa * pieces[i].factorWithin);
        if (utilisation > worst.utilisation)
            worst = {i, along, wind, stress, utilisation, true};
    }
    return worst;
}

} // namespace

Governing governing(const LoadCase& load, std::size_t limb, double windScale)
{
    Governing worst = worstSection(load, limb, windScale);
    const auto bearing = worst.wind.bearing;
    auto ends = beyondPieces(load, limb, bearing);
    for (auto& end : ends)
        end.share *= windScale;
    if (worst.hasStrength)
        worst = seekWithin(load, limb, worst, ends);
    worst.beyond = worst.along_m > 0.0
                       ? beyondWithin(load, limb, worst.piece, worst.along_m, ends, bearing)
                       : ends[worst.piece];
    return worst;
}

Governing governingForLong(const LoadCase& load, std::size_t limb)
{
    const Governing gusty = governing(load, limb);
    const double standing = load.standing[limb];
    if (standing >= 1.0)
        return gusty;
    Governing still = governing(load, limb, 0.0);
    still.duration = standing;
    still.utilisation /= standing;
    return worse(gusty, still) ? still : gusty;
}

} // namespace model::load
