#include "model/load/pieces.hpp"

#include "model/crown/mass.hpp"
#include "model/load/strength.hpp"
#include "model/load/weather.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

namespace model::load {
namespace {

constexpr double kSamePlace_m = 1e-6;
constexpr double kPiecesPerLimb = 16.0;

/// Below this share of the solid section modulus, what is left of a section is not wood to rely on.
constexpr double kLeastSection = 1e-3;

/// Where a limb's load, diameter or strength changes course, base first.
std::vector<double> changesOfCourse(const Tree& tree, const LimbOrder& order, std::size_t index,
                                    std::span<const LeafyBody> bodies)
{
    const auto& limb = tree.limbs[index];
    std::vector<double> places{0.0};
    for (std::size_t s = 1; s < limb.stations.size(); ++s)
        places.push_back(places.back() +
                         norm(limb.stations[s].position_m - limb.stations[s - 1].position_m));
    const double length = places.back();
    const auto add = [&](double at) { places.push_back(std::clamp(at, 0.0, length)); };
    for (const auto child : order.children[index])
        add(tree.limbs[child].attachedAt_m);
    for (const auto& body : bodies)
        add(body.from_m);
    for (const auto& defect : limb.defects)
        add(defect.at_m);
    for (const auto& prop : limb.props)
        add(prop.at_m);
    add(unionZone_m(limb));
    std::ranges::sort(places);
    std::vector<double> apart{0.0};
    for (const double place : places)
        if (place > apart.back() + kSamePlace_m && place < length - kSamePlace_m)
            apart.push_back(place);
    apart.push_back(length);
    return apart;
}

/// More places between, so that none is further from the next than a share of the whole.
std::vector<double> closeTogether(const std::vector<double>& places)
{
    const double most = places.back() / kPiecesPerLimb;
    std::vector<double> close{places.front()};
    for (std::size_t i = 1; i < places.size(); ++i) {
        const double gap = places[i] - places[i - 1];
        const double steps = std::ceil(gap / most - 1e-9);
        for (double step = 1.0; step < steps; step += 1.0)
            close.push_back(places[i - 1] + gap * step / steps);
        close.push_back(places[i]);
    }
    return close;
}

/// Walks a limb's axis from base to tip; asked for places in rising order.
class AxisWalk {
public:
    explicit AxisWalk(const Limb& limb) : stations_(limb.stations) { measure(); }
    Station at(double at_m)
    {
        while (at_m > passed_ + length_ && next_ + 1 < stations_.size()) {
            passed_ += length_;
            ++next_;
            measure();
        }
        const auto& from = stations_[next_ - 1];
        const auto& to = stations_[next_];
        const double t = length_ > 0.0 ? std::clamp((at_m - passed_) / length_, 0.0, 1.0) : 0.0;
        return {between(from.position_m, to.position_m, t),
                from.diameter_m + t * (to.diameter_m - from.diameter_m),
                {}};
    }

private:
    void measure()
    {
        length_ = norm(stations_[next_].position_m - stations_[next_ - 1].position_m);
    }
    const std::vector<Station>& stations_;
    std::size_t next_{1};
    double passed_{};
    double length_{};
};

std::vector<Piece> barePieces(const Limb& limb, const std::vector<double>& places)
{
    std::vector<Piece> pieces;
    pieces.reserve(places.size() - 1);
    AxisWalk walk(limb);
    Station from = walk.at(0.0);
    for (std::size_t i = 1; i < places.size(); ++i) {
        const Station to = walk.at(places[i]);
        const Vec3 run = to.position_m - from.position_m;
        const double length = norm(run);
        Piece piece;
        piece.at_m = places[i - 1];
        piece.length_m = length;
        piece.from_m = from.position_m;
        piece.direction = (1.0 / length) * run;
        piece.thick_m = from.diameter_m;
        piece.thin_m = to.diameter_m;
        pieces.push_back(piece);
        from = to;
    }
    return pieces;
}

/// What hangs on each m2 of leaf area.
struct PerLeafArea {
    double leafy_kg{};
    double rain_kg{};
    double ice_kg{};
};

PerLeafArea perLeafArea(const Species& species, const Foliation& foliation, bool inLeaf,
                        const Conditions& conditions)
{
    const auto dry = leafyMassPerArea(species);
    return {dry.twig_kg + (inLeaf ? dry.leaf_kg : 0.0),
            conditions.inRain ? rainPerLeafArea_kg_m2(species.wood.woodClass, inLeaf) : 0.0,
            glazePerLeafArea_kg_m2(species, foliation, inLeaf, conditions.glaze_m)};
}

void hangLeaf(std::vector<Piece>& pieces, std::span<const LeafyBody> bodies,
              const Foliation& foliation, const PerLeafArea& perArea)
{
    if (bodies.empty())
        return;
    const double leafyLength = bodies.back().to_m - bodies.front().from_m;
    std::size_t next = 0;
    for (auto& piece : pieces) {
        const double middle = piece.at_m + piece.length_m / 2.0;
        while (next + 1 < bodies.size() && middle > bodies[next].to_m)
            ++next;
        const auto& body = bodies[next];
        if (middle < body.from_m)
            continue;
        const double r = body.solid.radius_m;
        piece.radius_m = r;
        piece.hang_m = body.solid.hang_m;
        piece.density = body.density;
        piece.leaf_m2 = leafArea_m2(body, foliation) * piece.length_m / (body.to_m - body.from_m);
        piece.leafy_kg = piece.leaf_m2 * perArea.leafy_kg;
        piece.rain_kg = piece.leaf_m2 * perArea.rain_kg;
        piece.ice_kg = piece.leaf_m2 * perArea.ice_kg;
        piece.ends_m2 =
            (std::numbers::pi * r * r + 2.0 * r * body.solid.hang_m) * piece.length_m / leafyLength;
    }
}

void hangFruit(std::vector<Piece>& pieces, double fruit_kg)
{
    const bool leafy = std::ranges::any_of(pieces, [](const Piece& p) { return !p.bare(); });
    double length = 0.0;
    for (const auto& piece : pieces)
        length += leafy && piece.bare() ? 0.0 : piece.length_m;
    for (auto& piece : pieces)
        piece.fruit_kg = leafy && piece.bare() ? 0.0 : fruit_kg * piece.length_m / length;
}

void glaze(std::vector<Piece>& pieces, double glaze_m)
{
    for (auto& piece : pieces)
        piece.ice_kg +=
            piece.length_m * glazeOnBar_kg_m((piece.thick_m + piece.thin_m) / 2.0, glaze_m);
}

/// Nothing beyond such a place can be counted on.
bool isLostBeyond(DefectKind kind)
{
    return kind == DefectKind::dead || kind == DefectKind::broken;
}

void weaken(Piece& piece, const Defect& defect)
{
    const Section left = sectionAt(defect, piece.thick_m);
    if (left.bending_m3 < piece.section.bending_m3)
        piece.section = left;
}

void giveStrength(std::vector<Piece>& pieces, const Limb& limb, double atUnion, bool onDeadWood)
{
    const double zone = unionZone_m(limb);
    const double sound = limb.parent ? kLimbFactor : kStemFactor;
    for (auto& piece : pieces) {
        piece.section = solidSection(piece.thick_m);
        const auto factor = [&](double at) { return at <= zone ? sound * atUnion : sound; };
        piece.factorAtStart = factor(piece.at_m - kSamePlace_m);
        piece.factorWithin = factor(piece.at_m + piece.length_m / 2.0);
        piece.hasStrength = !onDeadWood;
        for (const auto& defect : limb.defects) {
            const double beyond = piece.at_m - defect.at_m;
            const bool here = std::abs(beyond) <= kSamePlace_m;
            if (here)
                weaken(piece, defect);
            if (here || (isLostBeyond(defect.kind) && beyond > 0.0))
                piece.hasStrength = piece.hasStrength && leavesStrength(defect.kind);
        }
        const Section solid = solidSection(piece.thick_m);
        if (piece.section.bending_m3 < kLeastSection * solid.bending_m3) {
            piece.section = solid;
            piece.hasStrength = false;
        }
    }
}

std::vector<std::size_t> joints(const Tree& tree, const std::vector<std::size_t>& children,
                                const std::vector<Piece>& pieces)
{
    std::vector<std::size_t> found;
    for (const auto child : children) {
        const double at = tree.limbs[child].attachedAt_m - kSamePlace_m;
        const double tip = pieces.back().at_m + pieces.back().length_m;
        const auto piece = std::ranges::lower_bound(pieces, at, {}, &Piece::at_m);
        const auto index = static_cast<std::size_t>(piece - pieces.begin());
        found.push_back(at >= tip - 2.0 * kSamePlace_m ? pieces.size() : index);
    }
    return found;
}

} // namespace

std::vector<bool> growsFromDeadWood(const Tree& tree, const LimbOrder& order)
{
    std::vector<bool> dead(tree.limbs.size(), false);
    for (const auto index : order.rootFirst) {
        const auto parent = order.parent[index];
        if (parent == kNoLimb)
            continue;
        dead[index] = dead[parent];
        for (const auto& defect : tree.limbs[parent].defects)
            if (isLostBeyond(defect.kind) &&
                tree.limbs[index].attachedAt_m >= defect.at_m - kSamePlace_m)
                dead[index] = true;
    }
    return dead;
}

void hangLeafOn(const Cutting& cutting, std::span<const LeafyBody> bodies, LimbPieces& cut)
{
    const auto dry = leafyMassPerArea(cutting.species);
    const auto& conditions = cutting.conditions;
    const bool inLeaf =
        conditions.inLeaf || cutting.species.practice.leafHabit == LeafHabit::evergreen;
    double leaf_m2 = 0.0;
    for (const auto& body : bodies)
        leaf_m2 += leafArea_m2(body, cutting.foliation);
    cut.leaf_kg = inLeaf ? leaf_m2 * dry.leaf_kg : 0.0;
    cut.twig_kg = leaf_m2 * dry.twig_kg;
    hangLeaf(cut.pieces, bodies, cutting.foliation,
             perLeafArea(cutting.species, cutting.foliation, inLeaf, conditions));
    cut.rain_kg = 0.0;
    for (const auto& piece : cut.pieces)
        cut.rain_kg += piece.rain_kg;
}

LimbPieces cutLimb(const Cutting& cutting, std::size_t limb, std::span<const LeafyBody> bodies,
                   double aspectRatio, bool onDeadWood)
{
    const auto& drawn = cutting.tree.limbs[limb];
    const auto& conditions = cutting.conditions;
    LimbPieces cut;
    cut.pieces = barePieces(
        drawn, closeTogether(changesOfCourse(cutting.tree, cutting.order, limb, bodies)));
    cut.joinsAt = joints(cutting.tree, cutting.order.children[limb], cut.pieces);
    cut.wood_kg = woodVolume_m3(drawn) * cutting.species.wood.limbDensity_kg_m3.value;
    cut.fruit_kg = conditions.inFruit ? drawn.fruit_kg : 0.0;
    hangLeafOn(cutting, bodies, cut);
    hangFruit(cut.pieces, cut.fruit_kg);
    glaze(cut.pieces, conditions.glaze_m);
    for (const auto& piece : cut.pieces)
        cut.ice_kg += piece.ice_kg;
    const double atUnion = drawn.parent ? unionFactor(drawn.unionKind, aspectRatio) : 1.0;
    giveStrength(cut.pieces, drawn, atUnion, onDeadWood);
    return cut;
}

Frustum frustum(double thick_m, double thin_m, double length_m)
{
    const double squares = thick_m * thick_m + thick_m * thin_m + thin_m * thin_m;
    return {std::numbers::pi / 12.0 * length_m * squares,
            length_m / 4.0 * (thick_m * thick_m + 2.0 * thick_m * thin_m + 3.0 * thin_m * thin_m) /
                squares};
}

} // namespace model::load
