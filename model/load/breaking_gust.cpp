#include "model/load/breaking_gust.hpp"

#include "model/load/drag.hpp"
#include "model/load/quasi_random.hpp"
#include "model/load/weak_place.hpp"
#include "model/load/wind.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>

namespace model::load {
namespace {

/// The wind that drags are first reckoned for; results don't hang on it.
constexpr double kReferenceGust_m_s = 30.0;

/// Winds in which the weakest place of a limb is looked for: it wanders as wind outweighs weight.
constexpr std::array kLadder_m_s{12.0, 30.0, 60.0};

/// A place that bears this many times the wind of the weakest is left out.
constexpr double kFarStronger = 2.5;

/// With fewer draws left than this share the drawing is not believed, and none is left out.
constexpr double kLeastStanding = 0.05;

// Spreads (standard deviation of the logarithm), each with its source in L23.
constexpr double kLimbStrengthSpread = 0.42;
constexpr double kStemStrengthSpread = 0.30;
constexpr double kProxyStrengthSpread = 0.15;
constexpr double kLeafSpread = 0.41;
constexpr double kLeafIntoDrag = 0.5;
constexpr double kDragSpread = 0.30;
constexpr double kWindSpread = 0.10;

double diameterSpread(Measured measured)
{
    switch (measured) {
    case Measured::taped:
        return 0.02;
    case Measured::sighted:
        return 0.10;
    case Measured::guessed:
        break;
    }
    return 0.20;
}

/// How the wind force on a limb grows with the gust: drag law of its leaves at their mean height,
/// bare wood with the square of the speed.
class WindLaw {
public:
    WindLaw(DragGroup group, double gustShareThere, double leafPart)
        : group_(group), share_(gustShareThere), leafPart_(leafPart)
    {
        for (std::size_t i = 0; i < kSteps; ++i)
            force_[i] = force(gust(i));
    }
    /// Force over that of the reference gust.
    [[nodiscard]] double force(double gust_m_s) const
    {
        const double square = gust_m_s * gust_m_s / (kReferenceGust_m_s * kReferenceGust_m_s);
        const double coefficient = crownDragCoefficient(group_, gust_m_s * share_) /
                                   crownDragCoefficient(group_, kReferenceGust_m_s * share_);
        return square * (leafPart_ * coefficient + 1.0 - leafPart_);
    }
    /// The gust that gives this force.
    [[nodiscard]] double gustFor(double times) const
    {
        const auto above = std::ranges::upper_bound(force_, times);
        if (above == force_.begin())
            return gust(0) * std::sqrt(times / force_.front());
        if (above == force_.end())
            return 2.0 * kGreatestGust_m_s;
        const auto i = static_cast<std::size_t>(above - force_.begin());
        const double t = (times - force_[i - 1]) / (force_[i] - force_[i - 1]);
        return gust(i - 1) + t * (gust(i) - gust(i - 1));
    }

private:
    static constexpr std::size_t kSteps = 120;
    [[nodiscard]] static double gust(std::size_t i) { return static_cast<double>(i + 1); }
    DragGroup group_;
    double share_;
    double leafPart_;
    std::array<double, kSteps> force_{};
};

/// The part of the drag on a limb and on all that grows from it that leaves take.
std::vector<double> leafParts(const LoadCase& load)
{
    std::vector<double> leaf(load.limbs.size(), 0.0);
    std::vector<double> all(load.limbs.size(), 0.0);
    for (auto limb = load.order.rootFirst.rbegin(); limb != load.order.rootFirst.rend(); ++limb) {
        for (std::size_t i = 0; i < load.limbs[*limb].pieces.size(); ++i)
            for (const double force : load.wind.pieces[*limb][i].force_N) {
                all[*limb] += force;
                leaf[*limb] += load.limbs[*limb].pieces[i].bare() ? 0.0 : force;
            }
        if (const auto parent = load.order.parent[*limb]; parent != kNoLimb) {
            all[parent] += all[*limb];
            leaf[parent] += leaf[*limb];
        }
    }
    for (std::size_t i = 0; i < leaf.size(); ++i)
        leaf[i] = all[i] > 0.0 ? leaf[i] / all[i] : 0.0;
    return leaf;
}

WindLaw windLaw(const LoadCase& load, std::size_t limb, DragGroup group, Exposure exposure,
                double leafPart)
{
    const auto& drag = load.drags[limb];
    double force = 0.0;
    double height = 0.0;
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        force += drag.force_N[i];
        height += drag.up_Nm[i];
    }
    return {group, gustShare(exposure, force > 0.0 ? height / force : 0.0), leafPart};
}

using Points = std::vector<std::array<double, kUnknowns>>; ///< standard normal deviates

Points normalPoints(std::size_t samples)
{
    const auto uniform = sobolPoints(samples, kUnknowns);
    Points points(samples);
    for (std::size_t i = 0; i < samples; ++i)
        for (std::size_t j = 0; j < kUnknowns; ++j)
            points[i][j] = normalQuantile(uniform[i * kUnknowns + j]);
    return points;
}

struct Spreads {
    double strength{};
    double diameter{};
    friend auto operator<=>(const Spreads&, const Spreads&) = default;
};

Draw drawn(const std::array<double, kUnknowns>& point, const Spreads& spreads)
{
    const double leaf = kLeafSpread * point[2];
    return {std::exp(spreads.strength * point[0]), std::exp(spreads.diameter * point[1]),
            std::exp(leaf), std::exp(kLeafIntoDrag * leaf + kDragSpread * point[3]),
            std::exp(kWindSpread * point[4])};
}

double percentile(const std::vector<double>& sorted, double share)
{
    const double at = share * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(at);
    const auto above = std::min(below + 1, sorted.size() - 1);
    return std::lerp(sorted[below], sorted[above], at - static_cast<double>(below));
}

/// Share of the variance of ln(gust) that goes along with each unknown: its squared correlation.
std::array<double, kUnknowns> shares(const std::vector<double>& gusts, const Points& points)
{
    constexpr double kLeast_m_s = 1.0;
    std::array<double, kUnknowns> share{};
    std::vector<double> logs;
    logs.reserve(gusts.size());
    double mean = 0.0;
    for (const double gust : gusts) {
        logs.push_back(std::log(std::max(gust, kLeast_m_s)));
        mean += logs.back() / static_cast<double>(gusts.size());
    }
    for (std::size_t i = 0; i < gusts.size(); ++i)
        for (std::size_t j = 0; j < kUnknowns; ++j)
            share[j] += (logs[i] - mean) * points[i][j];
    double sum = 0.0;
    for (double& each : share)
        sum += each *= each;
    for (double& each : share)
        each = sum > 0.0 ? each / sum : 0.0;
    return share;
}

/// The places where a limb may break, weakest in some wind of the ladder.
std::vector<WeakPlace> weakPlaces(const LoadCase& load, std::size_t limb, const WindLaw& law,
                                  const std::vector<Weights>& ofLimbs, bool& hasStrength)
{
    std::vector<WeakPlace> places;
    std::vector<double> bearable;
    for (const double gust : kLadder_m_s) {
        const double scale = law.force(gust);
        const auto worst = governing(load, limb, scale);
        hasStrength = hasStrength && worst.hasStrength;
        places.emplace_back(load, limb, worst, scale, ofLimbs);
        bearable.push_back(places.back().bearableWind({}));
    }
    const double weakest = *std::ranges::min_element(bearable);
    std::vector<WeakPlace> kept;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto like = [&](const WeakPlace& other) { return other.isLike(places[i]); };
        if (bearable[i] <= kFarStronger * weakest && std::ranges::none_of(kept, like))
            kept.push_back(places[i]);
    }
    return kept;
}

