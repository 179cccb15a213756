#include "model/sketch/first_tree.hpp"

#include "model/crown/leafy_bodies.hpp"
#include "model/geometry/angle.hpp"
#include "model/sketch/habit_shape.hpp"
#include "model/sketch/pipe_model.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace model::sketch {
namespace {

constexpr double kGoldenAngle_rad = 2.39996;
constexpr int kFits = 6; // rounds of drawing, each nearer to the measures
constexpr double kLeastLeaf_m = 0.08;
constexpr double kOffGround_m = 0.15; // of the lowest wood

/// Stretches on the measures that make the drawn crown come out as measured.
struct Stretch {
    double out{1.0};
    double top_m{}; ///< where the axis of the highest wood ends
};

class Sketch {
public:
    Sketch(const FirstMeasures& measures, const Stretch& stretch)
        : measures_(measures), shape_(habitShape(measures.habit)), top_m_(stretch.top_m),
          half_m_(0.5 * measures.spread_m * stretch.out)
    {
        drawStem();
        const int count = shape_.tiers > 0 ? shape_.tiers * shape_.perTier : shape_.scaffolds;
        for (int i = 0; i < count; ++i)
            drawScaffold(i, count);
    }

    [[nodiscard]] Tree take() { return std::move(tree_); }

private:
    [[nodiscard]] double depth_m() const { return top_m_ - measures_.lowestLimb_m; }
    [[nodiscard]] double atShare_m(double share) const
    {
        return measures_.lowestLimb_m + share * depth_m();
    }
    [[nodiscard]] double leafRadius_m(double reachShare) const
    {
        return std::max(kLeastLeaf_m, shape_.leaf * measures_.spread_m * (0.5 + 0.5 * reachShare));
    }

    void drawStem()
    {
        Limb stem;
        stem.id = "stem";
        stem.measured = Measured::guessed;
        const double breast = std::min(kBreastHeight_m, measures_.lowestLimb_m);
        const double top = atShare_m(shape_.stemTop);
        std::vector<double> heights{0.0, breast};
        if (measures_.lowestLimb_m > breast + 0.1)
            heights.push_back(measures_.lowestLimb_m);
        constexpr int kInCrown = 5;
        for (int i = 1; i <= kInCrown; ++i)
            heights.push_back(measures_.lowestLimb_m +
                              (top - measures_.lowestLimb_m) * i / kInCrown);
        for (const double height : heights)
            stem.stations.push_back({{0.0, 0.0, height}, 1.0});
        if (shape_.leader > 0.0) {
            stem.foliage.emplace();
            stem.foliage->from_m = top - shape_.leader * depth_m();
            stem.foliage->radius_m = leafRadius_m(0.0);
            stem.foliage->hanging_m = hanging_m(top);
        }
        tree_.limbs.push_back(std::move(stem));
    }

    [[nodiscard]] double hanging_m(double above_m) const
    {
        return std::clamp(shape_.hanging * measures_.height_m, 0.0,
                          std::max(0.0, above_m - leafRadius_m(1.0)));
    }

    [[nodiscard]] double bearing_rad(int i) const
    {
        if (measures_.habit == Habit::espalier)
            return radians(measures_.along_deg + 180.0 * (i % 2));
        if (shape_.tiers > 0) { // the limbs of a tier stand over the gaps of the one below
            const int tier = i / shape_.perTier;
            return 2.0 * std::numbers::pi * (i % shape_.perTier + 0.5 * (tier % 2)) /
                   shape_.perTier;
        }
        if (shape_.stemTop < 0.5) // a fork: evenly round
            return 2.0 * std::numbers::pi * i / shape_.scaffolds;
        return kGoldenAngle_rad * i;
    }

    [[nodiscard]] double share(int i, int count) const
    {
        const double step = shape_.tiers > 0 ? static_cast<double>(i / shape_.perTier) /
                                                   std::max(1, shape_.tiers - 1)
                                             : static_cast<double>(i) / std::max(1, count - 1);
        return shape_.highest * step;
    }

    void drawScaffold(int i, int count)
    {
        const double from = share(i, count);
        const double start_m = atShare_m(from);
        const double reachShare = shape_.reach(from);
        const double leaf_m = leafRadius_m(reachShare);
        const double out_m = std::max(0.1 * half_m_, half_m_ * reachShare - 0.5 * leaf_m);
        double tip_m = shape_.tipTo > 0.0 ? atShare_m(shape_.tipTo - (i % 2) * shape_.tipStagger)
                                          : start_m + shape_.rise * out_m;
        tip_m = std::clamp(tip_m, std::min(start_m, kOffGround_m + 0.5 * leaf_m), top_m_);
        const Vec3 outwards = level(bearing_rad(i));
        const Vec3 start{0.0, 0.0, start_m};
        const Vec3 tip = start + out_m * outwards + Vec3{0.0, 0.0, tip_m - start_m};
        const Vec3 bow =
            start + shape_.bowOut * out_m * outwards +
            Vec3{0.0, 0.0, shape_.bowUp * std::max(tip_m - start_m, shape_.arch * out_m)};
        const std::string id = "limb-" + std::to_string(i + 1);
        const auto scaffold = add(id, 0, start_m, curve(start, bow, tip, 4), 0.3, leaf_m);
        drawLaterals(scaffold, out_m, bearing_rad(i), leaf_m);
    }

