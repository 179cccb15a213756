#include "app/words/chain.hpp"
#include "app/words/headroom_words.hpp"
#include "app/words/sag_words.hpp"

#include <algorithm>

namespace app {
namespace {

using model::StripExplanation;
using model::headroom::LowestPlace;

QString drawnWords()
{
    return Words::tr("from the drawing");
}

/// Axis, what reaches below it, shoots, and what is left under them.
ChainPart placePart(const QString& heading, const LowestPlace& place, const Wording& wording)
{
    const Units& units = wording.units;
    const QString limb = limbName(wording, wording.tree.limbs.at(place.limb).id);
    ChainPart part{heading, {}, {}};
    part.steps.push_back({Words::tr("height of the middle of %1 at the place").arg(limb),
                          units.length(place.axis_m), drawnWords()});
    part.steps.push_back({place.isLeaf ? Words::tr("its leafy body reaches below that")
                                       : Words::tr("its wood reaches below that"),
                          units.length(place.reach_m), QStringLiteral("H1")});
    if (place.hang_m > 0.0)
        part.steps.push_back({Words::tr("shoots hang below the leafy body"),
                              units.length(place.hang_m), drawnWords()});
    part.steps.push_back({Words::tr("headroom = height less what reaches and hangs below it"),
                          units.length(place.height_m), QStringLiteral("H1, H2")});
    return part;
}

ChainPart neededPart(const StripExplanation& of, const model::Strip& strip, const Units& units)
{
    ChainPart part{Words::tr("What it needs"), {}, {}};
    const QString origin = of.neededSource.empty()
                               ? Words::tr("you wrote it down")
                               : originWords(QStringLiteral("H3"), of.neededSource);
    part.steps.push_back({of.neededSource.empty()
                              ? Words::tr("headroom wanted")
                              : Words::tr("headroom usual for %1").arg(useWords(strip.use)),
                          units.length(of.needed_m), origin});
    part.steps.push_back({Words::tr("missing = what is needed less the lower headroom of the two"),
                          units.length(of.shortfall_m()), QStringLiteral("H2")});
    return part;
}

ChainPart heaviestPart(const StripExplanation& of, const Wording& wording)
{
    const Units& units = wording.units;
    const auto words = heaviestWords(wording.tree);
    auto part = placePart(Words::tr("At its heaviest: %1").arg(words), *of.heaviest, wording);
    std::vector<ChainStep> weight;
    weight.push_back({Words::tr("rain on leaf and twigs of the whole tree"), units.mass(of.rain_kg),
                      QStringLiteral("L24; McPherson et al. 2017")});
    if (of.fruit_kg > 0.0)
        weight.push_back(
            {Words::tr("crop on the whole tree"), units.mass(of.fruit_kg), drawnWords()});
    weight.push_back({Words::tr("so much %1 sinks where it sinks most")
                          .arg(limbName(wording, wording.tree.limbs.at(of.heaviest->limb).id)),
                      units.length(of.sinks_m), QStringLiteral("load.md, L28-L30; H4")});
    part.steps.insert(part.steps.begin(), weight.begin(), weight.end());
    return part;
}

QString answerOf(const StripExplanation& of, const Wording& wording)
{
    constexpr double kTold_m = 0.01; // less than a tape shows
    const Units& units = wording.units;
    const QString tree = treeName(wording.tree, wording.species);
    const QString drawn = units.length(of.drawn->height_m);
    const bool sags = of.heaviest && of.drawn->height_m - of.heaviest->height_m >= kTold_m;
    const QString least = sags ? units.length(of.heaviest->height_m) : drawn;
    const double shortfall_m = of.shortfall_m();
    if (shortfall_m > 0.0)
        return (sags ? Words::tr("%1 under %2 as drawn, %3 at its heaviest: %4 is missing.")
                           .arg(drawn, tree, least, units.length(shortfall_m))
                     : Words::tr("%1 under %2: %3 is missing.")
                           .arg(drawn, tree, units.length(shortfall_m)));
    return sags ? Words::tr("%1 under %2 as drawn, %3 at its heaviest: that is enough.")
                      .arg(drawn, tree, least)
                : Words::tr("%1 under %2, which is enough.").arg(drawn, tree);
}

void capitaliseNames(Chain& chain)
{
    for (auto& part : chain.parts)
        for (auto& step : part.steps)
            step.name = capitalised(step.name);
}

} // namespace

Chain chainOf(const StripExplanation& of, const Wording& wording)
{
    const auto& strips = wording.garden.strips;
    const auto strip = std::ranges::find(strips, of.strip, &model::Strip::id);
    const QString name = thingName(wording.garden, of.strip);
    const Units& units = wording.units;
    Chain chain;
    chain.title = Words::tr("Why this headroom over %1?").arg(name);
    chain.method = QStringLiteral("docs/methods/headroom.md");
    if (!of.drawn) {
        chain.answer = Words::tr("Nothing overhangs %1.").arg(name);
        return chain;
    }
    chain.answer = answerOf(of, wording);
    chain.about =
        Words::tr("The lowest wood, leaf or shoot of all limbs that reach over it counts; "
                  "the ground is taken as level. The year's growth is not in it.");
    chain.parts.push_back(
        placePart(Words::tr("As it is drawn, dry and in still air"), *of.drawn, wording));
    if (of.heaviest)
        chain.parts.push_back(heaviestPart(of, wording));
    if (strip != strips.end())
        chain.parts.push_back(neededPart(of, *strip, units));
    capitaliseNames(chain);
    return chain;
}

} // namespace app
