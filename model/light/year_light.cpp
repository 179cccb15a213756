#include "model/light/year_light.hpp"

#include "model/light/daylight.hpp"
#include "model/light/sample_day.hpp"
#include "model/light/sun_path.hpp"
#include "model/light/surface.hpp"
#include "model/light/tally.hpp"
#include "model/light/year_rays.hpp"

#include <algorithm>
#include <optional>
#include <thread>

namespace model::light {
namespace {

using std::chrono::year_month_day;

/// What does not change over the year, shared by all threads.
struct Setting {
    const Garden& garden;
    const Tables& tables;
    const LightQuestion& question;
    Scene scene; ///< leaf shares of no particular day
    std::vector<LimbNumbers> limbs;
    std::vector<Surface> surfaces;
    std::vector<const Plant*> plants; ///< one for each surface; null: not in the tables
    std::vector<Receivers> receivers;
    Vec3 origin;
    const std::atomic<bool>* cancel;

    [[nodiscard]] bool cancelled() const
    {
        return cancel != nullptr && cancel->load(std::memory_order_relaxed);
    }
};

/// A neighbour is one body of leaf on one stem.
const LimbNumbers kOneLimb{{0}, {1}, {kNoLimb}, {0}};

/// One month's sums on a surface: of its mean day, and the open sky's clear-day energy.
struct MonthSums {
    Tally tally;
    double clearBeam_MJ_m2{}; ///< on level ground
    double clearDiffuse_MJ_m2{};
};

/// Adds up the light of one month on one surface after another: one for each thread.
class Caster {
public:
    explicit Caster(const Setting& setting)
        : setting_(setting), scene_(setting.scene), beam_(scene_, setting.origin),
          tallier_(beam_, setting.limbs)
    {
    }

    /// The light that some rays bring to a surface.
    /// \param skyState  leaf state to trace them in; blank: each ray's own
    [[nodiscard]] Tally cast(const YearRays& year, std::span<const LightRay> rays, std::size_t s,
                             std::optional<std::size_t> skyState)
    {
        const auto& surface = setting_.surfaces[s];
        Tally tally;
        tally.points.resize(surface.points_m.size());
        std::optional<std::size_t> dressed;
        for (const auto& ray : rays) {
            const double cosine = facing(surface, ray.towards);
            if (cosine <= 0.0)
                continue;
            const std::size_t state = skyState.value_or(ray.leafState);
            if (dressed != state)
                dress(year.leafStates[state]);
            dressed = state;
            castRay(ray.towards, setting_.receivers[s], worth(ray, cosine), tally);
        }
        tallier_.finish(tally);
        return tally;
    }

private:
    void dress(std::span<const double> leafShares)
    {
        for (std::size_t i = 0; i < leafShares.size(); ++i)
            scene_.trees[i].leafShare = leafShares[i];
    }

    void castRay(Vec3 towards, const Receivers& receivers, Light3 worth, Tally& tally)
    {
        beam_.aim(towards);
        beam_.turnTo(receivers);
        for (std::size_t p = 0; p < receivers.packs.size(); ++p) {
            beam_.trace(p, light_);
            tallier_.add(receivers.packs[p], light_, worth, tally);
        }
    }