    void drawLaterals(std::size_t scaffold, double out_m, double bearing, double leaf_m)
    {
        for (int j = 0; j < shape_.laterals; ++j) {
            const Limb parent = tree_.limbs[scaffold];
            const double length = model::length_m(parent);
            const double at = length * (0.42 + 0.22 * j);
            const double side = (j % 2 == 0 ? -1.0 : 1.0) * 0.95;
            const double run = length * (0.42 - 0.06 * j);
            const Vec3 start = axisPoint(parent, at).position_m;
            const double out = std::min(run, 0.9 * out_m);
            Vec3 tip = start + out * level(bearing + side);
            tip.z = std::clamp(start.z + shape_.lateralRise * run,
                               std::min(start.z, kOffGround_m + 0.5 * leaf_m), top_m_);
            const Vec3 bow = between(start, tip, 0.5) + Vec3{0.0, 0.0, shape_.lateralBow * run};
            const auto id = parent.id + '-' + static_cast<char>('a' + j);
            add(id, scaffold, at, curve(start, bow, tip, 3), 0.25, 0.9 * leaf_m);
        }
    }

    [[nodiscard]] static Vec3 level(double bearing_rad)
    {
        return {std::sin(bearing_rad), std::cos(bearing_rad), 0.0};
    }

    /// A quadratic curve that starts towards `bow`.
    [[nodiscard]] static std::vector<Vec3> curve(Vec3 from, Vec3 bow, Vec3 to, int stations)
    {
        std::vector<Vec3> points;
        for (int i = 0; i < stations; ++i) {
            const double t = static_cast<double>(i) / (stations - 1);
            points.push_back(between(between(from, bow, t), between(bow, to, t), t));
        }
        return points;
    }

    std::size_t add(const std::string& id, std::size_t parent, double at_m,
                    const std::vector<Vec3>& points, double leafFrom, double leaf_m)
    {
        Limb limb;
        limb.id = id;
        limb.parent = tree_.limbs[parent].id;
        limb.attachedAt_m = at_m;
        limb.measured = Measured::guessed;
        for (const auto point : points)
            limb.stations.push_back({{point.x, point.y, std::max(point.z, 0.05)}, 1.0});
        limb.foliage.emplace();
        limb.foliage->from_m = leafFrom * model::length_m(limb);
        limb.foliage->radius_m = leaf_m;
        limb.foliage->hanging_m = hanging_m(limb.stations.back().position_m.z);
        tree_.limbs.push_back(std::move(limb));
        return tree_.limbs.size() - 1;
    }

    const FirstMeasures& measures_;
    HabitShape shape_;
    double top_m_;
    double half_m_;
    Tree tree_;
};

/// Width of the crown on plan, seen along a level direction, m.
double width_m(const std::vector<LeafyBody>& bodies, Vec3 across)
{
    double least = 0.0;
    double most = 0.0;
    for (const auto& body : bodies)
        for (const auto end : {body.solid.a, body.solid.b}) {
            least = std::min(least, dot(end, across) - body.solid.radius_m);
            most = std::max(most, dot(end, across) + body.solid.radius_m);
        }
    return most - least;
}

double spread_m(const Tree& tree, const FirstMeasures& measures)
{
    const auto bodies = leafyBodies(tree);
    if (measures.habit == Habit::espalier)
        return width_m(bodies, bearingDirection(measures.along_deg));
    constexpr int kDirections = 12;
    double sum = 0.0;
    for (int i = 0; i < kDirections; ++i)
        sum += width_m(bodies, bearingDirection(180.0 * i / kDirections));
    return sum / kDirections;
}

} // namespace

std::optional<MeasureFault> measureFault(const FirstMeasures& m)
{
    const auto within = [](double value, double least, double most) {
        return value >= least && value <= most; // false for what is no number
    };
    if (!within(m.stemDiameter_m, 0.01, 4.0))
        return MeasureFault::stem;
    if (!within(m.height_m, 0.8, 80.0))
        return MeasureFault::height;
    if (!within(m.spread_m, 0.4, 50.0))
        return MeasureFault::spread;
    if (!within(m.lowestLimb_m, 0.1, 0.8 * m.height_m))
        return MeasureFault::lowestLimb;
    if (m.height_m > 200.0 * m.stemDiameter_m)
        return MeasureFault::slender;
    return std::nullopt;
}

Tree firstTree(const FirstMeasures& measures)
{
    if (measureFault(measures))
        throw std::domain_error("firstTree: measures that no tree has");
    Stretch stretch{1.0, 0.9 * measures.height_m + 0.1 * measures.lowestLimb_m};
    const double lowestTop_m = measures.lowestLimb_m + 0.1 * measures.height_m;
    Tree tree;
    for (int round = 0; round < kFits; ++round) {
        tree = Sketch(measures, stretch).take();
        stretch.out *= std::clamp(measures.spread_m / spread_m(tree, measures), 0.5, 2.0);
        stretch.top_m = std::max(lowestTop_m, stretch.top_m + measures.height_m - height_m(tree));
    }
    thickenByLeaf(tree, measures.stemDiameter_m);
    return tree;
}

} // namespace model::sketch
