#include "app/round/round_tint.hpp"

#include "app/drawing/load_scale.hpp"
#include "app/drawing/pens.hpp"

namespace app {
namespace {

QColor woodColour(const RoundState& state, const DrawingPalette& colours)
{
    if (state.chosen)
        return colours.chosen;
    if (!state.load)
        return colours.bark;
    if (!state.load->hasStrength)
        return colours.ink;
    return colours.loads.value(loadStep(state.load->utilisation), colours.bark);
}

QColor leafColour(const RoundState& state, const DrawingPalette& colours)
{
    const double alpha = (state.chosen ? 0.34 : 0.14) * (0.35 + 0.65 * state.leafShare);
    return withAlpha(colours.leaf, alpha);
}

} // namespace

RoundLook roundLook(RoundKind kind, const RoundState& state, const DrawingPalette& colours)
{
    switch (kind) {
    case RoundKind::ground:
        return {mixed(colours.paper, colours.soil, 0.42F), false};
    case RoundKind::ring:
        return {colours.faintInk, false};
    case RoundKind::lawn:
        return {mixed(colours.paper, colours.leaf, 0.5F), false};
    case RoundKind::bed:
        return {mixed(colours.soil, colours.planting, 0.55F), false};
    case RoundKind::strip:
        return {mixed(colours.paper, colours.strip, 0.7F), false};
    case RoundKind::pond:
        return {mixed(colours.chosen, colours.structure, 0.5F), false};
    case RoundKind::hedge:
    case RoundKind::shrub:
        return {colours.planting};
    case RoundKind::building:
    case RoundKind::fence:
        return {mixed(colours.paper, colours.structure, 0.6F)};
    case RoundKind::glasshouse:
        return {withAlpha(colours.structure, 0.35), false};
    case RoundKind::wire:
        return {colours.line, false};
    case RoundKind::wood:
        return {woodColour(state, colours), true, false};
    case RoundKind::leaf:
        return {leafColour(state, colours), false, false};
    case RoundKind::flecks:
    case RoundKind::otherFlecks:
        return {colours.leaf, false, false};
    case RoundKind::shade:
    case RoundKind::otherShade:
        return {colours.leaf, true, false, true};
    case RoundKind::fallenWood:
        return state.isMade ? RoundLook{withAlpha(colours.cut, 0.45), false, false}
                            : RoundLook{state.chosen ? colours.chosen : colours.cut, true, false};
    case RoundKind::fallenLeaf:
        return {withAlpha(colours.cut, state.isMade ? 0.14 : 0.22), false, false};
    case RoundKind::otherWood:
        return {colours.bark, true, false};
    case RoundKind::otherLeaf:
        return {withAlpha(colours.leaf, 0.12), false, false};
    }
    return {colours.ink};
}

} // namespace app
