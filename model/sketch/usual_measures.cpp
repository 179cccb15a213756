#include "model/sketch/first_tree.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace model::sketch {
namespace {

// Least squares over the 149 trees of tests/published/urban-trees.csv (C7, K3).
constexpr double kHeightStart = 0.3480; // ln m
constexpr double kHeightSlope = 0.5809; // per ln cm
constexpr double kSpreadStart = -0.3476;
constexpr double kSpreadSlope = 0.7157;

// Common practice, no source.
constexpr double kTrainedHeight_m = 12.0; // fruit trees that grow higher are left to themselves
constexpr double kKeptLow = 0.7;          // of the height that a trained tree would grow to

bool narrow(Habit habit)
{
    return habit == Habit::conical || habit == Habit::columnar;
}

bool trained(Habit habit)
{
    return habit == Habit::openCentre || habit == Habit::centralLeader || habit == Habit::espalier;
}

/// Spread over height.
double narrowness(const Species& species, Habit habit)
{
    const auto& size = species.practice;
    if (size.crownHabit == "conical" || size.crownHabit == "columnar")
        return (size.spreadLow_m + size.spreadHigh_m) / (size.heightLow_m + size.heightHigh_m);
    return habit == Habit::columnar ? 0.3 : 0.5; // assumed
}

// Assumed: where a stem is mostly cleared to, and where training starts the first limbs.
double lowestLimb_m(Habit habit, double height_m)
{
    const double share = habit == Habit::conical || habit == Habit::columnar ? 0.1 : 0.22;
    return trained(habit) ? std::min(0.6, 0.25 * height_m) : std::max(0.3, share * height_m);
}

} // namespace

Habit usualHabit(const Species& species)
{
    const auto& habit = species.practice.crownHabit;
    const bool fruit = species.practice.role == "fruit";
    if (habit == "weeping")
        return Habit::weeping;
    if (habit == "conical")
        return Habit::conical;
    if (habit == "columnar")
        return Habit::columnar;
    if (fruit && species.practice.heightHigh_m <= kTrainedHeight_m)
        return habit == "upright" ? Habit::centralLeader : Habit::openCentre;
    return habit == "vase" ? Habit::vase : Habit::spreading;
}

FirstMeasures usualMeasures(const Species& species, double stemDiameter_m, Habit habit)
{
    if (!(stemDiameter_m > 0.0))
        throw std::domain_error("usualMeasures: need a stem");
    const auto& size = species.practice;
    const double d = std::log(100.0 * stemDiameter_m);
    FirstMeasures usual;
    usual.stemDiameter_m = stemDiameter_m;
    usual.habit = habit;
    usual.height_m = std::exp(kHeightStart + kHeightSlope * d);
    usual.spread_m = std::exp(kSpreadStart + kSpreadSlope * d);
    if (narrow(habit)) {
        const double slimmer =
            std::min(1.0, std::sqrt(narrowness(species, habit) * usual.height_m / usual.spread_m));
        usual.height_m /= slimmer;
        usual.spread_m *= slimmer;
    }
    if (trained(habit))
        usual.height_m *= kKeptLow;
    usual.height_m = std::clamp(usual.height_m, 1.0, std::max(1.0, size.heightHigh_m));
    usual.spread_m = std::clamp(usual.spread_m, 0.5, std::max(0.5, size.spreadHigh_m));
    if (habit == Habit::espalier) {
        usual.height_m = std::min(usual.height_m, 2.4); // common practice, no source
        usual.spread_m = std::clamp(usual.spread_m, 2.0, 5.0);
    }
    usual.lowestLimb_m = lowestLimb_m(habit, usual.height_m);
    return usual;
}

} // namespace model::sketch
