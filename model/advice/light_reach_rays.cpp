#include "model/advice/light_reach.hpp"

#include <algorithm>
#include <map>
#include <optional>

namespace model::advice {
namespace {

constexpr double kLeastWeight = 1e-9; // limbs without leaf share in nothing, but divide by no zero

struct Hit {
    Interval along;
    std::size_t limb{};
    std::uint64_t forms{};
    double density{};
};

} // namespace

/// Bodies of all forms of all limbs; those that forms share, once.
struct LightReach::Bodies {
    struct Body {
        Curtain solid;
        light::Ball bounds;
        std::size_t limb{};
        std::uint64_t forms{};
        double density{};
    };
    std::vector<Body> leaf;
    std::vector<Body> wood;

    template <typename Solid>
    static void add(std::vector<Body>& all, std::size_t since, const Solid& solid, std::size_t limb,
                    std::size_t form, double density)
    {
        for (std::size_t i = since; i < all.size(); ++i)
            if (all[i].solid == solid.solid && all[i].density == density) {
                all[i].forms |= std::uint64_t{1} << form;
                return;
            }
        all.push_back({solid.solid, solid.bounds, limb, std::uint64_t{1} << form, density});
    }

    Bodies(const light::LightStudy& study, const Tree& tree, const LimbForms& forms)
    {
        Tree alone = tree;
        for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
            const auto leafBefore = leaf.size();
            const auto woodBefore = wood.size();
            for (std::size_t form = 0; form < forms[limb].size(); ++form) {
                alone.limbs = {forms[limb][form]};
                const auto canopy = study.canopyOf(alone);
                for (const auto& body : canopy.leaves)
                    add(leaf, leafBefore, body, limb, form, body.density);
                for (const auto& body : canopy.wood)
                    add(wood, woodBefore, body, limb, form, 0.0);
            }
        }
    }
};

LightReach::LightReach(const light::LightStudy& study, const Tree& tree, const LimbForms& forms,
                       const LightWorth& worth)
    : leafOf_(tree.limbs.size(), kLeastWeight)
{
    for (const auto& body : leafyBodies(tree))
        leafOf_[body.limb] += body.density * sharingVolume_m3(body);
    const Bodies bodies(study, tree, forms);
    Numbers numbers;
    auto canopy = study.canopyOf(tree);
    for (const auto& ray : study.rays()) {
        const double value = worth(ray);
        if (value <= 0.0)
            continue;
        canopy.leafShare = ray.leafShare;
        addRay(ray, value, light::extinction_1_m(canopy, ray.towards), bodies, numbers);
    }
}

std::uint32_t LightReach::pattern(std::size_t limb, std::uint64_t forms, Numbers& numbers)
{
    const auto [known, isNew] = numbers.patterns.try_emplace(
        std::pair{limb, forms}, static_cast<std::uint32_t>(patterns_.size()));
    if (isNew)
        patterns_.push_back({limb, forms});
    return known->second;
}

std::uint32_t LightReach::mix(const LeafMix& parts, Numbers& numbers)
{
    const auto [known, isNew] =
        numbers.mixes.try_emplace(parts, static_cast<std::uint32_t>(mixes_.size()));
    if (isNew)
        mixes_.push_back(parts);
    return known->second;
}

void LightReach::addRay(const light::StudyRay& ray, double worth, double extinction_1_m,
                        const Bodies& bodies, Numbers& numbers)
{
    std::vector<Hit> hits;
    std::map<std::size_t, std::uint64_t> woods;
    const auto meets = [&](const Bodies::Body& body) -> std::optional<Interval> {
        const Vec3 ahead = body.bounds.middle_m - ray.from_m;
        const double along = dot(ahead, ray.towards);
        if (along <= -body.bounds.radius_m ||
            dot(ahead, ahead) - along * along >= body.bounds.radius_m * body.bounds.radius_m)
            return std::nullopt;
        return chord(body.solid, ray.from_m, ray.towards);
    };
    for (const auto& body : bodies.wood)
        if (meets(body))
            woods[body.limb] |= body.forms;
    for (const auto& body : bodies.leaf)
        if (const auto inside = meets(body))
            hits.push_back({*inside, body.limb, body.forms, body.density});
    if (hits.empty() && woods.empty()) {
        open_ += worth;
        return;
    }
    Ray kept{worth, stretches_.size(), 0, wood_.size(), 0};
    for (const auto& [limb, forms] : woods)
        wood_.push_back(pattern(limb, forms, numbers));
    kept.lastWood = wood_.size();
    std::vector<double> ends;
    for (const auto& hit : hits) {
        ends.push_back(hit.along.from);
        ends.push_back(hit.along.to);
    }
    std::ranges::sort(ends);
    std::map<std::uint32_t, double> byMix;
    for (std::size_t i = 1; i < ends.size(); ++i) {
        const double middle = (ends[i - 1] + ends[i]) / 2.0;
        std::map<std::pair<std::size_t, double>, std::uint64_t> here;
        for (const auto& hit : hits)
            if (hit.along.from < middle && middle < hit.along.to)
                here[{hit.limb, hit.density}] |= hit.forms;
        LeafMix parts;
        for (const auto& [what, forms] : here)
            parts.push_back({pattern(what.first, forms, numbers), static_cast<float>(what.second)});
        if (!parts.empty() && ends[i] > ends[i - 1])
            byMix[mix(parts, numbers)] += ends[i] - ends[i - 1];
    }
    for (const auto& [mix, length] : byMix)
        stretches_.push_back({extinction_1_m * length, mix});
    kept.lastStretch = stretches_.size();
    rays_.push_back(kept);
}

} // namespace model::advice
