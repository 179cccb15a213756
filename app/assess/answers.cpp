#include "app/assess/answers.hpp"

#include "app/assess/quick_study.hpp"

namespace app {
namespace {

using model::Tables;

ShadowAnswer shadow(model::light::ShadowStudy& study, const Ask& ask)
{
    const auto& place = ask.garden->place;
    const auto sun =
        model::light::sunPosition(ask.instant, place.latitude_deg, place.longitude_deg);
    return {sun, study.redraw(*ask.garden, sun)};
}

} // namespace

Works modelWorks(const Tables& tables)
{
    return {.quick = [study = std::make_shared<QuickStudy>(tables)](
                         const Ask& ask) { return study->answer(ask); },
            .shadow = [study = std::make_shared<model::light::ShadowStudy>()](
                          const Ask& ask) { return shadow(*study, ask); },
            .full =
                [&tables](const Ask& ask, const std::atomic<bool>& cancel) {
                    return model::assess(*ask.garden, tables, ask.question, ask.tree, &cancel);
                }};
}

} // namespace app
