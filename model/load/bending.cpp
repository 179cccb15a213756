#include "model/load/bending.hpp"

#include "model/constants.hpp"
#include "model/load/prop_push.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace model::load {
namespace {

constexpr int kMostRounds = 300;
constexpr double kSamePush = 0.002;
constexpr double kAtRest_m = 2e-4; // no tip has further to go

/// Second moment of area of a solid round bar.
double secondMoment_m4(double diameter_m)
{
    return std::numbers::pi / 64.0 * std::pow(diameter_m, 4);
}

/// What bears beyond a place: mass, and mass times level place.
struct Beyond3 {
    double mass_kg{};
    double east_kgm{};
    double north_kgm{};
    void add(double mass, Vec3 at)
    {
        mass_kg += mass;
        east_kgm += mass * at.x;
        north_kgm += mass * at.y;
    }
    void add(const Beyond3& other)
    {
        mass_kg += other.mass_kg;
        east_kgm += other.east_kgm;
        north_kgm += other.north_kgm;
    }
    [[nodiscard]] Vec3 momentAbout(Vec3 p) const
    {
        return {-kGravity_m_s2 * (north_kgm - p.y * mass_kg),
                kGravity_m_s2 * (east_kgm - p.x * mass_kg), 0.0}; // (L19)
    }
};

/// How far the moments at a piece's sections turn its halves, and what they turn by.
struct Turns {
    Vec3 inner_rad{};
    Vec3 outer_rad{};
};

BentShape::BentPiece asDrawn(const Piece& piece)
{
    const Vec3 run = piece.length_m * piece.direction;
    return {piece.from_m, piece.from_m + 0.5 * run, piece.from_m + run, {}, {}};
}

BentShape drawnShape(const ElasticTree& tree)
{
    BentShape shape;
    shape.push_N.assign(tree.props.size(), 0.0);
    for (const auto& cut : tree.limbs) {
        auto& bent = shape.limbs.emplace_back();
        bent.reserve(cut.pieces.size());
        for (const auto& piece : cut.pieces)
            bent.push_back(asDrawn(piece));
    }
    return shape;
}

/// A place along a bent piece: the parabola through its ends and middle.
Vec3 placeAlong(const BentShape::BentPiece& bent, double share)
{
    const double a = (1.0 - share) * (1.0 - 2.0 * share);
    const double b = 4.0 * share * (1.0 - share);
    const double c = share * (2.0 * share - 1.0);
    return a * bent.start_m + b * bent.middle_m + c * bent.end_m;
}

/// Moments of all that bears beyond the sections of every piece, about those sections.
TreeSections momentsIn(const ElasticTree& tree, const BentShape& shape, const TreeWeight& weight)
{
    TreeSections moments(tree.limbs.size());
    std::vector<Beyond3> ofLimbs(tree.limbs.size());
    for (auto limb = tree.order.rootFirst.rbegin(); limb != tree.order.rootFirst.rend(); ++limb) {
        const auto& cut = tree.limbs[*limb];
        const auto& children = tree.order.children[*limb];
        moments[*limb].resize(cut.pieces.size());
        auto& sum = ofLimbs[*limb];
        std::size_t left = children.size();
        const auto takeChildrenAt = [&](std::size_t piece) {
            for (; left > 0 && cut.joinsAt[left - 1] == piece; --left)
                sum.add(ofLimbs[children[left - 1]]);
        };
        takeChildrenAt(cut.pieces.size());
        for (std::size_t i = cut.pieces.size(); i-- > 0;) {
            const auto& bent = shape.limbs[*limb][i];
            const auto& own = weight[*limb][i];
            const double length = cut.pieces[i].length_m;
            for (std::size_t prop = 0; prop < tree.props.size(); ++prop)
                if (tree.props[prop].limb == *limb && tree.props[prop].piece == i)
                    sum.add(-shape.push_N[prop] / kGravity_m_s2, bent.end_m);
            moments[*limb][i][2] = sum.momentAbout(bent.end_m);
            sum.add(own.outer_kg, placeAlong(bent, own.outer_m / length));
            moments[*limb][i][1] = sum.momentAbout(bent.middle_m);
            sum.add(own.inner_kg, placeAlong(bent, own.inner_m / length));
            moments[*limb][i][0] = sum.momentAbout(bent.start_m);
            takeChildrenAt(i);
        }
    }
    return moments;
}

/// How much of the way to the shape that its load asks for a limb goes in one round. A limb that
/// swings about its rest is to go less than all of it, one that creeps up to it more: Aitken's rule
/// reads that off what was missing one round ago and now.
struct Following {
    double share{1.0};
    std::vector<Turns> missed;

