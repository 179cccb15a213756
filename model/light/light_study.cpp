#include "model/light/light_study.hpp"

#include "model/light/daylight.hpp"
#include "model/light/sky_dome.hpp"
#include "model/light/sun_path.hpp"

#include <algorithm>
#include <map>
#include <stdexcept>

namespace model::light {
namespace {

constexpr double kMJ_per_W_h = 3600e-6;

/// Clear-sky energy of a day on level ground.
DayEnergy clearDay(std::span<const SunStep> path)
{
    DayEnergy day;
    for (const auto& step : path) {
        day.beam_MJ_m2 += kMJ_per_W_h * step.hours * step.beam_W_m2 * step.towards.z;
        day.diffuse_MJ_m2 += kMJ_per_W_h * step.hours * step.diffuse_W_m2;
    }
    return day;
}

} // namespace

LightStudy::LightStudy(const Garden& garden, std::span<const Foliation> foliations,
                       const Tables& tables, std::size_t tree, std::vector<Surface> surfaces,
                       const StudyQuestion& question)
    : tree_(tree), ground_(garden.slope), foliation_(foliations[tree]),
      species_(findSpecies(tables, garden.trees.at(tree).species)), surfaces_(std::move(surfaces))
{
    if (question.days.empty())
        throw std::domain_error("LightStudy: no days to look at");
    auto others = scene(garden, foliations, tables, question.days.front().date);
    std::vector<std::vector<double>> shares;
    for (const auto& day : question.days)
        shares.push_back(leafShares(garden, tables, day.date));
    for (const auto& surface : surfaces_)
        origin_ += (1.0 / static_cast<double>(surfaces_.size())) * surface.points_m.front();
    for (const auto& surface : surfaces_)
        receivers_.push_back(receivers(surface.points_m, origin_, surface.planting));
    addSun(garden.place, question, shares);
    addSky(question, shares);
    others.trees[tree].leaves.clear();
    others.trees[tree].wood.clear();
    traceOthers(std::move(others));
}

void LightStudy::addSun(const Place& place, const StudyQuestion& question,
                        std::span<const std::vector<double>> shares)
{
    for (std::size_t d = 0; d < question.days.size(); ++d) {
        const auto& [date, weight] = question.days[d];
        const auto path = sunPath(place, date, question.step);
        auto day = clearDay(path);
        const auto share = question.weather.sunshineShare[static_cast<unsigned>(date.month()) - 1];
        double perBeam = kMolPerMJ * kMJ_per_W_h;
        if (share) {
            const auto cloudy = cloudyDay(place.latitude_deg, dayOfYear(date), *share);
            perBeam *= day.beam_MJ_m2 > 0.0 ? cloudy.beam_MJ_m2 / day.beam_MJ_m2 : 0.0;
            day.diffuse_MJ_m2 = cloudy.diffuse_MJ_m2;
        }
        diffuse_MJ_m2_.push_back(day.diffuse_MJ_m2);
        for (const auto& step : path) {
            const double sun_h = step.shines ? weight * step.hours * share.value_or(1.0) : 0.0;
            const double facing_mol = weight * perBeam * step.hours * step.beam_W_m2;
            const bool sunOnly = question.skyDirections == 0;
            if (sunOnly && !step.shines)
                continue;
            rays_.push_back({step.towards, shares[d][tree_], sun_h, sunOnly ? 0.0 : facing_mol});
            rayLeafShares_.push_back(shares[d]);
        }
    }
}

void LightStudy::addSky(const StudyQuestion& question, std::span<const std::vector<double>> shares)
{
    std::map<std::vector<double>, double> energy; // by leaf of all trees: traced once for each
    for (std::size_t d = 0; d < question.days.size(); ++d)
        energy[shares[d]] += question.days[d].weight * diffuse_MJ_m2_[d];
    const auto directions = skyDirections(question.skyDirections);
    for (const auto& [leaf, diffuse_MJ_m2] : energy)
        for (const Vec3 towards : directions) {
            const double facing = skyShare(towards, towards, question.skyDirections);
            rays_.push_back({towards, leaf[tree_], 0.0, kMolPerMJ * diffuse_MJ_m2 * facing});
            rayLeafShares_.push_back(leaf);
        }
}

void LightStudy::traceOthers(Scene others)
{
    SceneBeam beam(others, origin_);
    PackLight light;
    for (std::size_t r = 0; r < rays_.size(); ++r) {
        for (std::size_t i = 0; i < others.trees.size(); ++i)
            others.trees[i].leafShare = rayLeafShares_[r][i];
        beam.aim(rays_[r].towards);
        for (std::size_t s = 0; s < surfaces_.size(); ++s) {
            beam.turnTo(receivers_[s]);
            for (std::size_t p = 0; p < receivers_[s].packs.size(); ++p) {
                beam.trace(p, light);
                others_.push_back(light.all);
            }
        }
    }
    rayLeafShares_ = {};
}

DayLight LightStudy::worth(const Ray& ray, const Surface& surface) const
{
    const double cosine = facing(surface, ray.towards);
    if (cosine <= 0.0)
        return {};
    return {ray.sun_h, ray.facing_mol * cosine};
}

std::vector<SurfaceDay> LightStudy::sum(const Tree* tree, const Foliation& foliation) const
{
    std::vector<SurfaceDay> result;
    for (const auto& surface : surfaces_)
        result.push_back({{}, std::vector<DayLight>(surface.points_m.size())});
    Scene alone;
    if (tree != nullptr)
        alone.trees.push_back(canopy(*tree, foliation, *species_, 1.0, ground_));
    SceneBeam beam(alone, origin_);
    PackLight light;
    std::size_t next = 0;
    for (const auto& ray : rays_) {
        if (tree != nullptr)
            alone.trees.front().leafShare = ray.leafShare;
        beam.aim(ray.towards);
        for (std::size_t s = 0; s < surfaces_.size(); ++s) {
            const DayLight each = worth(ray, surfaces_[s]);
            if (each.dli_mol <= 0.0 && each.sun_h <= 0.0) {
                next += receivers_[s].packs.size();
                continue;
            }
            beam.turnTo(receivers_[s]);
            for (std::size_t p = 0; p < receivers_[s].packs.size(); ++p) {
                const Pack& pack = receivers_[s].packs[p];
                beam.trace(p, light);
                const Lanes& others = others_[next++];
                for (std::size_t i = 0; i < pack.count; ++i) {
                    auto& point = result[s].points[pack.point[i]];
                    const double through = others[i] * light.all[i];
                    point.sun_h += through * each.sun_h;
                    point.dli_mol += through * each.dli_mol;
                }
            }
        }
    }
    for (auto& surface : result)
        for (const auto& point : surface.points) {
            surface.mean.sun_h += point.sun_h / static_cast<double>(surface.points.size());
            surface.mean.dli_mol += point.dli_mol / static_cast<double>(surface.points.size());
        }
    return result;
}

std::vector<StudyRay> LightStudy::rays() const
{
    std::vector<StudyRay> all;
    std::size_t next = 0;
    for (const auto& ray : rays_)
        for (std::size_t s = 0; s < surfaces_.size(); ++s) {
            const auto& surface = surfaces_[s];
            const DayLight each = worth(ray, surface);
            for (const auto& pack : receivers_[s].packs) {
                const Lanes& others = others_[next++];
                for (std::size_t i = 0; i < pack.count; ++i) {
                    const double share = others[i] / static_cast<double>(surface.points_m.size());
                    if (share * (each.sun_h + each.dli_mol) > 0.0)
                        all.push_back({s,
                                       surface.points_m[pack.point[i]],
                                       ray.towards,
                                       ray.leafShare,
                                       {share * each.sun_h, share * each.dli_mol}});
                }
            }
        }
    return all;
}

std::vector<SurfaceDay> LightStudy::with(const Tree& tree) const
{
    return sum(&tree, foliation_);
}

std::vector<SurfaceDay> LightStudy::with(const Tree& tree, const Foliation& foliation) const
{
    return sum(&tree, foliation);
}

std::vector<SurfaceDay> LightStudy::without() const
{
    return sum(nullptr, foliation_);
}

std::vector<CutGain> cutGains(const LightStudy& study, const Foliation& foliation,
                              const Tree& before, std::span<const Tree> after,
                              const std::atomic<bool>* cancel)
{
    const auto leaf = [&foliation](const Tree& tree) {
        double sum = 0.0;
        for (const double area : leafAreaByLimb_m2(tree, foliation))
            sum += area;
        return sum;
    };
    const auto standing = study.with(before);
    const double whole = leaf(before);
    std::vector<CutGain> gains;
    for (std::size_t c = 0; c < after.size(); ++c) {
        if (cancel != nullptr && cancel->load(std::memory_order_relaxed))
            break;
        const auto light = study.with(after[c]);
        const double share = whole > 0.0 ? 1.0 - leaf(after[c]) / whole : 0.0;
        for (std::size_t s = 0; s < light.size(); ++s) {
            const DayLight gained{light[s].mean.sun_h - standing[s].mean.sun_h,
                                  light[s].mean.dli_mol - standing[s].mean.dli_mol};
            // A bare limb costs no leaf: its hour of sun is the cheapest there is.
            const double percent = std::max(100.0 * share, 1e-6);
            gains.push_back(
                {c, s, gained, share, gained.sun_h / percent, gained.dli_mol / percent});
        }
    }
    std::ranges::stable_sort(gains, std::ranges::greater{}, &CutGain::sunPerPercent_h);
    return gains;
}

} // namespace model::light
