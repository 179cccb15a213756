#include "app/words/chain.hpp"
#include "app/words/finding_words.hpp"

namespace app {
namespace {

using model::CutExplanation;

ChainPart treePart(const CutExplanation& of, const Units& units, const model::Sources& sources)
{
    const auto& leaf = of.foliation;
    const double index = leaf.crownArea_m2 > 0.0 ? leaf.leafArea_m2 / leaf.crownArea_m2 : 0.0;
    return {
        Words::tr("The leaf of the whole tree"),
        {{Words::tr("Leaf area over each area of ground"), units.number(index, 2),
          originWords(QStringLiteral("C1"), leaf.laiSource, sources)},
         {Words::tr("Crown on plan"), units.area(leaf.crownArea_m2), Words::tr("from the drawing")},
         {Words::tr("Leaf = index x crown on plan"), units.area(leaf.leafArea_m2),
          QStringLiteral("C1")}},
        {}};
}

ChainPart takenPart(const CutExplanation& of, const Wording& wording)
{
    const Units& units = wording.units;
    ChainPart part{Words::tr("What comes off"), {}, {}};
    for (const auto& taken : of.taken)
        part.steps.push_back(
            {taken.after_m2 > 0.0
                 ? Words::tr("Leaf of %1 that goes, of %2")
                       .arg(limbName(wording, taken.limb), units.area(taken.before_m2))
                 : Words::tr("Leaf of %1, all of it").arg(limbName(wording, taken.limb)),
             units.area(taken.before_m2 - taken.after_m2), QStringLiteral("C2")});
    part.steps.push_back({Words::tr("Share = leaf that goes / leaf of the whole tree"),
                          units.share(of.leafShare),
                          {}});
    return part;
}

ChainPart weightPart(const CutExplanation& of, const Wording& wording)
{
    const Units& units = wording.units;
    const auto& density = wording.species.wood.limbDensity_kg_m3;
    ChainPart part{Words::tr("What it weighs, green"), {}, {}};
    part.steps.push_back({Words::tr("Wood, at %1").arg(units.density(density.value)),
                          units.mass(of.wood_kg),
                          originWords(QStringLiteral("C5"), density.source)});
    part.steps.push_back({Words::tr("Leaf and twigs too fine to draw"), units.mass(of.leafy_kg),
                          QStringLiteral("C3, C4; Martin et al. 1998")});
    if (of.fruit_kg > 0.0)
        part.steps.push_back(
            {Words::tr("Crop"), units.mass(of.fruit_kg), Words::tr("from the drawing")});
    part.steps.push_back(
        {Words::tr("All together"), units.mass(of.wood_kg + of.leafy_kg + of.fruit_kg), {}});
    return part;
}

ChainPart allowedPart(const CutExplanation& of, const Wording& wording)
{
    ChainPart part{Words::tr("What may go"), {}, {}};
    for (const auto& reason : of.allowanceReasons)
        part.steps.push_back({sentence(reason, wording),
                              reason.limit   ? wording.units.share(*reason.limit)
                              : reason.found ? wording.units.share(*reason.found)
                                             : QString(),
                              QString::fromUtf8(ruleFacts(reason.rule).source)});
    part.steps.push_back({Words::tr("Left to go on the day"), wording.units.share(of.allowance),
                          QStringLiteral("advice.md, A2")});
    return part;
}

} // namespace

Chain chainOf(const CutExplanation& of, const QString& what, const Wording& wording,
              const model::Sources& sources)
{
    const Units& units = wording.units;
    Chain chain;
    chain.title = Words::tr("Why so much leaf, and so heavy?");
    chain.answer = Words::tr("%1: %2 of the leaf, about %3.")
                       .arg(what, units.share(of.leafShare),
                            units.mass(of.wood_kg + of.leafy_kg + of.fruit_kg));
    chain.about = Words::tr("Leaf is counted as drawn, in summer; each limb keeps what it has when "
                            "another is cut.");
    chain.method = QStringLiteral("docs/methods/crown.md");
    chain.parts = {treePart(of, units, sources), takenPart(of, wording), weightPart(of, wording),
                   allowedPart(of, wording)};
    return chain;
}

} // namespace app