/// The gust that breaks the weakest of these places under one draw.
double breakingGust_m_s(const std::vector<WeakPlace>& places, const WindLaw& law, const Draw& draw)
{
    double times = HUGE_VAL;
    for (const auto& place : places)
        times = std::min(times, place.bearableWind(draw));
    return std::min(kGreatestGust_m_s, law.gustFor(times / draw.drag) / draw.wind);
}

BreakingGust range(const std::vector<WeakPlace>& places, const WindLaw& law, const Points& points,
                   const std::vector<Draw>& draws)
{
    const bool guests = std::ranges::any_of(places, &WeakPlace::carriesGuests);
    std::vector<WeakPlace> bare;
    for (const auto& place : places)
        bare.push_back(place.withoutGuests());
    std::vector<double> gusts;
    Points kept;
    for (std::size_t i = 0; i < draws.size(); ++i) {
        const double gust = breakingGust_m_s(places, law, draws[i]);
        const double stands = guests ? breakingGust_m_s(bare, law, draws[i]) : gust;
        if (stands < kStoodThrough_m_s)
            continue;
        gusts.push_back(gust);
        kept.push_back(points[i]);
    }
    const double stood = static_cast<double>(gusts.size()) / static_cast<double>(points.size());
    if (stood < kLeastStanding) { // nothing stands as it was drawn: then every draw counts
        gusts.clear();
        for (const auto& draw : draws)
            gusts.push_back(breakingGust_m_s(places, law, draw));
        kept = points;
    }
    BreakingGust result;
    result.stood = stood;
    result.share = shares(gusts, kept);
    std::ranges::sort(gusts);
    result.p10_m_s = percentile(gusts, 0.1);
    result.p50_m_s = percentile(gusts, 0.5);
    result.p90_m_s = percentile(gusts, 0.9);
    return result;
}

} // namespace

