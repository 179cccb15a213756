#include "app/view/work_view_model.hpp"

#include "app/view/cut_lines.hpp"
#include "app/words/cautions.hpp"
#include "app/words/cut_words.hpp"
#include "app/words/finding_list.hpp"
#include "app/words/growth_words.hpp"
#include "app/words/labour_words.hpp"
#include "app/words/work_words.hpp"

#include <algorithm>
#include <utility>

namespace app {
namespace {

using model::advice::Outcome;

/// What the sentences about the newest full assessment need; null pointers: there is none.
struct Assessed {
    const model::TreeAssessment* full;
    const model::Garden* garden;
    const model::Tree* tree;
    const model::Species* species;

    explicit Assessed(const Workspace& workspace)
        : full(workspace.treeAssessment()), garden(workspace.assessedGarden()),
          tree(workspace.assessedTree()), species(workspace.species())
    {
    }
    [[nodiscard]] bool isThere() const { return full && garden && tree && species; }
    [[nodiscard]] Wording wording(const Units& units) const
    {
        return {units, *garden, *tree, *species};
    }
};

} // namespace

WorkViewModel::WorkViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace), goals_(workspace), trial_(workspace)
{
    connect(&workspace_, &Workspace::fullChanged, this, &WorkViewModel::refresh);
}

void WorkViewModel::refresh()
{
    std::vector<CutLine> lines;
    const Assessed assessed(workspace_);
    if (assessed.isThere()) {
        lines = cutLines(assessed.full->suggestion, assessed.wording(workspace_.units()));
    }
    cuts_.show(std::move(lines));
    emit changed();
}

const model::advice::Suggestion* WorkViewModel::suggestion() const
{
    const auto* full = workspace_.treeAssessment();
    return full ? &full->suggestion : nullptr;
}

QStringList WorkViewModel::worded(const std::vector<model::advice::Finding>& findings) const
{
    const Assessed assessed(workspace_);
    return assessed.isThere() ? sentences(findings, assessed.wording(workspace_.units()))
                              : QStringList();
}

QStringList WorkViewModel::notes() const
{
    const Assessed assessed(workspace_);
    if (!assessed.isThere() || assessed.full->suggestion.cuts.empty())
        return {};
    return jobNotes(assessed.full->suggestion, assessed.wording(workspace_.units()));
}

QString WorkViewModel::outcome() const
{
    const Assessed assessed(workspace_);
    if (!assessed.isThere())
        return {};
    return outcomeWords(assessed.full->suggestion, assessed.wording(workspace_.units()));
}

Tone::Value WorkViewModel::outcomeTone() const
{
    const auto* found = suggestion();
    if (!found)
        return Tone::Plain;
    return found->outcome == Outcome::notWithinGuideline ? Tone::Grave : Tone::Good;
}

double WorkViewModel::leafShare() const
{
    return suggestion() ? suggestion()->leafShare : 0.0;
}

double WorkViewModel::allowance() const
{
    return suggestion() ? suggestion()->allowance : 0.0;
}

QString WorkViewModel::leafText() const
{
    const auto& units = workspace_.units();
    return tr("%1 of the leaf, of %2 that may go now")
        .arg(units.share(leafShare()), units.share(allowance()));
}

QStringList WorkViewModel::allowanceReasons() const
{
    return suggestion() ? worded(suggestion()->allowanceReasons) : QStringList();
}

QStringList WorkViewModel::binding() const
{
    return suggestion() ? worded(suggestion()->binding) : QStringList();
}

QString WorkViewModel::proof() const
{
    const auto* found = suggestion();
    if (!found || found->outcome == Outcome::nothingNeeded)
        return {};
    return found->proven ? tr("Every other set of cuts was weighed: none does it with less leaf.")
                         : tr("The search was cut short: a set with less leaf may exist.");
}

QStringList WorkViewModel::holds() const
{
    const Assessed assessed(workspace_);
    if (!assessed.isThere())
        return {};
    auto strips = assessed.full->suggestion.regrowth;
    std::ranges::stable_sort(strips, {}, [](const auto& strip) {
        return std::pair(!strip.middle, strip.middle.value_or(std::chrono::year_month_day{}));
    });
    QStringList lines;
    for (const auto& strip : strips)
        lines << sentence(strip, assessed.wording(workspace_.units()));
    return lines;
}

QString WorkViewModel::firstHold() const
{
    return holds().value(0);
}

QStringList WorkViewModel::otherHolds() const
{
    return holds().mid(1);
}

QString WorkViewModel::shoots() const
{
    const Assessed assessed(workspace_);
    if (!assessed.isThere() || assessed.full->suggestion.regrowth.empty())
        return {};
    return shootWords(assessed.full->suggestion.shoots, assessed.wording(workspace_.units()));
}

QString WorkViewModel::who() const
{
    const auto* full = workspace_.treeAssessment();
    return full ? whoWords(full->labour.who) : QString();
}

Tone::Value WorkViewModel::whoTone() const
{
    const auto* full = workspace_.treeAssessment();
    return full ? toneOf(full->labour.who) : Tone::Plain;
}

QStringList WorkViewModel::whoReasons() const
{
    const Assessed assessed(workspace_);
    if (!assessed.isThere())
        return {};
    const auto wording = assessed.wording(workspace_.units());
    const auto& full = *assessed.full;
    auto why = reasons(full.labour, wording);
    const auto shared = sharedWork(*assessed.tree, full.suggestion, full.labour);
    if (const QString words = sharedWords(shared, wording); !words.isEmpty())
        why.prepend(words);
    return why;
}

QStringList WorkViewModel::cautions() const
{
    return app::cautions();
}

QString WorkViewModel::cautionsInSight() const
{
    constexpr qsizetype kInSight = 2; // the sketch's limits, and whom to ask
    return cautions().mid(0, kInSight).join(QLatin1Char(' '));
}

QString WorkViewModel::allCautions() const
{
    return QStringLiteral("\u2022 ") + cautions().join(QStringLiteral("\n\u2022 "));
}

} // namespace app
