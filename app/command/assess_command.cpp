#include "app/command/commands.hpp"
#include "app/report/assessment_json.hpp"
#include "app/report/assessment_text.hpp"
#include "app/words/load_words.hpp"
#include "model/assessment/assessment.hpp"

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

} // namespace

int assessCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    const model::Question question{.date = dateOf(job.arguments),
                                   .gust_m_s = gustOf(job.arguments, units)};
    const model::Garden garden = gardenOf(job);
    const std::string tree = treeOf(job.arguments, garden);
    const model::Assessment assessment = assess(garden, job.tables, question, tree);
    if (job.arguments.json)
        job.streams.out << jsonText(assessmentJson(assessment, garden, job.tables, units));
    else
        job.streams.out << assessmentText(assessment, garden, job.tables, units).toStdString();
    return statusOf(job, std::ranges::any_of(assessment.trees, needsAttention));
}

} // namespace app
