#include "model/load/drag.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {

double crownDragCoefficient(DragGroup group, double gust_m_s)
{
    const double speed = std::clamp(gust_m_s, 8.0, 32.0);
    switch (group) { // (L4), each law with the tests it is tied to in docs/methods/load.md
    case DragGroup::flexible:
        return std::max(0.15, 0.20 * (20.0 / speed));
    case DragGroup::fineLeaved:
        return 0.17 * std::pow(speed / 30.0, -0.8);
    case DragGroup::medium:
        return 0.25 * std::pow(speed / 30.0, -0.7);
    case DragGroup::stiff:
        return 0.35 * std::pow(speed / 30.0, -0.5);
    case DragGroup::scaleConifer:
        return std::max(0.15, 0.22 * (20.0 / speed));
    case DragGroup::needleConifer:
        break;
    }
    return 0.47 * std::pow(speed / 20.0, -0.5);
}

double leaflessShare(LeafHabit habit)
{
    return habit == LeafHabit::evergreen ? 1.0 : 0.6;
}

} // namespace model::load
