#include "model/load/statics.hpp"

#include "model/constants.hpp"
#include "model/geometry/angle.hpp"
#include "model/load/wide.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {
namespace {

Directions makeDirections()
{
    Directions all;
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        const Vec3 from = bearingDirection(kBearingStep_deg * static_cast<double>(i));
        all.east[i] = -from.x;
        all.north[i] = -from.y;
    }
    return all;
}

/// Stress for every direction, with the wind one way and the other.
struct BothWays {
    PerBearing stress_Pa{};
    PerBearing opposite_Pa{};
};

/// Moment about a point of wind that blows along a direction: (-level north, level east, upright).
struct WindMoment {
    double level_Nm{};
    double upright_Nm{};
};

/// \param share  of the summed drag that counts
UNDERBOUGH_INLINE WindMoment windMoment(const DragSums& drag, const Directions& towards,
                                        std::size_t i, double share, Vec3 p)
{
    const double x = share * (drag.east_Nm[i] - p.x * drag.force_N[i]);
    const double y = share * (drag.north_Nm[i] - p.y * drag.force_N[i]);
    const double z = share * (drag.up_Nm[i] - p.z * drag.force_N[i]);
    return {z, x * towards.north[i] - y * towards.east[i]};
}

/// What the still weight and the wind do to each other comes in by the product of their moments
/// alone, with either sign: both ways are little more work than one.
UNDERBOUGH_WIDE void stresses(const Piece& piece, const Weight& weight, const DragSums& drag,
                              const PerBearing& share, double windScale, BothWays& all)
{
    const auto& towards = directions();
    const Vec3 p = piece.from_m;
    const Vec3 t = piece.direction;
    const Vec3 still = momentAbout(weight, p);
    const double stillTwist = dot(still, t);
    const double stillSquare = dot(still, still) - stillTwist * stillTwist;
    const double pull = -weight.mass_kg * kGravity_m_s2 * t.z;
    const double perBending = 0.5 / piece.section.bending_m3;
    const double perTorsion = 1.0 / piece.section.torsion_m3;
    const double perArea = 0.5 / piece.section.area_m2;
    const auto stress = [&](double square, double twist, double axial) {
        const double bend = std::sqrt(square > 0.0 ? square : 0.0);
        const double along = bend * perBending + std::abs(axial) * perArea;
        const double shear = twist * perTorsion;
        return along + std::sqrt(along * along + shear * shear);
    };
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        const double k = windScale * share[i];
        const double dx = towards.east[i];
        const double dy = towards.north[i];
        const auto [z, mz] = windMoment(drag, towards, i, k, p);
        const double twist = z * (t.y * dx - t.x * dy) + mz * t.z;
        const double square = z * z + mz * mz - twist * twist; // dx, dy: unit
        const double both =
            2.0 * (z * (still.y * dx - still.x * dy) + mz * still.z - stillTwist * twist);
        const double push = k * drag.force_N[i] * (dx * t.x + dy * t.y);
        all.stress_Pa[i] = stress(stillSquare + square + both, stillTwist + twist, pull + push);
        all.opposite_Pa[i] = stress(stillSquare + square - both, stillTwist - twist, pull - push);
    }
}

/// The most over all directions.
struct Most {
    double square_N2m2{}; ///< of the wind's moment, squared, and what it and the weight's make more
    double force_N{};     ///< of the wind's force
};

UNDERBOUGH_INLINE double larger(double a, double b)
{
    return a > b ? a : b;
}

UNDERBOUGH_WIDE void mostOfWind(Vec3 p, Vec3 still, const DragSums& drag, const PerBearing& share,
                                double windScale, Most& most)
{
    const auto& towards = directions();
    PerBearing square;
    PerBearing force;
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        const double k = windScale * share[i];
        const double dx = towards.east[i];
        const double dy = towards.north[i];
        const auto [z, mz] = windMoment(drag, towards, i, k, p);
        const double both = 2.0 * z * (still.y * dx - still.x * dy); // weight doesn't twist upright
        square[i] = z * z + mz * mz + std::abs(both);
        force[i] = k * drag.force_N[i];
    }
    constexpr std::size_t kHalf = kHalfTurn / 2; // halves against each other: several at a time
    for (std::size_t i = 0; i < kHalf; ++i) {
        square[i] = larger(square[i], square[i + kHalf]);
        force[i] = larger(force[i], force[i + kHalf]);
    }
    for (std::size_t i = 0; i < kHalf; ++i) {
        most.square_N2m2 = larger(most.square_N2m2, square[i]);
        most.force_N = larger(most.force_N, force[i]);
    }
}

} // namespace

const Directions& directions()
{
    static const Directions all = makeDirections();
    return all;
}

void add(Weight& whole, const Weight& part)
{
    whole.mass_kg += part.mass_kg;
    whole.east_kgm += part.east_kgm;
    whole.north_kgm += part.north_kgm;
}

void add(Weights& whole, const Weights& part)
{
    add(whole.wood, part.wood);
    add(whole.leafy, part.leafy);
    add(whole.fruit, part.fruit);
    add(whole.weather, part.weather);
    add(whole.props, part.props);
}

UNDERBOUGH_WIDE void add(DragSums& whole, const DragSums& part)
{
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        whole.force_N[i] += part.force_N[i];
        whole.east_Nm[i] += part.east_Nm[i];
        whole.north_Nm[i] += part.north_Nm[i];
        whole.up_Nm[i] += part.up_Nm[i];
    }
}