    const Setting& setting_;
    Scene scene_;
    SceneBeam beam_;
    Tallier tallier_;
    PackLight light_;
};

YearRays raysOf(const Setting& setting)
{
    const auto& detail = setting.question.detail;
    return yearRays(
        setting.garden.place, setting.question.year,
        {detail.step, detail.daysPerMonth, detail.skyDirections},
        [&](year_month_day date) { return leafShares(setting.garden, setting.tables, date); });
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
    MonthLight month;
    month.open = worth(tally.open);
    month.withoutTrees = worth(tally.structures);
    month.standing = worth(tally.standing);
    month.clearSun_h = tally.standing.sun_h;
    const std::size_t drawn = setting.garden.trees.size();
    month.trees.resize(drawn);
    month.neighbours.resize(setting.garden.neighbours.size());
    for (const auto& [tree, taken] : tally.trees)
        (tree < drawn ? month.trees[tree] : month.neighbours[tree - drawn]) = worth(taken);
    if (setting.limbs.empty())
        return month;
    for (const auto& tree : setting.garden.trees)
        month.limbs.emplace_back(tree.limbs.size());
    for (const auto& [key, taken] : tally.limbs)
        if (key.first < drawn)
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
    sum.clearSun_h += weight * more.clearSun_h;
    sum.trees.resize(more.trees.size());
    for (std::size_t i = 0; i < more.trees.size(); ++i)
        addTo(sum.trees[i], more.trees[i], weight);
    sum.neighbours.resize(more.neighbours.size());
    for (std::size_t i = 0; i < more.neighbours.size(); ++i)
        addTo(sum.neighbours[i], more.neighbours[i], weight);
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
    SurfaceLight result;
    result.planting = surface.planting;
    result.facing_deg = surface.facing_deg;
    result.points_m = surface.points_m;
    result.atPoints.resize(surface.points_m.size());
    double seasonDays = 0.0;
    double clearSun = 0.0;
    for (unsigned m = 1; m <= 12; ++m) {
        const auto& tally = months[m - 1].tally;
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
    result.clearSun_h = clearSun / seasonDays;
    result.lightClass = lightClass(result.clearSun_h);
    if (setting.plants[s] != nullptr)
        result.suits =
            suits(*setting.plants[s], result.clearSun_h, result.growingSeason.standing.dli_mol);
    return result;
}

Setting settle(const Garden& garden, std::span<const Foliation> foliations, const Tables& tables,
               const LightQuestion& question, const std::atomic<bool>* cancel)
{
    const auto anyDay = question.year / std::chrono::January / 1;
    Setting setting{garden, tables, question, scene(garden, foliations, tables, anyDay), {}, {}, {},
                    {},     {},     cancel};
    if (question.detail.byLimb) {
        for (const auto& tree : garden.trees)
            setting.limbs.push_back(limbNumbers(tree));
        setting.limbs.resize(setting.scene.trees.size(), kOneLimb);
    }
    const Ground ground(garden.slope);
    for (const auto& planting : garden.plantings) {
        if (!question.onlyPlanting.empty() && planting.id != question.onlyPlanting)
            continue;
        setting.surfaces.push_back(levelSurface(planting, ground));
        std::ranges::move(faces(planting, ground), std::back_inserter(setting.surfaces));
        setting.plants.resize(setting.surfaces.size(), findPlant(tables, planting.plant));
    }
    for (const auto& surface : setting.surfaces) // one origin for all: a tree is aimed once
        setting.origin +=
            (1.0 / static_cast<double>(setting.surfaces.size())) * surface.points_m.front();
    for (const auto& surface : setting.surfaces)
        setting.receivers.push_back(receivers(surface.points_m, setting.origin, surface.planting));
    return setting;
}

/// Runs `work` in as many threads as are wanted, this one among them.
template <typename Work>
void inThreads(unsigned wanted, std::size_t jobs, const Work& work)
{
    const std::size_t machine = std::max(1U, std::thread::hardware_concurrency());
    const std::size_t count = std::clamp<std::size_t>(wanted == 0 ? machine : wanted, 1, jobs + 1);
    std::vector<std::jthread> helpers;
    for (std::size_t i = 1; i < count; ++i)
        helpers.emplace_back(work);
    work();
}

/// The year's work, cut so that many processors are kept busy to the end: for each surface one
/// part for the sun of each month and one for the sky in each state of the leaves. Who finishes a
/// surface's last part puts the surface together, so that few tallies are kept.
class YearWork {
public:
    explicit YearWork(const Setting& setting)
        : setting_(setting), rays_(raysOf(setting)), parts_(12 + rays_.leafStates.size()),
          tallies_(setting.surfaces.size(), std::vector<Tally>(parts_)),
          left_(setting.surfaces.size()), result_(setting.surfaces.size())
    {
        for (auto& left : left_)
            left = parts_;
    }

    [[nodiscard]] std::vector<SurfaceLight> run()
    {
        inThreads(setting_.question.detail.threads, tallies_.size() * parts_, [this] {
            Caster caster(setting_);
            const std::size_t jobs = tallies_.size() * parts_;
            for (std::size_t job = next_++; job < jobs && !setting_.cancelled(); job = next_++)
                work(job / parts_, job % parts_, caster);
        });
        return setting_.cancelled() ? std::vector<SurfaceLight>{} : std::move(result_);
    }

private:
    void work(std::size_t s, std::size_t part, Caster& caster)
    {
        tallies_[s][part] = part < 12 ? caster.cast(rays_, rays_.months[part].sun, s, std::nullopt)
                                      : caster.cast(rays_, rays_.sky, s, part - 12);
        if (--left_[s] > 0)
            return;
        std::array<MonthSums, 12> months;
        for (std::size_t m = 0; m < 12; ++m) {
            const auto& rays = rays_.months[m];
            months[m] = {std::move(tallies_[s][m]), rays.clearBeam_MJ_m2, rays.clearDiffuse_MJ_m2};
            for (std::size_t state = 0; state < rays.skyWeights.size(); ++state)
                if (rays.skyWeights[state] > 0.0)
                    add(rays.skyWeights[state], tallies_[s][12 + state], months[m].tally);
        }
        result_[s] = surfaceLight(setting_, s, months);
        tallies_[s].clear();
    }

    const Setting& setting_;
    YearRays rays_;
    std::size_t parts_;
    std::vector<std::vector<Tally>> tallies_; ///< per surface and part
    std::vector<std::atomic<std::size_t>> left_;
    std::atomic<std::size_t> next_{0};
    std::vector<SurfaceLight> result_;
};

} // namespace

std::vector<SurfaceLight> yearOfLight(const Garden& garden, std::span<const Foliation> foliations,
                                      const Tables& tables, const LightQuestion& question,
                                      const std::atomic<bool>* cancel)
{
    const auto setting = settle(garden, foliations, tables, question, cancel);
    return YearWork(setting).run();
}

} // namespace model::light
