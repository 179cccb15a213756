#include "model/assessment/light_year.hpp"

#include "model/advice/prune.hpp"
#include "model/advice/single_cuts.hpp"
#include "model/assessment/stopped.hpp"
#include "model/light/daylight.hpp"
#include "model/light/light_study.hpp"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

using light::DayLight;

std::vector<light::Surface> surfacesOf(const Garden& garden, const std::string& onlyPlanting)
{
    const Ground ground(garden.slope);
    std::vector<light::Surface> surfaces;
    for (const auto& planting : garden.plantings) {
        if (!onlyPlanting.empty() && planting.id != onlyPlanting)
            continue;
        surfaces.push_back(light::levelSurface(planting, ground));
        std::ranges::move(light::faces(planting, ground), std::back_inserter(surfaces));
    }
    return surfaces;
}

/// The cuts on limbs that shade any of the surfaces; with all limbs else the answer is nothing.
std::vector<Cut> promisingCuts(const Tree& tree, std::size_t index,
                               const std::vector<SurfaceYear>& surfaces)
{
    auto cuts = advice::singleCuts(tree);
    std::erase_if(cuts, [&](const Cut& cut) {
        const auto limb = limbIndex(tree, cut.limb);
        return std::ranges::none_of(surfaces, [&](const SurfaceYear& surface) {
            return isNotable(surface.light.growingSeason.limbs.at(index).at(limb).removal);
        });
    });
    return cuts;
}

void addCuts(const Garden& garden, std::size_t index, std::span<const Foliation> foliations,
             const Tables& tables, const LightAsk& ask, LightYear& year,
             const std::atomic<bool>* cancel)
{
    const auto& tree = garden.trees[index];
    const auto cuts = promisingCuts(tree, index, year.surfaces);
    if (cuts.empty())
        return;
    light::StudyQuestion question;
    question.days = light::daysOfGrowingSeason(garden.place, ask.year, ask.detail.daysPerMonth);
    question.weather = year.weather;
    question.step = ask.detail.step;
    question.skyDirections = ask.detail.skyDirections;
    const light::LightStudy study(garden, foliations, tables, index,
                                  surfacesOf(garden, ask.onlyPlanting), question);
    std::vector<Tree> after;
    for (const auto& cut : cuts)
        after.push_back(advice::afterCut(tree, cut));
    for (const auto& gain : cutGains(study, foliations[index], tree, after, cancel))
        if (isNotable(gain.gained))
            year.surfaces.at(gain.surface)
                .cuts.push_back({tree.id,
                                 cuts[gain.cut],
                                 gain.leafShare,
                                 gain.gained,
                                 {gain.sunPerPercent_h, gain.dliPerPercent_mol}});
}

} // namespace

bool isNotable(const DayLight& light)
{
    return light.sun_h >= kNotableSun_h || light.dli_mol >= kNotableDli_mol;
}

LightYear lightYear(const Garden& garden, const Tables& tables, const LightAsk& ask,
                    const std::atomic<bool>* cancel)
{
    LightYear year{ask.year, light::weatherAt(garden.place), {}};
    const auto foliations = light::foliations(garden, tables);
    light::LightQuestion question{ask.year, year.weather, ask.onlyPlanting, ask.detail};
    question.detail.byLimb = ask.detail.byLimb || ask.withCuts;
    for (auto& surface : light::yearOfLight(garden, foliations, tables, question, cancel))
        year.surfaces.push_back({std::move(surface), {}});
    if (ask.withCuts && !year.surfaces.empty())
        for (std::size_t i = 0; i < garden.trees.size() && !stopped(cancel); ++i)
            addCuts(garden, i, foliations, tables, ask, year, cancel);
    if (stopped(cancel))
        year.surfaces.clear();
    for (auto& surface : year.surfaces)
        std::ranges::stable_sort(surface.cuts, [](const CutLight& a, const CutLight& b) {
            return std::pair(a.perPercent.sun_h, a.perPercent.dli_mol) >
                   std::pair(b.perPercent.sun_h, b.perPercent.dli_mol);
        });
    return year;
}

} // namespace model
