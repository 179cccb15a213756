#include "app/view/stages_view_model.hpp"

#include "app/words/stage_words.hpp"

#include <algorithm>

namespace app {

StagesViewModel::StagesViewModel(Workspace& workspace, OutlookWorks works, QObject* parent)
    : QObject(parent), workspace_(workspace), works_(std::move(works)),
      worker_(std::chrono::milliseconds(0))
{
    connect(&workspace_, &Workspace::fullChanged, this, &StagesViewModel::want);
    connect(&worker_, &NewestWins::failed, &workspace_, &Workspace::say);
    connect(&worker_, &NewestWins::busyChanged, this, &StagesViewModel::busyChanged);
}

void StagesViewModel::want()
{
    const auto* full = workspace_.treeAssessment();
    needed_ = full && full->suggestion.outcome == model::advice::Outcome::notWithinGuideline;
    if (!needed_ || !workspace_.isCurrent()) {
        // Under a change the visits of before stay in sight, till it is known whether any are left.
        if (!needed_)
            visits_.show({});
        worker_.start([](const NewestWins::Turn&) {}); // stops what is under way
        asked_ = {};
        emit changed();
        return;
    }
    OutlookAsk ask{workspace_.document().garden(), full->tree, workspace_.date()};
    if (ask == asked_)
        return;
    asked_ = ask;
    emit changed();
    worker_.start([this, ask, first = full->suggestion](const NewestWins::Turn& turn) {
        auto stages = works_.stages(ask, first, turn.cancel());
        if (turn.cancel())
            return;
        turn.tell([this, ask, stages = std::move(stages)] { show(ask, stages); });
    });
}

void StagesViewModel::stop()
{
    worker_.start([](const NewestWins::Turn&) {});
    headline_ = tr("Stopped.");
    emit changed();
}

void StagesViewModel::show(const OutlookAsk& ask, const model::advice::Stages& stages)
{
    if (ask != asked_)
        return;
    const auto& garden = *ask.garden;
    const auto tree = std::ranges::find(garden.trees, ask.tree, &model::Tree::id);
    const auto* species = workspace_.species();
    if (tree == garden.trees.end() || !species)
        return;
    const auto& units = workspace_.units();
    const Wording wording{units, garden, *tree, *species};
    std::vector<StageRow> rows;
    for (const auto& stage : stages.visits)
        rows.push_back({units.date(stage.date),
                        tr("%1 of the leaf, of %2 that may go then")
                            .arg(units.share(stage.suggestion.leafShare),
                                 units.share(stage.suggestion.allowance)),
                        stageCuts(stage, wording), stage.suggestion.leafShare,
                        stage.suggestion.allowance});
    headline_ = stages.visits.empty()
                    ? tr("No number of visits reaches all of it without breaking a rule that "
                         "waiting doesn't heal. An arborist may know another way.")
                    : stagesWords(stages, wording);
    visits_.show(std::move(rows));
    emit changed();
}

} // namespace app
