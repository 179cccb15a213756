#include "app/view/visit_form.hpp"

#include "app/words/cut_words.hpp"
#include "app/words/diary_words.hpp"
#include "model/diary/record.hpp"
#include "model/headroom/headroom.hpp"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace app {
namespace {

using model::Cut;
using model::CutKind;

constexpr std::array kKinds{CutKind::removal, CutKind::reduction, CutKind::thinning,
                            CutKind::lifting, CutKind::renewal};

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
        if (isOpen_ && cuts_.plan.empty())
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
    date_ = isoDay(workspace_.date());
    takePlan();
    takeStrips();
    emit changed();
}

void VisitForm::close()
{
    isOpen_ = false;
    cuts_.plan.clear();
    cuts_.byHand.clear();
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
        cuts_.plan.push_back({planned.cut, planned.leafShare});
        const bool along =
            planned.cut.kind == CutKind::removal || planned.cut.kind == CutKind::reduction;
        ticks.push_back({instruction(planned, wording),
                         planned.cut.kind == CutKind::thinning  ? tr("Thinned by")
                         : planned.cut.kind == CutKind::renewal ? tr("Renewed by")
                         : along                                ? tr("Cut at, from its union")
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
    const auto made = madeCuts(cuts_, ticks_.ticks(), workspace_.units());
    return tree && !made.empty() &&
           std::ranges::all_of(made, [&](const Cut& cut) { return isDrawn(*tree, cut); });
}

QString VisitForm::leafHint() const
{
    const auto leaf = tickedLeaf(cuts_, ticks_.ticks());
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
    for (const auto& cut : cuts_.byHand)
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
        const auto read = changedCut(cut, amount, workspace_.units());
        if (!read)
            return refuse(isOfShoots(cut.kind)
                              ? tr("By how much was it thinned? Write a share such as 20 %.")
                              : tr("Where was it cut? Write a length such as %1.")
                                    .arg(workspace_.units().length(2.1)));
        cut = *read;
    }
    cuts_.byHand.push_back(std::move(cut));
    problem_.clear();
    emit changed();
    return true;
}

void VisitForm::removeCut(int index)
{
    if (index < 0 || index >= static_cast<int>(cuts_.byHand.size()))
        return;
    cuts_.byHand.erase(cuts_.byHand.begin() + index);
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

bool VisitForm::save()
{
    const auto* tree = workspace_.tree();
    if (!isOpen_ || !tree)
        return false;
    model::Visit visit;
    visit.by = by_.trimmed().toStdString();
    visit.note = note_.trimmed().toStdString();
    const auto& units = workspace_.units();
    const TypedVisit typed{date_, nextDue_, air_, humidity_, gust_};
    for (const QString& problem :
         {readDays(typed, units, workspace_.date(), visit),
          readCuts(cuts_, ticks_.ticks(), leaf_, units, visit),
          readHeadroom(strips_.strips(), units, visit), readWeather(typed, units, visit)})
        if (!problem.isEmpty())
            return refuse(problem);
    for (const auto& id : tips_)
        if (const auto index = model::limbIndex(*tree, id); index != model::kNoLimb)
            visit.tips.push_back({id, tree->limbs[index].stations.back().position_m, {}, {}});
    visit.photos = taken_;
    try {
        const QString name = tr("a visit on %1", "a step of history").arg(units.date(visit.date));
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
