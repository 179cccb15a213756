#include "app/view/visit_form.hpp"

#include "app/words/cut_words.hpp"
#include "app/words/diary_words.hpp"
#include "model/diary/record.hpp"
#include "model/headroom/headroom.hpp"

#include <QDate>

#include <algorithm>
#include <array>
#include <stdexcept>

namespace app {
namespace {

using model::Cut;
using model::CutKind;

constexpr std::array kKinds{CutKind::removal, CutKind::reduction, CutKind::thinning,
                            CutKind::lifting};

QString iso(std::chrono::year_month_day date)
{
    return QDate(static_cast<int>(date.year()), static_cast<int>(unsigned(date.month())),
                 static_cast<int>(unsigned(date.day())))
        .toString(Qt::ISODate);
}

/// A day as it is written on paper or as ISO 8601 has it; blank: it is none.
std::optional<std::chrono::year_month_day> parseDay(const QString& text, const QLocale& locale)
{
    QDate day = QDate::fromString(text.trimmed(), Qt::ISODate);
    for (const auto format : {QLocale::LongFormat, QLocale::ShortFormat})
        if (!day.isValid())
            day = locale.toDate(text.trimmed(), format);
    if (!day.isValid() || day.year() < 1800 || day.year() > 2200)
        return std::nullopt;
    return std::chrono::year(day.year()) / day.month() / day.day();
}

bool isDrawn(const model::Tree& tree, const Cut& cut)
{
    return model::limbIndex(tree, cut.limb) != model::kNoLimb;
}

} // namespace

VisitForm::VisitForm(Workspace& workspace, PhotosViewModel& photos, QObject* parent)
    : QObject(parent), workspace_(workspace), photos_(photos)
{
    connect(&ticks_, &TickModel::ticked, this, &VisitForm::changed);
    // What is typed belongs to one tree as it was drawn then.
    connect(&workspace_, &Workspace::treeChanged, this, [this] {
        if (isOpen_ && (!workspace_.tree() || workspace_.tree()->id != tree_))
            close();
    });
    connect(&workspace_.document(), &Document::replaced, this, &VisitForm::close);
    // A plan that comes later is still this form's, as long as nothing was ticked.
    connect(&workspace_, &Workspace::fullChanged, this, [this] {
        if (isOpen_ && plan_.empty())
            takePlan();
    });
}

QString VisitForm::title() const
{
    const auto* tree = workspace_.tree();
    const auto* species = workspace_.species();
    return tree && species ? tr("A visit to %1").arg(treeName(*tree, *species)) : QString();
}

void VisitForm::start()
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return;
    close();
    isOpen_ = true;
    tree_ = tree->id;
    date_ = iso(workspace_.date());
    takePlan();
    takeStrips();
    emit changed();
}

void VisitForm::close()
{
    isOpen_ = false;
    plan_.clear();
    free_.clear();
    tips_.clear();
    taken_.clear();
    photos_.release();
    for (QString* text :
         {&date_, &by_, &leaf_, &air_, &humidity_, &gust_, &note_, &nextDue_, &problem_})
        text->clear();
    cutsSketch_ = true;
    ticks_.show({});
    strips_.show({});
    emit changed();
}

void VisitForm::takePlan()
{
    const auto* full = workspace_.treeAssessment();
    const auto* tree = workspace_.assessedTree();
    const auto* species = workspace_.species();
    if (!full || !tree || !species || !workspace_.isCurrent())
        return;
    const Wording wording{workspace_.units(), workspace_.garden(), *tree, *species};
    std::vector<Tick> ticks;
    for (const auto& planned : full->suggestion.cuts) {
        plan_.push_back({planned.cut, planned.leafShare});
        const bool along =
            planned.cut.kind == CutKind::removal || planned.cut.kind == CutKind::reduction;
        ticks.push_back({instruction(planned, wording),
                         planned.cut.kind == CutKind::thinning ? tr("Thinned by")
                         : along                               ? tr("Cut at, from its union")
                                                               : tr("Lifted to, above the ground"),
                         Tick::Left, QString()});
    }
    ticks_.show(std::move(ticks));
}

