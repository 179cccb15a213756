#include "model/light/beam.hpp"
#include "model/light/neighbours.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace model::light {
namespace {

constexpr double kHardlyAny_m = 1e-6;

Box boxAround(const Curtain& curtain)
{
    const auto around = [&](double Vec3::*axis, double below) {
        const auto [low, high] = std::minmax(curtain.a.*axis, curtain.b.*axis);
        return std::pair{low - below - curtain.radius_m, high + curtain.radius_m};
    };
    const auto x = around(&Vec3::x, 0.0);
    const auto y = around(&Vec3::y, 0.0);
    const auto z = around(&Vec3::z, curtain.hang_m);
    return {{x.first, y.first, z.first}, {x.second, y.second, z.second}};
}

Box boxAround(const Ellipsoid& crown)
{
    const Vec3 half{std::hypot(crown.a.x, crown.b.x, crown.c.x),
                    std::hypot(crown.a.y, crown.b.y, crown.c.y),
                    std::hypot(crown.a.z, crown.b.z, crown.c.z)};
    return {crown.middle_m - half, crown.middle_m + half};
}

Box united(const Box& a, const Box& b)
{
    return {
        {std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y), std::min(a.low.z, b.low.z)},
        {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y), std::max(a.high.z, b.high.z)}};
}

float perLength(Vec3 a, Vec3 b)
{
    const double length_m = norm(b - a);
    return static_cast<float>(length_m > kHardlyAny_m ? 1.0 / length_m : 0.0);
}

/// Outline of a capsule, its axis seen from the middling angle: pi / 4 of its length.
double shown_m2(const Curtain& curtain)
{
    const double r = curtain.radius_m;
    return std::numbers::pi * r * r + 2.0 * r * norm(curtain.b - curtain.a) * std::numbers::pi / 4;
}

Capsule capsule(const Curtain& curtain)
{
    const auto f = [](double value) { return static_cast<float>(value); };
    const Vec3 a = curtain.a;
    const Vec3 along = curtain.b - curtain.a;
    return {f(a.x),
            f(a.y),
            f(a.z),
            f(along.x),
            f(along.y),
            f(along.z),
            f(curtain.radius_m),
            perLength(curtain.a, curtain.b)};
}

void put(Vec3 a, Vec3 b, double radius_m, std::size_t lane, EightCapsules& eight)
{
    const auto f = [lane](double value, Lanes& to) { to[lane] = static_cast<float>(value); };
    f(a.x, eight.ax);
    f(a.y, eight.ay);
    f(a.z, eight.az);
    f(b.x, eight.bx);
    f(b.y, eight.by);
    f(b.z, eight.bz);
    f(radius_m, eight.radius);
    eight.perLength[lane] = perLength(a, b);
}

} // namespace

TreeBeam::TreeBeam(const Canopy& canopy, Vec3 origin) : work_(laneWork())
{
    // Wood and leaves apart, since wood is thin and long; what hangs apart, since it is put
    // together differently.
    std::vector<Solid> plain;
    std::vector<Solid> hanging;
    std::vector<Solid> wood;
    for (const auto& body : canopy.leaves) {
        const bool hangs = body.solid.hang_m > kHardlyAny_m;
        (hangs ? hanging : plain)
            .push_back({body.solid, static_cast<float>(body.density), body.limb, hangs});
        densities_.push_back(static_cast<float>(body.density));
    }
    for (const auto& body : canopy.crowns)
        densities_.push_back(static_cast<float>(body.density));
    for (const auto& body : canopy.wood)
        wood.push_back({body.solid, 0.0F, body.limb, false});
    std::ranges::sort(densities_);
    const auto rest = std::ranges::unique(densities_);
    densities_.erase(rest.begin(), rest.end());
    std::vector<Box> boxes;
    for (auto* solids : {&plain, &wood, &hanging}) {
        for (auto& solid : *solids) {
            solid.curtain.a += -1.0 * origin;
            solid.curtain.b += -1.0 * origin;
        }
        addInEights(*solids, boxes);
    }
    for (std::size_t first = 0; first < canopy.crowns.size(); first += kLanes)
        addCrowns(
            std::span(canopy.crowns).subspan(first, std::min(kLanes, canopy.crowns.size() - first)),
            origin, boxes);
    outlines_.resize(capsules_.size());
    aimed_.resize(capsules_.size());
    wide_.resize(kLanes * (capsules_.size() + 1));
    aimedEdges_.resize(edges_.size());
    aimedCrowns_.resize(crowns_.size());
    aimedSheets_.resize(sheets_.size());
    nested_ = NestedBoxes(boxes);
}

