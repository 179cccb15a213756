#include "app/command/commands.hpp"
#include "app/report/assessment_json.hpp"
#include "app/report/assessment_text.hpp"
#include "app/report/light_json.hpp"
#include "app/report/light_text.hpp"
#include "app/report/suggestion_text.hpp"
#include "model/assessment/light_year.hpp"
#include "model/light/daylight.hpp"

#include <algorithm>

namespace app {
namespace {

using model::light::PlantingSun;

/// What was asked and what was found.
struct Answer {
    const model::Garden& garden;
    const model::Tables& tables;
    std::chrono::year_month_day date;
    std::optional<std::chrono::month> month;
    std::vector<PlantingSun> day; ///< on the date
    model::LightYear year;
};

std::string text(const Answer& answer, bool dayWanted, const Units& units)
{
    TextPage page;
    if (answer.year.surfaces.empty())
        page.paragraph(Words::tr("No planting is drawn in this garden."));
    else
        addLightYear(page, answer.year, answer.month, answer.garden, answer.tables, units);
    if (dayWanted)
        addSun(page, answer.day, {}, answer.date, answer.garden, answer.tables, units);
    addCautions(page);
    return page.text().toStdString();
}

Json json(const Answer& answer)
{
    Json plantings = sunJson(answer.day, {}, answer.date, answer.garden, answer.tables);
    for (auto& planting : plantings)
        planting["surfaces"] = surfacesJson(answer.year, planting["id"].get<std::string>(),
                                            answer.month, answer.garden);
    return {
        {"format", "underbough-light"},
        {"version", 1},
        {"garden", answer.garden.name},
        {"date", isoDate(answer.date)},
        {"year", static_cast<int>(answer.year.year)},
        {"sunshine_share", sunshineJson(answer.year.weather)},
        {"growing_months", growingMonthsJson(answer.garden.place)},
        {"plantings", std::move(plantings)},
        {"cautions", cautionsJson()},
    };
}

} // namespace

int lightCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    const auto date = dateOf(job.arguments);
    const auto month = monthOf(job.arguments);
    const model::Garden garden = gardenOf(job);
    const std::string planting = plantingOf(job.arguments, garden);
    Answer answer{
        garden, job.tables, date, month, model::light::plantingSun(garden, job.tables, date), {}};
    if (!planting.empty())
        std::erase_if(answer.day, [&](const auto& sun) { return sun.planting != planting; });
    answer.year = lightYear(garden, job.tables, {date.year(), planting, true, {}});
    if (job.arguments.json)
        job.streams.out << jsonText(json(answer));
    else
        job.streams.out << text(answer, !job.arguments.date.empty(), units);
    return statusOf(job, std::ranges::any_of(answer.year.surfaces, [](const auto& surface) {
                        return surface.light.suits == model::light::Suits::tooDark;
                    }));
}

} // namespace app
