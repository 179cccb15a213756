#include "app/report/assessment_text.hpp"

#include "app/report/limb_ranking.hpp"
#include "app/report/suggestion_text.hpp"
#include "app/report/text_page.hpp"
#include "app/words/breaking_words.hpp"
#include "app/words/load_words.hpp"
#include "app/words/relief_words.hpp"
#include "app/words/sag_words.hpp"
#include "app/words/sketch_words.hpp"
#include "app/words/sun_words.hpp"
#include "app/words/wind_words.hpp"
#include "model/advice/prune.hpp"

#include <algorithm>

namespace app {
namespace {

using model::TreeAssessment;
using model::load::LimbLoad;

/// Limbs told of: those asked for much, and never fewer than the worst three.
constexpr std::size_t kWorstLimbs = 3;
constexpr std::size_t kMostLimbs = 8;

QString after(const LimbLoad& load, const TreeAssessment& of, const model::Tree& treeAfter,
              const Wording& wording)
{
    const std::size_t index = limbIndex(treeAfter, wording.tree.limbs.at(load.limb).id);
    if (index == model::kNoLimb)
        return QLatin1Char(' ') + Words::tr("The cuts below take it off.");
    const QString now = wording.units.share(load.utilisation);
    for (const LimbLoad& each : of.loadAfter.limbs) {
        const QString then = wording.units.share(each.utilisation);
        if (each.limb == index && each.hasStrength && then != now)
            return QLatin1Char(' ') + Words::tr("After the cuts: %1.").arg(then);
    }
    return {};
}

model::Tree treeAfterCuts(const TreeAssessment& of, const model::Tree& tree)
{
    return model::advice::afterCuts(tree, model::advice::cutsOf(of.suggestion));
}

void addLimbs(TextPage& page, const TreeAssessment& of, const Wording& wording)
{
    const model::Tree treeAfter = treeAfterCuts(of, wording.tree);
    const bool cut = !of.suggestion.cuts.empty();
    std::vector<std::size_t> told;
    for (const LimbLoad& load : worstFirst(of.load)) {
        const bool notable = !load.hasStrength || load.utilisation >= kNotableUtilisation;
        if (told.size() >= kMostLimbs || (told.size() >= kWorstLimbs && !notable))
            break;
        QString words = sentence(load, wording);
        if (load.hasStrength)
            words += QLatin1Char(' ') + sentence(of.breaking.at(load.limb), wording);
        if (cut)
            words += after(load, of, treeAfter, wording);
        const auto best = bestForLimb(of.reliefs, load.limb, of.suggestion.allowance);
        if (notable && !best.empty())
            words += QLatin1Char(' ') + sentence(best, wording);
        page.bullet(words);
        told.push_back(load.limb);
    }
    if (told.size() < of.load.limbs.size())
        page.bullet(Words::tr("The other limbs are asked for less."));
    if (const QString tape = girthsToTape(of.breaking, told, wording); !tape.isEmpty())
        page.bullet(tape);
}

void addLoads(TextPage& page, const TreeAssessment& of, double gust_m_s, const Wording& wording)
{
    const Units& units = wording.units;
    page.heading(Words::tr("Load in the gust"));
    page.paragraph(Words::tr("The tree weighs about %1 above ground, green. A gust of %2 reaches "
                             "%3 at its top and bends it with %4 at the ground.")
                       .arg(units.mass(of.load.mass_kg), units.speed(gust_m_s),
                            units.speed(of.load.gustAtTop_m_s),
                            units.moment(of.load.baseMoment_Nm)));
    if (of.load.rain_kg > 0.0)
        page.paragraph(
            Words::tr("%1 of it is rain on leaf and twigs.").arg(units.mass(of.load.rain_kg)));
    if (of.load.ice_kg > 0.0)
        page.paragraph(Words::tr("%1 of it is ice. Wind takes a firmer hold of ice than reckoned "
                                 "here, so its gusts are worse than told.")
                           .arg(units.mass(of.load.ice_kg)));
    if (of.sketch)
        for (const QString& doubt : sketchDoubts(*of.sketch, units))
            page.paragraph(doubt);
    addLimbs(page, of, wording);
    page.paragraph(Words::tr("100 % is where half of such limbs would be expected to fail: some "
                             "fail well before. Gusts are three-second gusts as forecasts give "
                             "them; a force is that of the steady wind that brings such gusts."));
}

/// Limbs told of, those that sink most first.
constexpr std::size_t kSaggingLimbs = 4;

void addSag(TextPage& page, const TreeAssessment& of, const Wording& wording)
{
    auto limbs = of.heaviest.limbs;
    std::ranges::stable_sort(limbs, std::ranges::greater{}, &model::load::LimbSag::most_m);
    std::erase_if(limbs, [](const auto& sag) { return sag.most_m < kToldSag_m; });
    page.heading(Words::tr("How far limbs sag"));
    if (!of.heaviest.settled)
        page.paragraph(Words::tr("As drawn, some wood bends past all reckoning when the tree is "
                                 "%1: tape its thickness, and look at its load above.")
                           .arg(heaviestWords(wording.tree)));
    if (limbs.empty()) {
        page.bullet(
            Words::tr("Hardly at all, even when the tree is %1.").arg(heaviestWords(wording.tree)));
        return;
    }
    page.paragraph(Words::tr("When the tree is %1, against how it was drawn. Within a factor of "
                             "two: it hangs on diameters, leaf and stiffness.")
                       .arg(heaviestWords(wording.tree)));
    limbs.resize(std::min(limbs.size(), kSaggingLimbs));
    for (const auto& sag : limbs) {
        const auto left = limbIndex(of.springBack.tree, wording.tree.limbs.at(sag.limb).id);
        const bool cut = !of.suggestion.cuts.empty() && left != model::kNoLimb;
        page.bullet(sentence(
            sag, cut ? std::optional(-of.springBack.limbs.at(left).tip_m) : std::nullopt, wording));
    }
}

void addTree(TextPage& page, const TreeAssessment& of, double gust_m_s, const Wording& wording)
{
    addTreeTitle(page, wording);
    addHeadroom(page, of.headroom, wording);
    addSag(page, of, wording);
    addLoads(page, of, gust_m_s, wording);
    addSuggestion(page, of.suggestion, wording);
    addLabour(page, of.labour, wording);
    addSharedWork(page, of.suggestion, of.labour, wording);
}

const model::Tree& treeWithId(const model::Garden& garden, const std::string& id)
{
    return *std::find_if(garden.trees.begin(), garden.trees.end(),
                         [&](const model::Tree& tree) { return tree.id == id; });
}

} // namespace

void addSun(TextPage& page, const std::vector<model::light::PlantingSun>& sun,
            const std::vector<model::light::PlantingSun>& after, std::chrono::year_month_day date,
            const model::Garden& garden, const model::Tables& tables, const Units& units)
{
    if (sun.empty())
        return;
    page.title(Words::tr("Sun on the plantings, %1").arg(units.date(date)));
    for (std::size_t i = 0; i < sun.size(); ++i)
        page.bullet(
            sentence(sun[i], i < after.size() ? &after[i] : nullptr, date, garden, tables, units));
}

QString assessmentText(const model::Assessment& assessment, const model::Garden& garden,
                       const model::Tables& tables, const Units& units)
{
    TextPage page;
    page.paragraph(Words::tr("%1, assessed for %2 and gusts of %3: three-second gusts 10 m above "
                             "open ground, as forecasts give them.")
                       .arg(QString::fromStdString(garden.name),
                            units.date(assessment.question.date),
                            units.speed(assessment.gust_m_s)));
    for (const QString& said : windRemarks(assessment.question, units))
        page.paragraph(said);
    for (const TreeAssessment& of : assessment.trees) {
        const model::Tree& tree = treeWithId(garden, of.tree);
        addTree(page, of, assessment.gust_m_s,
                Wording{units, garden, tree, *findSpecies(tables, tree.species)});
    }
    addSun(page, assessment.sun, assessment.sunAfter, assessment.question.date, garden, tables,
           units);
    addCautions(page);
    return page.text();
}

} // namespace app
