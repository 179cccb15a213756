#include "app/command/commands.hpp"
#include "app/report/assessment_json.hpp"
#include "app/report/assessment_text.hpp"
#include "app/report/explanation_json.hpp"
#include "app/report/explanation_text.hpp"
#include "app/words/load_words.hpp"
#include "model/assessment/limb_explanation.hpp"

#include <algorithm>

namespace app {
namespace {

bool overloaded(const model::load::LimbLoad& load)
{
    return !load.hasStrength || load.utilisation >= kNotableUtilisation;
}

bool needsAttention(const model::TreeAssessment& tree)
{
    return tree.suggestion.outcome != model::advice::Outcome::nothingNeeded ||
           tree.labour.who == model::advice::Who::arborist ||
           std::ranges::any_of(tree.load.limbs, overloaded);
}

int explainCommand(const Job& job, const model::Garden& garden, const model::Question& question,
                   const Units& units)
{
    const auto chosen = limbOf(job.arguments, garden);
    const auto explained =
        model::explainLimb(garden, job.tables, question, chosen.tree, chosen.limb);
    const auto& tree = *std::ranges::find(garden.trees, chosen.tree, &model::Tree::id);
    const Wording wording{units, garden, tree, *findSpecies(job.tables, tree.species)};
    const auto& sources = job.tables.sources;
    if (job.arguments.json)
        job.streams.out << jsonText(explanationJson(explained, wording, sources));
    else
        job.streams.out << explanationText(explained, wording, sources).toStdString();
    return statusOf(job, overloaded(explained.load));
}

} // namespace

int assessCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    const model::Garden garden = gardenOf(job);
    const model::Question question = questionOf(job.arguments, garden, units);
    if (!job.arguments.explain.empty())
        return explainCommand(job, garden, question, units);
    const std::string tree = treeOf(job.arguments, garden);
    const model::Assessment assessment = assess(garden, job.tables, question, tree);
    if (job.arguments.json)
        job.streams.out << jsonText(assessmentJson(assessment, garden, job.tables, units));
    else
        job.streams.out << assessmentText(assessment, garden, job.tables, units).toStdString();
    return statusOf(job, std::ranges::any_of(assessment.trees, needsAttention));
}

} // namespace app
