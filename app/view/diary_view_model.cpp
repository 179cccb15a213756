#include "app/view/diary_view_model.hpp"

#include "app/calendar/due_calendar.hpp"
#include "app/drawing/side_bearing.hpp"
#include "app/words/diary_words.hpp"
#include "app/words/growth_words.hpp"
#include "model/diary/garden_diary.hpp"

#include <QDir>
#include <QFileInfo>

#include <algorithm>

namespace app {
namespace {

using model::diary::Due;
using model::diary::DueState;

constexpr std::chrono::milliseconds kSettle{400};
constexpr double kHalfASeason = 0.5; // no wound worth following is closed before

Tone::Value toneOf(const Due& due)
{
    switch (due.state) {
    case DueState::overdue:
        return Tone::Grave;
    case DueState::now:
        return Tone::Mind;
    case DueState::later:
        break;
    }
    return Tone::Plain;
}

VisitLine lineOf(const model::Visit& visit, const Wording& wording)
{
    VisitLine line;
    line.title = visitTitle(visit, wording.units);
    line.lines = visitLines(visit, wording);
    line.visit = QString::fromStdString(visit.id);
    line.hasPictures = !visit.limbsBefore.empty();
    for (const auto& photo : visit.photos) {
        line.photoFiles << QString::fromStdString(photo.file);
        line.photoNotes << QString::fromStdString(photo.note);
    }
    return line;
}

} // namespace

DiaryViewModel::DiaryViewModel(Workspace& workspace, DiaryWork work, QObject* parent)
    : QObject(parent), workspace_(workspace), work_(std::move(work)), photos_(workspace),
      form_(workspace, photos_), worker_(kSettle)
{
    connect(&worker_, &NewestWins::busyChanged, this, &DiaryViewModel::busyChanged);
    connect(&worker_, &NewestWins::failed, &workspace_, &Workspace::say);
    connect(&workspace_, &Workspace::treeChanged, this, [this] {
        refresh();
        ask();
    });
    connect(&workspace_, &Workspace::askChanged, this, &DiaryViewModel::ask);
}

void DiaryViewModel::ask()
{
    const auto garden = workspace_.document().garden();
    const auto date = workspace_.date();
    if (garden == garden_ && date == date_)
        return;
    worker_.start([this, garden, date](const NewestWins::Turn& turn) {
        if (!turn.settles())
            return;
        auto diaries = work_(garden, date, turn.cancel());
        if (turn.cancel())
            return;
        turn.tell([this, garden, date, diaries = std::move(diaries)]() mutable {
            take(garden, date, std::move(diaries));
        });
    });
}

void DiaryViewModel::take(const GardenSnapshot& garden, std::chrono::year_month_day date,
                          std::vector<model::diary::TreeDiary> diaries)
{
    garden_ = garden;
    date_ = date;
    diaries_ = std::move(diaries);
    refresh();
}

const model::Tree* DiaryViewModel::treeOf(const std::string& id) const
{
    if (!garden_)
        return nullptr;
    const auto found = std::ranges::find(garden_->trees, id, &model::Tree::id);
    return found == garden_->trees.end() ? nullptr : &*found;
}

Wording DiaryViewModel::wordingFor(const model::Tree& tree) const
{
    return {workspace_.units(), *garden_, tree,
            *model::findSpecies(workspace_.tables(), tree.species)};
}

const model::diary::TreeDiary* DiaryViewModel::diary() const
{
    const auto* tree = workspace_.tree();
    if (!tree || !treeOf(tree->id))
        return nullptr;
    const auto found = std::ranges::find(diaries_, tree->id, &model::diary::TreeDiary::tree);
    return found == diaries_.end() ? nullptr : &*found;
}

std::vector<Due> DiaryViewModel::dueList() const
{
    return model::diary::dueList(diaries_);
}

/// The visits are told from the tree as it is now, without waiting for anything.
void DiaryViewModel::refresh()
{
    std::vector<VisitLine> lines;
    sketches_.clear();
    const auto* tree = workspace_.tree();
    const auto* species = workspace_.species();
    if (tree && species) {
        const Wording wording{workspace_.units(), workspace_.garden(), *tree, *species};
        sketches_ = model::diary::sketches(*tree);
        auto visits = model::growth::visitsByDate(*tree);
        std::ranges::reverse(visits);
        for (const auto* visit : visits)
            lines.push_back(lineOf(*visit, wording));
    }
    visits_.show(std::move(lines));
    refreshDue();
    refreshSeasons();
    emit changed();
}

void DiaryViewModel::refreshDue()
{
    std::vector<DueLine> lines;
    for (const auto& due : dueList())
        if (const auto* tree = treeOf(due.tree)) {
            const auto wording = wordingFor(*tree);
            lines.push_back({capitalised(treeName(*tree, wording.species)), dueWhat(due, wording),
                             capitalised(dueWhen(due, workspace_.units())), dueWhy(due, wording),
                             dueStateWords(due.state), QString::fromStdString(due.tree),
                             toneOf(due)});
        }
    due_.show(std::move(lines));
}

void DiaryViewModel::refreshSeasons()
{
    std::vector<Fact> facts;
    if (const auto* its = diary()) {
        const auto wording = wordingFor(*treeOf(its->tree));
        for (const auto& season : its->seasons) {
            Fact fact;
            fact.subject = seasonName(season, wording);
            fact.figure = workspace_.units().share(season.taken);
            fact.sentence = seasonSentence(season, workspace_.units());
            fact.tone = season.taken > season.guideline ? Tone::Grave : Tone::Plain;
            fact.measure = season.guideline > 0.0 ? season.taken / season.guideline : 0.0;
            facts.insert(facts.begin(), std::move(fact));
        }
    }
    seasons_.show(std::move(facts));
}

QString DiaryViewModel::dueHeadline() const
{
    if (!garden_)
        return tr("Looking through the garden\u2026");
    const auto all = dueList();
    const auto overdue = std::ranges::count(all, DueState::overdue, &Due::state);
    const auto now = std::ranges::count(all, DueState::now, &Due::state);
    if (overdue > 0)
        return overdue == 1 ? tr("One thing is overdue.")
                            : tr("%1 things are overdue.").arg(overdue);
    if (now > 0)
        return now == 1 ? tr("One thing is due now.") : tr("%1 things are due now.").arg(now);
    return all.empty() ? tr("There is no tree in this garden yet.") : tr("Nothing is due now.");
}

Tone::Value DiaryViewModel::dueTone() const
{
    const auto all = dueList();
    return all.empty() ? Tone::Plain : toneOf(all.front());
}

QString DiaryViewModel::treeTitle() const
{
    const auto* tree = workspace_.tree();
    const auto* species = workspace_.species();
    return tree && species ? capitalised(treeName(*tree, *species)) : QString();
}

QString DiaryViewModel::nextDue() const
{
    const auto* its = diary();
    if (!its || its->due.empty())
        return {};
    const auto& due = its->due.front();
    return tr("%1 (%2): %3.", "when (overdue): what")
        .arg(capitalised(dueWhen(due, workspace_.units())), dueStateWords(due.state),
             dueWhat(due, wordingFor(*treeOf(its->tree))));
}

double DiaryViewModel::taken() const
{
    const auto* its = diary();
    return its ? its->seasons.back().taken : 0.0;
}

double DiaryViewModel::guideline() const
{
    const auto* its = diary();
    return its ? its->seasons.back().guideline : 0.0;
}

QString DiaryViewModel::leafText() const
{
    const auto* its = diary();
    return its ? seasonSentence(its->seasons.back(), workspace_.units()) : QString();
}

QString DiaryViewModel::allowanceText() const
{
    const auto* its = diary();
    return its ? tr("Counted over the last twelve months, as plans are, %1 may go now.")
                     .arg(workspace_.units().share(its->allowance.share))
               : QString();
}

QStringList DiaryViewModel::growth() const
{
    QStringList lines;
    if (const auto* its = diary())
        for (const auto& grown : its->growth)
            lines << sentence(grown, wordingFor(*treeOf(its->tree)));
    return lines;
}

QString DiaryViewModel::shoots() const
{
    const auto* its = diary();
    return its ? shootWords(its->shoots, wordingFor(*treeOf(its->tree))) : QString();
}

QStringList DiaryViewModel::wounds() const
{
    QStringList lines;
    if (const auto* its = diary())
        for (const auto& wound : its->wounds)
            lines << sentence(wound, wordingFor(*treeOf(its->tree)));
    return lines;
}

QList<bool> DiaryViewModel::woundsOpen() const
{
    QList<bool> open;
    if (const auto* its = diary())
        for (const auto& wound : its->wounds)
            open << (!wound.wound.closed && wound.seasons >= kHalfASeason);
    return open;
}

void DiaryViewModel::noteClosed(int row)
{
    const auto* its = diary();
    const auto* tree = workspace_.tree();
    if (!its || !tree || row < 0 || row >= static_cast<int>(its->wounds.size()))
        return;
    const auto& state = its->wounds[static_cast<std::size_t>(row)];
    auto after = *tree;
    const auto visit = std::ranges::find(after.visits, state.visit, &model::Visit::id);
    if (visit == after.visits.end())
        return;
    const auto wound = std::ranges::find(visit->wounds, state.wound);
    if (wound == visit->wounds.end())
        return;
    wound->closed = workspace_.date();
    workspace_.changeTree(tr("a wound seen closed", "a step of history"), std::move(after));
}

void DiaryViewModel::removeVisit(const QString& visit)
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return;
    auto after = *tree;
    if (std::erase_if(after.visits,
                      [&](const model::Visit& each) { return each.id == visit.toStdString(); }) > 0)
        workspace_.changeTree(tr("a visit taken out", "a step of history"), std::move(after));
}

