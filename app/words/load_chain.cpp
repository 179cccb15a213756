#include "app/words/breaking_words.hpp"
#include "app/words/chain.hpp"
#include "app/words/load_words.hpp"
#include "app/words/step_words.hpp"
#include "app/words/wind_words.hpp"

namespace app {
namespace {

using model::LimbExplanation;

ChainPart breakingPart(const LimbExplanation& of, const Wording& wording)
{
    ChainPart part{Words::tr("The gust that breaks it"), {}, {}};
    if (!of.breaking.hasStrength) {
        part.remarks << sentence(of.load, wording);
        return part;
    }
    part.remarks << sentence(of.breaking, wording);
    if (of.breaking.p90_m_s > 0.0) // else weight alone breaks it, whatever the draw
        part.remarks << rangeCauses(of.breaking, wording) << whatToMeasure(of.breaking, wording);
    return part;
}

} // namespace

Chain chainOf(const LimbExplanation& of, const Wording& wording, const model::Sources& sources)
{
    const Units& units = wording.units;
    Chain chain;
    chain.title = Words::tr("%1 of %2: why the figures are what they are")
                      .arg(limbName(wording, wording.tree.limbs.at(of.limb).id),
                           treeName(wording.tree, wording.species));
    chain.answer = sentence(of.load, wording);
    chain.about =
        Words::tr("Reckoned for %1, a gust of %2 (%3) and air of %4, at the place and in the wind "
                  "that ask most of it.")
            .arg(units.date(of.question.date), units.speed(of.conditions.gust_m_s),
                 forceWords(beaufortOfGust(of.conditions.gust_m_s)),
                 units.temperature(of.conditions.air_C));
    chain.method = QStringLiteral("docs/methods/load.md");
    for (const auto& step : of.steps) {
        const QString heading = partName(partOf(step.quantity));
        if (chain.parts.empty() || chain.parts.back().heading != heading)
            chain.parts.push_back({heading, {}, {}});
        chain.parts.back().steps.push_back(
            {capitalised(stepName(step.quantity)), stepValue(step, units),
             originWords(QString::fromUtf8(step.formula), step.source, sources)});
    }
    chain.parts.push_back(breakingPart(of, wording));
    return chain;
}

} // namespace app
