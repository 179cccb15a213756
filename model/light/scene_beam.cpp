#include "model/light/scene_beam.hpp"

#include <algorithm>
#include <cmath>

namespace model::light {

Receivers receivers(std::span<const Vec3> points, Vec3 origin)
{
    Receivers result{packed(points, origin), {}};
    for (const Vec3 point : points)
        result.bounds.middle_m += (1.0 / static_cast<double>(points.size())) * point;
    for (const Vec3 point : points)
        result.bounds.radius_m =
            std::max(result.bounds.radius_m, norm(point - result.bounds.middle_m));
    return result;
}

SceneBeam::SceneBeam(const Scene& scene, Vec3 origin)
    : scene_(scene), origin_(origin), extinctions_(scene.trees.size()), turned_(scene.trees.size())
{
    trees_.reserve(scene.trees.size());
    for (const auto& tree : scene.trees)
        trees_.emplace_back(tree, origin);
}

void SceneBeam::aim(Vec3 towards)
{
    frame_ = beamFrame(towards);
    std::ranges::fill(turned_, char{0});
}

void SceneBeam::turnTo(const Receivers& receivers)
{
    near_.clear();
    for (std::size_t i = 0; i < trees_.size(); ++i) {
        const Ball& tree = scene_.trees[i].bounds;
        const Vec3 ahead = tree.middle_m - receivers.bounds.middle_m;
        const double reach = tree.radius_m + receivers.bounds.radius_m;
        const double depth = dot(ahead, frame_.towards);
        if (depth < -reach || dot(ahead, ahead) - depth * depth > reach * reach)
            continue;
        near_.push_back(i);
        if (turned_[i] == 0) {
            trees_[i].aim(frame_);
            extinctions_[i] =
                static_cast<float>(light::extinction_1_m(scene_.trees[i], frame_.towards));
            turned_[i] = 1;
        }
    }
    nearStructures_.clear();
    for (const auto& prism : scene_.structures) {
        const Vec3 ahead = Vec3{prism.middle_m.x, prism.middle_m.y, prism.height_m / 2.0} -
                           receivers.bounds.middle_m;
        const double reach =
            std::hypot(prism.reach_m, prism.height_m / 2.0) + receivers.bounds.radius_m;
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

void SceneBeam::trace(const Pack& pack, PackLight& light)
{
    light.trees.clear();
    light.crossings.clear();
    traceStructures(pack, light.structures);
    light.all = light.structures;
    if (std::ranges::all_of(light.structures, [](float share) { return share == 0.0F; }))
        return;
    const auto seen = aimed(pack, frame_);
    for (const std::size_t i : near_) {
        TreeLight tree{i, {}, light.crossings.size(), 0};
        trees_[i].crossings(seen, light.crossings);
        tree.crossings = light.crossings.size() - tree.firstCrossing;
        if (tree.crossings == 0)
            continue;
        Lanes path;
        Lanes wood;
        leafyPath(light.crossings.from(tree.firstCrossing), trees_[i], {}, path, wood);
        through(path, wood, extinctions_[i], tree.through);
        for (std::size_t lane = 0; lane < kLanes; ++lane)
            light.all[lane] *= tree.through[lane];
        light.trees.push_back(tree);
    }
}

} // namespace model::light
