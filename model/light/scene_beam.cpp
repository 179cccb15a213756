#include "model/light/scene_beam.hpp"

#include "model/light/neighbours.hpp"

#include <algorithm>
#include <cmath>

namespace model::light {

namespace {

constexpr float kBoxSlack_m = 1e-4F; // wider than float may round a place 1 km away

EightBoxes boxesAround(std::span<const Pack> packs)
{
    EightBoxes eight;
    eight.halfX = eight.halfY = eight.halfZ = allLanes(kNothing);
    const auto put = [](const Lanes& places, std::size_t i, Lanes& middle, Lanes& half) {
        const auto [low, high] = std::ranges::minmax(places);
        middle[i] = 0.5F * (low + high);
        half[i] = 0.5F * (high - low) + kBoxSlack_m;
    };
    for (std::size_t i = 0; i < packs.size(); ++i) {
        put(packs[i].x, i, eight.x, eight.halfX);
        put(packs[i].y, i, eight.y, eight.halfY);
        put(packs[i].z, i, eight.z, eight.halfZ);
    }
    return eight;
}

Box boxAround(const Ball& ball, Vec3 origin)
{
    const Vec3 reach{ball.radius_m, ball.radius_m, ball.radius_m};
    return {ball.middle_m - reach - origin, ball.middle_m + reach - origin};
}

} // namespace

Receivers receivers(std::span<const Vec3> points, Vec3 origin, std::string planting)
{
    Receivers result{packed(points, origin), {}, {}, std::move(planting)};
    for (const Vec3 point : points)
        result.bounds.middle_m += (1.0 / static_cast<double>(points.size())) * point;
    for (const Vec3 point : points)
        result.bounds.radius_m =
            std::max(result.bounds.radius_m, norm(point - result.bounds.middle_m));
    const std::span packs = result.packs;
    for (std::size_t first = 0; first < packs.size(); first += kLanes)
        result.packBoxes.push_back(
            boxesAround(packs.subspan(first, std::min(kLanes, packs.size() - first))));
    return result;
}

SceneBeam::SceneBeam(const Scene& scene, Vec3 origin)
    : scene_(scene), work_(laneWork()), origin_(origin), extinctions_(scene.trees.size()),
      turned_(scene.trees.size())
{
    trees_.reserve(scene.trees.size());
    std::vector<Vec3> middles;
    for (const auto& tree : scene.trees) {
        trees_.emplace_back(tree, origin);
        middles.push_back(tree.bounds.middle_m);
    }
    std::vector<Box> boxes;
    for (const std::uint32_t tree : byNeighbourhood(middles)) {
        boxed_.push_back(tree);
        boxes.push_back(boxAround(scene.trees[tree].bounds, origin));
    }
    treeBoxes_ = NestedBoxes(boxes);
}

void SceneBeam::aim(Vec3 towards)
{
    frame_ = beamFrame(towards);
    axes_ = beamAxes(frame_);
    treeBoxes_.aim(work_, axes_);
    std::ranges::fill(turned_, char{0});
}

void SceneBeam::turnTo(const Receivers& receivers)
{
    receivers_ = &receivers;
    packWindows_.resize(receivers.packBoxes.size());
    for (std::size_t i = 0; i < packWindows_.size(); ++i)
        work_.aimBoxes(receivers.packBoxes[i], axes_, packWindows_[i]);
    near_.clear();
    nearPacks_.clear();
    const Vec3 middle = receivers.bounds.middle_m - origin_;
    const auto aside = static_cast<float>(dot(frame_.aside, middle));
    const auto up = static_cast<float>(dot(frame_.up, middle));
    const auto reach = static_cast<float>(receivers.bounds.radius_m) + kBoxSlack_m;
    const Window whole{aside - reach, aside + reach, up - reach, up + reach};
    for (const std::uint32_t box : treeBoxes_.met(work_, whole))
        turnToTree(boxed_[box], receivers);
    turnToStructures(receivers);
}

void SceneBeam::turnToTree(std::size_t index, const Receivers& receivers)
{
    const Ball& tree = scene_.trees[index].bounds;
    const Vec3 ahead = tree.middle_m - receivers.bounds.middle_m;
    const double reach = tree.radius_m + receivers.bounds.radius_m;
    const double depth = dot(ahead, frame_.towards);
    if (depth < -reach || dot(ahead, ahead) - depth * depth > reach * reach)
        return;
    if (turned_[index] == 0) {
        trees_[index].aim(frame_);
        extinctions_[index] =
            static_cast<float>(light::extinction_1_m(scene_.trees[index], frame_.towards));
        turned_[index] = 1;
    }
    unsigned any = 0;
    const std::size_t before = nearPacks_.size();
    for (const auto& windows : packWindows_) {
        const unsigned packs = work_.meeting(windows, trees_[index].window());
        nearPacks_.push_back(static_cast<std::uint8_t>(packs));
        any |= packs;
    }
    if (any == 0)
        nearPacks_.resize(before);
    else
        near_.push_back(index);
}

void SceneBeam::turnToStructures(const Receivers& receivers)
{
    nearStructures_.clear();
    for (const auto& prism : scene_.structures) {
        if (!prism.planting.empty() && prism.planting == receivers.planting)
            continue;
        const double half_m = (prism.top_m - prism.base_m) / 2.0;
        const Vec3 ahead = Vec3{prism.middle_m.x, prism.middle_m.y, prism.base_m + half_m} -
                           receivers.bounds.middle_m;
        const double reach = std::hypot(prism.reach_m, half_m) + receivers.bounds.radius_m;
        const double depth = dot(ahead, frame_.towards);
        if (depth >= -reach && dot(ahead, ahead) - depth * depth <= reach * reach)
            nearStructures_.push_back(&prism);
    }
}

void SceneBeam::traceStructures(const Pack& pack, Lanes& share) const
{
    share = allLanes(1.0F);
    for (const Prism* prism : nearStructures_)
        for (std::size_t i = 0; i < pack.count; ++i) {
            const Vec3 from = origin_ + Vec3{pack.x[i], pack.y[i], pack.z[i]};
            share[i] *= static_cast<float>(transmittance(*prism, from, frame_.towards));
        }
}

void SceneBeam::trace(std::size_t index, PackLight& light)
{
    const Pack& pack = receivers_->packs[index];
    light.trees.clear();
    light.crossings.clear();
    traceStructures(pack, light.structures);
    light.all = light.structures;
    if (std::ranges::all_of(light.structures, [](float share) { return share == 0.0F; }))
        return;
    AimedPack seen;
    bool aimed = false;
    for (std::size_t i = 0; i < near_.size(); ++i) {
        const unsigned packs = nearPacks_[i * packWindows_.size() + index / kLanes];
        if ((packs >> index % kLanes & 1U) == 0)
            continue;
        if (!aimed)
            work_.aimPack(pack, axes_, seen);
        aimed = true;
        traceTree(near_[i], seen, light);
    }
}

void SceneBeam::traceTree(std::size_t index, const AimedPack& seen, PackLight& light)
{
    TreeLight tree{index, {}, light.crossings.size(), 0};
    trees_[index].crossings(seen, light.crossings);
    tree.crossings = light.crossings.size() - tree.firstCrossing;
    if (tree.crossings == 0)
        return;
    Lanes path;
    Lanes wood;
    leafyPath(light.crossings.from(tree.firstCrossing), trees_[index], path, wood);
    through(path, wood, extinctions_[index], tree.through);
    for (std::size_t lane = 0; lane < kLanes; ++lane)
        light.all[lane] *= tree.through[lane];
    light.trees.push_back(tree);
}

} // namespace model::light
