#include "model/light/beam.hpp"
#include "model/light/neighbours.hpp"

#include <algorithm>
#include <cmath>

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
    const double length_m = norm(b - a);
    f(length_m > kHardlyAny_m ? 1.0 / length_m : 0.0, eight.perLength);
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
    for (auto* solids : {&plain, &hanging, &wood}) {
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
    aimedCrowns_.resize(crowns_.size());
    aimedSheets_.resize(sheets_.size());
    // Room for a whole eight more, for those that are not met are written too.
    candidates_.resize(limbs_.size() + kLanes);
    curtains_.resize(sheets_.size() + kLanes);
    curtainSheets_.resize(sheets_.size() + kLanes);
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
    eights_.push_back({edges_.size(), sheets_.size(), hangs, false, 0, 0});
    EightCapsules none;
    none.radius = allLanes(kNothing);
    const std::size_t first = edges_.size();
    edges_.resize(first + (hangs ? 4 : 1), none);
    aimed_.resize(edges_.size());
    for (std::size_t lane = 0; lane < kLanes; ++lane) {
        limbs_.push_back(lane < solids.size() ? solids[lane].limb : 0);
        if (hangs)
            sheets_.push_back(lane < solids.size() ? solids[lane].curtain : Curtain{});
        if (lane >= solids.size())
            continue;
        aimed_[first].density[lane] = solids[lane].density;
        aimed_[first].limbs[lane] = static_cast<std::int32_t>(limbs_.back());
        const auto& curtain = solids[lane].curtain;
        if (!hangs) {
            put(curtain.a, curtain.b, curtain.radius_m, lane, edges_[first]);
            continue;
        }
        const auto corner = corners(curtain);
        for (std::size_t edge = 0; edge < 4; ++edge)
            put(corner[edge], corner[(edge + 1) % 4], curtain.radius_m, lane, edges_[first + edge]);
    }
}

void TreeBeam::numberLimbs(std::span<const std::size_t> numbers)
{
    for (std::size_t body = 0; body < limbs_.size(); ++body)
        if (limbs_[body] < numbers.size())
            aimed_[eights_[body / kLanes].firstEdges].limbs[body % kLanes] =
                static_cast<std::int32_t>(numbers[limbs_[body]]);
}

void TreeBeam::addCrowns(std::span<const CrownBody> crowns, Vec3 origin, std::vector<Box>& boxes)
{
    // Crowns are no capsules: of the block of these only the names are used.
    eights_.push_back({edges_.size(), 0, false, true, crowns_.size(), 0});
    edges_.emplace_back().radius = allLanes(kNothing);
    auto& names = aimed_.emplace_back();
    for (std::size_t lane = 0; lane < kLanes; ++lane) {
        const bool there = lane < crowns.size();
        limbs_.push_back(0);
        names.density[lane] = there ? static_cast<float>(crowns[lane].density) : 0.0F;
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
