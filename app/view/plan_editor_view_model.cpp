#include "app/view/plan_editor_view_model.hpp"

#include "app/view/plan_words.hpp"
#include "app/view/reach.hpp"

#include <algorithm>

namespace app {

PlanEditorViewModel::PlanEditorViewModel(Workspace& workspace, PlanViewModel& plan, QObject* parent)
    : QObject(parent), workspace_(workspace), plan_(plan)
{
    connect(&workspace_.document(), &Document::replaced, this, [this] { setEditing(false); });
    connect(&workspace_.document(), &Document::gardenChanged, this, [this] {
        if (!chosen_.empty() && !chosen())
            choose(std::string());
        refresh();
    });
    connect(&plan_, &PlanViewModel::frameChanged, this, [this] { refresh(); });
}

void PlanEditorViewModel::setEditing(bool editing)
{
    if (editing == editing_)
        return;
    editing_ = editing;
    tool_ = -1;
    draft_.clear();
    chosen_.clear();
    plan_.hold(editing);
    refresh();
    emit changed();
    emit chosenChanged();
}

QStringList PlanEditorViewModel::tools() const
{
    return planToolWords();
}

void PlanEditorViewModel::setTool(int tool)
{
    if (tool < -1 || tool >= kPlanTools)
        return;
    setEditing(true);
    tool_ = tool;
    draft_.clear();
    hand_.reset();
    if (tool >= 0)
        choose(std::string());
    refresh();
    emit changed();
}

bool PlanEditorViewModel::canFinish() const
{
    if (!drawing())
        return false;
    const std::size_t least = static_cast<PlanTool>(tool_) == PlanTool::line ? 2 : 3;
    return draft_.empty() || draft_.size() >= least;
}

QString PlanEditorViewModel::hint() const
{
    if (!drawing())
        return chosen() ? tr("Drag it by its middle or by a corner, or type its sizes.")
                        : tr("Choose what to draw, or click what is there to change it.");
    const bool line = static_cast<PlanTool>(tool_) == PlanTool::line;
    if (draft_.empty())
        return line ? tr("Drag along the wire, or click its points. Enter ends it; with nothing "
                         "clicked it puts one in "
                         "the middle.")
                    : tr("Drag a box, or click its corners one by one. Enter ends it; with "
                         "nothing clicked it puts one in the middle.");
    if (!canFinish())
        return tr("Click the next corner. Backspace takes one back, Escape all.");
    return line ? tr("Click on, or press Enter to end the wire.")
                : tr("Click on, or press Enter or the first corner to close it.");
}

QStringList PlanEditorViewModel::things() const
{
    QStringList titles;
    for (const auto thing : allThings(workspace_.garden()))
        titles << titleOf(workspace_.garden(), thing);
    return titles;
}

int PlanEditorViewModel::thing() const
{
    const auto all = allThings(workspace_.garden());
    const auto at = chosen();
    return at ? static_cast<int>(std::ranges::find(all, *at) - all.begin()) : -1;
}

std::optional<ThingRef> PlanEditorViewModel::chosen() const
{
    return findThing(workspace_.garden(), chosen_);
}

void PlanEditorViewModel::choose(int thing)
{
    const auto all = allThings(workspace_.garden());
    if (thing < 0 || static_cast<std::size_t>(thing) >= all.size())
        return;
    setTool(-1);
    choose(idOf(workspace_.garden(), all[static_cast<std::size_t>(thing)]));
}

void PlanEditorViewModel::choose(const std::string& id)
{
    nudged_.reset();
    if (id != chosen_) {
        chosen_ = id;
        const auto thing = chosen();
        if (thing && thing->kind == ThingKind::tree)
            workspace_.chooseTree(id);
    }
    refresh();
    emit changed();
    emit chosenChanged();
}

void PlanEditorViewModel::chooseAt(double x, double y)
{
    const auto thing = thingAt(workspace_.garden(), plan_.frame().toPlace({x, y}),
                               kReach / plan_.frame().pixelsPerMetre);
    choose(thing ? idOf(workspace_.garden(), *thing) : std::string());
}

void PlanEditorViewModel::addCorner(double x, double y)
{
    if (!drawing())
        return;
    const auto at = plan_.frame().toPlace({x, y});
    const double reach_m = kReach / plan_.frame().pixelsPerMetre;
    const bool closes = draft_.size() >= 3 && static_cast<PlanTool>(tool_) != PlanTool::line &&
                        norm(at - draft_.front()) < reach_m;
    if (closes) {
        finish();
        return;
    }
    if (!draft_.empty() && norm(at - draft_.back()) < 0.01)
        return; // the second press of a double click
    draft_.push_back(at);
    hand_.reset();
    refresh();
    emit changed();
}

void PlanEditorViewModel::dragBox(double fromX, double fromY, double toX, double toY)
{
    if (!drawing() || !draft_.empty())
        return;
    const auto a = plan_.frame().toPlace({fromX, fromY});
    const auto b = plan_.frame().toPlace({toX, toY});
    draft_ = static_cast<PlanTool>(tool_) == PlanTool::line
                 ? std::vector<model::Point2>{a, b}
                 : std::vector<model::Point2>{a, {b.x, a.y}, b, {a.x, b.y}};
    refresh();
    draft_.clear();
}

void PlanEditorViewModel::dropBox(double fromX, double fromY, double toX, double toY)
{
    if (!drawing() || !draft_.empty())
        return;
    const auto a = plan_.frame().toPlace({fromX, fromY});
    const auto b = plan_.frame().toPlace({toX, toY});
    if (static_cast<PlanTool>(tool_) == PlanTool::line)
        add({a, b});
    else
        add({a, {b.x, a.y}, b, {a.x, b.y}});
    refresh();
}

void PlanEditorViewModel::hover(double x, double y)
{
    if (!drawing() || draft_.empty())
        return;
    hand_ = plan_.frame().toPlace({x, y});
    refresh();
}

void PlanEditorViewModel::takeBackCorner()
{
    if (draft_.empty())
        return;
    draft_.pop_back();
    hand_.reset();
    refresh();
    emit changed();
}

std::vector<model::Point2> PlanEditorViewModel::usualShape() const
{
    const auto middle = plan_.frame().middle_m;
    const auto box = [middle](double length_m, double width_m) {
        const double x = length_m / 2.0;
        const double y = width_m / 2.0;
        return moved({{-x, -y}, {x, -y}, {x, y}, {-x, y}}, middle);
    };
    switch (static_cast<PlanTool>(tool_)) {
    case PlanTool::strip:
        return box(6.0, 1.2);
    case PlanTool::hedge:
        return box(6.0, 0.8);
    case PlanTool::lawn:
        return box(6.0, 6.0);
    case PlanTool::structure:
        return box(5.0, 4.0);
    case PlanTool::neighbour:
        return box(5.0, 5.0);
    case PlanTool::line:
        return moved({{-10.0, 0.0}, {10.0, 0.0}}, middle);
    case PlanTool::bed:
    case PlanTool::shrub:
        break;
    }
    return box(3.0, 1.5);
}

void PlanEditorViewModel::finish()
{
    if (canFinish())
        add(draft_.empty() ? usualShape() : draft_);
}

void PlanEditorViewModel::add(const std::vector<model::Point2>& corners)
{
    const auto tool = static_cast<PlanTool>(tool_);
    auto garden = workspace_.garden();
    const QString name = usualName(tool);
    const auto id = addThing(garden, workspace_.tables(), tool, corners, name.toStdString());
    const QString refusal =
        workspace_.document().change(tr("draw a %1").arg(name), std::move(garden));
    workspace_.say(refusal);
    if (!refusal.isEmpty())
        return; // the draft stays, to be mended
    draft_.clear();
    hand_.reset();
    tool_ = -1;
    choose(id);
    emit drawn();
}

void PlanEditorViewModel::cancel()
{
    if (!draft_.empty()) {
        draft_.clear();
        hand_.reset();
        refresh();
        emit changed();
    } else if (drawing()) {
        setTool(-1);
    } else {
        choose(std::string());
    }
}

void PlanEditorViewModel::grab(const QString& thing, int corner, double x, double y)
{
    const auto id = thing.toStdString();
    if (id != chosen_)
        choose(id);
    const auto found = findThing(workspace_.garden(), id);
    if (found)
        held_ = Held{id, corner, plan_.frame().toPlace({x, y}),
                     cornersOf(workspace_.garden(), *found), workspace_.document().newGesture()};
}

void PlanEditorViewModel::dragTo(double x, double y)
{
    if (held_)
        move(held_->thing, held_->corner, plan_.frame().toPlace({x, y}) - held_->from_m,
             held_->gesture, held_->corners);
}

void PlanEditorViewModel::drop()
{
    held_.reset();
    workspace_.say({});
}

void PlanEditorViewModel::nudge(const QString& thing, int corner, int stepsEast, int stepsNorth,
                                bool far)
{
    const auto id = thing.toStdString();
    if (id != chosen_)
        choose(id);
    const auto found = findThing(workspace_.garden(), id);
    if (!found)
        return;
    if (!nudged_ || nudged_->thing != id || nudged_->corner != corner)
        nudged_ = Held{id, corner, {}, {}, workspace_.document().newGesture()};
    const double step = smallStep_m(workspace_.units()) * (far ? 10.0 : 1.0);
    move(id, corner, {stepsEast * step, stepsNorth * step}, nudged_->gesture,
         cornersOf(workspace_.garden(), *found));
}

void PlanEditorViewModel::move(const std::string& id, int corner, model::Point2 by, int gesture,
                               const std::vector<model::Point2>& from)
{
    auto garden = workspace_.garden();
    const auto thing = findThing(garden, id);
    if (!thing)
        return;
    auto corners = from;
    if (corner < 0)
        corners = moved(std::move(corners), by);
    else
        corners.at(static_cast<std::size_t>(corner)) =
            corners.at(static_cast<std::size_t>(corner)) + by;
    setCorners(garden, *thing, corners);
    const QString name = tr("move %1").arg(titleOf(garden, *thing));
    workspace_.say(workspace_.document().change(name, std::move(garden), gesture));
}

void PlanEditorViewModel::removeChosen()
{
    const auto thing = chosen();
    if (!thing)
        return;
    auto garden = workspace_.garden();
    const QString name = tr("remove %1").arg(titleOf(garden, *thing));
    removeThing(garden, *thing);
    workspace_.say(workspace_.document().change(name, std::move(garden)));
}

void PlanEditorViewModel::refresh()
{
    PlanViewModel::Overlay overlay;
    std::vector<PlanHandleModel::Handle> handles;
    const auto& garden = workspace_.garden();
    const auto thing = editing_ ? chosen() : std::nullopt;
    const auto add = [&](ThingRef it, int corner, model::Point2 at, const QString& label) {
        handles.push_back({QString::fromStdString(idOf(garden, it)), corner,
                           plan_.frame().toCanvas(at), label.arg(titleOf(garden, it))});
    };
    if (editing_ && !drawing())
        for (const auto it : allThings(garden))
            if (it.kind == ThingKind::tree)
                add(it, -1, cornersOf(garden, it).front(), tr("Where %1 stands"));
    if (thing && thing->kind != ThingKind::tree) {
        const auto corners = cornersOf(garden, *thing);
        overlay.chosen_m = corners;
        overlay.chosenCloses = thing->kind != ThingKind::line;
        add(*thing, -1, middleOf(corners), tr("All of %1"));
        for (std::size_t i = 0; i < corners.size(); ++i)
            add(*thing, static_cast<int>(i), corners[i], tr("A corner of %1"));
    }
    if (drawing()) {
        overlay.draft_m = draft_;
        if (hand_)
            overlay.draft_m.push_back(*hand_);
        overlay.draftCloses = static_cast<PlanTool>(tool_) != PlanTool::line;
    }
    handles_.show(std::move(handles));
    plan_.showOverlay(std::move(overlay));
}

} // namespace app