    void learn(const std::vector<Turns>& missing)
    {
        constexpr double kLeast = 0.02;
        constexpr double kMost = 2.0;
        double across = 0.0;
        double square = 0.0;
        for (std::size_t i = 0; i < missed.size(); ++i)
            for (const auto part : {&Turns::inner_rad, &Turns::outer_rad}) {
                const Vec3 change = missing[i].*part - missed[i].*part;
                across += dot(missed[i].*part, change);
                square += dot(change, change);
            }
        if (square > 0.0)
            share = std::clamp(-share * across / square, kLeast, kMost);
        missed = missing;
    }
};

/// Bends a tree step by step until weight and stiffness are even.
class Bending {
public:
    Bending(const ElasticTree& tree, const TreeWeight& drawn, const TreeWeight& now)
        : tree_(tree), now_(now), shape_(drawnShape(tree)), turns_(tree.limbs.size()),
          following_(tree.limbs.size())
    {
        drawnMoments_ = momentsIn(tree, shape_, drawn);
        for (std::size_t i = 0; i < turns_.size(); ++i)
            turns_[i].resize(tree.limbs[i].pieces.size());
        if (!tree.props.empty())
            give_ = propGive(tree);
    }

    BentShape run()
    {
        for (int round = 0; round < kMostRounds; ++round) {
            const double missing_m = turnTowards(momentsIn(tree_, shape_, now_));
            place();
            if (missing_m < kAtRest_m && !pushProps())
                return std::move(shape_);
        }
        shape_.settled = false;
        return std::move(shape_);
    }

private:
    double turnTowards(const TreeSections& moments);
    [[nodiscard]] std::vector<Turns> missing(std::size_t limb,
                                             const std::vector<Sections>& moments) const;
    void place();
    bool pushProps();

    const ElasticTree& tree_;
    const TreeWeight& now_;
    BentShape shape_;
    TreeSections drawnMoments_;
    std::vector<std::vector<Turns>> turns_;
    std::vector<Following> following_;      ///< of each limb
    std::vector<std::vector<double>> give_; ///< rise of each prop's place by 1 N at each other's
};

/// What is missing from each piece's turns: the change of its moments over its stiffness, in its
/// own axes (L29), less what it has turned. Moments are taken as parabolas through start, middle,
/// end.
std::vector<Turns> Bending::missing(std::size_t limb, const std::vector<Sections>& moments) const
{
    const auto& pieces = tree_.limbs[limb].pieces;
    std::vector<Turns> all;
    all.reserve(pieces.size());
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const auto& piece = pieces[i];
        const auto& bent = shape_.limbs[limb][i];
        const auto& has = turns_[limb][i];
        const std::array<Turn, 3> turns{bent.atStart, bent.atStart.after(turnBy(has.inner_rad)),
                                        bent.atEnd};
        Sections bends;
        for (std::size_t k = 0; k < 3; ++k) {
            const double thick =
                piece.thick_m + 0.5 * static_cast<double>(k) * (piece.thin_m - piece.thick_m);
            const Vec3 change = turns[k].back(moments[i][k]) - drawnMoments_[limb][i][k];
            const Vec3 twist = dot(change, piece.direction) * piece.direction;
            const double give = 1.0 / (tree_.stiffness_Pa[limb] * secondMoment_m4(thick));
            bends[k] = give * (change + (tree_.twistToBend - 1.0) * twist);
        }
        const double part = piece.length_m / 24.0;
        all.push_back({part * (5.0 * bends[0] + 8.0 * bends[1] - bends[2]) - has.inner_rad,
                       part * (5.0 * bends[2] + 8.0 * bends[1] - bends[0]) - has.outer_rad});
    }
    return all;
}

