#include "model/advice/who.hpp"

#include "model/advice/limits.hpp"
#include "model/geometry/angle.hpp"
#include "model/geometry/segment.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace model::advice {
namespace {

void decide(Labour& labour, Finding finding)
{
    if (finding.severity == Severity::inform)
        return;
    const Who asked = finding.severity == Severity::block ? Who::arborist : Who::withHelper;
    labour.who = std::max(labour.who, asked);
    labour.findings.push_back(std::move(finding));
}

/// Secateurs and pruners on a pole take shoots and small wood as far as they reach; a saw above
/// the shoulders asks for a second pair of hands.
void byHeight(const PlannedCut& planned, Labour& labour)
{
    const Piece* highest = nullptr;
    for (const auto& piece : planned.pieces)
        if ((piece.tool == Tool::poleSaw || piece.tool == Tool::outOfReach) &&
            (!highest || piece.cut_m.z > highest->cut_m.z))
            highest = &piece;
    if (!highest)
        return;
    const double height_m = highest->cut_m.z;
    if (highest->tool == Tool::outOfReach)
        decide(labour,
               {Rule::beyondPoleSaw, Severity::block, highest->limb, height_m, kPoleSawReach_m});
    else
        decide(labour, {Rule::overHead, Severity::warn, highest->limb, height_m, kReach_m});
}

void bySize(const PlannedCut& planned, Labour& labour)
{
    if (planned.diameter_m > kWoundLarge_m)
        decide(labour, {Rule::cutOver100mm, Severity::block, planned.cut.limb, planned.diameter_m,
                        kWoundLarge_m});
    if (planned.diameter_m <= 0.0)
        return; // comes down shoot by shoot
    const auto heaviest = std::ranges::max(planned.pieces, {}, &Piece::mass_kg);
    if (heaviest.mass_kg > kVeryHeavyPiece_kg)
        decide(labour, {Rule::veryHeavyPiece, Severity::block, planned.cut.limb, heaviest.mass_kg,
                        kVeryHeavyPiece_kg});
    else if (heaviest.mass_kg > kHeavyPiece_kg)
        decide(labour, {Rule::heavyPiece, Severity::warn, planned.cut.limb, heaviest.mass_kg,
                        kHeavyPiece_kg});
}

double lineDistance_m(const ElectricLine& line)
{
    const double over50_kV = std::max(0.0, line.voltage_kV.value_or(0.0) - 50.0);
    return kLineDistance_m + kLineDistancePer10kV_m * over50_kV / 10.0;
}

/// There the operator's word comes before any work within 10 m on plan. Without a time zone
/// by a box about Great Britain, which holds a strip of France and never leaves any of it out.
bool inUnitedKingdom(const Place& place)
{
    if (!place.timeZone.empty())
        return place.timeZone == "Europe/London" || place.timeZone == "Europe/Belfast" ||
               place.timeZone == "GB";
    return place.latitude_deg > 49.8 && place.latitude_deg < 61.0 && place.longitude_deg > -8.2 &&
           place.longitude_deg < 1.9;
}

/// Distances from a falling part to a line: straight, after the piece has swung about the cut, and
/// level on plan.
struct LineGap {
    double nearest_m{std::numeric_limits<double>::infinity()};
    double level_m{std::numeric_limits<double>::infinity()};
};

LineGap gapTo(const ElectricLine& line, const Tree& tree, const PlannedCut& planned,
              const FallingPart& part)
{
    const Vec3 foot{tree.position_m.x, tree.position_m.y, 0.0};
    const auto flat = [](Vec3 v) { return Vec3{v.x, v.y, 0.0}; };
    LineGap gap;
    for (std::size_t i = 1; i < line.path_m.size(); ++i) {
        const Vec3 from = line.path_m[i - 1] - foot;
        const Vec3 to = line.path_m[i] - foot;
        gap.nearest_m =
            std::min(gap.nearest_m, pointToSegment_m(part.cut_m, from, to) - planned.length_m);
        for (const auto& solid : part.solids) {
            const double straight = segmentDistance_m(solid.a, solid.b, from, to);
            const double level =
                segmentDistance_m(flat(solid.a), flat(solid.b), flat(from), flat(to));
            gap.nearest_m = std::min(gap.nearest_m, straight - solid.radius_m);
            gap.level_m = std::min(gap.level_m, level - solid.radius_m);
        }
    }
    return {std::max(0.0, gap.nearest_m), std::max(0.0, gap.level_m)};
}

void byLines(const Garden& garden, const Tree& tree, const PlannedCut& planned,
             const FallingPart& part, Labour& labour)
{
    for (const auto& line : garden.lines) {
        const auto gap = gapTo(line, tree, planned, part);
        if (gap.nearest_m < lineDistance_m(line))
            decide(labour,
                   {Rule::nearLine, Severity::block, line.id, gap.nearest_m, lineDistance_m(line)});
        else if (gap.level_m < kLineAskFirst_m)
            decide(labour, {Rule::nearLine,
                            inUnitedKingdom(garden.place) ? Severity::block : Severity::warn,
                            line.id, gap.level_m, kLineAskFirst_m});
    }
}

/// How far from the place under the cut something may come down: each piece's own drop zone, and
/// the whole limb's length in case it tears off before it has been cut into lengths.
double fallRadius_m(const PlannedCut& planned)
{
    double radius_m = planned.length_m;
    for (const auto& piece : planned.pieces)
        radius_m = std::max(radius_m, piece.dropRadius_m);
    return radius_m;
}

void byWhatLiesBelow(const Garden& garden, const Tree& tree, const PlannedCut& planned,
                     const FallingPart& part, Labour& labour)
{
    if (planned.diameter_m <= 0.0)
        return; // shoots
    const std::vector<Point2> below{plan(part.cut_m) + tree.position_m,
                                    plan(part.cut_m) + tree.position_m};
    const double radius_m = fallRadius_m(planned);
    for (const auto& structure : garden.structures) {
        if (structure.kind == StructureKind::pond)
            continue;
        const double gap_m = distance_m(below, structure.outline_m);
        if (gap_m > radius_m)
            continue;
        const bool heavy = planned.diameter_m > kWoundSmall_m || planned.mass_kg > kHeavyPiece_kg;
        const bool costly = structure.kind != StructureKind::fence;
        decide(labour, {Rule::targetBelow, heavy && costly ? Severity::block : Severity::warn,
                        structure.id, gap_m, radius_m});
    }
    for (const auto& found : planned.inZone)
        if (found.kind == Under::line)
            decide(labour,
                   {Rule::targetBelow, Severity::block, found.id, found.gap_m, found.radius_m});
    const double zone_m = radius_m + kFallZone_m;
    for (const auto& strip : garden.strips) {
        const bool mown = strip.use == StripUse::mower || strip.use == StripUse::rideOnMower;
        const double gap_m = distance_m(below, strip.outline_m);
        if (mown || strip.use == StripUse::fireZone || gap_m > zone_m)
            continue;
        // A path of one's own can be shut and watched; a road can't.
        const auto severity = strip.use == StripUse::road ? Severity::block : Severity::warn;
        decide(labour, {Rule::peopleBelow, severity, strip.id, gap_m, zone_m});
    }
}

/// Wood with a crack or a hollow, or a broken limb too thick for one hand to hold: the weight that
/// comes off it makes it jump.
std::optional<Finding> faultOf(const Limb& limb, const Defect& defect)
{
    const double thick_m = axisPoint(limb, defect.at_m).diameter_m;
    switch (defect.kind) {
    case DefectKind::cavity:
    case DefectKind::openCavity:
    case DefectKind::crack:
        return Finding{Rule::crackedOrHollow, Severity::block, limb.id, std::nullopt, std::nullopt};
    case DefectKind::broken:
        if (thick_m > kBrokenWood_m)
            return Finding{Rule::brokenWood, Severity::block, limb.id, thick_m, kBrokenWood_m};
        break;
    case DefectKind::dead:
    case DefectKind::rubbing:
        break;
    }
    return std::nullopt;
}

void byDefects(const Tree& tree, const FallingPart& part, Labour& labour)
{
    const auto order = limbOrder(tree);
    std::vector<std::size_t> concerned = part.limbs;
    if (!part.limbs.empty()) // a ladder or a shaken stem loads what the limb hangs on as well
        for (auto up = order.parent[part.limbs.front()]; up != kNoLimb; up = order.parent[up])
            concerned.push_back(up);
    std::ranges::sort(concerned);
    concerned.erase(std::ranges::unique(concerned).begin(), concerned.end());
    for (const auto i : concerned)
        for (const auto& defect : tree.limbs[i].defects)
            if (const auto fault = faultOf(tree.limbs[i], defect))
                decide(labour, *fault);
}

double lean_deg(const Tree& tree)
{
    // Leaning stems often sweep upright higher up: the lowest 3 m show the lean.
    const auto& trunk = tree.limbs[limbOrder(tree).trunk];
    const Vec3 rise = axisPoint(trunk, std::min(3.0, length_m(trunk))).position_m -
                      trunk.stations.front().position_m;
    return degrees(std::atan2(std::hypot(rise.x, rise.y), rise.z));
}

} // namespace