void VisitForm::takeStrips()
{
    const auto& garden = workspace_.garden();
    std::vector<StripHeights> rows;
    for (const auto& strip : model::headroom::treeHeadroom(garden, *workspace_.tree()))
        if (strip.height_m)
            rows.push_back({strip.strip, thingName(garden, strip.strip),
                            tr("drawn: %1").arg(workspace_.units().length(*strip.height_m)),
                            QString(), QString()});
    strips_.show(std::move(rows));
}

void VisitForm::setCutsSketch(bool cuts)
{
    cutsSketch_ = cuts;
    emit changed();
}

bool VisitForm::canCutSketch() const
{
    const auto* tree = workspace_.tree();
    const auto made = madeCuts();
    return tree && !made.empty() &&
           std::ranges::all_of(made, [&](const Cut& cut) { return isDrawn(*tree, cut); });
}

/// A changed cut that can't be read yet stands as planned: save() is where that is told.
std::vector<Cut> VisitForm::madeCuts() const
{
    std::vector<Cut> made;
    for (std::size_t i = 0; i < plan_.size() && i < ticks_.ticks().size(); ++i) {
        const auto& tick = ticks_.ticks()[i];
        if (tick.state == Tick::Done)
            made.push_back(plan_[i].cut);
        if (tick.state == Tick::Changed)
            made.push_back(changedCut(plan_[i].cut, tick.amount).value_or(plan_[i].cut));
    }
    made.insert(made.end(), free_.begin(), free_.end());
    return made;
}

std::optional<Cut> VisitForm::changedCut(const Cut& cut, const QString& amount) const
{
    const auto& units = workspace_.units();
    Cut made = cut;
    if (cut.kind == CutKind::thinning) {
        made.share = units.parseShare(amount);
        return made.share && *made.share > 0.0 && *made.share <= 1.0 ? std::optional(made)
                                                                     : std::nullopt;
    }
    const auto length = units.parseLength_m(amount);
    if (!length || !(*length > 0.0 && *length <= 120.0))
        return std::nullopt;
    if (cut.kind == CutKind::lifting) {
        made.height_m = length;
        return made;
    }
    // A limb that was to go and was only shortened.
    made.kind = CutKind::reduction;
    made.at_m = *length;
    return made;
}

std::optional<double> VisitForm::tickedLeaf() const
{
    double leaf = 0.0;
    bool any = false;
    for (std::size_t i = 0; i < plan_.size() && i < ticks_.ticks().size(); ++i) {
        if (ticks_.ticks()[i].state == Tick::Changed)
            return std::nullopt;
        if (ticks_.ticks()[i].state != Tick::Done)
            continue;
        leaf += plan_[i].leafShare;
        any = true;
    }
    return any && free_.empty() ? std::optional(leaf) : std::nullopt;
}

QString VisitForm::leafHint() const
{
    const auto leaf = tickedLeaf();
    return leaf ? tr("%1 by the plan").arg(workspace_.units().share(*leaf)) : tr("not known");
}

QStringList VisitForm::freeCuts() const
{
    const auto* tree = workspace_.tree();
    const auto* species = workspace_.species();
    QStringList told;
    if (!tree || !species)
        return told;
    const Wording wording{workspace_.units(), workspace_.garden(), *tree, *species};
    for (const auto& cut : free_)
        told << cutMade(cut, {}, wording);
    return told;
}

QStringList VisitForm::cutKinds() const
{
    QStringList kinds;
    for (const auto kind : kKinds)
        kinds << capitalised(cutKindWords(kind));
    return kinds;
}

QStringList VisitForm::limbs() const
{
    QStringList names;
    if (const auto* tree = workspace_.tree())
        for (const auto& limb : tree->limbs)
            names << QString::fromStdString(limb.name.empty() ? limb.id : limb.name);
    return names;
}

bool VisitForm::addCut(int kind, const QString& limb, const QString& amount)
{
    const auto* tree = workspace_.tree();
    if (!tree || kind < 0 || kind >= static_cast<int>(kKinds.size()))
        return false;
    if (limb.trimmed().isEmpty())
        return refuse(tr("Which limb was it? Choose one, or write its name."));
    Cut cut;
    cut.kind = kKinds[static_cast<std::size_t>(kind)];
    cut.limb = limb.trimmed().toStdString();
    for (const auto& drawn : tree->limbs)
        if (drawn.id == cut.limb || drawn.name == cut.limb) {
            cut.limb = drawn.id;
            break;
        }
    if (cut.kind != CutKind::removal) {
        const auto read = changedCut(cut, amount);
        if (!read)
            return refuse(cut.kind == CutKind::thinning
                              ? tr("By how much was it thinned? Write a share such as 20 %.")
                              : tr("Where was it cut? Write a length such as %1.")
                                    .arg(workspace_.units().length(2.1)));
        cut = *read;
    }
    free_.push_back(std::move(cut));
    problem_.clear();
    emit changed();
    return true;
}

