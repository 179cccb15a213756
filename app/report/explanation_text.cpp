#include "app/report/explanation_text.hpp"

#include "app/report/suggestion_text.hpp"
#include "app/report/text_page.hpp"
#include "app/words/breaking_words.hpp"
#include "app/words/load_words.hpp"
#include "app/words/step_words.hpp"
#include "app/words/wind_words.hpp"

namespace app {
namespace {

using model::LimbExplanation;
using model::load::Step;

/// The source in full if it is a key of the tables, as it stands if not.
QString sourceInFull(const Step& step, const model::Sources& sources)
{
    const auto found = sources.find(step.source);
    return QString::fromStdString(found == sources.end() ? step.source : found->second);
}

/// "[L10; handbook]", or nothing for what follows from the figures above it.
QString origin(const Step& step, const model::Sources& sources)
{
    QStringList parts;
    if (*step.formula != '\0')
        parts << QString::fromUtf8(step.formula);
    if (!step.source.empty())
        parts << sourceInFull(step, sources);
    return parts.isEmpty() ? QString()
                           : QStringLiteral(" [%1]").arg(parts.join(QLatin1String("; ")));
}

void addSteps(TextPage& page, const LimbExplanation& of, const Wording& wording,
              const model::Sources& sources)
{
    std::optional<StepPart> part;
    for (const Step& step : of.steps) {
        if (part != partOf(step.quantity)) {
            part = partOf(step.quantity);
            page.heading(partName(*part));
        }
        page.bullet(Words::tr("%1: %2").arg(capitalised(stepName(step.quantity)),
                                            stepValue(step, wording.units)) +
                    origin(step, sources));
    }
}

void addBreaking(TextPage& page, const LimbExplanation& of, const Wording& wording)
{
    page.heading(Words::tr("The gust that breaks it"));
    if (!of.breaking.hasStrength) {
        page.paragraph(sentence(of.load, wording));
        return;
    }
    page.paragraph(sentence(of.breaking, wording));
    if (of.breaking.p90_m_s <= 0.0) // weight alone breaks it, whatever the draw
        return;
    page.bullet(rangeCauses(of.breaking, wording));
    page.bullet(whatToMeasure(of.breaking, wording));
}

} // namespace

QString explanationText(const LimbExplanation& of, const Wording& wording,
                        const model::Sources& sources)
{
    const auto& limb = wording.tree.limbs.at(of.limb);
    const Units& units = wording.units;
    TextPage page;
    page.title(Words::tr("%1 of %2: why the figures are what they are")
                   .arg(limbName(wording, limb.id), treeName(wording.tree, wording.species)));
    page.paragraph(sentence(of.load, wording));
    page.paragraph(
        Words::tr("Reckoned for %1, a gust of %2 (%3) and air of %4, at the place and in the wind "
                  "that ask most of it. In brackets: the formula's number in "
                  "docs/methods/load.md, and the source.")
            .arg(units.date(of.question.date), units.speed(of.conditions.gust_m_s),
                 forceWords(beaufortOfGust(of.conditions.gust_m_s)),
                 units.temperature(of.conditions.air_C)));
    addSteps(page, of, wording, sources);
    addBreaking(page, of, wording);
    addCautions(page);
    return page.text();
}

} // namespace app