Labour whoCuts(const Garden& garden, const Tree& tree, const PlannedCut& planned,
               const FallingPart& part)
{
    Labour labour;
    byHeight(planned, labour);
    bySize(planned, labour);
    byLines(garden, tree, planned, part, labour);
    byWhatLiesBelow(garden, tree, planned, part, labour);
    byDefects(tree, part, labour);
    return labour;
}

Labour whoForTree(const Tree& tree)
{
    Labour labour;
    for (const auto& observation : tree.observations)
        if (observation.sign != Sign::nest) // a nest decides when, not who
            decide(labour, {Rule::warningSign, Severity::block, {}, std::nullopt, std::nullopt});
    const double lean = lean_deg(tree);
    if (lean >= kLean_deg)
        decide(labour, {Rule::leaningStem, Severity::block, {}, lean, kLean_deg});
    const double height = height_m(tree);
    for (const auto& limb : tree.limbs)
        for (const auto& defect : limb.defects)
            if (defect.kind == DefectKind::dead && height > kDeadWoodHeight_m)
                decide(labour,
                       {Rule::deadWood, Severity::block, limb.id, height, kDeadWoodHeight_m});
            else if (const auto fault = faultOf(limb, defect))
                decide(labour, *fault);
    if (tree.protection == Protection::listed)
        decide(labour, {Rule::protectedTree, Severity::block, {}, std::nullopt, std::nullopt});
    return labour;
}

Labour whoForLoads(const Tree& tree, const load::TreeLoad& loads)
{
    Labour labour;
    for (const auto& load : loads.limbs)
        if (!load.hasStrength || load.utilisation >= 1.0)
            decide(labour,
                   {Rule::limbOverloaded, Severity::block, tree.limbs[load.limb].id,
                    load.hasStrength ? std::optional(load.utilisation) : std::nullopt, 1.0});
    return labour;
}

Labour together(Labour a, const Labour& b)
{
    a.who = std::max(a.who, b.who);
    for (const auto& finding : b.findings) {
        const bool known = std::ranges::any_of(a.findings, [&](const Finding& f) {
            return f.rule == finding.rule && f.subject == finding.subject;
        });
        if (!known)
            a.findings.push_back(finding);
    }
    return a;
}

} // namespace model::advice