void VisitForm::removeCut(int index)
{
    if (index < 0 || index >= static_cast<int>(free_.size()))
        return;
    free_.erase(free_.begin() + index);
    emit changed();
}

QStringList VisitForm::tips() const
{
    const auto* tree = workspace_.tree();
    QStringList told;
    for (const auto& id : tips_)
        if (const auto index = tree ? model::limbIndex(*tree, id) : model::kNoLimb;
            index != model::kNoLimb) {
            const auto& limb = tree->limbs[index];
            told << tr("Tip of %1, as drawn %2 above the ground")
                        .arg(QString::fromStdString(limb.name.empty() ? limb.id : limb.name),
                             workspace_.units().length(limb.stations.back().position_m.z));
        }
    return told;
}

void VisitForm::addTip(int limb)
{
    const auto* tree = workspace_.tree();
    if (!tree || limb < 0 || limb >= static_cast<int>(tree->limbs.size()))
        return;
    const auto& id = tree->limbs[static_cast<std::size_t>(limb)].id;
    if (std::ranges::find(tips_, id) != tips_.end())
        return;
    tips_.push_back(id);
    emit changed();
}

void VisitForm::removeTip(int index)
{
    if (index < 0 || index >= static_cast<int>(tips_.size()))
        return;
    tips_.erase(tips_.begin() + index);
    emit changed();
}

QStringList VisitForm::photoFiles() const
{
    QStringList files;
    for (const auto& photo : taken_)
        files << QString::fromStdString(photo.file);
    return files;
}

QStringList VisitForm::photoNotes() const
{
    QStringList notes;
    for (const auto& photo : taken_)
        notes << QString::fromStdString(photo.note);
    return notes;
}

bool VisitForm::addPhotos(const QList<QUrl>& files)
{
    problem_.clear();
    for (const auto& file : files) {
        auto photo = readNewPhoto(file.toLocalFile());
        if (!photo.problem.isEmpty()) {
            problem_ = problem_.isEmpty() ? photo.problem : problem_;
            continue;
        }
        if (std::ranges::find(taken_, photo.name, &model::Photo::file) != taken_.end())
            continue;
        photos_.hold(photo);
        taken_.push_back({std::move(photo.name), {}, {}, {}, {}});
    }
    emit changed();
    return problem_.isEmpty();
}

void VisitForm::setPhotoNote(int index, const QString& note)
{
    if (index >= 0 && index < static_cast<int>(taken_.size()))
        taken_[static_cast<std::size_t>(index)].note = note.trimmed().toStdString();
}

void VisitForm::removePhoto(int index)
{
    if (index < 0 || index >= static_cast<int>(taken_.size()))
        return;
    taken_.erase(taken_.begin() + index);
    emit changed();
}

bool VisitForm::refuse(const QString& problem)
{
    problem_ = problem;
    emit changed();
    return false;
}

bool VisitForm::readCuts(model::Visit& visit)
{
    bool ofPlan = false;
    for (std::size_t i = 0; i < plan_.size(); ++i) {
        const auto& tick = ticks_.ticks()[i];
        ofPlan = ofPlan || tick.state != Tick::Left;
        if (tick.state == Tick::Changed && !changedCut(plan_[i].cut, tick.amount))
            return refuse(tr("Cut %1 was changed: write how, such as %2.")
                              .arg(i + 1)
                              .arg(plan_[i].cut.kind == CutKind::thinning
                                       ? workspace_.units().share(0.2)
                                       : workspace_.units().length(2.1)));
    }
    visit.cuts = madeCuts();
    for (std::size_t i = 0; ofPlan && i < plan_.size(); ++i)
        if (ticks_.ticks()[i].state == Tick::Left)
            visit.left.push_back(plan_[i].cut);
    visit.leafShare = tickedLeaf();
    if (leaf_.trimmed().isEmpty())
        return true;
    visit.leafShare = workspace_.units().parseShare(leaf_);
    if (!visit.leafShare || !(*visit.leafShare >= 0.0 && *visit.leafShare <= 1.0))
        return refuse(tr("The share of the leaf can't be read: write one such as 8 %."));
    return true;
}

