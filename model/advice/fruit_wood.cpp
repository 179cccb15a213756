#include "model/advice/fruit_wood.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace model::advice {
namespace {

struct Row {
    std::string_view latin;
    YearlyRenewal renewal;
};

// University of California, The Backyard Orchard, table of yearly pruning; from memory.
constexpr std::array<Row, 8> kRows{{{"Prunus persica", {0.40, 0.50}},
                                    {"Prunus armeniaca", {0.20, 0.20}},
                                    {"Prunus domestica", {0.20, 0.20}},
                                    {"Prunus salicina", {0.20, 0.20}},
                                    {"Prunus dulcis", {0.20, 0.20}},
                                    {"Malus domestica", {0.10, 0.20}},
                                    {"Pyrus communis", {0.10, 0.20}},
                                    {"Prunus avium", {0.10, 0.20}}}};

constexpr double kShareStep = 0.05;   // of the shares that are offered; assumed
constexpr double kUpright_deg = 60.0; // assumed, no source
constexpr double kSameShare = 1e-9;

} // namespace

std::optional<YearlyRenewal> yearlyRenewal(std::string_view latin)
{
    const auto row = std::ranges::find(kRows, latin, &Row::latin);
    return row == kRows.end() ? std::nullopt : std::optional(row->renewal);
}

std::optional<Finding> renewalNote(const Species& species)
{
    const auto renewal = yearlyRenewal(species.latin);
    if (!renewal)
        return std::nullopt;
    return Finding{Rule::renewFruitWood, Severity::inform, {}, renewal->least, renewal->most};
}

ShootCuts shootCuts(const Species& species)
{
    const auto renewal = yearlyRenewal(species.latin);
    if (!renewal)
        return {};
    ShootCuts cuts{CutKind::renewal, {}};
    const int steps = static_cast<int>(std::lround((renewal->most - renewal->least) / kShareStep));
    for (int i = 0; i <= steps; ++i)
        cuts.steps.push_back(renewal->least + kShareStep * i);
    return cuts;
}

std::optional<Finding> renewalShareNote(const Species& species, const Cut& cut)
{
    const auto renewal = yearlyRenewal(species.latin);
    if (!renewal || cut.kind != CutKind::renewal || !cut.share)
        return std::nullopt;
    if (*cut.share > renewal->most + kSameShare)
        return Finding{Rule::renewalShare, Severity::warn, cut.limb, cut.share, renewal->most};
    if (*cut.share < renewal->least - kSameShare)
        return Finding{Rule::renewalShare, Severity::inform, cut.limb, cut.share, renewal->least};
    return std::nullopt;
}

std::vector<std::size_t> middleLimbs(const Tree& tree)
{
    const auto order = limbOrder(tree);
    const Vec3 foot = tree.limbs[order.trunk].stations.front().position_m;
    const auto out_m = [&](std::size_t limb) {
        const Vec3 tip = tree.limbs[limb].stations.back().position_m - foot;
        return std::hypot(tip.x, tip.y);
    };
    double reach_m = 0.0;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        reach_m = std::max(reach_m, out_m(i));
    const auto isUpright = [&](std::size_t limb) {
        const auto& stations = tree.limbs[limb].stations;
        const Vec3 run = stations.back().position_m - stations.front().position_m;
        return run.z > 0.0 && degrees(std::atan2(run.z, std::hypot(run.x, run.y))) >= kUpright_deg;
    };
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        const auto beyond = limbAndBeyond(order, i);
        if (i != order.trunk && isUpright(i) &&
            std::ranges::all_of(beyond, [&](std::size_t b) { return out_m(b) <= reach_m / 3.0; }))
            all.push_back(i);
    }
    return all;
}

} // namespace model::advice
