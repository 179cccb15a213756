#include "app/paper/arborist_brief.hpp"

#include "app/paper/figures.hpp"
#include "app/words/cut_words.hpp"
#include "app/words/finding_list.hpp"
#include "app/words/goal_words.hpp"
#include "app/words/headroom_words.hpp"
#include "app/words/labour_words.hpp"
#include "model/geometry/polygon.hpp"

#include <algorithm>
#include <limits>

namespace app {
namespace {

/// Things on the ground within this distance of the stem, or under the crown, are told.
constexpr double kNear_m = 15.0;

double reach_m(const TreeOnPaper& on)
{
    double reach = 0.0;
    for (const auto& limb : on.wording.tree.limbs)
        for (const auto& station : limb.stations)
            reach = std::max(reach, norm(plan(station.position_m)) +
                                        (limb.foliage ? limb.foliage->radius_m : 0.0));
    return reach;
}

QString defectWords(const model::Defect& defect, const Units& units)
{
    QString what;
    switch (defect.kind) {
    case model::DefectKind::cavity:
        what = Words::tr("cavity");
        break;
    case model::DefectKind::openCavity:
        what = Words::tr("open cavity");
        break;
    case model::DefectKind::crack:
        what = Words::tr("crack");
        break;
    case model::DefectKind::dead:
        what = Words::tr("dead from here to the tip");
        break;
    case model::DefectKind::broken:
        what = Words::tr("broken");
        break;
    case model::DefectKind::rubbing:
        what = Words::tr("rubs on another limb");
        break;
    }
    QString text = Words::tr("%1 at %2 from its union").arg(what, units.roughLength(defect.at_m));
    if (defect.residualWall_m)
        text += Words::tr(", %1 of sound wood left").arg(units.diameter(*defect.residualWall_m));
    return defect.note.empty()
               ? text
               : text + QStringLiteral(" (%1)").arg(QString::fromStdString(defect.note));
}

QStringList seen(const TreeOnPaper& on)
{
    QStringList lines;
    for (const auto& observation : on.wording.tree.observations) {
        const QString sign = capitalised(signWords(observation.sign));
        lines << (observation.note.empty()
                      ? sign + QLatin1Char('.')
                      : Words::tr("%1: %2").arg(sign, QString::fromStdString(observation.note)));
    }
    for (const auto& limb : on.wording.tree.limbs) {
        for (const auto& defect : limb.defects)
            lines << Words::tr("%1: %2.").arg(limbName(on.wording, limb.id),
                                              defectWords(defect, on.wording.units));
        if (limb.unionKind == model::Union::includedBark)
            lines
                << Words::tr("%1: bark pressed into its union.").arg(limbName(on.wording, limb.id));
        if (limb.unionKind == model::Union::codominant)
            lines << Words::tr("%1: two stems of much the same size at its union.")
                         .arg(limbName(on.wording, limb.id));
    }
    if (lines.isEmpty())
        lines << Words::tr("No sign or defect was noted from the ground; nobody has climbed or "
                           "probed it.");
    return lines;
}

template <class Things, class Far>
void addNear(QStringList& lines, const TreeOnPaper& on, const Things& things, const QString& what,
             Far far)
{
    const double reach = std::max(kNear_m, reach_m(on));
    for (const auto& thing : things) {
        const double away_m = far(thing);
        if (away_m <= reach)
            lines << Words::tr("%1 %2, %3 from the stem")
                         .arg(what, thingName(on.wording.garden, thing.id),
                              on.wording.units.roughLength(away_m));
    }
}

double toWire_m(const model::ElectricLine& line, model::Point2 stem)
{
    double least_m = std::numeric_limits<double>::infinity();
    const auto around = model::Polygon{
        {stem.x - 0.01, stem.y - 0.01}, {stem.x + 0.01, stem.y - 0.01}, {stem.x, stem.y + 0.01}};
    for (std::size_t i = 1; i < line.path_m.size(); ++i)
        least_m = std::min(
            least_m, model::distance_m({plan(line.path_m[i - 1]), plan(line.path_m[i])}, around));
    return least_m;
}

QStringList below(const TreeOnPaper& on)
{
    const auto& garden = on.wording.garden;
    const auto stem = on.wording.tree.position_m;
    const auto away = [&](const auto& thing) {
        return model::distance_m({stem, stem}, thing.outline_m);
    };
    QStringList lines;
    addNear(lines, on, garden.lines, Words::tr("overhead wire"),
            [&](const auto& line) { return toWire_m(line, stem); });
    addNear(lines, on, garden.structures, Words::tr("structure"), away);
    addNear(lines, on, garden.strips, Words::tr("ground in use"), away);
    addNear(lines, on, garden.plantings, Words::tr("planting"), away);
    if (lines.isEmpty())
        lines << Words::tr("nothing drawn within %1").arg(on.wording.units.roughLength(kNear_m));
    return lines;
}

QStringList photos(const TreeOnPaper& on)
{
    QStringList lines;
    for (const auto& photo : on.wording.tree.photos) {
        if (std::ranges::find(on.report.photos, photo.file, &PaperPhoto::file) !=
            on.report.photos.end())
            continue; // it stands above
        QString line = QString::fromStdString(photo.file);
        if (photo.viewBearing_deg)
            line += Words::tr(", looking %1").arg(Units::bearing(*photo.viewBearing_deg));
        lines << line;
    }
    return lines;
}

QStringList wanted(const TreeOnPaper& on)
{
    QStringList lines;
    for (const auto& strip : on.of.headroom)
        if (strip.worstShortfall_m() > 0.0)
            lines << sentence(strip, on.wording);
    for (const auto& goal : on.of.suggestion.goals)
        lines << sentence(goal, on.wording);
    if (lines.isEmpty())
        lines << Words::tr("A look at the tree, and advice.");
    return lines;
}

QString cutsInShort(const TreeOnPaper& on)
{
    const auto& suggestion = on.of.suggestion;
    if (suggestion.cuts.empty())
        return {};
    QStringList cuts;
    int number = 0;
    for (const auto& planned : suggestion.cuts)
        cuts << Words::tr("%1) %2 of %3, wound %4, %5")
                    .arg(QString::number(++number), cutKindWords(planned),
                         limbName(on.wording, planned.cut.limb),
                         planned.diameter_m > 0.0 ? on.wording.units.diameter(planned.diameter_m)
                                                  : Words::tr("shoots only"),
                         on.wording.units.mass(planned.mass_kg));
    return Words::tr("A sketch suggests, for %1 of the leaf: %2. It is a question to the arborist, "
                     "not an order.")
        .arg(on.wording.units.share(suggestion.leafShare), cuts.join(QStringLiteral("; ")));
}

/// The reasons to hire alone: who keeps people out, and how high a saw goes, an arborist knows.
model::advice::Labour gravest(model::advice::Labour labour)
{
    std::erase_if(labour.findings, [](const auto& finding) {
        return finding.severity != model::advice::Severity::block;
    });
    return labour;
}

QString protectionWords(model::Protection protection)
{
    switch (protection) {
    case model::Protection::unknown:
        return Words::tr("Legal protection: not known; the local authority has to be asked.");
    case model::Protection::none:
        return Words::tr("Legal protection: none known to the owner.");
    case model::Protection::listed:
        return Words::tr("Legal protection: the tree is protected; consent comes first.");
    }
    return {};
}

/// What a client asks of an arborist, as extension services and professional bodies advise.
QStringList toAsk()
{
    return {
        Words::tr("Certified or licensed as the law here asks: the number, to look up with the "
                  "body that gave it."),
        Words::tr("Insured: certificates of liability and of cover for the workers, valid on the "
                  "day; ring the insurer."),
        Words::tr(
            "Works to the standard in force here for pruning and for safe work (ANSI A300 "
            "and Z133, BS 3998, EN or the local one). No topping, no lion's tails, no climbing "
            "spikes on a tree that stays."),
        Words::tr("A written offer from a visit: what is cut, where, how much of the leaf, who "
                  "carries it away, what it costs, when. Two or three offers."),
        Words::tr("Who rings the line's operator, asks the authority for permits, looks for nests "
                  "and bats, and keeps the path shut."),
        Words::tr("References of like work. Be slow with who knocks at the door or wants the "
                  "money first."),
    };
}

void addTree(SheetBlocks& blocks, const TreeOnPaper& on)
{
    const auto& tree = on.wording.tree;
    const Units& units = on.wording.units;
    blocks.emplace_back(
        Title{Words::tr("For an arborist: %1").arg(treeName(tree, on.wording.species))});
    blocks.emplace_back(
        Paragraph{treeFacts(on.wording) + QLatin1Char(' ') +
                  Words::tr("Crown reaches %1 from the stem, about %2 above ground.")
                      .arg(units.roughLength(reach_m(on)), units.mass(on.of.load.mass_kg)) +
                  QLatin1Char(' ') + protectionWords(tree.protection)});
    blocks.emplace_back(Figures{{cutsFigure(on.report, on.of, units, {440.0, 250.0}),
                                 planFigure(on.report, &tree, units, {440.0, 250.0})}});
    if (auto photos = photoFigures(on.report.photos, tree.id, {300.0, 210.0});
        !photos.figures.empty())
        blocks.emplace_back(std::move(photos));
    blocks.emplace_back(Heading{Words::tr("What is wanted, and why")});
    addBullets(blocks, wanted(on));
    if (const QString cuts = cutsInShort(on); !cuts.isEmpty())
        blocks.emplace_back(Bullet{cuts});
    addBullets(blocks, reasons(gravest(on.of.labour), on.wording));
    blocks.emplace_back(Heading{Words::tr("What was seen")});
    addBullets(blocks, seen(on));
    if (const auto pictures = photos(on); !pictures.isEmpty())
        blocks.emplace_back(Bullet{Words::tr("More photos: %1.").arg(listed(units, pictures))});
    blocks.emplace_back(Heading{Words::tr("Below and around")});
    blocks.emplace_back(
        Bullet{capitalised(below(on).join(QStringLiteral("; "))) + QLatin1Char('.')});
    blocks.emplace_back(Bullet{Words::tr("Access (width of the gate, slope, parking, soft ground): "
                                         "______________________________________________")});
    blocks.emplace_back(Heading{Words::tr("What to ask")});
    addBullets(blocks, toAsk());
    blocks.emplace_back(Paragraph{
        Words::tr("All figures are estimates from a sketch, not an inspection. Local rules and the "
                  "judgement of who stands under the tree come before anything said here.")});
}

} // namespace

Sheet arboristBrief(const PaperReport& report, const model::Tables& tables, const Units& units)
{
    Sheet sheet;
    QString name;
    for (const auto& of : report.assessment.trees) {
        const auto& tree = treeWithId(*report.garden, of.tree);
        const auto& species = *findSpecies(tables, tree.species);
        sheet.blocks.emplace_back(NewPage{});
        addTree(sheet.blocks, {report, of, tables, {units, *report.garden, tree, species}});
        name = treeName(tree, species);
    }
    sheet.title = footWords(report, report.assessment.trees.size() == 1 ? name : QString(), units);
    sheet.foot = sheet.title;
    sheet.mostPages = report.assessment.trees.size();
    return sheet;
}

} // namespace app
