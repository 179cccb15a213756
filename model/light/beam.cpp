#include "model/light/beam.hpp"

#include <algorithm>
#include <cmath>

namespace model::light {
namespace {

constexpr float kFar = kMissed;
constexpr float kHardlyAny_m = 1e-6F;

} // namespace

BeamFrame beamFrame(Vec3 towards)
{
    const double level = std::hypot(towards.x, towards.y);
    const Vec3 aside =
        level > 1e-9 ? Vec3{-towards.y / level, towards.x / level, 0.0} : Vec3{1.0, 0.0, 0.0};
    return {towards, aside, cross(towards, aside)};
}

AimedPack aimed(const Pack& pack, const BeamFrame& frame)
{
    const auto project = [&pack](Vec3 axis, Lanes& out) {
        const auto ax = static_cast<float>(axis.x);
        const auto ay = static_cast<float>(axis.y);
        const auto az = static_cast<float>(axis.z);
        for (std::size_t i = 0; i < kLanes; ++i)
            out[i] = pack.x[i] * ax + pack.y[i] * ay + pack.z[i] * az;
    };
    AimedPack result;
    project(frame.aside, result.aside);
    project(frame.up, result.up);
    project(frame.towards, result.depth);
    result.window = {result.aside[0], result.aside[0], result.up[0], result.up[0]};
    for (std::size_t i = 1; i < kLanes; ++i) {
        result.window.asideLow = std::min(result.window.asideLow, result.aside[i]);
        result.window.asideHigh = std::max(result.window.asideHigh, result.aside[i]);
        result.window.upLow = std::min(result.window.upLow, result.up[i]);
        result.window.upHigh = std::max(result.window.upHigh, result.up[i]);
    }
    return result;
}

TreeBeam::TreeBeam(const Canopy& canopy, Vec3 origin)
{
    for (const auto& body : canopy.leaves)
        addSolid(body.solid, origin, {static_cast<float>(body.density), body.limb});
    for (const auto& body : canopy.wood)
        addSolid(body.solid, origin, {0.0F, body.limb});
    firstCapsule_.push_back(capsules_.size());
    for (const auto& kind : kinds_)
        if (kind.density > 0.0F)
            densities_.push_back(kind.density);
    std::ranges::sort(densities_);
    const auto rest = std::ranges::unique(densities_);
    densities_.erase(rest.begin(), rest.end());
    const std::size_t padded = (solids_.size() + kLanes - 1) / kLanes * kLanes;
    // Padding is a window that nothing meets.
    asideLow_.assign(padded, kFar);
    asideHigh_.assign(padded, -kFar);
    upLow_.assign(padded, kFar);
    upHigh_.assign(padded, -kFar);
}

void TreeBeam::addSolid(const Curtain& curtain, Vec3 origin, BodyKind kind)
{
    const auto near = [origin](Vec3 p) {
        return Point{static_cast<float>(p.x - origin.x), static_cast<float>(p.y - origin.y),
                     static_cast<float>(p.z - origin.z)};
    };
    solids_.push_back({near(curtain.a), near(curtain.b), static_cast<float>(curtain.radius_m),
                       static_cast<float>(curtain.hang_m)});
    kinds_.push_back(kind);
    firstCapsule_.push_back(capsules_.size());
    const bool hangs = curtain.hang_m > kHardlyAny_m;
    capsules_.resize(capsules_.size() + (hangs ? 4 : 1));
    const Vec3 along = curtain.b - curtain.a;
    const bool wide = std::hypot(along.x, along.y) > kHardlyAny_m;
    sheet_.push_back(hangs && wide ? sheets_.size() : kNoSheet);
    if (hangs && wide)
        sheets_.emplace_back();
}

void TreeBeam::aim(const BeamFrame& frame)
{
    whole_ = {kFar, -kFar, kFar, -kFar};
    for (std::size_t body = 0; body < solids_.size(); ++body) {
        aimSolid(body, frame);
        whole_.asideLow = std::min(whole_.asideLow, asideLow_[body]);
        whole_.asideHigh = std::max(whole_.asideHigh, asideHigh_[body]);
        whole_.upLow = std::min(whole_.upLow, upLow_[body]);
        whole_.upHigh = std::max(whole_.upHigh, upHigh_[body]);
    }
}

void TreeBeam::aimSolid(std::size_t body, const BeamFrame& frame)
{
    const auto& solid = solids_[body];
    const auto onto = [](Vec3 axis, Point p) {
        return static_cast<float>(axis.x) * p.x + static_cast<float>(axis.y) * p.y +
               static_cast<float>(axis.z) * p.z;
    };
    const std::array corner{solid.a, solid.b, Point{solid.b.x, solid.b.y, solid.b.z - solid.hang},
                            Point{solid.a.x, solid.a.y, solid.a.z - solid.hang}};
    std::array<Point, 4> seen; // aside, up, depth
    const std::size_t count = firstCapsule_[body + 1] - firstCapsule_[body];
    const std::size_t corners = count == 1 ? 2 : 4;
    Window window{kFar, -kFar, kFar, -kFar};
    for (std::size_t i = 0; i < corners; ++i) {
        seen[i] = {onto(frame.aside, corner[i]), onto(frame.up, corner[i]),
                   onto(frame.towards, corner[i])};
        window.asideLow = std::min(window.asideLow, seen[i].x - solid.radius);
        window.asideHigh = std::max(window.asideHigh, seen[i].x + solid.radius);
        window.upLow = std::min(window.upLow, seen[i].y - solid.radius);
        window.upHigh = std::max(window.upHigh, seen[i].y + solid.radius);
    }
    asideLow_[body] = window.asideLow;
    asideHigh_[body] = window.asideHigh;
    upLow_[body] = window.upLow;
    upHigh_[body] = window.upHigh;
    for (std::size_t i = 0; i < count; ++i) {
        const Point& a = seen[i];
        const Point& b = seen[(i + 1) % corners];
        const float dAside = b.x - a.x;
        const float dUp = b.y - a.y;
        const float dDepth = b.z - a.z;
        const float run = std::sqrt(dAside * dAside + dUp * dUp);
        const float length = std::sqrt(run * run + dDepth * dDepth);
        AimedCapsule& capsule = capsules_[firstCapsule_[body] + i];
        // An axis along the ray, or none at all, is two balls to it: a huge 1/sine puts every
        // point of its side beyond its ends.
        const bool slanted = run > 1e-5F * length && length > kHardlyAny_m;
        capsule = {a.x,
                   a.y,
                   a.z,
                   b.z,
                   slanted ? dAside / run : 1.0F,
                   slanted ? dUp / run : 0.0F,
                   slanted ? run : 0.0F,
                   length > kHardlyAny_m ? length : 0.0F,
                   slanted ? length / run : 1e5F,
                   length > kHardlyAny_m ? dDepth / length : 1.0F,
                   slanted ? dDepth / run : 0.0F,
                   solid.radius * solid.radius};
    }
    if (sheet_[body] == kNoSheet)
        return;
    const Vec3 along{solid.b.x - solid.a.x, solid.b.y - solid.a.y, solid.b.z - solid.a.z};
    const double level = std::hypot(along.x, along.y);
    const Vec3 normal{-along.y / level, along.x / level, 0.0};
    const Vec3 run{along.x / (level * level), along.y / (level * level), 0.0};
    const Vec3 a{solid.a.x, solid.a.y, solid.a.z};
    // Down the curtain: (height of the limb there - height) / hang, both linear in the place.
    const Vec3 down = (1.0 / solid.hang) * (along.z * run - Vec3{0.0, 0.0, 1.0});
    const double facing = dot(normal, frame.towards);
    AimedSheet& sheet = sheets_[sheet_[body]];
    sheet.edgeOn = std::abs(facing) < 1e-5;
    if (sheet.edgeOn)
        return;
    const auto f = [](double value) { return static_cast<float>(value); };
    sheet.depth = f(dot(normal, a) / facing);
    sheet.depthPerAside = f(-dot(normal, frame.aside) / facing);
    sheet.depthPerUp = f(-dot(normal, frame.up) / facing);
    sheet.half = f(solid.radius / std::abs(facing));
    sheet.along = f(-dot(run, a));
    sheet.alongPerAside = f(dot(run, frame.aside));
    sheet.alongPerUp = f(dot(run, frame.up));
    sheet.alongPerDepth = f(dot(run, frame.towards));
    sheet.down = f(-dot(down, a));
    sheet.downPerAside = f(dot(down, frame.aside));
    sheet.downPerUp = f(dot(down, frame.up));
    sheet.downPerDepth = f(dot(down, frame.towards));
}

} // namespace model::light
