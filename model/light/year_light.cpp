#include "model/light/year_light.hpp"

#include "model/light/daylight.hpp"
#include "model/light/sample_day.hpp"
#include "model/light/sky_dome.hpp"
#include "model/light/sun_path.hpp"
#include "model/light/surface.hpp"
#include "model/light/tally.hpp"

#include <algorithm>
#include <map>
#include <thread>

namespace model::light {
namespace {

using std::chrono::year_month_day;

constexpr double kMJ_per_W_h = 3600e-6;

/// What does not change over the year, shared by all threads.
struct Setting {
    const Garden& garden;
    const Tables& tables;
    const LightQuestion& question;
    Scene scene; ///< leaf shares of no particular day
    std::vector<const Species*> species;
    std::vector<LimbNumbers> limbs;
    std::vector<Surface> surfaces;
    std::vector<Receivers> receivers;
    Vec3 origin;
    const std::atomic<bool>* cancel;

    [[nodiscard]] bool cancelled() const
    {
        return cancel != nullptr && cancel->load(std::memory_order_relaxed);
    }
};

/// One month's sums: tallies of its mean day, and the open sky's clear-day energy.
struct MonthSums {
    std::vector<Tally> surfaces;
    double clearBeam_MJ_m2{}; ///< on level ground
    double clearDiffuse_MJ_m2{};
};

/// Traces one direction to every surface that it lights.
class Caster {
public:
    Caster(const Setting& setting, Scene& scene, std::vector<Tally>& tallies)
        : setting_(setting), beam_(scene, setting.origin), tallier_(beam_, setting.limbs),
          tallies_(tallies)
    {
    }

    /// `worth`: what an unhindered ray is worth to a surface of this normal.
    template <typename Worth>
    void cast(Vec3 towards, const Worth& worth)
    {
        beam_.aim(towards);
        for (std::size_t s = 0; s < setting_.surfaces.size(); ++s) {
            const auto& surface = setting_.surfaces[s];
            if (dot(surface.normal, towards) <= 0.0)
                continue;
            const auto& receivers = setting_.receivers[s];
            beam_.turnTo(receivers);
            const Light3 each = worth(surface.normal);
            for (std::size_t p = 0; p < receivers.packs.size(); ++p) {
                beam_.trace(p, light_);
                tallier_.add(receivers.packs[p], light_, each, tallies_[s]);
            }
        }
    }

private:
    const Setting& setting_;
    SceneBeam beam_;
    Tallier tallier_;
    std::vector<Tally>& tallies_;
    PackLight light_;
};

void castSun(const Setting& setting, year_month_day date, double weight, Caster& caster,
             MonthSums& sums)
{
    for (const auto& step : sunPath(setting.garden.place, date, setting.question.detail.step)) {
        const double energy = weight * step.hours * kMJ_per_W_h;
        sums.clearBeam_MJ_m2 += energy * step.beam_W_m2 * step.towards.z;
        sums.clearDiffuse_MJ_m2 += energy * step.diffuse_W_m2;
        caster.cast(step.towards, [&](Vec3 normal) {
            return Light3{step.shines ? weight * step.hours : 0.0,
                          energy * step.beam_W_m2 * dot(step.towards, normal), 0.0};
        });
    }
}

MonthSums sumMonth(const Setting& setting, std::chrono::month month)
{
    const auto& detail = setting.question.detail;
    MonthSums sums;
    for (const auto& surface : setting.surfaces)
        sums.surfaces.push_back({{}, {}, {}, {}, {}, std::vector<Light3>(surface.points_m.size())});
    Scene scene = setting.scene;
    Caster caster(setting, scene, sums.surfaces);
    std::map<std::vector<double>, double> leafStates; // sky light is traced once for each
    for (const auto& [date, weight] :
         daysOfMonth(setting.question.year / month, detail.daysPerMonth)) {
        if (setting.cancelled())
            return sums;
        std::vector<double> shares;
        for (std::size_t i = 0; i < scene.trees.size(); ++i) {
            shares.push_back(leafShare(*setting.species[i], setting.garden.place, date));
            scene.trees[i].leafShare = shares.back();
        }
        castSun(setting, date, weight, caster, sums);
        leafStates[shares] += weight;
    }
    for (const auto& [shares, weight] : leafStates) {
        if (setting.cancelled())
            return sums;
        for (std::size_t i = 0; i < scene.trees.size(); ++i)
            scene.trees[i].leafShare = shares[i];
        for (const Vec3 towards : skyDirections(detail.skyDirections))
            caster.cast(towards, [&, w = weight](Vec3 normal) {
                return Light3{0.0, 0.0, w * skyShare(towards, normal, detail.skyDirections)};
            });
    }
    return sums;
}

/// Turns counted light into a mean day's, by the month's weather.
struct Exchange {
    double sunShare{1.0};
    double perBeam{1.0};
    double diffuse_MJ_m2{};

