#include "model/advice/prune.hpp"

#include <algorithm>
#include <stdexcept>
#include <vector>

namespace model::advice {
namespace {

// Two laterals drawn at the same place of a limb are meant to be one whorl: both stay.
constexpr double kSameCut_m = 1e-6;

void eraseLimbs(Tree& tree, const std::vector<std::size_t>& gone)
{
    std::vector<Limb> kept;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        if (std::ranges::find(gone, i) == gone.end())
            kept.push_back(std::move(tree.limbs[i]));
    tree.limbs = std::move(kept);
}

void shortenFoliage(Limb& limb, double oldLength_m, double at_m)
{
    if (!limb.foliage)
        return;
    const double leafy = oldLength_m - limb.foliage->from_m;
    const double left = at_m - limb.foliage->from_m;
    limb.fruit_kg *= leafy > 0.0 ? std::clamp(left / leafy, 0.0, 1.0) : 0.0;
    if (left <= kSameCut_m)
        limb.foliage.reset();
}

void shorten(Limb& limb, double at_m)
{
    shortenFoliage(limb, length_m(limb), at_m);
    limb.stations = stretch(limb, 0.0, at_m);
    std::erase_if(limb.defects, [at_m](const Defect& d) {
        const bool startsThere = d.kind == DefectKind::dead || d.kind == DefectKind::broken ||
                                 d.kind == DefectKind::rubbing;
        return d.at_m > (startsThere ? at_m - kSameCut_m : at_m);
    });
    std::erase_if(limb.props, [at_m](const Prop& p) { return p.at_m > at_m; });
}

void reduce(Tree& tree, std::size_t limb, double at_m)
{
    if (!(at_m > 0.0) || at_m > length_m(tree.limbs[limb]))
        throw std::domain_error("afterCut: a reduction lies along the limb, not beyond its tip");
    const auto order = limbOrder(tree);
    std::vector<std::size_t> gone;
    for (const auto child : order.children[limb]) {
        if (tree.limbs[child].attachedAt_m <= at_m + kSameCut_m)
            continue;
        const auto branch = limbAndBeyond(order, child);
        gone.insert(gone.end(), branch.begin(), branch.end());
    }
    shorten(tree.limbs[limb], at_m);
    eraseLimbs(tree, gone);
}

void lift(Limb& limb, double height_m)
{
    if (limb.foliage)
        limb.foliage->hem_m = std::max(limb.foliage->hem_m.value_or(0.0), height_m);
}

void thin(Limb& limb, double share)
{
    if (!(share >= 0.0) || share > 1.0)
        throw std::domain_error("afterCut: the share thinned lies between 0 and 1");
    if (limb.foliage)
        limb.foliage->thinned = 1.0 - (1.0 - limb.foliage->thinned) * (1.0 - share);
}

} // namespace

Tree afterCut(const Tree& tree, const Cut& cut)
{
    const auto limb = limbIndex(tree, cut.limb);
    if (limb == kNoLimb)
        throw std::domain_error("afterCut: the tree has no limb '" + cut.limb + "'");
    Tree after = tree;
    switch (cut.kind) {
    case CutKind::removal:
        if (!tree.limbs[limb].parent)
            throw std::domain_error("afterCut: removing the trunk is felling, not pruning");
        eraseLimbs(after, limbAndBeyond(limbOrder(tree), limb));
        break;
    case CutKind::reduction:
        reduce(after, limb, cut.at_m);
        break;
    case CutKind::lifting:
        lift(after.limbs[limb], cut.height_m.value_or(0.0));
        break;
    case CutKind::thinning:
    case CutKind::renewal:
        thin(after.limbs[limb], cut.share.value_or(0.0));
        break;
    }
    return after;
}

Tree afterCuts(Tree tree, std::span<const Cut> cuts)
{
    for (const auto& cut : cuts)
        tree = afterCut(tree, cut);
    return tree;
}

std::vector<Cut> madeInTurn(const Tree& tree, std::span<const Cut> cuts)
{
    std::vector<Cut> made;
    Tree standing = tree;
    for (const auto& cut : cuts) {
        const auto limb = limbIndex(standing, cut.limb);
        const bool again = std::ranges::any_of(made, [&](const Cut& earlier) {
            return earlier.kind == cut.kind && earlier.limb == cut.limb;
        });
        if (limb == kNoLimb || again ||
            (cut.kind == CutKind::removal && !standing.limbs[limb].parent) ||
            (cut.kind == CutKind::reduction &&
             !(cut.at_m > 0.0 && cut.at_m < length_m(standing.limbs[limb]) - kSameCut_m)))
            continue;
        standing = afterCut(standing, cut);
        made.push_back(cut);
    }
    return made;
}

} // namespace model::advice
