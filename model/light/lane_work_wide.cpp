#include "model/light/lane_work.inl.hpp"

namespace model::light {

const LaneWork kWideLanes = kWork; // compiled for AVX2 and FMA, see CMakeLists.txt

} // namespace model::light
