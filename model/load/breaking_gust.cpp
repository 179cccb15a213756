#include "model/load/breaking_gust.hpp"

#include "model/load/drag.hpp"
#include "model/load/quasi_random.hpp"
#include "model/load/weak_place.hpp"
#include "model/load/wind.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace model::load {
namespace {

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
        perRoot_ = static_cast<double>(kHints) / std::sqrt(force_.back());
        for (std::size_t i = 0; i < kHints; ++i) {
            const double root = static_cast<double>(i) / perRoot_;
            const auto above = std::ranges::upper_bound(force_, root * root * (1.0 - 1e-12));
            hint_[i] = static_cast<std::size_t>(above - force_.begin());
        }
    }
    /// Force over that of the reference gust.
    [[nodiscard]] double force(double gust_m_s) const
    {
        const double square = gust_m_s * gust_m_s / (kReferenceGust_m_s * kReferenceGust_m_s);
        const double coefficient = crownDragCoefficient(group_, gust_m_s * share_) /
                                   crownDragCoefficient(group_, kReferenceGust_m_s * share_);
        return square * (leafPart_ * coefficient + 1.0 - leafPart_);
    }
    /// How fast that grows with the gust, s/m.
    [[nodiscard]] double slope(double gust_m_s) const
    {
        constexpr double kStep_m_s = 0.01;
        return (force(gust_m_s + kStep_m_s) - force(gust_m_s - kStep_m_s)) / (2.0 * kStep_m_s);
    }
    /// The gust that gives this force.
    [[nodiscard]] double gustFor(double times) const
    {
        if (times >= force_.back())
            return 2.0 * kGreatestGust_m_s;
        // Force goes about with the square of speed: its root says where in the table to start.
        std::size_t i = hint_[static_cast<std::size_t>(std::sqrt(times) * perRoot_)];
        while (force_[i] <= times)
            ++i;
        if (i == 0)
            return gust(0) * std::sqrt(times / force_.front());
        const double t = (times - force_[i - 1]) / (force_[i] - force_[i - 1]);
        return gust(i - 1) + t * (gust(i) - gust(i - 1));
    }

private:
    static constexpr std::size_t kSteps = 120;
    static constexpr std::size_t kHints = 256;
    [[nodiscard]] static double gust(std::size_t i) { return static_cast<double>(i + 1); }
    DragGroup group_;
    double share_;
    double leafPart_;
    std::array<double, kSteps> force_{};
    std::array<std::size_t, kHints + 1> hint_{}; ///< no force before it is above root^2
    double perRoot_{};
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

Draw drawn(const std::array<double, kUnknowns>& point, double strengthSpread, double diameterSpread)
{
    const double leaf = kLeafSpread * point[2];
    return {std::exp(strengthSpread * point[0]), std::exp(diameterSpread * point[1]),
            std::exp(leaf), std::exp(kLeafIntoDrag * leaf + kDragSpread * point[3]),
            std::exp(kWindSpread * point[4])};
}

