#include "model/light/lane_work.inl.hpp"

namespace model::light {

const LaneWork kPlainLanes = kWork;

const LaneWork& laneWork()
{
#if defined(UNDERBOUGH_WIDE_LANES)
    static const bool wide = __builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma");
    return wide ? kWideLanes : kPlainLanes;
#else
    return kPlainLanes;
#endif
}

} // namespace model::light
