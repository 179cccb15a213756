// The body of lane_work.cpp and of lane_work_wide.cpp, which differ in the processor they are
// compiled for. Everything is local to the file: a function shared by both could run where the
// processor does not know its instructions.
#include "model/light/lane_crossings.inl.hpp"
#include "model/light/lane_unions.inl.hpp"

namespace model::light {
namespace {

constexpr LaneWork kWork{aimPack,    aimBoxes,      aimCapsules,   around,          meeting,
                         candidates, crossCapsules, crossCurtains, crossEllipsoids, pathAndWood,
                         limbShares, limbsMet,      through};

} // namespace
} // namespace model::light
