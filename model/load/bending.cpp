#include "model/load/bending.hpp"

#include "model/load/bent_moments.hpp"
#include "model/load/mixing.hpp"
#include "model/load/prop_push.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace model::load {
namespace {

constexpr int kMostRounds = 300;
constexpr int kFewRounds = 20; // from a rest that is near; it takes about four
constexpr double kSamePush = 0.002;
constexpr double kAtRest_m = 2e-4;   // no tip has further to go
constexpr double kNearRest_m = 5e-3; // near enough to let more load come on

// A limb that turns by no more than this, all along, has one shape at rest and no other.
constexpr double kGentle_rad = 0.3;
// Agrees with 128 stages to 3 mm on 180 random trees that sag by up to 2.9 m.
constexpr int kStages = 4;

/// Second moment of area of a solid round bar.
double secondMoment_m4(double diameter_m)
{
    return std::numbers::pi / 64.0 * std::pow(diameter_m, 4);
}

/// How far each half of a piece is turned, and how that leaves its middle.
struct Turns {
    Vec3 inner_rad{};
    Vec3 outer_rad{};
    Turn inMiddle{}; ///< from the drawn to the bent direction
};

/// What 1 N m turns a metre of a piece by, at its start, middle and end, rad.
using Give = std::array<double, 3>;

Give giveOf(const Piece& piece, double stiffness_Pa)
{
    Give give{};
    for (std::size_t k = 0; k < 3; ++k)
        give[k] = 1.0 / (stiffness_Pa *
                         secondMoment_m4(piece.thick_m + 0.5 * static_cast<double>(k) *
                                                             (piece.thin_m - piece.thick_m)));
    return give;
}

/// How far the tip of the limb is from the start of a piece, along it: a turn of the piece by 1
/// moves the tip by so much.
double reach_m(const LimbPieces& cut, std::size_t piece)
{
    return cut.pieces.back().at_m + cut.pieces.back().length_m - cut.pieces[piece].at_m;
}

/// The same for each component of each turn.
std::vector<double> reaches(const ElasticTree& tree)
{
    std::vector<double> all;
    for (const auto& cut : tree.limbs)
        for (std::size_t i = 0; i < cut.pieces.size(); ++i)
            all.insert(all.end(), 6, reach_m(cut, i));
    return all;
}

/// Bends a tree step by step until weight and stiffness are even.
class Bending {
public:
    Bending(const ElasticTree& tree, const TreeWeight& drawn, const TreeWeight& now)
        : tree_(tree), drawn_(drawn), now_(now), shape_(drawnShape(tree)),
          turns_(tree.limbs.size()), mixing_(reaches(tree))
    {
        drawnMoments_ = momentsIn(tree, shape_, drawn);
        for (std::size_t i = 0; i < turns_.size(); ++i) {
            turns_[i].resize(tree.limbs[i].pieces.size());
            auto& own = give_.emplace_back();
            for (const auto& piece : tree.limbs[i].pieces)
                own.push_back(giveOf(piece, tree.stiffness_Pa[i]));
        }
        if (!tree.props.empty())
            propGive_ = propGive(tree);
    }

    /// Floppy wood can have several shapes at rest. The tree comes to the one that it is led to as
    /// the load comes on, so where it bends far that is done in stages.
    BentShape run() { return runFromDrawn(); }

    /// The same from another tree's rest, if it fits and is near; tells its own.
    BentShape run(Rest& rest)
    {
        const BentShape drawn = shape_;
        if (!fits(rest) || !goOnFrom(rest)) {
            shape_ = drawn;
            for (auto& limb : turns_)
                std::ranges::fill(limb, Turns{});
            shape_ = runFromDrawn();
        }
        rest.push_N = shape_.push_N;
        rest.turns_rad.assign(turns_.size(), {});
        for (std::size_t limb = 0; limb < turns_.size(); ++limb)
            for (const auto& piece : turns_[limb])
                rest.turns_rad[limb].push_back({piece.inner_rad, piece.outer_rad});
        return std::move(shape_);
    }

private:
    BentShape runFromDrawn()
    {
        const BentShape drawn = shape_;
        if (comeOn(1) && isGentle())
            return std::move(shape_);
        shape_ = drawn;
        for (auto& limb : turns_)
            std::ranges::fill(limb, Turns{});
        shape_.settled = comeOn(kStages);
        return std::move(shape_);
    }

    [[nodiscard]] bool fits(const Rest& rest) const;
    bool goOnFrom(const Rest& rest);
    bool comeOn(int stages);
    [[nodiscard]] bool isGentle() const;
    bool settle(double share, double rest_m, int rounds = kMostRounds);
    double turnTowards(const TreeSections& moments);
    const TreeSections& momentsUnder(double share);
    [[nodiscard]] std::pair<Vec3, Vec3> missing(std::size_t limb, std::size_t piece,
                                                const Sections& moments) const;
    void place();
    bool pushProps();

