#include "app/view/plan_words.hpp"

#include "app/words/wording.hpp"

namespace app {

QStringList planToolWords()
{
    return {Words::tr("Path, drive or seat"),
            Words::tr("Hedge"),
            Words::tr("Bed"),
            Words::tr("Lawn"),
            Words::tr("Shrubs"),
            Words::tr("Building, fence or pond"),
            Words::tr("Electric line"),
            Words::tr("Tree next door")};
}

QString usualName(PlanTool tool)
{
    switch (tool) {
    case PlanTool::strip:
        return Words::tr("path");
    case PlanTool::hedge:
        return Words::tr("hedge");
    case PlanTool::bed:
        return Words::tr("bed");
    case PlanTool::lawn:
        return Words::tr("lawn");
    case PlanTool::shrub:
        return Words::tr("shrubs");
    case PlanTool::structure:
        return Words::tr("building");
    case PlanTool::neighbour:
        return Words::tr("tree next door");
    case PlanTool::line:
        break;
    }
    return Words::tr("electric line");
}

QStringList sortsOf(ThingKind kind)
{
    switch (kind) {
    case ThingKind::planting:
        return {Words::tr("Hedge"), Words::tr("Bed"), Words::tr("Lawn"), Words::tr("Shrubs")};
    case ThingKind::strip:
        return {Words::tr("Path"),
                Words::tr("Walk-behind mower"),
                Words::tr("Ride-on mower"),
                Words::tr("Drive"),
                Words::tr("Seat"),
                Words::tr("Play area"),
                Words::tr("Road"),
                Words::tr("Sight triangle at a corner"),
                Words::tr("Ground in fire country"),
                Words::tr("Other ground in use")};
    case ThingKind::structure:
        return {Words::tr("Building"), Words::tr("Fence or wall"),         Words::tr("Glasshouse"),
                Words::tr("Pond"),     Words::tr("Chimney, to its mouth"), Words::tr("Other")};
    case ThingKind::neighbour:
        return {Words::tr("Open crown"), Words::tr("Crown of usual density"),
                Words::tr("Dense crown")};
    case ThingKind::tree:
    case ThingKind::line:
        break;
    }
    return {};
}

QString titleOf(const model::Garden& garden, ThingRef thing)
{
    const auto& name = nameOf(garden, thing);
    return QString::fromStdString(name.empty() ? idOf(garden, thing) : name);
}

} // namespace app
