#include "model/sketch/habit_shape.hpp"

#include <algorithm>
#include <cmath>

namespace model::sketch {
namespace {

double full(double)
{
    return 1.0;
}

/// A round head: widest a little below its middle.
double round(double at)
{
    const double up = (at - 0.3) / 0.8;
    return std::sqrt(std::max(0.1, 1.0 - up * up));
}

double cone(double at)
{
    return std::max(0.12, 1.0 - at);
}

double tiers(double at)
{
    return 1.0 - 0.55 * at;
}

double column(double at)
{
    return 1.0 - 0.3 * at;
}

HabitShape fork(int scaffolds, double tipTo, double stagger, double bowOut, double bowUp)
{
    HabitShape shape;
    shape.stemTop = 0.1;
    shape.highest = 0.1;
    shape.scaffolds = scaffolds;
    shape.tipTo = tipTo;
    shape.tipStagger = stagger;
    shape.bowOut = bowOut;
    shape.bowUp = bowUp;
    shape.laterals = 3;
    shape.leader = 0.0;
    shape.leaf = 0.14;
    shape.reach = full;
    return shape;
}

HabitShape vase()
{
    auto shape = fork(6, 1.0, 0.3, 0.25, 0.65);
    shape.lateralRise = 0.55;
    return shape;
}

HabitShape openCentre()
{
    auto shape = fork(5, 0.8, 0.1, 0.55, 0.45);
    shape.lateralRise = 0.45;
    return shape;
}

HabitShape spreading()
{
    HabitShape shape;
    shape.reach = round;
    return shape;
}

HabitShape weeping()
{
    HabitShape shape;
    shape.rise = -0.1;
    shape.arch = 0.55;
    shape.bowUp = 1.0;
    shape.bowOut = 0.6;
    shape.lateralRise = -0.1;
    shape.lateralBow = 0.2;
    shape.hanging = 0.22;
    shape.reach = round;
    return shape;
}

HabitShape conical()
{
    HabitShape shape;
    shape.scaffolds = 13;
    shape.highest = 0.85;
    shape.rise = 0.12;
    shape.lateralRise = 0.05;
    shape.leaf = 0.12;
    shape.leader = 0.2;
    shape.reach = cone;
    return shape;
}

HabitShape columnar()
{
    HabitShape shape;
    shape.scaffolds = 12;
    shape.rise = 2.5;
    shape.bowOut = 0.7;
    shape.bowUp = 0.4;
    shape.laterals = 1;
    shape.lateralRise = 0.85;
    shape.leaf = 0.22;
    shape.reach = column;
    return shape;
}

HabitShape centralLeader()
{
    HabitShape shape;
    shape.tiers = 3;
    shape.perTier = 4;
    shape.highest = 0.7;
    shape.rise = 0.35;
    shape.reach = tiers;
    return shape;
}

HabitShape espalier()
{
    HabitShape shape;
    shape.tiers = 4;
    shape.perTier = 2;
    shape.highest = 1.0;
    shape.rise = 0.03;
    shape.laterals = 0;
    shape.leaf = 0.06;
    shape.leader = 0.1;
    shape.reach = full;
    return shape;
}

} // namespace

HabitShape habitShape(Habit habit)
{
    switch (habit) {
    case Habit::vase:
        return vase();
    case Habit::spreading:
        break;
    case Habit::weeping:
        return weeping();
    case Habit::conical:
        return conical();
    case Habit::columnar:
        return columnar();
    case Habit::openCentre:
        return openCentre();
    case Habit::centralLeader:
        return centralLeader();
    case Habit::espalier:
        return espalier();
    }
    return spreading();
}

} // namespace model::sketch