QUrl DiaryViewModel::suggestedCalendar() const
{
    const QString path = workspace_.document().path();
    const QString folder = path.isEmpty() ? QDir::homePath() : QFileInfo(path).absolutePath();
    return QUrl::fromLocalFile(
        QDir(folder).filePath(workspace_.document().name() + QStringLiteral(".ics")));
}

const model::diary::Sketches* DiaryViewModel::sketchesOf(int row) const
{
    return row < 0 || row >= static_cast<int>(sketches_.size())
               ? nullptr
               : &sketches_[static_cast<std::size_t>(row)];
}

double DiaryViewModel::bearing_deg() const
{
    const auto* tree = workspace_.tree();
    return tree ? tellingBearing_deg(workspace_.garden(), *tree) : 0.0;
}

void DiaryViewModel::chooseTree(const QString& tree)
{
    workspace_.chooseTree(tree.toStdString());
}

void DiaryViewModel::startVisit(const QString& tree)
{
    chooseTree(tree);
    form_.start();
}

bool DiaryViewModel::exportCalendar(const QUrl& file)
{
    if (!garden_)
        return false;
    const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
    const auto text =
        gardenCalendar(*garden_, dueList(), workspace_.tables(), workspace_.units(), date_, now);
    const QString problem = writeCalendarFile(file.toLocalFile(), text);
    workspace_.say(problem);
    return problem.isEmpty();
}

} // namespace app
