#include "model/load/governing.hpp"

#include <boost/math/tools/minima.hpp>

#include <algorithm>
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

/// A section at the start of a piece, what acts beyond it, and the most it can be asked.
struct Start {
    std::size_t piece{};
    double bound{}; ///< of its utilisation
    Weight weight{};
    DragSums drag{};
    const PerBearing* share{}; ///< of that drag, left in lee
};

/// The starts of pieces that are checked, outermost first. Where some have no strength, only those:
/// they ask more than any other.
std::vector<Start> startsOfPieces(const LoadCase& load, std::size_t limb, double windScale)
{
    const auto& pieces = load.limbs[limb].pieces;
    std::vector<Start> starts;
    starts.reserve(pieces.size());
    bool allStrong = true;
    walkToBase(
        load, limb,
        [&](std::size_t i, const Weight& weight, const DragSums& drag, const PerBearing& share) {
            const auto& piece = pieces[i];
            if ((piece.thick_m < kLeastChecked_m && i > 0) || (piece.hasStrength && !allStrong))
                return;
            if (!piece.hasStrength && std::exchange(allStrong, false))
                starts.clear();
            auto& start = starts.emplace_back(Start{i, 0.0, weight, drag, &share});
            start.bound = stressBound_Pa(piece, weight, drag, share, windScale) /
                          (load.greenMor_Pa * piece.factorAtStart);
        });
    return starts;
}

/// The worst of the sections at the starts of pieces; of several alike, the outermost.
Governing worstSection(const LoadCase& load, std::size_t limb, double windScale)
{
    const auto starts = startsOfPieces(load, limb, windScale);
    Governing worst;
    bool found = false;
    const auto ask = [&](const Start& start) {
        const auto& piece = load.limbs[limb].pieces[start.piece];
        const Peak peak = worstStress(piece, start.weight, start.drag, *start.share, windScale);
        const double utilisation = peak.stress_Pa / (load.greenMor_Pa * piece.factorAtStart);
        const bool outermost = utilisation == worst.utilisation && start.piece > worst.piece;
        if (found && utilisation <= worst.utilisation && !outermost)
            return;
        found = true;
        worst = {start.piece,    0.0,         {peak.bearing, peak.opposite},
                 peak.stress_Pa, utilisation, piece.hasStrength};
    };
    if (starts.empty())
        return worst;
    // The likeliest first: it settles for most others that they can't be the worst.
    const auto likeliest = std::ranges::max_element(starts, {}, &Start::bound);
    ask(*likeliest);
    for (auto start = starts.begin(); start != starts.end(); ++start)
        if (start != likeliest && start->bound >= worst.utilisation)
            ask(*start);
    return worst;
}

/// Seeks the peak inside the pieces either side of the worst section.
Governing seekWithin(const LoadCase& load, std::size_t limb, Governing worst,
                     const std::vector<Beyond>& ends)
{
    constexpr int kBits = 9; // to a 250th of the piece: flat as a peak is, nothing for its height
    const auto& pieces = load.limbs[limb].pieces;
    const WindFrom wind = worst.wind;
    const std::size_t middle = worst.piece;
    for (std::size_t i = middle > 0 ? middle - 1 : 0; i <= middle; ++i) {
        const auto& piece = pieces[i];
        const auto relief = [&](double along) {
            const double diameter =
                piece.thick_m + along / piece.length_m * (piece.thin_m - piece.thick_m);
            const auto rest = beyondWithin(load, limb, i, along, ends, wind.bearing);
            return -principalStress_Pa(solidSection(diameter),
                                       askedAt(piece, along, rest, wind).forces);
        };
        const auto [along, least] =
            boost::math::tools::brent_find_minima(relief, 0.0, piece.length_m, kBits);
        const double utilisation = -least / (load.greenMor_Pa * piece.factorWithin);
        if (utilisation > worst.utilisation)
            worst = {i, along, wind, -least, utilisation, true};
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