    DayLight operator()(Light3 light) const
    {
        return {sunShare * light.sun_h,
                kMolPerMJ * (perBeam * light.beam + diffuse_MJ_m2 * light.sky)};
    }
    LightTaken operator()(const Taken3& taken) const
    {
        return {(*this)(taken.removal), (*this)(taken.firstIn)};
    }
};

Exchange exchange(const Setting& setting, const MonthSums& sums, std::chrono::month month)
{
    const auto share = setting.question.weather.sunshineShare[static_cast<unsigned>(month) - 1];
    if (!share)
        return {1.0, 1.0, sums.clearDiffuse_MJ_m2};
    const auto middle = setting.question.year / month / std::chrono::day{15};
    const auto day = cloudyDay(setting.garden.place.latitude_deg, dayOfYear(middle), *share);
    return {*share, sums.clearBeam_MJ_m2 > 0.0 ? day.beam_MJ_m2 / sums.clearBeam_MJ_m2 : 0.0,
            day.diffuse_MJ_m2};
}

MonthLight monthLight(const Setting& setting, const Tally& tally, const Exchange& worth)
{
    MonthLight month{worth(tally.open), worth(tally.structures), worth(tally.standing), {}, {}};
    month.trees.resize(setting.garden.trees.size());
    for (const auto& [tree, taken] : tally.trees)
        month.trees[tree] = worth(taken);
    if (setting.limbs.empty())
        return month;
    for (const auto& tree : setting.garden.trees)
        month.limbs.emplace_back(tree.limbs.size());
    for (const auto& [key, taken] : tally.limbs)
        month.limbs[key.first][key.second] = worth(taken);
    return month;
}

void addTo(DayLight& sum, const DayLight& more, double weight)
{
    sum.sun_h += weight * more.sun_h;
    sum.dli_mol += weight * more.dli_mol;
}
void addTo(LightTaken& sum, const LightTaken& more, double weight)
{
    addTo(sum.removal, more.removal, weight);
    addTo(sum.firstIn, more.firstIn, weight);
}
void addTo(MonthLight& sum, const MonthLight& more, double weight)
{
    addTo(sum.open, more.open, weight);
    addTo(sum.withoutTrees, more.withoutTrees, weight);
    addTo(sum.standing, more.standing, weight);
    sum.trees.resize(more.trees.size());
    for (std::size_t i = 0; i < more.trees.size(); ++i)
        addTo(sum.trees[i], more.trees[i], weight);
    sum.limbs.resize(more.limbs.size());
    for (std::size_t i = 0; i < more.limbs.size(); ++i) {
        sum.limbs[i].resize(more.limbs[i].size());
        for (std::size_t j = 0; j < more.limbs[i].size(); ++j)
            addTo(sum.limbs[i][j], more.limbs[i][j], weight);
    }
}

SurfaceLight surfaceLight(const Setting& setting, std::size_t s, std::span<const MonthSums> months)
{
    using namespace std::chrono;
    const auto& surface = setting.surfaces[s];
    SurfaceLight result{surface.planting,
                        surface.facing_deg,
                        {},
                        {},
                        {},
                        surface.points_m,
                        std::vector<DayLight>(surface.points_m.size())};
    double seasonDays = 0.0;
    double clearSun = 0.0;
    for (unsigned m = 1; m <= 12; ++m) {
        const auto& tally = months[m - 1].surfaces[s];
        const auto worth = exchange(setting, months[m - 1], month{m});
        result.months[m - 1] = monthLight(setting, tally, worth);
        if (!inGrowingSeason(month{m}, setting.garden.place))
            continue;
        const auto last = (setting.question.year / month{m} / std::chrono::last).day();
        const double days = static_cast<unsigned>(last);
        seasonDays += days;
        clearSun += days * tally.standing.sun_h;
        addTo(result.growingSeason, result.months[m - 1], days);
        for (std::size_t p = 0; p < surface.points_m.size(); ++p)
            addTo(result.atPoints[p], worth(tally.points[p]), days);
    }
    MonthLight mean;
    addTo(mean, result.growingSeason, 1.0 / seasonDays);
    result.growingSeason = std::move(mean);
    for (auto& point : result.atPoints)
        point = {point.sun_h / seasonDays, point.dli_mol / seasonDays};
    result.lightClass = lightClass(clearSun / seasonDays);
    return result;
}

Setting settle(const Garden& garden, std::span<const Foliation> foliations, const Tables& tables,
               const LightQuestion& question, const std::atomic<bool>* cancel)
{
    const auto anyDay = question.year / std::chrono::January / 1;
    Setting setting{garden, tables, question, scene(garden, foliations, tables, anyDay), {}, {}, {},
                    {},     {},     cancel};
    for (const auto& tree : garden.trees) {
        setting.species.push_back(findSpecies(tables, tree.species));
        if (question.detail.byLimb)
            setting.limbs.push_back(limbNumbers(tree));
    }
    for (const auto& planting : garden.plantings) {
        if (!question.onlyPlanting.empty() && planting.id != question.onlyPlanting)
            continue;
        setting.surfaces.push_back(levelSurface(planting));
        std::ranges::move(faces(planting), std::back_inserter(setting.surfaces));
    }
    for (const auto& surface : setting.surfaces) // one origin for all: a tree is aimed once
        setting.origin +=
            (1.0 / static_cast<double>(setting.surfaces.size())) * surface.points_m.front();
    for (const auto& surface : setting.surfaces)
        setting.receivers.push_back(receivers(surface.points_m, setting.origin));
    return setting;
}

std::vector<MonthSums> sumMonths(const Setting& setting)
{
    std::vector<MonthSums> months(12);
    std::atomic<unsigned> next{0};
    const auto work = [&] {
        for (unsigned m = next++; m < 12 && !setting.cancelled(); m = next++)
            months[m] = sumMonth(setting, std::chrono::month{m + 1});
    };
    const unsigned wanted = setting.question.detail.threads;
    const unsigned count =
        std::clamp(wanted == 0 ? std::thread::hardware_concurrency() : wanted, 1U, 12U);
    std::vector<std::jthread> helpers;
    for (unsigned i = 1; i < count; ++i)
        helpers.emplace_back(work);
    work();
    helpers.clear(); // joins them
    return months;
}

} // namespace

std::vector<SurfaceLight> yearOfLight(const Garden& garden, std::span<const Foliation> foliations,
                                      const Tables& tables, const LightQuestion& question,
                                      const std::atomic<bool>* cancel)
{
    const auto setting = settle(garden, foliations, tables, question, cancel);
    const auto months = sumMonths(setting);
    std::vector<SurfaceLight> result;
    if (setting.cancelled())
        return result;
    for (std::size_t s = 0; s < setting.surfaces.size(); ++s)
        result.push_back(surfaceLight(setting, s, months));
    return result;
}

} // namespace model::light
