#include "model/light/beam.hpp"

#include <algorithm>
#include <bit>
#include <cmath>

namespace model::light {
namespace {

/// Rays of a pack that a capsule has to show room for, to be held against all of them at once.
constexpr float kWide = 2.0F;

AimedSheet aimedSheet(const Curtain& sheet, const BeamFrame& frame)
{
    AimedSheet aimed;
    const Vec3 along = sheet.b - sheet.a;
    const double level = std::hypot(along.x, along.y);
    if (!(level > 1e-6 && sheet.hang_m > 0.0))
        return aimed;
    const Vec3 normal{-along.y / level, along.x / level, 0.0};
    const Vec3 run{along.x / (level * level), along.y / (level * level), 0.0};
    // Down the curtain: (height of the limb there - height) / hang, both linear in the place.
    const Vec3 down = (1.0 / sheet.hang_m) * (along.z * run - Vec3{0.0, 0.0, 1.0});
    const double facing = dot(normal, frame.towards);
    aimed.edgeOn = std::abs(facing) < 1e-5;
    if (aimed.edgeOn)
        return aimed;
    const auto f = [](double value) { return static_cast<float>(value); };
    aimed.depth = f(dot(normal, sheet.a) / facing);
    aimed.depthPerAside = f(-dot(normal, frame.aside) / facing);
    aimed.depthPerUp = f(-dot(normal, frame.up) / facing);
    aimed.half = f(sheet.radius_m / std::abs(facing));
    aimed.along = f(-dot(run, sheet.a));
    aimed.alongPerAside = f(dot(run, frame.aside));
    aimed.alongPerUp = f(dot(run, frame.up));
    aimed.alongPerDepth = f(dot(run, frame.towards));
    aimed.down = f(-dot(down, sheet.a));
    aimed.downPerAside = f(dot(down, frame.aside));
    aimed.downPerUp = f(dot(down, frame.up));
    aimed.downPerDepth = f(dot(down, frame.towards));
    return aimed;
}

/// With S the ellipsoid's matrix in the beam's axes, its outline is that of S without depth, and
/// the middle of a chord follows the depths of S as a mean follows what it is conditioned on.
AimedEllipsoid aimedCrown(const Ellipsoid& crown, const BeamFrame& frame)
{
    AimedEllipsoid aimed;
    if (!(reach_m(crown) > 0.0))
        return aimed;
    const auto across = projected(crown, frame.aside, frame.up);
    const auto asideDepth = projected(crown, frame.aside, frame.towards);
    const auto upDepth = projected(crown, frame.up, frame.towards);
    const double det = across.xx * across.yy - across.xy * across.xy;
    const double perAside = (across.yy * asideDepth.xy - across.xy * upDepth.xy) / det;
    const double perUp = (across.xx * upDepth.xy - across.xy * asideDepth.xy) / det;
    const double rest = upDepth.yy - perAside * asideDepth.xy - perUp * upDepth.xy;
    const auto f = [](double value) { return static_cast<float>(value); };
    aimed.aside = f(dot(frame.aside, crown.middle_m));
    aimed.up = f(dot(frame.up, crown.middle_m));
    aimed.depth = f(dot(frame.towards, crown.middle_m));
    aimed.depthPerAside = f(perAside);
    aimed.depthPerUp = f(perUp);
    aimed.xx = f(across.yy / det);
    aimed.xy = f(-across.xy / det);
    aimed.yy = f(across.xx / det);
    aimed.half = f(std::sqrt(std::max(0.0, rest)));
    return aimed;
}

void widen(EightWindows& windows, const EightWindows& by)
{
    for (std::size_t i = 0; i < kLanes; ++i) {
        windows.asideLow[i] = std::min(windows.asideLow[i], by.asideLow[i]);
        windows.asideHigh[i] = std::max(windows.asideHigh[i], by.asideHigh[i]);
        windows.upLow[i] = std::min(windows.upLow[i], by.upLow[i]);
        windows.upHigh[i] = std::max(windows.upHigh[i], by.upHigh[i]);
    }
}

} // namespace

BeamFrame beamFrame(Vec3 towards)
{
    const double level = std::hypot(towards.x, towards.y);
    const Vec3 aside =
        level > 1e-9 ? Vec3{-towards.y / level, towards.x / level, 0.0} : Vec3{1.0, 0.0, 0.0};
    return {towards, aside, cross(towards, aside)};
}

BeamAxes beamAxes(const BeamFrame& frame)
{
    const auto floats = [](Vec3 axis) {
        return std::array{static_cast<float>(axis.x), static_cast<float>(axis.y),
                          static_cast<float>(axis.z)};
    };
    return {floats(frame.towards), floats(frame.aside), floats(frame.up)};
}

AimedPack aimed(const Pack& pack, const BeamFrame& frame)
{
    AimedPack result;
    laneWork().aimPack(pack, beamAxes(frame), result);
    return result;
}

void TreeBeam::aim(const BeamFrame& frame)
{
    frame_ = frame;
    axes_ = beamAxes(frame);
    ++turn_;
    nested_.aim(work_, axes_);
    window_ = nested_.whole(work_);
}

void TreeBeam::aimEight(Eight& eight)
{
    if (eight.turn == turn_)
        return;
    eight.turn = turn_;
    if (eight.kind == Eight::Kind::capsules)
        return work_.aimCapsules(capsules_[eight.first], axes_, aimed_[eight.first]);
    if (eight.kind == Eight::Kind::crowns) {
        for (std::size_t i = eight.first; i < eight.first + kLanes; ++i)
            aimedCrowns_[i] = aimedCrown(crowns_[i], frame_);
        return;
    }
    for (std::size_t edge = eight.first; edge < eight.first + 4; ++edge) {
        work_.aimCapsules(edges_[edge], axes_, aimedEdges_[edge]);
        widen(aimedEdges_[eight.first].windows, aimedEdges_[edge].windows);
    }
    for (std::size_t i = eight.firstSheet; i < eight.firstSheet + kLanes; ++i)
        aimedSheets_[i] = aimedSheet(sheets_[i], frame_);
}

void TreeBeam::addCandidates(const Eight& eight, std::uint32_t firstBody, const Window& window)
{
    const bool crowns = eight.kind == Eight::Kind::crowns;
    const AimedCapsules* const edges = crowns ? nullptr : &aimedEdges_[eight.first];
    unsigned left = crowns ? (1U << kLanes) - 1 : work_.meeting(edges->windows, window);
    for (; left != 0; left &= left - 1) {
        const auto lane = static_cast<std::uint32_t>(std::countr_zero(left));
        if (!crowns) {
            curtains_.push_back({edges, lane, firstBody + lane});
            curtainSheets_.push_back(&aimedSheets_[eight.firstSheet + lane]);
        } else if (aimedCrowns_[eight.first + lane].half != kNothing) {
            wholes_.push_back({nullptr, lane, firstBody + lane});
            wholeCrowns_.push_back(&aimedCrowns_[eight.first + lane]);
        }
    }
}

void TreeBeam::findMet(const Window& window)
{
    met_.clear();
    wideCount_ = 0;
    curtains_.clear();
    curtainSheets_.clear();
    wholes_.clear();
    wholeCrowns_.clear();
    const float perRay_m2 = (window.asideHigh - window.asideLow) * (window.upHigh - window.upLow) /
                            static_cast<float>(kLanes);
    for (const std::uint32_t index : nested_.met(work_, window)) {
        Eight& eight = eights_[index];
        const auto firstBody = static_cast<std::uint32_t>(index * kLanes);
        if (eight.kind != Eight::Kind::capsules) {
            aimEight(eight);
            addCandidates(eight, firstBody, window);
            continue;
        }
        if (eight.across_m2 > kWide * perRay_m2) {
            aimEight(eight);
            wideCount_ += work_.candidates(aimed_[eight.first].windows, window, firstBody,
                                           &wide_[wideCount_]);
            continue;
        }
        if (eight.outlineTurn != turn_)
            work_.outline(capsules_[eight.first], axes_, outlines_[eight.first]);
        eight.outlineTurn = turn_;
        met_.push_back({&outlines_[eight.first], firstBody});
    }
}

void TreeBeam::crossings(const AimedPack& pack, Crossings& found)
{
    findMet(pack.window);
    CrossingRows rows = found.open(limbs_.size());
    if (wideCount_ > 0)
        work_.crossWideCapsules({wide_.data(), wideCount_}, aimed_.data(), names_.data(), pack,
                                rows);
    if (!curtains_.empty())
        work_.crossCurtains(curtains_, curtainSheets_.data(), names_.data(), pack, rows);
    if (!wholes_.empty())
        work_.crossEllipsoids(wholes_, wholeCrowns_.data(), names_.data(), pack, rows);
    if (!met_.empty())
        work_.crossCapsules(met_, {single_.data(), names_.data()}, pack, axes_, rows);
    found.close(rows);
}

namespace {

Rows rows(std::span<const Crossing> crossings, const TreeBeam& tree)
{
    thread_local std::vector<Lanes> scratch; // kept: asked for every pack and tree
    const std::size_t room = scratchLanes(crossings.size(), tree.densities().size());
    if (scratch.size() < room)
        scratch.resize(2 * room);
    return {crossings.data(), crossings.size(), tree.densities(), scratch.data()};
}

} // namespace

void leafyPath(std::span<const Crossing> crossings, const TreeBeam& tree, Lanes& path, Lanes& wood)
{
    laneWork().pathAndWood(rows(crossings, tree), path, wood);
}

void limbLosses(std::span<const Crossing> crossings, const TreeBeam& tree,
                std::span<const LimbRange> limbs, const LimbLight& light,
                std::span<LimbLoss> losses)
{
    laneWork().limbLosses(rows(crossings, tree), limbs, light, losses.data());
}

void limbShares(std::span<const Crossing> crossings, const TreeBeam& tree, LimbRange limb,
                float extinction_1_m, Lanes& without, Lanes& only)
{
    laneWork().limbShares(rows(crossings, tree), limb, extinction_1_m, without, only);
}

void through(const Lanes& path, const Lanes& wood, float extinction_1_m, Lanes& share)
{
    laneWork().through(path, wood, extinction_1_m, share);
}

} // namespace model::light
