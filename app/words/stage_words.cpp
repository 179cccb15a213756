#include "app/words/stage_words.hpp"

namespace app {

using model::advice::Stage;
using model::advice::Stages;

QString stagesWords(const Stages& stages, const Wording& wording)
{
    const auto visits = stages.visits.size();
    QString text;
    if (!stages.reached)
        text = Words::tr("%1 visits, each as far as it may go, don't reach all of it: an arborist "
                         "may know another way.")
                   .arg(visits);
    else if (stages.fewest)
        text = Words::tr("It takes %1 visits; fewer can't do it inside the guideline.").arg(visits);
    else
        text = Words::tr("It can be done in %1 visits.").arg(visits);
    return text + QLatin1Char(' ') +
           Words::tr("The later ones are reckoned with shoots that grow %1 a year: look again when "
                     "the day comes.")
               .arg(wording.units.roughLength(stages.visits.front().suggestion.shoots.mean_m));
}

QString stageCuts(const Stage& stage, const Wording& wording)
{
    QStringList cuts;
    for (const auto& planned : stage.suggestion.cuts)
        cuts << Words::tr("%1 %2", "a kind of cut and the limb")
                    .arg(cutKindWords(planned), limbName(wording, planned.cut.limb));
    return cuts.isEmpty() ? Words::tr("nothing to cut") : cuts.join(QStringLiteral(", "));
}

QString stageLine(const Stage& stage, const Wording& wording)
{
    if (stage.suggestion.cuts.empty())
        return Words::tr("%1: nothing to cut.").arg(wording.units.date(stage.date));
    return Words::tr("%1, for %2 of the leaf: %3.")
        .arg(wording.units.date(stage.date), wording.units.share(stage.suggestion.leafShare),
             stageCuts(stage, wording));
}

} // namespace app
