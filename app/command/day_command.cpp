#include "app/command/commands.hpp"
#include "app/report/rule_names.hpp"
#include "app/report/suggestion_json.hpp"
#include "app/report/suggestion_text.hpp"
#include "app/words/day_words.hpp"

namespace app {
namespace {

using model::advice::DayFinding;
using model::advice::DayWeather;

const char* nameOf(model::advice::DayRule rule)
{
    using model::advice::DayRule;
    switch (rule) {
    case DayRule::heat:
        return "heat";
    case DayRule::heatInSun:
        return "heat_in_sun";
    case DayRule::heatForTree:
        return "heat_for_tree";
    case DayRule::wind:
        return "wind";
    case DayRule::frost:
        return "frost";
    }
    return "";
}

std::string text(const std::vector<DayFinding>& findings, const Units& units)
{
    TextPage page;
    page.title(dayAnswer(findings));
    for (const auto& finding : findings)
        page.bullet(sentence(finding, units));
    addCautions(page);
    return page.text().toStdString();
}

Json json(const DayWeather& weather, const std::vector<DayFinding>& findings, const Units& units)
{
    Json list = Json::array();
    for (const auto& finding : findings)
        list.push_back(
            {{"rule", nameOf(finding.rule)},
             {"severity", jsonName(finding.severity)},
             {"found", number(finding.found)},
             {"limit", number(finding.limit)},
             {"unit", finding.rule == model::advice::DayRule::wind ? "m/s" : "degC"},
             {"sentence",
              sentence(finding, units).replace(QChar::Nbsp, QLatin1Char(' ')).toStdString()},
             {"source", model::advice::daySource(finding.rule)}});
    return {
        {"format", "underbough-day"},           {"version", 1},
        {"air_degC", number(weather.air_C)},    {"humidity", number(weather.humidity)},
        {"gust_m_s", number(weather.gust_m_s)}, {"findings", std::move(list)},
        {"cautions", cautionsJson()},
    };
}

} // namespace

int dayCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    const auto weather = weatherOf(job.arguments, units);
    const auto findings = model::advice::dayCheck(weather);
    if (job.arguments.json)
        job.streams.out << jsonText(json(weather, findings, units));
    else
        job.streams.out << text(findings, units);
    return statusOf(job, !findings.empty());
}

} // namespace app
