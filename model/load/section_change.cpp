#include "model/load/section_change.hpp"

#include "model/constants.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {
namespace {

Vec3 placeOf(const Piece& piece, const Governing& at)
{
    return piece.from_m + at.along_m * piece.direction;
}

Vec3 towardsOf(const Governing& at)
{
    return (at.wind.opposite ? -1.0 : 1.0) * blowsTowards(at.wind.bearing);
}

Pull pullOf(const Weight& weight, Vec3 at, Vec3 direction)
{
    return {momentAbout(weight, at), -kGravity_m_s2 * weight.mass_kg * direction.z};
}

Pull pullOf(const Drag& drag, Vec3 towards, Vec3 at, Vec3 direction)
{
    return {momentAbout(drag, towards, at), drag.force_N * dot(towards, direction)};
}

/// How many of the limbs that grow from it join beyond the section.
std::size_t joinedBeyond(const LoadCase& load, std::size_t limb, const Governing& at)
{
    const std::size_t first = at.along_m > 0.0 ? at.piece + 1 : at.piece;
    std::size_t count = 0;
    for (const auto piece : load.limbs[limb].joinsAt)
        count += piece >= first ? 1 : 0;
    return count;
}

/// The limb that grows from `limb` and carries `other`.
std::size_t branchTowards(const LimbOrder& order, std::size_t limb, std::size_t other)
{
    while (order.parent[other] != limb)
        other = order.parent[other];
    return other;
}

bool isBeyond(const LoadCase& load, std::size_t limb, std::size_t other, std::size_t outermost)
{
    if (limb == other)
        return true;
    const auto& children = load.order.children[limb];
    const auto branch = branchTowards(load.order, limb, other);
    for (std::size_t n = 1; n <= outermost; ++n)
        if (children[children.size() - n] == branch)
            return true;
    return false;
}

/// Nearer to each other than this, outline and leaf limit alike. The whole crown does so by what
/// the leaf's limit is.
constexpr double kAlike = 1e-9;

/// Change of what lee leaves of the drag on leafy pieces when this much leaf is taken out. The
/// outline stays; where both limit alike, the one counts that comes to be less.
double leafLeftSlope(const LeeSums& sums, double outline, double cap, const LeeSums& gone,
                     std::size_t i)
{
    if (cap > outline * (1.0 + kAlike) || sums.leaf_m2 <= 0.0)
        return 0.0;
    const double slope = cap * (gone.dense_m2[i] / sums.dense_m2[i] - gone.leaf_m2 / sums.leaf_m2);
    return cap < outline * (1.0 - kAlike) ? slope : std::min(0.0, slope);
}

/// Change of the share of drag that lee leaves when this much leaf is taken out (L9, L31).
double shareSlope(const WindLoad& wind, std::size_t limb, std::size_t outermost,
                  const LeeSums& gone, std::size_t i)
{
    const auto& sums = wind.sums[limb][outermost];
    const double summed = sums.leaf_N[i] + sums.wood_N[i];
    if (summed <= 0.0)
        return 0.0;
    const double outline = wind.outlineLeft[limb][outermost][i];
    const double cap = leafCap(sums, wind.outlinePerLeaf, i);
    const double slope = leafLeftSlope(sums, outline, cap, gone, i);
    const double share = wind.share[limb][outermost][i];
    return (sums.leaf_N[i] * slope - gone.leaf_N[i] * (std::min(outline, cap) - share)) / summed;
}

/// Weight of what goes with the leaf of a piece, from `start_m` along it.
Weight leafWeight(const Piece& piece, double start_m, double icePerLeafArea_kg_m2)
{
    const double left = piece.length_m - start_m;
    const double mass = left / piece.length_m *
                        (piece.leafy_kg + piece.rain_kg + piece.leaf_m2 * icePerLeafArea_kg_m2);
    const Vec3 middle = piece.from_m + (start_m + left / 2.0) * piece.direction;
    return {mass, mass * middle.x, mass * middle.y};
}

/// The limb's own leaf beyond a section of itself.
void ownBeyond(const LoadCase& load, std::size_t limb, const Governing& at,
               double icePerLeafArea_kg_m2, Weight& weight, Drag& drag)
{
    const auto& pieces = load.limbs[limb].pieces;
    for (std::size_t n = at.piece; n < pieces.size(); ++n) {
        if (pieces[n].bare())
            continue;
        const double start = n == at.piece ? at.along_m : 0.0;
        load::add(weight, leafWeight(pieces[n], start, icePerLeafArea_kg_m2));
        load::add(drag, dragOf(pieces[n], load.wind.pieces[limb][n], at.wind.bearing, start));
    }
}

} // namespace

