#include "model/advice/search.hpp"

#include "model/advice/branching.hpp"
#include "model/advice/nearby.hpp"
#include "model/advice/node_bound.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <queue>
#include <set>

namespace model::advice {
namespace {

constexpr double kSame = 1e-12;     // shares closer than this are the same amount of leaf
constexpr double kTies = 2e-6;      // more than what tells equals apart can come to
constexpr double kTieSlack = 1e-11; // a hair of it
// Most searches have ended before a second look at a node pays; then it counts as a node too.
constexpr long kLookAgainFrom = 32;
// Nodes after which sets nearby are measured: most searches have ended by then.
constexpr long kNearbyNone = 64; // no set is known
constexpr long kNearbyFirst = 512;
constexpr long kNearbyAgain = 4;
constexpr long kNearbyMeasures = 500;

/// Choices that are still to be looked at: all that take only allowed options.
struct Node {
    Allowed allowed;
    double bound{};
    long number{}; ///< as they were made: the elder of equals goes first
    Reach told{};  ///< what looks at nodes that it is a part of have told of help, and still binds
};
struct LaterOf {
    bool operator()(const Node& a, const Node& b) const
    {
        return a.bound != b.bound ? a.bound > b.bound : a.number > b.number;
    }
};

class Search {
public:
    Search(const Decisions& decisions, const std::atomic<bool>* cancel)
        : decisions_(decisions), cancel_(cancel), bounder_(decisions), tree_(bounder_.tree()),
          known_(bounder_.reach()), best_(decisions.start), mostCost_(cutoffOfAll())
    {
        if (best_.found)
            bestCost_ = best_.leaf + hairs();
        if (decisions.missing)
            nearby_.emplace(decisions, bounder_, cancel);
    }

    Choice run()
    {
        Node node{Allowed(tree_.options(), 1), 0.0, 0};
        bool goesOn = true;
        for (bool dives = false; goesOn && !mustStop(node.bound);) {
            if (work(node, dives)) {
                dives = true;
                continue;
            }
            dives = false;
            goesOn = !waiting_.empty() && waiting_.top().bound < cutoff();
            if (goesOn) {
                node = waiting_.top();
                waiting_.pop();
            }
        }
        best_.proven = !stopped_;
        const double open = stopped_ ? lowest(node.bound) : cutoff();
        best_.bound = best_.proven && best_.found ? best_.leaf : std::max(0.0, open - kTies);
        if (best_.found)
            best_.bound = std::min(best_.bound, best_.leaf);
        best_.nodes = nodes_;
        best_.asked = asked_;
        best_.limiting = bounder_.limiting();
        return std::move(best_);
    }

private:
    /// What all sets of cuts that are within the allowance stay below.
    double cutoffOfAll() const
    {
        PerOption gain(tree_.options());
        for (std::size_t o = 0; o < gain.size(); ++o)
            gain[o] = -tree_.option(o).leaf;
        std::vector<double> least;
        tree_.leastSums(gain, Allowed(gain.size(), 1), least);
        return std::min(decisions_.leafMost, -least[decisions_.root]) + kTies;
    }

    double hairs() const { return bounder_.hairs(best_.cuts.size(), best_.wound_m2); }

    double cutoff() const { return best_.found ? bestCost_ - kTieSlack : mostCost_; }

    double lowest(double bound) const
    {
        return waiting_.empty() ? bound : std::min(bound, waiting_.top().bound);
    }

    void tell(double bound) const
    {
        if (decisions_.progress)
            decisions_.progress(best_.found ? best_.leaf : ChoiceTree::kNever,
                                std::max(0.0, lowest(bound) - kTies));
    }

    bool mustStop(double bound)
    {
        constexpr long kTellEvery = 32;
        if (nodes_ % kTellEvery == 0)
            tell(bound);
        stopped_ = (cancel_ && cancel_->load(std::memory_order_relaxed)) ||
                   (decisions_.anyWillDo && best_.found) || nodes_ >= decisions_.nodesMost ||
                   asked_ >= decisions_.askedMost;
        return stopped_;
    }

    /// Looks at a node; leaves its better half in its place and puts the other aside.
    /// \return false: nothing in it can be better than what is known
    bool work(Node& node, bool reachHolds)
    {
        ++nodes_;
        lookNearby(node.bound);
        if (!reachHolds)
            lookCloser(node);
        auto found = bounder_.bound(node.allowed, cutoff());
        if (found.bound >= cutoff())
            return false;
        if (decisions_.lookCloser && reachHolds) {
            lookCloser(node);
            found = bounder_.bound(node.allowed, cutoff());
        }
        while (found.bound < cutoff() && bounder_.heed(found.cheapest))
            found = bounder_.bound(node.allowed, cutoff());
        const bool proves = !decisions_.anyWillDo;
        if (decisions_.lookCloser && proves && nodes_ > kLookAgainFrom && found.bound < cutoff())
            lookAgain(node, found);
        node.bound = std::max(node.bound, found.bound);
        if (node.bound >= cutoff())
            return false;
        node.told = bounder_.binding(found);
        consider(found.cheapest);
        return node.bound < cutoff() && halve(node, found);
    }

