// The body of lane_work.cpp and of lane_work_wide.cpp, which differ in the processor they are
// compiled for. Everything is local to the file: a function shared by both could run where the
// processor does not know its instructions.
// clang-format off: each needs those before it
#include "model/light/lane_aims.inl.hpp"
#include "model/light/lane_crossings.inl.hpp"
#include "model/light/lane_meetings.inl.hpp"
#include "model/light/lane_unions.inl.hpp"
// clang-format on

namespace model::light {
namespace {

constexpr LaneWork kWork{aimPack,     aimBoxes,          aimCapsules,   around,
                         meeting,     metInside,         outline,       crossCapsules,
                         candidates,  crossWideCapsules, crossCurtains, crossEllipsoids,
                         pathAndWood, limbShares,        limbLosses,    limbsMet,
                         through};

} // namespace
} // namespace model::light