/// \return the farthest that a tip still had to go by the turns of its own limb
double Bending::turnTowards(const TreeSections& moments)
{
    double farthest = 0.0;
    for (std::size_t limb = 0; limb < tree_.limbs.size(); ++limb) {
        const auto miss = missing(limb, moments[limb]);
        following_[limb].learn(miss);
        const auto& pieces = tree_.limbs[limb].pieces;
        const double length = pieces.back().at_m + pieces.back().length_m;
        double toGo = 0.0;
        for (std::size_t i = 0; i < miss.size(); ++i) {
            toGo += (norm(miss[i].inner_rad) + norm(miss[i].outer_rad)) * (length - pieces[i].at_m);
            turns_[limb][i].inner_rad += following_[limb].share * miss[i].inner_rad;
            turns_[limb][i].outer_rad += following_[limb].share * miss[i].outer_rad;
        }
        farthest = std::max(farthest, toGo);
    }
    return farthest;
}

/// Sets the pieces end to end again, from the foot outwards.
void Bending::place()
{
    for (const auto limb : tree_.order.rootFirst) {
        const auto& pieces = tree_.limbs[limb].pieces;
        Vec3 at = pieces.front().from_m;
        Turn turn;
        if (const auto parent = tree_.order.parent[limb]; parent != kNoLimb) {
            const auto& siblings = tree_.order.children[parent];
            const auto child = std::ranges::find(siblings, limb) - siblings.begin();
            const auto joint = tree_.limbs[parent].joinsAt[static_cast<std::size_t>(child)];
            const auto& holder = shape_.limbs[parent];
            const bool atTip = joint == holder.size();
            turn = atTip ? holder.back().atEnd : holder[joint].atStart;
            // The union lies on its parent's axis, or as far beside it as it was drawn.
            const auto& drawn = tree_.limbs[parent].pieces[atTip ? joint - 1 : joint];
            const Vec3 there = atTip ? asDrawn(drawn).end_m : drawn.from_m;
            at = (atTip ? holder.back().end_m : holder[joint].start_m) + turn.of(at - there);
        }
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            auto& bent = shape_.limbs[limb][i];
            const Turn inMiddle = turn.after(turnBy(turns_[limb][i].inner_rad));
            const Turn atEnd = inMiddle.after(turnBy(turns_[limb][i].outer_rad));
            const Vec3 a = turn.of(pieces[i].direction);
            const Vec3 b = inMiddle.of(pieces[i].direction);
            const Vec3 c = atEnd.of(pieces[i].direction);
            const double part = pieces[i].length_m / 24.0;
            const Vec3 end = at + part * (4.0 * a + 16.0 * b + 4.0 * c); // Simpson
            bent = {at, at + part * (5.0 * a + 8.0 * b + -1.0 * c), end, turn, atEnd};
            at = end;
            turn = atEnd;
        }
    }
}

/// Props push as far as keeps their places from sinking below where they were drawn (L30).
/// \return true if one of them pushes another way than before
bool Bending::pushProps()
{
    if (tree_.props.empty())
        return false;
    std::vector<double> free_m; // how far each place would have risen without any push
    for (std::size_t i = 0; i < tree_.props.size(); ++i) {
        const auto& prop = tree_.props[i];
        double rise = shape_.limbs[prop.limb][prop.piece].end_m.z -
                      asDrawn(tree_.limbs[prop.limb].pieces[prop.piece]).end_m.z;
        for (std::size_t j = 0; j < tree_.props.size(); ++j)
            rise -= give_[i][j] * shape_.push_N[j];
        free_m.push_back(rise);
    }
    const auto pushes = pushesFor(give_, free_m);
    bool changed = false;
    for (std::size_t i = 0; i < pushes.size(); ++i)
        changed = changed || std::abs(pushes[i] - shape_.push_N[i]) > kSamePush * (1.0 + pushes[i]);
    shape_.push_N = pushes;
    return changed;
}

} // namespace

BentShape bend(const ElasticTree& tree, const TreeWeight& drawn, const TreeWeight& now)
{
    return Bending(tree, drawn, now).run();
}

std::vector<double> propPushes_N(const ElasticTree& tree, const TreeWeight& drawn,
                                 const TreeWeight& now)
{
    const auto shape = drawnShape(tree);
    auto change = momentsIn(tree, shape, now);
    const auto before = momentsIn(tree, shape, drawn);
    for (std::size_t limb = 0; limb < change.size(); ++limb)
        for (std::size_t i = 0; i < change[limb].size(); ++i)
            for (std::size_t k = 0; k < 3; ++k)
                change[limb][i][k] = change[limb][i][k] - before[limb][i][k];
    return pushesFor(propGive(tree), propRises_m(tree, change));
}

} // namespace model::load