LoadedSection loadedSection(const LoadCase& load, std::size_t limb, const Governing& at)
{
    const auto& piece = load.limbs[limb].pieces[at.piece];
    const Vec3 place = placeOf(piece, at);
    const double share = load.wind.share[limb][joinedBeyond(load, limb, at)][at.wind.bearing];
    const double thick =
        piece.thick_m + at.along_m / piece.length_m * (piece.thin_m - piece.thick_m);
    return {at.along_m > 0.0 ? solidSection(thick) : piece.section,
            piece.direction,
            {pullOf(at.beyond.weight, place, piece.direction),
             share * pullOf(at.beyond.drag, towardsOf(at), place, piece.direction)}};
}

Response respond(const Section& section, Vec3 direction, const Pull& pull, const Pull& change)
{
    const auto sign = [](double x) { return x < 0.0 ? -1.0 : 1.0; };
    const double torsion = dot(pull.moment_Nm, direction);
    const double torsionSlope = dot(change.moment_Nm, direction);
    const Vec3 bend = pull.moment_Nm - torsion * direction;
    Response response;
    response.bending_Nm = norm(bend);
    if (response.bending_Nm > 0.0)
        response.bendingSlope_Nm = dot(bend, change.moment_Nm) / response.bending_Nm;
    const double along =
        response.bending_Nm / section.bending_m3 + std::abs(pull.axial_N) / section.area_m2;
    const double alongSlope = response.bendingSlope_Nm / section.bending_m3 +
                              sign(pull.axial_N) * change.axial_N / section.area_m2;
    const double shear = std::abs(torsion) / section.torsion_m3;
    const double shearSlope = sign(torsion) * torsionSlope / section.torsion_m3;
    const double root = std::sqrt(along * along / 4.0 + shear * shear);
    response.stress_Pa = along / 2.0 + root; // (L10)
    response.stressSlope_Pa = alongSlope / 2.0;
    if (root > 0.0)
        response.stressSlope_Pa += (along * alongSlope / 4.0 + shear * shearSlope) / root;
    return response;
}

OwnLeaf ownLeaf(const LoadCase& load, std::size_t limb, double icePerLeafArea_kg_m2)
{
    OwnLeaf own;
    const auto& pieces = load.limbs[limb].pieces;
    for (std::size_t n = 0; n < pieces.size(); ++n) {
        if (pieces[n].bare())
            continue;
        add(own.weight, leafWeight(pieces[n], 0.0, icePerLeafArea_kg_m2));
        add(own.drag, load.wind.pieces[limb][n]);
    }
    own.lee = load.wind.sums[limb].front();
    return own;
}

Pulls thinningSlope(const LoadCase& load, std::size_t limb, const Governing& at,
                    std::size_t thinned, const OwnLeaf& leaf, double icePerLeafArea_kg_m2)
{
    const std::size_t outermost = joinedBeyond(load, limb, at);
    if (!isBeyond(load, limb, thinned, outermost))
        return {};
    const auto& piece = load.limbs[limb].pieces[at.piece];
    const Vec3 place = placeOf(piece, at);
    const Vec3 towards = towardsOf(at);
    Weight weight = leaf.weight;
    Drag drag = leaf.drag.from(at.wind.bearing);
    if (limb == thinned) {
        weight = {};
        drag = {};
        ownBeyond(load, limb, at, icePerLeafArea_kg_m2, weight, drag);
    }
    const double share = load.wind.share[limb][outermost][at.wind.bearing];
    const double slope = shareSlope(load.wind, limb, outermost, leaf.lee, at.wind.bearing);
    return {-1.0 * pullOf(weight, place, piece.direction),
            slope * pullOf(at.beyond.drag, towards, place, piece.direction) +
                -share * pullOf(drag, towards, place, piece.direction)}; // (L31)
}

} // namespace model::load
