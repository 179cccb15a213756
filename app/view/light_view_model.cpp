#include "app/view/light_view_model.hpp"

#include "app/view/why.hpp"
#include "app/words/light_words.hpp"
#include "app/words/wording.hpp"
#include "model/light/sample_day.hpp"

#include <algorithm>

namespace app {
namespace {

using model::light::Suits;

constexpr std::size_t kShownCuts = 5;

Tone::Value toneOf(Suits suits)
{
    switch (suits) {
    case Suits::well:
        return Tone::Good;
    case Suits::barely:
        return Tone::Mind;
    case Suits::tooDark:
        return Tone::Grave;
    case Suits::notKnown:
        break;
    }
    return Tone::Plain;
}

template <typename Things>
auto withId(const Things& things, const std::string& id) -> decltype(&*things.begin())
{
    const auto found =
        std::ranges::find_if(things, [&](const auto& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

QString nameOf(const auto& thing)
{
    return QString::fromStdString(thing.name.empty() ? thing.id : thing.name);
}

} // namespace

LightViewModel::LightViewModel(Workspace& workspace, PlanViewModel& plan, LightWorks works,
                               QObject* parent)
    : QObject(parent), workspace_(workspace), plan_(plan), assessor_(std::move(works))
{
    connect(&workspace_, &Workspace::treeChanged, this, &LightViewModel::want);
    connect(&workspace_, &Workspace::askChanged, this, &LightViewModel::want);
    connect(&workspace_, &Workspace::unitsChanged, this, [this] {
        if (year_)
            word();
    });
    connect(&assessor_, &LightAssessor::yearReady, this, &LightViewModel::take);
    connect(&assessor_, &LightAssessor::mapReady, this, [this](const auto& map) {
        if (!mapShown_)
            return;
        plan_.showMap(map);
        emit mapRenewed();
    });
    connect(&assessor_, &LightAssessor::failed, &workspace_, &Workspace::say);
    connect(&assessor_, &LightAssessor::busyChanged, this, &LightViewModel::busyChanged);
}

void LightViewModel::stop()
{
    if (!isBusy())
        return;
    isStopped_ = true;
    assessor_.stop();
    emit busyChanged();
}

void LightViewModel::goOn()
{
    if (isStopped_)
        want();
}

void LightViewModel::want()
{
    isStopped_ = false;
    emit busyChanged();
    const auto* tree = workspace_.tree();
    assessor_.want({workspace_.document().garden(), tree ? tree->id : std::string(),
                    workspace_.date().year(), mapShown_});
}

void LightViewModel::setMapShown(bool shown)
{
    if (shown == mapShown_)
        return;
    mapShown_ = shown;
    emit mapShownChanged();
    if (!shown)
        plan_.showMap(nullptr);
    want();
}

void LightViewModel::setPlace(int place)
{
    if (place == place_ || place < 0 || place >= places_.size())
        return;
    place_ = place;
    word();
}

void LightViewModel::choose(const QString& id)
{
    // Cuts of other trees are told too: the tree comes before the limb.
    const auto tree = id.section(QLatin1Char('\n'), 0, 0).toStdString();
    workspace_.chooseTree(tree);
    workspace_.chooseLimb(id.section(QLatin1Char('\n'), 1).toStdString());
}

void LightViewModel::take(const LightWanted& wanted,
                          const std::shared_ptr<const model::LightYear>& year)
{
    garden_ = wanted.garden;
    year_ = year;
    places_.clear();
    for (const auto& surface : year->surfaces)
        places_ << capitalised(surfaceName(surface.light, *garden_));
    place_ = places_.isEmpty() ? -1 : std::clamp(place_, 0, static_cast<int>(places_.size()) - 1);
    word();
}

std::optional<Chain> LightViewModel::chain(const std::string& when) const
{
    if (place_ < 0 || !year_)
        return std::nullopt;
    std::optional<int> month;
    if (when != why::kSeason)
        month = std::stoi(when);
    const auto& surface = year_->surfaces.at(static_cast<std::size_t>(place_));
    return chainOf(YearAsked{surface.light, year_->weather, month}, *garden_, workspace_.tables(),
                   workspace_.units());
}

std::optional<LightViewModel::Gain> LightViewModel::gain(std::size_t row) const
{
    if (place_ < 0 || !year_)
        return std::nullopt;
    const auto& surface = year_->surfaces.at(static_cast<std::size_t>(place_));
    if (row >= surface.cuts.size())
        return std::nullopt;
    return Gain{garden_, surface.light, year_->weather, surface.cuts[row]};
}

void LightViewModel::word()
{
    headline_ = tr("You have drawn no planting that wants light.");
    weather_.clear();
    tone_ = Tone::Plain;
    if (place_ < 0) {
        months_.show({});
        taken_.show({});
        cuts_.show({});
        emit changed();
        return;
    }
    const auto& surface = year_->surfaces.at(static_cast<std::size_t>(place_));
    const auto& units = workspace_.units();
    const auto* planting = withId(garden_->plantings, surface.light.planting);
    const auto* plant = planting ? model::findPlant(workspace_.tables(), planting->plant) : nullptr;
    headline_ = seasonSentence(surface.light, *garden_, workspace_.tables(), units);
    weather_ = weatherSentence(year_->weather, units);
    tone_ = toneOf(surface.light.suits);
    wordMonths(surface.light, plant);
    wordTaken(surface.light.growingSeason);
    wordCuts(surface);
    emit changed();
}

void LightViewModel::wordMonths(const model::light::SurfaceLight& light, const model::Plant* plant)
{
    const auto& units = workspace_.units();
    double longest = 0.0;
    for (const auto& month : light.months)
        longest = std::max(longest, month.open.sun_h);
    const auto onScale = [longest](double hours) { return longest > 0.0 ? hours / longest : 0.0; };
    std::vector<MonthBar> bars;
    for (unsigned m = 1; m <= 12; ++m) {
        const auto& month = light.months[m - 1];
        MonthBar bar;
        bar.letter = units.locale().standaloneMonthName(static_cast<int>(m), QLocale::NarrowFormat);
        bar.here = onScale(month.standing.sun_h);
        bar.open = onScale(month.open.sun_h);
        bar.growing = model::light::inGrowingSeason(std::chrono::month{m}, garden_->place);
        if (bar.growing && plant)
            bar.tone =
                toneOf(model::light::suits(*plant, month.clearSun_h, month.standing.dli_mol));
        bar.sentence = tr("%1: %2 of direct sun a day and %3, of %4 and %5 in the open.")
                           .arg(units.month(static_cast<int>(m)), units.hours(month.standing.sun_h),
                                molWords(month.standing.dli_mol, units),
                                units.hours(month.open.sun_h), molWords(month.open.dli_mol, units));
        bar.why = why::key(why::Kind::year, std::to_string(m - 1));
        bars.push_back(bar);
    }
    months_.show(std::move(bars));
    // The table's hours are those of clear days: no line where clouds are counted in.
    const bool clear = !year_->weather.sunshineShare.front();
    need_ = clear && plant && plant->minSun_h ? onScale(*plant->minSun_h) : -1.0;
    good_ = clear && plant && plant->goodSun_h ? onScale(*plant->goodSun_h) : -1.0;
    needText_ =
        need_ < 0.0
            ? QString()
            : tr("%1 needs %2").arg(capitalised(commonName(*plant)), units.hours(*plant->minSun_h));
}

void LightViewModel::wordTaken(const model::light::MonthLight& season)
{
    const auto& units = workspace_.units();
    std::vector<Fact> facts;
    const auto add = [&](const auto& thing, const model::light::LightTaken& taken,
                         const QString& sentence, const QString& id) {
        if (!model::isNotable(taken.firstIn))
            return;
        facts.push_back({nameOf(thing),
                         timeWords(taken.removal.sun_h, units),
                         {},
                         sentence,
                         Tone::Plain,
                         id,
                         season.open.sun_h > 0.0 ? taken.removal.sun_h / season.open.sun_h : 0.0,
                         why::key(why::Kind::year, why::kSeason)});
    };
    const auto only = [&](const auto& fill) {
        model::light::MonthLight one = season;
        one.trees.assign(season.trees.size(), {});
        one.neighbours.assign(season.neighbours.size(), {});
        fill(one);
        return takenSentences(one, *garden_, units).join(QLatin1Char(' '));
    };
    for (std::size_t i = 0; i < season.trees.size(); ++i)
        add(garden_->trees[i], season.trees[i],
            only([&](auto& one) { one.trees[i] = season.trees[i]; }),
            QString::fromStdString(garden_->trees[i].id));
    for (std::size_t i = 0; i < season.neighbours.size(); ++i)
        add(garden_->neighbours[i], season.neighbours[i],
            only([&](auto& one) { one.neighbours[i] = season.neighbours[i]; }), {});
    std::ranges::stable_sort(facts, std::ranges::greater{}, &Fact::measure);
    taken_.show(std::move(facts));
}

void LightViewModel::wordCuts(const model::SurfaceYear& surface)
{
    const auto& units = workspace_.units();
    std::vector<Fact> facts;
    for (const auto& cut : surface.cuts) {
        if (facts.size() == kShownCuts)
            break;
        facts.push_back(
            {cutTitle(cut, *garden_, units),
             tr("%1 for %2").arg(timeWords(cut.gained.sun_h, units), units.share(cut.leafShare)),
             {},
             cutSentence(cut, *garden_, units),
             Tone::Plain,
             QString::fromStdString(cut.tree + '\n' + cut.cut.limb),
             -1.0,
             why::key(why::Kind::gain, std::to_string(facts.size()))});
    }
    cuts_.show(std::move(facts));
}

} // namespace app