/// \param gusts  in any order; their order changes
double percentile(std::vector<double>& gusts, double share)
{
    const double at = share * static_cast<double>(gusts.size() - 1);
    const auto below = gusts.begin() + static_cast<std::ptrdiff_t>(at);
    std::nth_element(gusts.begin(), below, gusts.end());
    const auto above = std::min_element(below + 1, gusts.end());
    return std::lerp(*below, above == gusts.end() ? *below : *above, at - std::floor(at));
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

/// A place where a limb may break.
struct Candidate {
    Governing at;
    WeakPlace place;
    double bearable{}; ///< times the reference wind, every unknown at its middle
};

/// The places that are weakest in the winds of the ladder.
std::vector<Candidate> candidates(const LoadCase& load, std::size_t limb, const WindLaw& law,
                                  const std::vector<Weights>& ofLimbs)
{
    std::vector<Candidate> found;
    for (const double gust : kLadder_m_s) {
        const double scale = law.force(gust);
        const auto worst = governing(load, limb, scale);
        const WeakPlace place(load, limb, worst, scale, ofLimbs);
        found.push_back({worst, place, place.bearableWind({})});
    }
    return found;
}

const Candidate& weakest(const std::vector<Candidate>& found)
{
    return *std::ranges::min_element(found, {}, &Candidate::bearable);
}

bool haveStrength(const std::vector<Candidate>& found)
{
    return std::ranges::all_of(found, [](const Candidate& c) { return c.at.hasStrength; });
}

/// Without those that are far stronger than the weakest, or much the same as another.
std::vector<WeakPlace> weakPlaces(const std::vector<Candidate>& found)
{
    std::vector<WeakPlace> kept;
    for (const auto& each : found) {
        const auto like = [&](const WeakPlace& other) { return other.isLike(each.place); };
        if (each.bearable <= kFarStronger * weakest(found).bearable &&
            std::ranges::none_of(kept, like))
            kept.push_back(each.place);
    }
    return kept;
}

/// The gusts that break the weakest of these places, one for each draw.
std::vector<double> breakingGusts_m_s(const std::vector<WeakPlace>& places, const WindLaw& law,
                                      const Draws& draws)
{
    std::vector<double> gusts(draws.size(), HUGE_VAL);
    for (const auto& place : places)
        place.lowerToBearable(draws, gusts);
    for (std::size_t i = 0; i < gusts.size(); ++i)
        gusts[i] =
            std::min(kGreatestGust_m_s, law.gustFor(gusts[i] / draws.drag[i]) / draws.wind[i]);
    return gusts;
}

/// The draws in which the limb stands through ordinary gusts without its guests.
std::vector<bool> standing(const std::vector<WeakPlace>& places, const WindLaw& law,
                           const Draws& draws, const std::vector<double>& gusts)
{
    std::vector<bool> stands(gusts.size());
    if (std::ranges::none_of(places, &WeakPlace::carriesGuests)) {
        for (std::size_t i = 0; i < gusts.size(); ++i)
            stands[i] = gusts[i] >= kStoodThrough_m_s;
        return stands;
    }
    std::vector<WeakPlace> bare;
    std::vector<WeakPlace> past;
    for (const auto& place : places) {
        bare.push_back(place.withoutGuests());
        past.push_back(place.withPastCrop());
    }
    const auto without = breakingGusts_m_s(bare, law, draws);
    const auto bore = breakingGusts_m_s(past, law, draws);
    for (std::size_t i = 0; i < gusts.size(); ++i)
        stands[i] = without[i] >= kStoodThrough_m_s && bore[i] > 0.0;
    return stands;
}

BreakingGust range(const std::vector<WeakPlace>& places, const WindLaw& law, const Points& points,
                   const Draws& draws)
{
    auto gusts = breakingGusts_m_s(places, law, draws);
    const auto stands = standing(places, law, draws, gusts);
    const auto standingCount = static_cast<std::size_t>(std::ranges::count(stands, true));
    BreakingGust result;
    result.stood = static_cast<double>(standingCount) / static_cast<double>(points.size());
    Points kept = points;
    if (result.stood >= kLeastStanding) { // else nothing stands as it was drawn: every draw counts
        std::size_t next = 0;
        for (std::size_t i = 0; i < gusts.size(); ++i) {
            if (!stands[i])
                continue;
            gusts[next] = gusts[i];
            kept[next++] = points[i];
        }
        gusts.resize(next);
        kept.resize(next);
    }
    result.share = shares(gusts, kept);
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

BreakingLimbs::BreakingLimbs(const Tree& tree, const LoadCase& load, const Species& species,
                             Exposure exposure)
    : tree_(&tree), load_(&load), dragGroup_(species.wood.dragGroup), exposure_(exposure),
      ofLimbs_(weightsByKind(load)), leafParts_(leafParts(load))
{
}

MiddleBreak BreakingLimbs::middle(std::size_t limb) const
{
    const auto law = windLaw(*load_, limb, dragGroup_, exposure_, leafParts_[limb]);
    const auto found = candidates(*load_, limb, law, ofLimbs_);
    const auto& first = weakest(found);
    MiddleBreak result;
    result.at = first.at;
    result.times = first.bearable;
    result.gust_m_s = law.gustFor(first.bearable);
    result.perGust = law.slope(result.gust_m_s);
    result.breaks =
        haveStrength(found) && result.times > 0.0 && result.gust_m_s <= kGreatestGust_m_s;
    return result;
}

GustRanges::GustRanges(const Species& species, std::size_t samples)
{
    if (samples == 0)
        throw std::domain_error("breakingGusts: needs at least one sample");
    const auto evidence = species.wood.greenMor_Pa.evidence;
    ownStrength_ = evidence == Evidence::found || evidence == Evidence::memory;
    const auto uniform = sobolPoints(samples, kUnknowns);
    points_.resize(samples);
    for (std::size_t i = 0; i < samples; ++i)
        for (std::size_t j = 0; j < kUnknowns; ++j)
            points_[i][j] = normalQuantile(uniform[i * kUnknowns + j]);
}

GustRanges::Spreads GustRanges::spreads(const Limb& limb) const
{
    const double byLimb = limb.parent ? kLimbStrengthSpread : kStemStrengthSpread;
    return {std::hypot(byLimb, ownStrength_ ? 0.0 : kProxyStrengthSpread),
            diameterSpread(limb.measured)};
}

const Draws& GustRanges::draws(const Spreads& spreads)
{
    auto& known = draws_[spreads];
    if (known.size() == 0)
        for (const auto& point : points_)
            known.add(drawn(point, spreads.strength, spreads.diameter));
    return known;
}

BreakingGust GustRanges::of(const BreakingLimbs& limbs, std::size_t limb)
{
    const auto law =
        windLaw(*limbs.load_, limb, limbs.dragGroup_, limbs.exposure_, limbs.leafParts_[limb]);
    const auto found = candidates(*limbs.load_, limb, law, limbs.ofLimbs_);
    BreakingGust result;
    if (haveStrength(found))
        result = range(weakPlaces(found), law, points_, draws(spreads(limbs.tree_->limbs[limb])));
    result.limb = limb;
    result.hasStrength = haveStrength(found);
    return result;
}

std::vector<BreakingGust> breakingGusts(const Tree& tree, const Foliation& foliation,
                                        const Species& species, const Place& place,
                                        Exposure exposure, const Conditions& conditions,
                                        std::size_t samples)
{
    GustRanges ranges(species, samples);
    Conditions reference = conditions;
    reference.gust_m_s = kReferenceGust_m_s;
    const auto load = loadCase(tree, foliation, species, place, exposure, reference);
    const BreakingLimbs limbs(tree, load, species, exposure);
    std::vector<BreakingGust> all;
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb)
        all.push_back(ranges.of(limbs, limb));
    return all;
}

} // namespace model::load