UNDERBOUGH_WIDE void add(DragSums& whole, const PieceDrag& part)
{
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        whole.force_N[i] += part.force_N[i];
        whole.east_Nm[i] += part.force_N[i] * part.centre_m.x;
        whole.north_Nm[i] += part.force_N[i] * part.centre_m.y;
        whole.up_Nm[i] += part.force_N[i] * part.centre_m.z;
    }
}

void add(Drag& whole, const Drag& part)
{
    whole.force_N += part.force_N;
    whole.east_Nm += part.east_Nm;
    whole.north_Nm += part.north_Nm;
    whole.up_Nm += part.up_Nm;
}

namespace {

Weight hung(double mass_kg, Vec3 at)
{
    return {mass_kg, mass_kg * at.x, mass_kg * at.y};
}

/// What is left of a piece from a place along it to its end.
struct Rest {
    double share{}; ///< of its length
    Weight wood{};
    Vec3 middle_m{}; ///< where what is spread along it hangs
    Vec3 end_m{};
};

Rest restOf(const Piece& piece, double wood_kg_m3, double start_m)
{
    const double left = piece.length_m - start_m;
    const double share = left / piece.length_m;
    const double thick = piece.thick_m + (1.0 - share) * (piece.thin_m - piece.thick_m);
    const Frustum wood = frustum(thick, piece.thin_m, left);
    const auto at = [&](double along) { return piece.from_m + along * piece.direction; };
    return {share, hung(wood.volume_m3 * wood_kg_m3, at(start_m + wood.centre_m)),
            at(start_m + left / 2.0), at(piece.length_m)};
}

} // namespace

Weights weightsOf(const Piece& piece, double wood_kg_m3, double start_m)
{
    const Rest rest = restOf(piece, wood_kg_m3, start_m);
    const auto spread = [&](double mass_kg) { return hung(rest.share * mass_kg, rest.middle_m); };
    return {rest.wood, spread(piece.leafy_kg), spread(piece.fruit_kg),
            spread(piece.rain_kg + piece.ice_kg), hung(-piece.prop_kg, rest.end_m)}; // (L18, L30)
}

Weight weightOf(const Piece& piece, double wood_kg_m3, double start_m)
{
    const Rest rest = restOf(piece, wood_kg_m3, start_m);
    Weight all = rest.wood;
    add(all, hung(rest.share * (piece.leafy_kg + piece.fruit_kg + piece.rain_kg + piece.ice_kg),
                  rest.middle_m));
    add(all, hung(-piece.prop_kg, rest.end_m));
    return all;
}

Drag dragOf(const Piece& piece, const PieceDrag& drag, std::size_t bearing, double start_m)
{
    // Bare wood catches wind by its width, which tapers; a leafy body does evenly.
    const double left = piece.length_m - start_m;
    double share = left / piece.length_m;
    double shift = start_m / 2.0;
    if (piece.bare()) {
        const double thick = piece.thick_m + (1.0 - share) * (piece.thin_m - piece.thick_m);
        const auto middle = [&](double from, double length) {
            return length * (from + 2.0 * piece.thin_m) / (3.0 * (from + piece.thin_m));
        };
        share *= (thick + piece.thin_m) / (piece.thick_m + piece.thin_m);
        shift = start_m + middle(thick, left) - middle(piece.thick_m, piece.length_m);
    }
    const Vec3 at = drag.centre_m + shift * piece.direction;
    const double force = share * drag.force_N[bearing];
    return {force, force * at.x, force * at.y, force * at.z}; // (L18)
}

Vec3 momentAbout(const Weight& weight, Vec3 point_m)
{
    return {-kGravity_m_s2 * (weight.north_kgm - point_m.y * weight.mass_kg),
            kGravity_m_s2 * (weight.east_kgm - point_m.x * weight.mass_kg), 0.0}; // (L19)
}

Vec3 momentAbout(const Drag& drag, Vec3 towards, Vec3 point_m)
{
    const Vec3 lever = Vec3{drag.east_Nm, drag.north_Nm, drag.up_Nm} - drag.force_N * point_m;
    return cross(lever, towards); // (L19)
}

Peak worstStress(const Piece& piece, const Weight& weight, const DragSums& drag,
                 const PerBearing& share, double windScale)
{
    BothWays all;
    stresses(piece, weight, drag, share, windScale, all);
    Peak peak;
    for (const bool opposite : {false, true}) {
        const auto& stress = opposite ? all.opposite_Pa : all.stress_Pa;
        for (std::size_t i = 0; i < kHalfTurn; ++i)
            if (stress[i] > peak.stress_Pa)
                peak = {stress[i], i, opposite};
    }
    return peak;
}

double stressBound_Pa(const Piece& piece, const Weight& weight, const DragSums& drag,
                      const PerBearing& share, double windScale)
{
    const Vec3 still = momentAbout(weight, piece.from_m);
    Most wind;
    mostOfWind(piece.from_m, still, drag, share, windScale, wind);
    const Vec3 t = piece.direction;
    const double moment = std::sqrt(dot(still, still) + wind.square_N2m2);
    const double axial = weight.mass_kg * kGravity_m_s2 * std::abs(t.z) +
                         wind.force_N * std::sqrt(t.x * t.x + t.y * t.y);
    // Twist counts by less than bending where the section resists it twice as well, as a round one
    // does: then the whole moment, taken as bending, bounds both together.
    const double perBending =
        std::max(1.0 / piece.section.bending_m3, 2.0 / piece.section.torsion_m3);
    constexpr double kRounding = 1.0 + 1e-12;
    return kRounding * (axial / piece.section.area_m2 + moment * perBending);
}

} // namespace model::load