    void lookCloser(const Node& node)
    {
        if (!decisions_.lookCloser)
            return;
        Reach reach = known_;
        decisions_.lookCloser(node.allowed, cutoff(), {}, reach);
        bounder_.set(reach);
        bounder_.add(node.told);
    }

    /// Where the blend looks better than it is: what it takes is believed in, and looked at
    /// closely.
    void lookAgain(Node& node, NodeBound& found)
    {
        ++nodes_;
        Reach reach = bounder_.reach();
        reach.asked.resize(decisions_.goals);
        reach.helps.resize(decisions_.goals);
        decisions_.lookCloser(node.allowed, cutoff(), found.weight, reach);
        bounder_.add(reach);
        const double before = found.bound;
        found = bounder_.bound(node.allowed, cutoff());
        found.bound = std::max(found.bound, before);
    }

    void consider(const Picks& picks)
    {
        const double cost = bounder_.cost(picks);
        if (cost >= cutoff() || bounder_.leaf(picks) > decisions_.leafMost + kSame ||
            !bounder_.fits(picks) || refused_.contains(picks))
            return;
        ++asked_;
        if (decisions_.crownAccepts && !decisions_.crownAccepts(bounder_.cuts(picks))) {
            refused_.insert(picks);
            return;
        }
        take(picks);
    }

    void take(const Picks& picks)
    {
        best_.found = true;
        best_.taken = picks;
        best_.cuts = bounder_.cuts(picks);
        best_.leaf = bounder_.leaf(picks);
        best_.wound_m2 = bounder_.wound_m2(picks);
        bestCost_ = bounder_.cost(picks);
    }

    /// Searches that don't end soon measure what lies near the best set so far; near none, if there
    /// is none yet.
    void lookNearby(double bound)
    {
        const bool due = nodes_ >= nearbyNext_ || (nodes_ == kNearbyNone && !best_.found);
        if (!nearby_ || !due)
            return;
        if (nodes_ >= nearbyNext_)
            nearbyNext_ *= kNearbyAgain;
        if (nearbyDone_ && best_.taken == nearbyOf_)
            return;
        const long measures = 3 * (best_.found ? nodes_ : std::max(nodes_, kNearbyMeasures));
        const auto found = nearby_->from(best_.taken, std::min(measures, decisions_.measuresMost),
                                         [&] { tell(bound); });
        if (found && bounder_.cost(*found) < cutoff())
            take(*found);
        nearbyDone_ = !nearby_->cutShort();
        nearbyOf_ = best_.taken;
    }

    /// \return false: there is but one choice in it
    bool halve(Node& node, const NodeBound& found)
    {
        auto halves = halvesOf(node.allowed, found, bounder_);
        if (!halves)
            return false;
        node.allowed = std::move(halves->likelier);
        waiting_.push({std::move(halves->rest), node.bound, ++made_, node.told});
        return true;
    }

    const Decisions& decisions_;
    const std::atomic<bool>* cancel_;
    Bounder bounder_;
    const ChoiceTree& tree_;
    std::optional<Nearby> nearby_;
    Picks nearbyOf_; ///< the best when it was last asked
    bool nearbyDone_{};
    long nearbyNext_{kNearbyFirst};
    Reach known_; ///< of all sets of cuts
    std::priority_queue<Node, std::vector<Node>, LaterOf> waiting_;
    std::set<Picks> refused_;
    Choice best_;
    double bestCost_{};
    double mostCost_{};
    long nodes_{};
    long made_{};
    long asked_{};
    bool stopped_{};
};

} // namespace

std::vector<double> relaxedLeaf(const Decisions& decisions)
{
    const ChoiceTree tree(decisions);
    PerOption leaf(tree.options());
    for (std::size_t o = 0; o < leaf.size(); ++o)
        leaf[o] = tree.option(o).leaf;
    std::vector<double> least;
    tree.leastSums(leaf, Allowed(leaf.size(), 1), least);
    return least;
}

Choice leastLeaf(const Decisions& decisions, const std::atomic<bool>* cancel)
{
    if (relaxedLeaf(decisions)[decisions.root] == ChoiceTree::kNever) {
        Choice none;
        none.proven = true;
        none.nodes = 1;
        return none;
    }
    return Search(decisions, cancel).run();
}

} // namespace model::advice
