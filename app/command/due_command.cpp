#include "app/command/commands.hpp"
#include "app/report/diary_json.hpp"
#include "app/report/diary_text.hpp"
#include "app/report/suggestion_json.hpp"
#include "app/report/suggestion_text.hpp"
#include "app/words/diary_words.hpp"
#include "model/diary/garden_diary.hpp"

#include <algorithm>

namespace app {
namespace {

using model::diary::Due;
using model::diary::DueState;

Wording wordingFor(const Due& due, const model::Garden& garden, const model::Tables& tables,
                   const Units& units)
{
    const auto& tree = *std::ranges::find(garden.trees, due.tree, &model::Tree::id);
    return {units, garden, tree, *findSpecies(tables, tree.species)};
}

QString headingFor(DueState state)
{
    switch (state) {
    case DueState::overdue:
        return Words::tr("Overdue");
    case DueState::now:
        return Words::tr("Now");
    case DueState::later:
        return Words::tr("Later");
    }
    return {};
}

std::string text(const std::vector<Due>& all, const model::Garden& garden,
                 const model::Tables& tables, std::chrono::year_month_day date, const Units& units)
{
    TextPage page;
    page.title(Words::tr("Due in the garden on %1").arg(units.date(date)));
    if (all.empty())
        page.paragraph(Words::tr("Nothing is due."));
    std::optional<DueState> under;
    for (const Due& due : all) {
        if (under != due.state)
            page.heading(headingFor(due.state));
        under = due.state;
        addDue(page, due, wordingFor(due, garden, tables, units), true);
    }
    addCautions(page);
    return page.text().toStdString();
}

Json json(const std::vector<Due>& all, const model::Garden& garden, const model::Tables& tables,
          std::chrono::year_month_day date, const Units& units)
{
    Json list = Json::array();
    for (const Due& due : all)
        list.push_back(toJson(due, wordingFor(due, garden, tables, units)));
    return {{"format", "underbough-due"}, {"version", 1},           {"garden", garden.name},
            {"date", isoDate(date)},      {"due", std::move(list)}, {"cautions", cautionsJson()}};
}

} // namespace

int dueCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    const auto date = dateOf(job.arguments);
    const model::Garden garden = gardenOf(job);
    const auto all = model::diary::dueList(
        model::diary::gardenDiary(garden, job.tables, date, treeOf(job.arguments, garden)));
    if (job.arguments.json)
        job.streams.out << jsonText(json(all, garden, job.tables, date, units));
    else
        job.streams.out << text(all, garden, job.tables, date, units);
    return statusOf(job, std::ranges::any_of(
                             all, [](const Due& due) { return due.state == DueState::overdue; }));
}

} // namespace app
