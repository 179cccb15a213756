#include "model/advice/piecework.hpp"

#include "model/advice/drop_zone.hpp"
#include "model/advice/limb_part.hpp"
#include "model/advice/limits.hpp"
#include "model/advice/prune.hpp"
#include "model/crown/mass.hpp"
#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace model::advice {
namespace {

/// A butt shorter than this is not sawn off by itself for its length.
constexpr double kShortestLength_m = 0.3;

/// Wood, leaf and crop that hang together beyond a place and have not been sawn off yet.
struct Load {
    double mass_kg{};
    double length_m{}; ///< along the wood to the farthest tip
    Vec3 tip_m{};
    double logs_m3{};
    double logs_kg{};
};

void join(Load& load, const Load& other)
{
    if (other.length_m > load.length_m) {
        load.length_m = other.length_m;
        load.tip_m = other.tip_m;
    }
    load.mass_kg += other.mass_kg;
    load.logs_m3 += other.logs_m3;
    load.logs_kg += other.logs_kg;
}

Piece sawnOff(const Limb& limb, double at_m, const Load& load)
{
    const auto place = axisPoint(limb, at_m);
    const Vec3 run = load.tip_m - place.position_m;
    Piece piece;
    piece.limb = limb.id;
    piece.at_m = at_m;
    piece.cut_m = place.position_m;
    piece.diameter_m = place.diameter_m;
    piece.length_m = load.length_m;
    piece.slope_deg = degrees(std::atan2(run.z, std::hypot(run.x, run.y)));
    piece.mass_kg = load.mass_kg;
    piece.logs_m3 = load.logs_m3;
    piece.logs_kg = load.logs_kg;
    piece.tool = toolFor(piece.diameter_m, piece.cut_m.z);
    piece.threeCuts = piece.diameter_m > kThreeCuts_m;
    piece.dropRadius_m = dropRadius_m({piece.length_m, piece.cut_m.z, piece.slope_deg});
    return piece;
}

/// Walks the wood from the tips inwards and saws off what has become enough to carry.
class Sawyer {
public:
    Sawyer(const Tree& tree, const Foliation& foliation, const Species& species)
        : tree_(tree), foliation_(foliation), species_(species), order_(limbOrder(tree))
    {
    }

    std::vector<Piece> takeOff(std::size_t limb, double from_m)
    {
        pieces_.push_back(sawnOff(tree_.limbs[limb], from_m, inwards(limb, from_m)));
        return std::move(pieces_);
    }

private:
    /// Saws all but what still hangs on the limb at `from_m`, and gives that.
    Load inwards(std::size_t index, double from_m)
    {
        const auto& limb = tree_.limbs[index];
        const double whole_m = length_m(limb) - from_m;
        const double longest_m =
            whole_m / std::max(1.0, std::ceil(whole_m / kPieceLength_m - 1e-9));
        const auto count = std::max(1, static_cast<int>(std::ceil(whole_m / kStep_m)));
        const double step_m = whole_m / count;
        Load load;
        load.tip_m = limb.stations.back().position_m;
        auto child = order_.children[index].rbegin();
        for (int i = count - 1; i >= 0; --i) {
            const double inner_m = from_m + step_m * i;
            const auto own = stretchLoad(limb, inner_m, inner_m + step_m);
            const bool tooLong = load.length_m + step_m > longest_m + 1e-9 &&
                                 inner_m + step_m - from_m >= kShortestLength_m;
            considerSaw(limb, inner_m + step_m, load, own.mass_kg, tooLong);
            load.mass_kg += own.mass_kg;
            load.logs_m3 += own.logs_m3;
            load.logs_kg += own.logs_kg;
            load.length_m += step_m;
            for (; child != order_.children[index].rend() && belongs(*child, inner_m, from_m);
                 ++child)
                addLateral(limb, *child, inner_m + step_m, load);
        }
        return load;
    }

    [[nodiscard]] bool belongs(std::size_t child, double inner_m, double from_m) const
    {
        const double at_m = tree_.limbs[child].attachedAt_m;
        // A lateral at the very place of a reduction takes over and stays.
        return at_m > inner_m + kSamePlace_m || (inner_m <= from_m && from_m <= 0.0);
    }

    /// A lateral comes off by itself if it and what hangs beyond it are too much together.
    void addLateral(const Limb& parent, std::size_t child, double outer_m, Load& load)
    {
        const auto& lateral = tree_.limbs[child];
        Load hanging = inwards(child, 0.0);
        const bool heavy = load.mass_kg + hanging.mass_kg > kHeavyPiece_kg;
        if (heavy && hanging.mass_kg >= load.mass_kg && withinReach(lateral, 0.0)) {
            pieces_.push_back(sawnOff(lateral, 0.0, hanging));
            return;
        }
        if (heavy && withinReach(parent, outer_m) && load.mass_kg > 0.0) {
            pieces_.push_back(sawnOff(parent, outer_m, load));
            load = Load{};
            load.tip_m = hanging.tip_m;
        }
        join(load, hanging);
    }

