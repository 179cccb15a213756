#include "app/view/answers_view_model.hpp"

#include "app/view/limb_title.hpp"
#include "app/view/why.hpp"
#include "app/words/breaking_words.hpp"
#include "app/words/headroom_words.hpp"
#include "app/words/light_words.hpp"
#include "app/words/load_words.hpp"
#include "app/words/relief_words.hpp"
#include "app/words/sketch_words.hpp"
#include "app/words/sun_words.hpp"
#include "model/light/sample_day.hpp"

#include <algorithm>
#include <iterator>

namespace app {
namespace {

constexpr std::size_t kShownLimbs = 5;

template <typename Things>
auto withId(const Things& things, const std::string& id) -> decltype(&*things.begin())
{
    const auto found =
        std::ranges::find_if(things, [&](const auto& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

template <typename Things>
QString titleOf(const Things& things, const std::string& id)
{
    const auto* thing = withId(things, id);
    return QString::fromStdString(thing && !thing->name.empty() ? thing->name : id);
}

QString inQuotes(const QString& name)
{
    return AnswersViewModel::tr("“%1”").arg(name);
}

Tone::Value worst(const std::vector<Fact>& facts)
{
    Tone::Value tone = facts.empty() ? Tone::Plain : Tone::Good;
    for (const auto& fact : facts)
        tone = std::max(tone, fact.tone);
    return tone;
}

/// The limb that hangs lowest: as drawn, or else when the tree is wet and in fruit; empty: none
/// does.
QString lowestToBlame(const model::headroom::StripHeadroom& strip)
{
    if (!strip.blame.empty())
        return QString::fromStdString(strip.blame.front().limb);
    if (strip.sagged && !strip.sagged->blame.empty())
        return QString::fromStdString(strip.sagged->blame.front().limb);
    return {};
}

Tone::Value toneOf(const model::load::LimbLoad& load)
{
    if (!load.hasStrength || load.utilisation >= 1.0)
        return Tone::Grave;
    return load.utilisation >= kNotableUtilisation ? Tone::Mind : Tone::Plain;
}

/// \param growing  the day lies in the months for which plants' needs are told
Tone::Value toneOf(const model::light::PlantingSun& sun, const model::Plant* plant, bool growing)
{
    if (!plant || !growing)
        return Tone::Plain;
    if (plant->minSun_h && sun.sun_h < *plant->minSun_h)
        return Tone::Grave;
    if (plant->goodSun_h && sun.sun_h < *plant->goodSun_h)
        return Tone::Mind;
    return plant->minSun_h || plant->goodSun_h ? Tone::Good : Tone::Plain;
}

/// The limbs of which most is asked, no more than are shown; those without strength before all.
std::vector<model::load::LimbLoad> mostAsked(std::vector<model::load::LimbLoad> loads)
{
    std::ranges::stable_sort(loads, [](const auto& a, const auto& b) {
        return std::pair(!a.hasStrength, a.utilisation) > std::pair(!b.hasStrength, b.utilisation);
    });
    if (loads.size() > kShownLimbs)
        loads.resize(kShownLimbs);
    return loads;
}

/// \param after  the load after the suggested cuts; null: not known, or the limb is gone
/// \param full   null: not known yet
Fact stormFact(const model::load::LimbLoad& load, const model::load::LimbLoad* after,
               const Wording& wording, const model::TreeAssessment* full)
{
    const auto& units = wording.units;
    const auto& limb = wording.tree.limbs.at(load.limb);
    QString why = sentence(load, wording);
    if (full && load.hasStrength)
        why += QLatin1Char(' ') + sentence(full->breaking.at(load.limb), wording);
    if (full && load.utilisation >= kNotableUtilisation)
        why += QLatin1Char(' ') +
               sentence(bestForLimb(full->reliefs, load.limb, full->suggestion.allowance), wording);
    return {limbTitle(limb),
            load.hasStrength ? units.share(load.utilisation) : AnswersViewModel::tr("none"),
            after && after->hasStrength ? units.share(after->utilisation) : QString(),
            why,
            toneOf(load),
            QString::fromStdString(limb.id),
            load.hasStrength ? load.utilisation : 1.0,
            why::key(why::Kind::limb, limb.id)};
}

QString stormHeadlineOf(const model::load::LimbLoad& hardest, const Fact& fact, const QString& gust)
{
    const auto limb = inQuotes(fact.subject);
    if (!hardest.hasStrength)
        return AnswersViewModel::tr("%1 is dead or cracked wood: no strength is counted on. It is "
                                    "work for a professional, or to be removed.")
            .arg(limb);
    if (hardest.utilisation >= 1.0)
        return AnswersViewModel::tr("In gusts of %1 I would expect %2 to break.").arg(gust, limb);
    return AnswersViewModel::tr("Gusts of %1 ask most of %2: %3 of its expected strength.")
        .arg(gust, limb, fact.figure);
}

/// What the tree weighs, what makes the sketch doubtful, and which girths of the shown limbs are
/// worth a tape.
QString stormNoteOf(const model::load::TreeLoad& tree,
                    const std::vector<model::load::LimbLoad>& shown, const Wording& wording,
                    const model::TreeAssessment* full)
{
    const auto& units = wording.units;
    QStringList note{
        AnswersViewModel::tr("The tree weighs about %1 above ground, %2 of it leaf and crop.")
            .arg(units.mass(tree.mass_kg), units.mass(tree.leaf_kg + tree.fruit_kg))};
    if (full && full->sketch)
        note += sketchDoubts(*full->sketch, units);
    if (full) {
        std::vector<std::size_t> limbs;
        std::ranges::transform(shown, std::back_inserter(limbs), &model::load::LimbLoad::limb);
        note << girthsToTape(full->breaking, limbs, wording);
    }
    return note.join(QLatin1Char(' ')).trimmed();
}

} // namespace

AnswersViewModel::AnswersViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace)
{
    connect(&workspace_, &Workspace::quickChanged, this, &AnswersViewModel::refreshQuick);
    connect(&workspace_, &Workspace::fullChanged, this, &AnswersViewModel::refreshFull);
    for (const auto signal : {&Workspace::busyChanged, &Workspace::fullChanged})
        connect(&workspace_, signal, this, &AnswersViewModel::busyChanged);
}

void AnswersViewModel::refreshQuick()
{
    wordRoom();
    wordStorm();
    emit changed();
}

void AnswersViewModel::refreshFull()
{
    wordSun();
    refreshQuick();
}

void AnswersViewModel::wordRoom()
{
    const auto* tree = workspace_.quickTree();
    const auto* species = workspace_.species();
    std::vector<Fact> facts;
    QStringList missing;
    if (tree && species) {
        const auto& garden = workspace_.garden();
        const auto& units = workspace_.units();
        const auto* full = workspace_.treeAssessment();
        for (const auto& strip : workspace_.quick()->headroom) {
            if (!strip.height_m)
                continue;
            const bool isShort = strip.worstShortfall_m() > 0.0;
            Fact fact{
                titleOf(garden.strips, strip.strip),
                tr("%1 of %2").arg(units.length(*strip.height_m), units.length(strip.needed_m)),
                {},
                sentence(strip, {units, garden, *tree, *species}),
                strip.shortfall_m > 0.0 ? Tone::Grave
                : isShort               ? Tone::Mind
                                        : Tone::Good,
                lowestToBlame(strip),
                std::min(1.0, *strip.height_m / strip.needed_m),
                why::key(why::Kind::strip, strip.strip)};
            if (full && !full->suggestion.cuts.empty()) {
                const auto after = std::ranges::find(full->suggestion.after, strip.strip,
                                                     &model::headroom::StripHeadroom::strip);
                if (after != full->suggestion.after.end())
                    fact.after = after->height_m ? units.length(*after->height_m) : tr("clear");
            }
            if (isShort)
                missing << inQuotes(fact.subject);
            facts.push_back(fact);
        }
    }
    if (!tree)
        roomHeadline_.clear();
    else if (facts.empty())
        roomHeadline_ = tr("It hangs over no path, drive or mower strip that you have drawn.");
    else if (missing.isEmpty())
        roomHeadline_ = tr("Yes, over everything it hangs over.");
    else
        roomHeadline_ = tr("Not enough over %1.").arg(listed(workspace_.units(), missing));
    roomTone_ = worst(facts);
    room_.show(std::move(facts));
}

void AnswersViewModel::wordStorm()
{
    const auto* tree = workspace_.quickTree();
    const auto* species = workspace_.species();
    std::vector<Fact> facts;
    stormHeadline_.clear();
    stormNote_.clear();
    if (tree && species) {
        const auto& quick = *workspace_.quick();
        const Wording wording{workspace_.units(), workspace_.garden(), *tree, *species};
        // The range needs the full answer; while a limb is dragged only the loads are known.
        const auto* full =
            workspace_.assessedTree() == tree ? workspace_.treeAssessment() : nullptr;
        const auto loads = mostAsked(quick.load.limbs);
        for (const auto& load : loads)
            facts.push_back(
                stormFact(load, workspace_.loadAfter(tree->limbs.at(load.limb).id), wording, full));
        if (!facts.empty())
            stormHeadline_ = stormHeadlineOf(loads.front(), facts.front(),
                                             workspace_.units().speed(workspace_.gust_m_s()));
        stormNote_ = stormNoteOf(quick.load, loads, wording, full);
    }
    stormTone_ = facts.empty() ? Tone::Plain : facts.front().tone;
    storm_.show(std::move(facts));
}

void AnswersViewModel::wordSun()
{
    const auto* all = workspace_.assessment();
    const auto* garden = workspace_.assessedGarden();
    std::vector<Fact> facts;
    sunHeadline_.clear();
    bool growing = true;
    if (all && garden) {
        const auto& units = workspace_.units();
        growing = model::light::inGrowingSeason(all->question.date.month(), garden->place);
        for (const auto& sun : all->sun) {
            const auto after = std::ranges::find(all->sunAfter, sun.planting,
                                                 &model::light::PlantingSun::planting);
            const auto* then = after == all->sunAfter.end() ? nullptr : &*after;
            const auto* planting = withId(garden->plantings, sun.planting);
            const auto* plant =
                planting ? model::findPlant(workspace_.tables(), planting->plant) : nullptr;
            facts.push_back(
                {titleOf(garden->plantings, sun.planting),
                 units.hours(sun.sun_h),
                 then && workspace_.treeAfter() ? units.hours(then->sun_h) : QString(),
                 sentence(sun, then, all->question.date, *garden, workspace_.tables(), units),
                 toneOf(sun, plant, growing),
                 {},
                 sun.openSky_h > 0.0 ? sun.sun_h / sun.openSky_h : 0.0,
                 why::key(why::Kind::planting, sun.planting)});
        }
        QStringList hungry;
        for (const auto& fact : facts)
            if (fact.tone == Tone::Grave)
                hungry << inQuotes(fact.subject);
        const auto date = units.date(all->question.date);
        sunHeadline_ =
            facts.empty() ? tr("You have drawn no planting that wants light.")
            : !growing    ? tr("Plants rest on %1: their need counts from %2.")
                             .arg(date, growingMonthsWords(garden->place, units))
            : hungry.isEmpty()
                ? tr("On %1 every planting gets the least sun it needs.").arg(date)
                : tr("On %1 too little sun reaches %2.").arg(date, listed(units, hungry));
    }
    sunTone_ = growing ? worst(facts) : Tone::Plain; // a resting plant is neither well nor ill off
    sun_.show(std::move(facts));
}

} // namespace app
