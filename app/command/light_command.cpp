#include "app/command/commands.hpp"
#include "app/report/assessment_json.hpp"
#include "app/report/assessment_text.hpp"
#include "app/report/suggestion_text.hpp"
#include "model/light/daylight.hpp"

#include <algorithm>

namespace app {
namespace {

using model::light::PlantingSun;

std::string text(const std::vector<PlantingSun>& sun, std::chrono::year_month_day date,
                 const model::Garden& garden, const model::Tables& tables, const Units& units)
{
    TextPage page;
    if (sun.empty())
        page.paragraph(Words::tr("No planting is drawn in this garden."));
    addSun(page, sun, {}, date, garden, tables, units);
    addCautions(page);
    return page.text().toStdString();
}

Json json(const std::vector<PlantingSun>& sun, std::chrono::year_month_day date,
          const model::Garden& garden, const model::Tables& tables)
{
    return {
        {"format", "underbough-light"},
        {"version", 1},
        {"garden", garden.name},
        {"date", isoDate(date)},
        {"plantings", sunJson(sun, {}, garden, tables)},
        {"cautions", cautionsJson()},
    };
}

bool tooDark(const PlantingSun& sun, const model::Garden& garden, const model::Tables& tables)
{
    const auto planting = std::ranges::find(garden.plantings, sun.planting, &model::Planting::id);
    const model::Plant* plant = findPlant(tables, planting->plant);
    return plant && plant->minSun_h && sun.sun_h < *plant->minSun_h;
}

} // namespace

int lightCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    const auto date = dateOf(job.arguments);
    const model::Garden garden = gardenOf(job);
    const auto sun = model::light::plantingSun(garden, job.tables, date);
    if (job.arguments.json)
        job.streams.out << jsonText(json(sun, date, garden, job.tables));
    else
        job.streams.out << text(sun, date, garden, job.tables, units);
    return statusOf(job, std::ranges::any_of(sun, [&](const PlantingSun& each) {
                        return tooDark(each, garden, job.tables);
                    }));
}

} // namespace app