    const ElasticTree& tree_;
    const TreeWeight& drawn_;
    const TreeWeight& now_;
    BentShape shape_;
    TreeSections drawnMoments_;
    std::vector<std::vector<Turns>> turns_;
    std::vector<std::vector<Give>> give_;
    Mixing mixing_;
    TreeSections moments_;            ///< of this round; its room is used again
    std::vector<double> missing_rad_; ///< the same
    std::vector<std::vector<double>>
        propGive_; ///< rise of each prop's place by 1 N at each other's
};

/// Lets the change of weight come on in equal stages, each from the shape before it. \return false
/// if no rest was found at the last
bool Bending::comeOn(int stages)
{
    bool settled = false;
    for (int stage = 1; stage <= stages; ++stage) {
        mixing_ = Mixing(reaches(tree_));
        settled =
            settle(static_cast<double>(stage) / stages, stage < stages ? kNearRest_m : kAtRest_m);
    }
    return settled;
}

bool Bending::fits(const Rest& rest) const
{
    return rest.push_N.size() == shape_.push_N.size() &&
           std::ranges::equal(rest.turns_rad, turns_,
                              [](const auto& a, const auto& b) { return a.size() == b.size(); });
}

/// \return false if there is no rest near that one
bool Bending::goOnFrom(const Rest& rest)
{
    for (std::size_t limb = 0; limb < turns_.size(); ++limb)
        for (std::size_t i = 0; i < turns_[limb].size(); ++i) {
            turns_[limb][i].inner_rad = rest.turns_rad[limb][i][0];
            turns_[limb][i].outer_rad = rest.turns_rad[limb][i][1];
        }
    shape_.push_N = rest.push_N;
    place();
    return settle(1.0, kAtRest_m, kFewRounds);
}

bool Bending::isGentle() const
{
    return std::ranges::all_of(turns_, [](const std::vector<Turns>& limb) {
        double turned_rad = 0.0;
        for (const auto& piece : limb)
            turned_rad += norm(piece.inner_rad) + norm(piece.outer_rad);
        return turned_rad <= kGentle_rad;
    });
}

/// Goes to rest under this share of the change of weight. \return false if no rest was found
bool Bending::settle(double share, double rest_m, int rounds)
{
    for (int round = 0; round < rounds; ++round) {
        const double missing_m = turnTowards(momentsUnder(share));
        place();
        if (missing_m < rest_m && !pushProps())
            return true;
    }
    return false;
}

/// Moments in the shape as it is, with this share of the change of weight come on.
const TreeSections& Bending::momentsUnder(double share)
{
    momentsIn(tree_, shape_, now_, moments_);
    if (share >= 1.0)
        return moments_;
    const auto without = momentsIn(tree_, shape_, drawn_);
    for (std::size_t limb = 0; limb < moments_.size(); ++limb)
        for (std::size_t i = 0; i < moments_[limb].size(); ++i)
            for (std::size_t k = 0; k < 3; ++k)
                moments_[limb][i][k] =
                    share * moments_[limb][i][k] + (1.0 - share) * without[limb][i][k];
    return moments_;
}

/// What is missing from the turns of a piece's halves: the change of its moments over its
/// stiffness, in its own axes (L29), less what they have turned. Moments are taken as parabolas
/// through start, middle, end.
std::pair<Vec3, Vec3> Bending::missing(std::size_t limb, std::size_t piece,
                                       const Sections& moments) const
{
    const auto& drawn = tree_.limbs[limb].pieces[piece];
    const auto& bent = shape_.limbs[limb][piece];
    const auto& has = turns_[limb][piece];
    const std::array<const Turn*, 3> turns{&bent.atStart, &has.inMiddle, &bent.atEnd};
    Sections bends;
    for (std::size_t k = 0; k < 3; ++k) {
        const Vec3 change = turns[k]->back(moments[k]) - drawnMoments_[limb][piece][k];
        const Vec3 twist = dot(change, drawn.direction) * drawn.direction;
        bends[k] = give_[limb][piece][k] * (change + (tree_.twistToBend - 1.0) * twist);
    }
    const double part = drawn.length_m / 24.0;
    return {part * (5.0 * bends[0] + 8.0 * bends[1] - bends[2]) - has.inner_rad,
            part * (5.0 * bends[2] + 8.0 * bends[1] - bends[0]) - has.outer_rad};
}

/// \return the farthest that a tip still had to go by the turns of its own limb
double Bending::turnTowards(const TreeSections& moments)
{
    double farthest = 0.0;
    missing_rad_.clear();
    for (std::size_t limb = 0; limb < tree_.limbs.size(); ++limb) {
        double toGo = 0.0;
        for (std::size_t i = 0; i < turns_[limb].size(); ++i) {
            const auto [inner, outer] = missing(limb, i, moments[limb][i]);
            toGo += (norm(inner) + norm(outer)) * reach_m(tree_.limbs[limb], i);
            for (const Vec3 turn : {inner, outer})
                missing_rad_.insert(missing_rad_.end(), {turn.x, turn.y, turn.z});
        }
        farthest = std::max(farthest, toGo);
    }
    auto next = mixing_.step(missing_rad_).begin();
    for (auto& limb : turns_)
        for (auto& piece : limb)
            for (Vec3* turn : {&piece.inner_rad, &piece.outer_rad}) {
                *turn += {next[0], next[1], next[2]};
                next += 3;
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
            auto& turns = turns_[limb][i];
            turns.inMiddle = turn.after(turnBy(turns.inner_rad));
            const Turn& inMiddle = turns.inMiddle;
            const Turn atEnd = inMiddle.after(turnBy(turns.outer_rad));
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
            rise -= propGive_[i][j] * shape_.push_N[j];
        free_m.push_back(rise);
    }
    const auto pushes = pushesFor(propGive_, free_m);
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

BentShape bend(const ElasticTree& tree, const TreeWeight& drawn, const TreeWeight& now, Rest& rest)
{
    return Bending(tree, drawn, now).run(rest);
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
