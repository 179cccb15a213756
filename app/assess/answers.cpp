#include "app/assess/answers.hpp"

#include "app/assess/quick_study.hpp"
#include "model/light/shadow.hpp"

namespace app {
namespace {

using model::Tables;

ShadowAnswer shadow(const Ask& ask)
{
    const auto& place = ask.garden->place;
    ShadowAnswer answer{
        model::light::sunPosition(ask.instant, place.latitude_deg, place.longitude_deg), {}};
    for (const auto& tree : ask.garden->trees)
        answer.byTree.push_back(
            model::light::shadow(tree, answer.sun, model::Ground(ask.garden->slope)));
    for (const auto& neighbour : ask.garden->neighbours)
        answer.byTree.push_back(
            model::light::shadow(neighbour, answer.sun, model::Ground(ask.garden->slope)));
    return answer;
}

} // namespace

Works modelWorks(const Tables& tables)
{
    return {.quick = [study = std::make_shared<QuickStudy>(tables)](
                         const Ask& ask) { return study->answer(ask); },
            .shadow = shadow,
            .full =
                [&tables](const Ask& ask, const std::atomic<bool>& cancel) {
                    return model::assess(*ask.garden, tables, ask.question, ask.tree, &cancel);
                }};
}

} // namespace app
