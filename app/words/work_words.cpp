#include "app/words/work_words.hpp"

#include "model/advice/limits.hpp"

#include <algorithm>

namespace app {
namespace {

using model::advice::Piece;
using model::advice::PlannedCut;
using model::advice::Tool;

QString lengths(const PlannedCut& planned, const Wording& wording)
{
    QStringList all;
    for (const Piece& piece : planned.pieces)
        all << pieceWords(piece, wording);
    return Words::tr("Take it down in %1 lengths, from the tip inwards: %2.")
        .arg(QString::number(planned.pieces.size()), all.join(Words::tr("; ")));
}

QString cutNumbers(const std::vector<std::size_t>& cuts, const Units& units)
{
    QStringList numbers;
    for (const auto cut : cuts)
        numbers << QString::number(cut + 1);
    return listed(units, numbers);
}

} // namespace

QString toolWords(Tool tool)
{
    switch (tool) {
    case Tool::secateurs:
        return Words::tr("secateurs");
    case Tool::loppers:
        return Words::tr("loppers");
    case Tool::handSaw:
        return Words::tr("hand saw");
    case Tool::polePruner:
        return Words::tr("pole pruner");
    case Tool::poleSaw:
        return Words::tr("pole saw");
    case Tool::outOfReach:
        return Words::tr("out of reach from the ground");
    }
    return {};
}

QStringList toolsOf(const std::vector<PlannedCut>& cuts)
{
    std::vector<Tool> tools;
    for (const auto& cut : cuts)
        for (const auto& piece : cut.pieces)
            if (piece.tool != Tool::outOfReach)
                tools.push_back(piece.tool);
    std::ranges::sort(tools);
    QStringList words;
    for (const auto tool : tools)
        words << toolWords(tool);
    words.removeDuplicates();
    return words;
}

QString pieceWords(const Piece& piece, const Wording& wording)
{
    const Units& units = wording.units;
    const QString size = Words::tr("%1 and about %2")
                             .arg(units.roughLength(piece.length_m), units.mass(piece.mass_kg));
    const QString limb = limbName(wording, piece.limb);
    const QString where =
        piece.at_m > 0.0
            ? Words::tr("off %1 at %2 from its union").arg(limb, units.roughLength(piece.at_m))
            : Words::tr("%1 at its union").arg(limb);
    return Words::tr("%1 (%2; %3 thick, %4 up; %5)")
        .arg(size, where, units.diameter(piece.diameter_m), units.roughLength(piece.cut_m.z),
             toolWords(piece.tool));
}

QString dropWords(const PlannedCut& planned, const Wording& wording)
{
    double radius_m = 0.0;
    for (const Piece& piece : planned.pieces)
        radius_m = std::max(radius_m, piece.dropRadius_m);
    QStringList names;
    for (const auto& found : planned.inZone)
        names << thingName(wording.garden, found.id);
    const QString far = wording.units.roughLength(radius_m);
    const QString what = planned.diameter_m > 0.0
                             ? Words::tr("Pieces can come down up to %1 from the place under the "
                                         "cut.")
                                   .arg(far)
                             : Words::tr("The shoots drop where they hang.");
    if (names.isEmpty())
        return what;
    return what + QLatin1Char(' ') + Words::tr("There: %1.").arg(listed(wording.units, names));
}

QStringList workLines(const PlannedCut& planned, const Wording& wording)
{
    QStringList lines;
    if (planned.pieces.empty())
        return lines;
    if (planned.pieces.size() > 1)
        lines << lengths(planned, wording);
    else if (planned.pieces.front().tool == Tool::outOfReach)
        lines << Words::tr("Nothing held from the ground reaches it.");
    else
        lines << Words::tr("With: %1.").arg(toolWords(planned.pieces.front().tool));
    return lines << dropWords(planned, wording);
}

QString debrisWords(const model::advice::Debris& debris, const Wording& wording)
{
    const Units& units = wording.units;
    const QString all = units.mass(debris.mass_kg);
    const QString heap = Words::tr("%1 of brush on a heap (%2 to %3, as it packs)")
                             .arg(units.volume(debris.brush_m3), units.volume(debris.brushLow_m3),
                                  units.volume(debris.brushHigh_m3));
    if (debris.logs_kg < 1.0)
        return Words::tr("To carry away: about %1, %2.").arg(all, heap);
    return Words::tr("To carry away: about %1, %2, and %3 of logs stacked (%4, %5 thick and over).")
        .arg(all, heap, units.volume(debris.logs_m3), units.mass(debris.logs_kg),
             units.diameter(model::advice::kLog_m));
}

QString sharedWords(const model::advice::SharedWork& shared, const Wording& wording)
{
    const Units& units = wording.units;
    if (shared.arborist.empty())
        return {};
    if (shared.wholeTree)
        return Words::tr("What is wrong concerns the whole tree, so none of the cuts remains for "
                         "you.");
    if (shared.gardener.empty())
        return Words::tr("None of the cuts remains for you.");
    return Words::tr("By number, for the arborist: %1; for you: %2.")
        .arg(cutNumbers(shared.arborist, units), cutNumbers(shared.gardener, units));
}

} // namespace app
