#include "app/command/commands.hpp"
#include "app/command/visit_arguments.hpp"
#include "app/document/change_garden_file.hpp"
#include "app/report/diary_json.hpp"
#include "app/report/diary_text.hpp"
#include "app/report/suggestion_json.hpp"
#include "app/report/suggestion_text.hpp"
#include "app/words/diary_words.hpp"
#include "model/diary/garden_diary.hpp"
#include "model/diary/record.hpp"
#include "model/document/validate.hpp"
#include "model/light/daylight.hpp"

#include <algorithm>
#include <stdexcept>

namespace app {
namespace {

using model::diary::TreeDiary;

const model::Tree& treeWith(const model::Garden& garden, const std::string& id)
{
    return *std::ranges::find(garden.trees, id, &model::Tree::id);
}

std::string text(const std::vector<TreeDiary>& all, const model::Garden& garden,
                 const model::Tables& tables, const Units& units)
{
    TextPage page;
    for (const auto& diary : all) {
        const auto& tree = treeWith(garden, diary.tree);
        addDiary(page, diary, {units, garden, tree, *findSpecies(tables, tree.species)});
    }
    addCautions(page);
    return page.text().toStdString();
}

Json json(const std::vector<TreeDiary>& all, const model::Garden& garden,
          const model::Tables& tables, std::chrono::year_month_day date, const Units& units)
{
    Json trees = Json::array();
    for (const auto& diary : all) {
        const auto& tree = treeWith(garden, diary.tree);
        trees.push_back(
            toJson(diary, Wording{units, garden, tree, *findSpecies(tables, tree.species)}));
    }
    return {{"format", "underbough-diary"}, {"version", 1},
            {"garden", garden.name},        {"date", isoDate(date)},
            {"trees", std::move(trees)},    {"cautions", cautionsJson()}};
}

/// The tree that the visit was to: the one named, or the garden's only one.
std::size_t visitedTree(const Job& job, const model::Garden& garden, const char* option = "--add")
{
    std::string id = treeOf(job.arguments, garden);
    if (id.empty() && garden.trees.size() == 1)
        id = garden.trees.front().id;
    const auto found = std::ranges::find(garden.trees, id, &model::Tree::id);
    if (found == garden.trees.end())
        throw Refusal(std::string(option) +
                      ": found no --tree, expected the name of the tree that was visited");
    return static_cast<std::size_t>(found - garden.trees.begin());
}

model::advice::Suggestion planFor(const Job& job, const model::Garden& garden, std::size_t index)
{
    const auto foliations = model::light::foliations(garden, job.tables);
    const model::advice::Surroundings around{job.tables, foliations};
    const auto& tree = garden.trees[index];
    return model::advice::suggest(garden, tree, foliations[index],
                                  *findSpecies(job.tables, tree.species), dateOf(job.arguments),
                                  {.spare_m = 0.0, .goals = {}, .around = &around});
}

/// The tree with the visit more. \throws Refusal  if a cut can't be made on the sketch
model::Tree visited(const Job& job, const model::Tree& tree, const model::Visit& visit)
{
    try {
        return model::diary::withVisit(tree, visit, job.arguments.apply);
    } catch (const std::domain_error& error) {
        throw Refusal(std::string("--apply: found a cut that can't be made on the sketch (") +
                      error.what() + "), expected cuts of limbs that are drawn");
    }
}

/// \throws Refusal  and leaves the file alone
void write(const Job& job, const model::Garden& before, const model::Garden& after,
           const QString& step, const std::vector<NewPhoto>& photos = {})
{
    const auto faults = model::validate(after);
    if (!faults.empty())
        throw Refusal(refusalLine(job.arguments.garden, faults));
    const QString problem = changeGardenFile(
        QString::fromStdString(job.arguments.garden), job.tables, step,
        [&](model::Garden& garden) {
            if (garden != before)
                return Words::tr("it was changed by another program meanwhile; try again");
            garden = after;
            return QString();
        },
        photos);
    if (!problem.isEmpty())
        throw Refusal(problem.toStdString());
}

std::vector<NewPhoto> photosOf(const Job& job)
{
    std::vector<NewPhoto> photos;
    for (const auto& file : job.arguments.photos) {
        photos.push_back(readNewPhoto(QString::fromStdString(file)));
        if (!photos.back().problem.isEmpty())
            throw Refusal("--photo: " + photos.back().problem.toStdString());
    }
    return photos;
}

int addVisit(const Job& job)
{
    if (job.arguments.garden == "-")
        throw Refusal("--add: found standard input, expected a garden file to write the visit to");
    const Units units = unitsOf(job.arguments);
    const model::Garden before = gardenOf(job);
    const auto index = visitedTree(job, before);
    auto visit =
        visitOf(job.arguments, units, before, before.trees[index], planFor(job, before, index));
    const auto photos = photosOf(job);
    for (const auto& photo : photos)
        visit.photos.push_back({photo.name, {}, {}, {}, {}});
    visit.id = model::diary::visitId(before.trees[index], visit.date);
    model::Garden after = before;
    auto& tree = after.trees[index];
    tree = visited(job, tree, visit);
    write(job, before, after,
          Words::tr("a visit on %1", "a step of history").arg(units.date(visit.date)), photos);
    TextPage page;
    const Wording wording{units, after, tree, *findSpecies(job.tables, tree.species)};
    const auto& written = *std::ranges::find(tree.visits, visit.id, &model::Visit::id);
    page.paragraph(Words::tr("Written to the diary of %1: %2.")
                       .arg(treeName(tree, wording.species), visitTitle(written, units)));
    for (const QString& line : visitLines(written, wording) + photoLines(written))
        page.bullet(line);
    job.streams.out << page.text().toStdString();
    return kFine;
}

/// Which of the wounds that the tree's diary lists for the day is meant.
std::size_t woundNamed(const Job& job, const std::vector<model::diary::WoundState>& wounds)
{
    bool isNumber = false;
    const auto number = QString::fromStdString(job.arguments.closed).toUInt(&isNumber);
    if (!isNumber || number < 1 || number > wounds.size())
        throw Refusal("--closed: found " + model::inQuotes(job.arguments.closed) +
                      ", expected the number of one of the " + std::to_string(wounds.size()) +
                      " wounds that the diary lists for that tree and day");
    if (wounds[number - 1].wound.closed)
        throw Refusal("--closed: found wound " + std::to_string(number) +
                      ", which was seen closed already, expected an open one");
    return number - 1;
}

int noteClosed(const Job& job)
{
    if (job.arguments.garden == "-")
        throw Refusal("--closed: found standard input, expected a garden file to write it to");
    const Units units = unitsOf(job.arguments);
    const model::Garden before = gardenOf(job);
    model::Garden after = before;
    auto& tree = after.trees[visitedTree(job, before, "--closed")];
    const auto& species = *findSpecies(job.tables, tree.species);
    const auto date = dateOf(job.arguments);
    const auto wounds = [&] { return model::diary::wounds(tree, species, before.place, date); };
    const auto open = wounds();
    const auto index = woundNamed(job, open);
    auto& visit = *std::ranges::find(tree.visits, open[index].visit, &model::Visit::id);
    std::ranges::find(visit.wounds, open[index].wound)->closed = date;
    write(job, before, after, Words::tr("a wound seen closed", "a step of history"));
    TextPage page;
    page.paragraph(sentence(wounds()[index], {units, after, tree, species}));
    job.streams.out << page.text().toStdString();
    return kFine;
}

} // namespace

int diaryCommand(const Job& job)
{
    if (job.arguments.add)
        return addVisit(job);
    if (!job.arguments.closed.empty())
        return noteClosed(job);
    const Units units = unitsOf(job.arguments);
    const auto date = dateOf(job.arguments);
    const model::Garden garden = gardenOf(job);
    const auto all =
        model::diary::gardenDiary(garden, job.tables, date, treeOf(job.arguments, garden));
    if (job.arguments.json)
        job.streams.out << jsonText(json(all, garden, job.tables, date, units));
    else
        job.streams.out << text(all, garden, job.tables, units);
    return statusOf(job, std::ranges::any_of(model::diary::dueList(all), [](const auto& due) {
                        return due.state == model::diary::DueState::overdue;
                    }));
}

} // namespace app