void TreeBeam::addInEights(std::span<const Solid> solids, std::vector<Box>& boxes)
{
    std::vector<Vec3> middles;
    for (const auto& solid : solids)
        middles.push_back(centre(solid.curtain));
    std::vector<Solid> eight;
    for (const std::uint32_t i : byNeighbourhood(middles)) {
        const Box box = boxAround(solids[i].curtain);
        if (eight.empty())
            boxes.push_back(box);
        boxes.back() = united(boxes.back(), box);
        eight.push_back(solids[i]);
        if (eight.size() == kLanes) {
            addEight(eight);
            eight.clear();
        }
    }
    if (!eight.empty())
        addEight(eight);
}

void TreeBeam::addEight(std::span<const Solid> solids)
{
    const bool hangs = solids.front().hangs;
    auto& blocks = hangs ? edges_ : capsules_;
    const std::size_t first = blocks.size();
    eights_.push_back(
        {hangs ? Eight::Kind::curtains : Eight::Kind::capsules, first, sheets_.size(), 0.0F, 0, 0});
    EightCapsules none;
    none.radius = allLanes(kNothing);
    blocks.resize(first + (hangs ? 4 : 1), none);
    for (std::size_t lane = 0; lane < kLanes; ++lane) {
        const Solid solid = lane < solids.size() ? solids[lane] : Solid{};
        limbs_.push_back(solid.limb);
        names_.push_back({solid.density, static_cast<std::int32_t>(solid.limb)});
        single_.push_back(capsule(solid.curtain));
        if (hangs)
            sheets_.push_back(solid.curtain);
        if (lane >= solids.size())
            continue;
        const auto& curtain = solid.curtain;
        if (!hangs) {
            eights_.back().across_m2 +=
                static_cast<float>(shown_m2(curtain) / static_cast<double>(solids.size()));
            put(curtain.a, curtain.b, curtain.radius_m, lane, blocks[first]);
            continue;
        }
        const auto corner = corners(curtain);
        for (std::size_t edge = 0; edge < 4; ++edge)
            put(corner[edge], corner[(edge + 1) % 4], curtain.radius_m, lane, blocks[first + edge]);
    }
}

void TreeBeam::numberLimbs(std::span<const std::size_t> numbers)
{
    for (std::size_t body = 0; body < limbs_.size(); ++body)
        if (limbs_[body] < numbers.size())
            names_[body].limb = static_cast<std::int32_t>(numbers[limbs_[body]]);
}

void TreeBeam::addCrowns(std::span<const CrownBody> crowns, Vec3 origin, std::vector<Box>& boxes)
{
    eights_.push_back({Eight::Kind::crowns, crowns_.size(), 0, 0.0F, 0, 0});
    for (std::size_t lane = 0; lane < kLanes; ++lane) {
        const bool there = lane < crowns.size();
        limbs_.push_back(0);
        names_.push_back({there ? static_cast<float>(crowns[lane].density) : 0.0F, 0});
        single_.emplace_back();
        crowns_.push_back(there ? crowns[lane].solid : Ellipsoid{});
        if (!there)
            continue;
        crowns_.back().middle_m += -1.0 * origin;
        const Box box = boxAround(crowns_.back());
        if (lane == 0)
            boxes.push_back(box);
        boxes.back() = united(boxes.back(), box);
    }
}

} // namespace model::light
