#pragma once

#include "model/load/pieces.hpp"

#include <array>
#include <cstddef>

namespace model::load {

/// Directions reckoned with: every 10 degrees. Wind from a bearing and from the opposite one meets
/// the same outline, so half a turn is enough and each direction is used both ways.
inline constexpr std::size_t kHalfTurn = 18;
inline constexpr double kBearingStep_deg = 10.0;
using PerBearing = std::array<double, kHalfTurn>;

/// Unit vectors along which wind FROM the bearings i x 10 degrees blows.
struct Directions {
    PerBearing east{};
    PerBearing north{};
};
[[nodiscard]] const Directions& directions();
[[nodiscard]] inline Vec3 blowsTowards(std::size_t index)
{
    return {directions().east[index], directions().north[index], 0.0};
}

/// What weighs beyond a place: mass, and mass times level distance from the stem.
struct Weight {
    double mass_kg{};
    double east_kgm{};
    double north_kgm{};
};

/// Weight by what it is made of, for the kinds are known to different degrees.
struct Weights {
    Weight wood{};
    Weight leafy{}; ///< leaf and twigs
    Weight fruit{};
    Weight weather{}; ///< rain and ice
    Weight props{};   ///< what props take off, below 0
};

/// Drag on what lies beyond a place in one direction: force, and force times position. All its
/// forces point the same way, so these four sums give the moment about any point.
struct Drag {
    double force_N{};
    double east_Nm{};
    double north_Nm{};
    double up_Nm{};
};

/// Drag for all directions at once.
struct DragSums {
    PerBearing force_N{};
    PerBearing east_Nm{};
    PerBearing north_Nm{};
    PerBearing up_Nm{};
    [[nodiscard]] Drag from(std::size_t bearing) const
    {
        return {force_N[bearing], east_Nm[bearing], north_Nm[bearing], up_Nm[bearing]};
    }
};

/// The drag of one piece from each direction.
struct PieceDrag {
    Vec3 centre_m{}; ///< where it acts
    PerBearing force_N{};
    PerBearing outline_m2{}; ///< seen from there, alone
};

void add(Weight& whole, const Weight& part);
void add(Weights& whole, const Weights& part);
void add(DragSums& whole, const DragSums& part);
void add(DragSums& whole, const PieceDrag& part);
void add(Drag& whole, const Drag& part);

/// Weights of a piece from `start_m` along it to its end (L18), by kind and together.
[[nodiscard]] Weights weightsOf(const Piece& piece, double wood_kg_m3, double start_m = 0.0);
[[nodiscard]] Weight weightOf(const Piece& piece, double wood_kg_m3, double start_m = 0.0);

/// Drag of a piece from `start_m` along it to its end (L18).
[[nodiscard]] Drag dragOf(const Piece& piece, const PieceDrag& drag, std::size_t bearing,
                          double start_m);

/// Moment of weight about a point, N m (L19).
[[nodiscard]] Vec3 momentAbout(const Weight& weight, Vec3 point_m);

/// Moment about a point, N m, of drag that blows along the level unit vector `towards` (L19).
[[nodiscard]] Vec3 momentAbout(const Drag& drag, Vec3 towards, Vec3 point_m);

/// The worst stress over all directions at one section.
struct Peak {
    double stress_Pa{};
    std::size_t bearing{}; ///< index into half a turn
    bool opposite{};       ///< the wind comes from the other end of that bearing
};

/// Greatest principal stress at the start of a piece under weight and wind, all directions both
/// ways (L10, L19).
/// \param share      of the summed drag that is left in each other's lee
/// \param windScale  how much stronger the drag is than summed
[[nodiscard]] Peak worstStress(const Piece& piece, const Weight& weight, const DragSums& drag,
                               const PerBearing& share, double windScale = 1.0);

/// At least what worstStress() of the same comes to, Pa, and seldom much more (L21): for a fraction
/// of its work.
[[nodiscard]] double stressBound_Pa(const Piece& piece, const Weight& weight, const DragSums& drag,
                                    const PerBearing& share, double windScale = 1.0);

} // namespace model::load