    void considerSaw(const Limb& limb, double at_m, Load& load, double next_kg, bool tooLong)
    {
        const bool tooHeavy = load.mass_kg + next_kg > kHeavyPiece_kg;
        if ((!tooHeavy && !tooLong) || load.mass_kg <= 0.0 || !withinReach(limb, at_m))
            return;
        pieces_.push_back(sawnOff(limb, at_m, load));
        load = Load{};
        load.tip_m = axisPoint(limb, at_m).position_m;
    }

    static bool withinReach(const Limb& limb, double at_m)
    {
        return axisPoint(limb, at_m).position_m.z <= kPoleSawReach_m;
    }

    [[nodiscard]] Load stretchLoad(const Limb& limb, double from_m, double to_m) const
    {
        Tree alone;
        alone.limbs = {limbPart(limb, from_m, to_m)};
        alone.limbs.front().fruit_kg = limb.fruit_kg * cropShare(limb, from_m, to_m);
        const auto mass = limbMasses(alone, foliation_, species_).front();
        Load load;
        load.mass_kg = mass.total_kg();
        if (axisPoint(limb, from_m).diameter_m >= kLog_m) {
            load.logs_kg = mass.wood_kg;
            load.logs_m3 = woodVolume_m3(alone.limbs.front());
        }
        return load;
    }

    /// The crop hangs evenly along the leafy part.
    static double cropShare(const Limb& limb, double from_m, double to_m)
    {
        const double start_m = limb.foliage ? limb.foliage->from_m : 0.0;
        const double leafy_m = length_m(limb) - start_m;
        return leafy_m > 0.0 ? std::max(0.0, to_m - std::max(from_m, start_m)) / leafy_m : 0.0;
    }

    static constexpr double kStep_m = 0.1;
    static constexpr double kSamePlace_m = 1e-6;

    const Tree& tree_;
    const Foliation& foliation_;
    const Species& species_;
    LimbOrder order_;
    std::vector<Piece> pieces_;
};

double treeMass_kg(const Tree& tree, const Foliation& foliation, const Species& species)
{
    const auto masses = limbMasses(tree, foliation, species);
    return std::accumulate(masses.begin(), masses.end(), 0.0,
                           [](double sum, const LimbMass& m) { return sum + m.total_kg(); });
}

/// Shoots fall where they hang: the zone is what the limb's leaf covers on plan, and a shoot's
/// length around it.
Piece shoots(const Tree& tree, const Cut& cut, const Foliation& foliation, const Species& species)
{
    const auto& limb = tree.limbs[limbIndex(tree, cut.limb)];
    const double from_m = limb.foliage ? limb.foliage->from_m : 0.0;
    const auto middle = axisPoint(limb, (from_m + length_m(limb)) / 2.0);
    Piece piece;
    piece.limb = limb.id;
    piece.at_m = (from_m + length_m(limb)) / 2.0;
    piece.cut_m = middle.position_m;
    piece.length_m = shootLength_m(tree, cut);
    piece.slope_deg = -90.0;
    piece.mass_kg = treeMass_kg(tree, foliation, species) -
                    treeMass_kg(afterCut(tree, cut), foliation, species);
    piece.cut_m.z = shootHeight_m(tree, cut);
    piece.tool = toolFor(0.0, piece.cut_m.z);
    for (const double end_m : {from_m, length_m(limb)})
        piece.dropRadius_m =
            std::max(piece.dropRadius_m,
                     norm(plan(axisPoint(limb, end_m).position_m) - plan(middle.position_m)));
    piece.dropRadius_m += limb.foliage ? limb.foliage->radius_m : 0.0;
    return piece;
}

} // namespace

double shootLength_m(const Tree& tree, const Cut& cut)
{
    const auto limb = limbIndex(tree, cut.limb);
    double longest_m = 0.0;
    if (cut.kind != CutKind::lifting)
        return longest_m;
    for (const auto& body : leafyBodies(tree))
        if (body.limb == limb)
            longest_m = std::max(longest_m, cut.height_m.value_or(0.0) - lowestPoint(body.solid).z);
    return longest_m;
}

double shootHeight_m(const Tree& tree, const Cut& cut)
{
    if (cut.kind == CutKind::lifting)
        return cut.height_m.value_or(0.0);
    const auto& limb = tree.limbs[limbIndex(tree, cut.limb)];
    double highest_m = 0.0;
    for (const auto& station :
         stretch(limb, limb.foliage ? limb.foliage->from_m : 0.0, length_m(limb)))
        highest_m = std::max(highest_m, station.position_m.z);
    return highest_m;
}

std::vector<Piece> pieces(const Tree& tree, const Cut& cut, const Foliation& foliation,
                          const Species& species)
{
    if (cut.kind != CutKind::removal && cut.kind != CutKind::reduction)
        return {shoots(tree, cut, foliation, species)};
    return Sawyer(tree, foliation, species)
        .takeOff(limbIndex(tree, cut.limb), cut.kind == CutKind::reduction ? cut.at_m : 0.0);
}

} // namespace model::advice