Unknown worthMeasuring(const BreakingGust& gust)
{
    const auto share = [&gust](Unknown what) { return gust.share[static_cast<std::size_t>(what)]; };
    return share(Unknown::diameter) >= share(Unknown::leaf) ? Unknown::diameter : Unknown::leaf;
}

std::vector<BreakingGust> breakingGusts(const Tree& tree, const Foliation& foliation,
                                        const Species& species, const Place& place,
                                        Exposure exposure, const Conditions& conditions,
                                        std::size_t samples)
{
    if (samples == 0)
        throw std::domain_error("breakingGusts: needs at least one sample");
    Conditions reference = conditions;
    reference.gust_m_s = kReferenceGust_m_s;
    const auto load = loadCase(tree, foliation, species, place, exposure, reference);
    const auto ofLimbs = weightsByKind(load);
    const auto leaf = leafParts(load);
    const auto points = normalPoints(samples);
    const auto evidence = species.wood.greenMor_Pa.evidence;
    const bool ownStrength = evidence == Evidence::found || evidence == Evidence::memory;
    std::map<Spreads, std::vector<Draw>> draws; // the same for all limbs that are known as well
    std::vector<BreakingGust> all;
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
        const auto law = windLaw(load, limb, species.wood.dragGroup, exposure, leaf[limb]);
        bool hasStrength = true;
        const auto places = weakPlaces(load, limb, law, ofLimbs, hasStrength);
        const double byLimb = tree.limbs[limb].parent ? kLimbStrengthSpread : kStemStrengthSpread;
        const Spreads spreads{std::hypot(byLimb, ownStrength ? 0.0 : kProxyStrengthSpread),
                              diameterSpread(tree.limbs[limb].measured)};
        auto& drawsHere = draws[spreads];
        if (drawsHere.empty())
            for (const auto& point : points)
                drawsHere.push_back(drawn(point, spreads));
        all.push_back(hasStrength ? range(places, law, points, drawsHere) : BreakingGust{});
        all.back().limb = limb;
        all.back().hasStrength = hasStrength;
    }
    return all;
}

} // namespace model::load