bool VisitForm::readDays(model::Visit& visit)
{
    const auto& locale = workspace_.units().locale();
    const auto date = parseDay(date_, locale);
    if (!date)
        return refuse(
            tr("The day can't be read: write it such as %1.").arg(iso(workspace_.date())));
    visit.date = *date;
    if (nextDue_.trimmed().isEmpty())
        return true;
    visit.nextDue = parseDay(nextDue_, locale);
    if (!visit.nextDue)
        return refuse(tr("The day to come again can't be read: write it such as %1.")
                          .arg(iso(workspace_.date())));
    if (*visit.nextDue < visit.date)
        return refuse(tr("The day to come again lies before the visit."));
    return true;
}

bool VisitForm::readMeasures(model::Visit& visit)
{
    const auto& units = workspace_.units();
    for (const auto& row : strips_.strips()) {
        model::HeadroomRecord record;
        record.strip = row.strip;
        for (const auto& [text, height] :
             {std::pair(&row.before, &record.before_m), std::pair(&row.after, &record.after_m)}) {
            if (text->trimmed().isEmpty())
                continue;
            *height = units.parseLength_m(*text);
            if (!*height || !(**height >= 0.0 && **height <= 120.0))
                return refuse(tr("The headroom over %1 can't be read: write it such as %2.")
                                  .arg(row.name, units.length(2.1)));
        }
        if (record.before_m || record.after_m)
            visit.headroom.push_back(std::move(record));
    }
    for (const auto& id : tips_)
        if (const auto index = model::limbIndex(*workspace_.tree(), id); index != model::kNoLimb)
            visit.tips.push_back(
                {id, workspace_.tree()->limbs[index].stations.back().position_m, {}, {}});
    return true;
}

bool VisitForm::readWeather(model::Visit& visit)
{
    const auto& units = workspace_.units();
    model::VisitWeather weather;
    if (!air_.trimmed().isEmpty()) {
        weather.air_C = units.parseTemperature_C(air_);
        if (!weather.air_C || !(*weather.air_C >= -50.0 && *weather.air_C <= 60.0))
            return refuse(
                tr("The warmth can't be read: write it such as %1.").arg(units.temperature(21.0)));
    }
    if (!humidity_.trimmed().isEmpty()) {
        weather.humidity = units.parseShare(humidity_);
        if (!weather.humidity || !(*weather.humidity >= 0.0 && *weather.humidity <= 1.0))
            return refuse(tr("The humidity can't be read: write it such as 55 %."));
    }
    if (!gust_.trimmed().isEmpty()) {
        weather.gust_m_s = units.parseSpeed_m_s(gust_);
        if (!weather.gust_m_s || !(*weather.gust_m_s >= 0.0 && *weather.gust_m_s <= 100.0))
            return refuse(
                tr("The gusts can't be read: write them such as %1.").arg(units.speed(5.0)));
    }
    if (weather.air_C || weather.humidity || weather.gust_m_s)
        visit.weather = weather;
    return true;
}

bool VisitForm::save()
{
    const auto* tree = workspace_.tree();
    if (!isOpen_ || !tree)
        return false;
    model::Visit visit;
    visit.by = by_.trimmed().toStdString();
    visit.note = note_.trimmed().toStdString();
    if (!readDays(visit) || !readCuts(visit) || !readMeasures(visit) || !readWeather(visit))
        return false;
    visit.photos = taken_;
    try {
        const QString name =
            tr("a visit on %1", "a step of history").arg(workspace_.units().date(visit.date));
        auto after = model::diary::withVisit(*tree, std::move(visit), cutsSketch());
        for (const auto& photo : taken_)
            workspace_.document().addPhoto(photo.file, photos_.held().at(photo.file));
        if (!workspace_.changeTree(name, std::move(after)))
            return refuse(workspace_.problem());
    } catch (const std::domain_error&) {
        return refuse(tr("One of the cuts can't be made on the sketch as it is drawn. Untick "
                         "\"cut the sketch too\", or change that cut."));
    }
    close();
    return true;
}

} // namespace app
