#include "model/advice/shared_work.hpp"

#include "model/crown/leafy_bodies.hpp"

#include <algorithm>

namespace model::advice {
namespace {

bool concernsTheWholeTree(const Finding& finding)
{
    return finding.severity == Severity::block &&
           (finding.rule == Rule::warningSign || finding.rule == Rule::leaningStem ||
            finding.rule == Rule::protectedTree);
}

bool isFaultOfALimb(const Finding& finding)
{
    return finding.severity == Severity::block &&
           (finding.rule == Rule::deadWood || finding.rule == Rule::brokenWood ||
            finding.rule == Rule::crackedOrHollow || finding.rule == Rule::limbOverloaded);
}

/// The ground that a limb and all that grows from it hang over.
std::vector<Polygon> hangsOver(const Tree& tree, std::size_t limb)
{
    std::vector<Polygon> ground;
    const auto bodies = leafyBodies(tree);
    for (const auto i : limbAndBeyond(limbOrder(tree), limb)) {
        for (const auto& wood : woodSolids(tree.limbs[i]))
            ground.push_back(footprint(wood));
        for (const auto& body : bodies)
            if (body.limb == i)
                ground.push_back(footprint(body.solid));
    }
    return ground;
}

bool isUnder(const PlannedCut& planned, const std::vector<Polygon>& ground)
{
    return std::ranges::any_of(planned.pieces, [&](const Piece& piece) {
        return std::ranges::any_of(
            ground, [&](const Polygon& shape) { return covers(shape, plan(piece.cut_m)); });
    });
}

} // namespace

SharedWork sharedWork(const Tree& tree, const Suggestion& suggestion, const Labour& labour)
{
    SharedWork shared;
    shared.wholeTree = std::ranges::any_of(labour.findings, concernsTheWholeTree);
    const auto order = limbOrder(tree);
    std::vector<Polygon> faulty;
    for (const auto& finding : labour.findings) {
        const auto limb = limbIndex(tree, finding.subject);
        if (!isFaultOfALimb(finding) || limb == kNoLimb || limb == order.trunk)
            continue;
        const auto ground = hangsOver(tree, limb);
        faulty.insert(faulty.end(), ground.begin(), ground.end());
    }
    std::vector<std::size_t> theirs; // limbs that the arborist's cuts are on
    for (std::size_t i = 0; i < suggestion.cuts.size(); ++i) {
        const auto& planned = suggestion.cuts[i];
        const auto beyond = limbAndBeyond(order, limbIndex(tree, planned.cut.limb));
        const bool waits = std::ranges::any_of(theirs, [&](std::size_t limb) {
            return std::ranges::find(beyond, limb) != beyond.end();
        });
        if (shared.wholeTree || planned.labour.who == Who::arborist || waits ||
            isUnder(planned, faulty)) {
            shared.arborist.push_back(i);
            theirs.push_back(beyond.front());
        } else {
            shared.gardener.push_back(i);
        }
    }
    return shared;
}

} // namespace model::advice
