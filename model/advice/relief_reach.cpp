#include "model/advice/relief_reach.hpp"

#include "model/advice/leaf_budget.hpp"

#include <algorithm>
#include <cmath>

namespace model::advice {
namespace {

constexpr double kSameJoint_m = 1e-6;
constexpr double kNothing_N = 1e-9;

/// The tree with one limb in another form, without what grew beyond its new end.
Tree withForm(const Tree& tree, const LimbOrder& order, std::size_t limb, const Limb& form)
{
    Tree drawn = tree;
    drawn.limbs[limb] = form;
    std::vector<char> gone(tree.limbs.size());
    const double length = length_m(form);
    for (const auto child : order.children[limb])
        if (tree.limbs[child].attachedAt_m > length + kSameJoint_m)
            for (const auto beyond : limbAndBeyond(order, child))
                gone[beyond] = 1;
    for (std::size_t i = gone.size(); i-- > 0;)
        if (gone[i] != 0)
            drawn.limbs.erase(drawn.limbs.begin() + static_cast<std::ptrdiff_t>(i));
    return drawn;
}

} // namespace

/// What one state of a limb takes off the sums at a place, and the leaf it costs beyond what goes
/// for certain.
struct ReliefReach::Loss {
    std::size_t limb{};
    LimbState state;
    double leaf{};
    Sums sums;
    double lee{};       ///< that the share of drag that lee leaves may fall by
    double drag_N{};    ///< that the drag that is left may fall by
    double lever_m{};   ///< that the mean lever arm may fall by
    double relief_Nm{}; ///< all together
};

bool isBeyond(const HardPressed& place, const Tree& tree, const LimbOrder& order, std::size_t limb)
{
    std::size_t below = limb;
    while (order.parent[below] != place.limb) {
        below = order.parent[below];
        if (below == kNoLimb)
            return false;
    }
    return tree.limbs[below].attachedAt_m >= place.along_m;
}

ReliefReach::ReliefReach(const load::LoadStudy& study, const Tree& tree, const Foliation& foliation,
                         LimbForms forms, std::vector<HardPressed> places)
    : study_(study), tree_(tree), foliation_(foliation), forms_(std::move(forms)),
      order_(limbOrder(tree)), places_(std::move(places)), parts_(places_.size())
{
    for (auto& ofPlace : parts_)
        ofPlace.resize(tree.limbs.size());
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb)
        for (const auto& form : forms_[limb]) {
            const Tree drawn = withForm(tree, order_, limb, form);
            study_.redraw(drawn, foliation);
            const auto index = limbIndex(drawn, form.id);
            for (std::size_t p = 0; p < places_.size(); ++p)
                if (limb == places_[p].limb || isBeyond(places_[p], tree_, order_, limb))
                    parts_[p][limb].push_back(
                        partOf(study_.loadCase(), index, limb == places_[p].limb, places_[p]));
        }
}

ReliefReach::Part ReliefReach::partOf(const load::LoadCase& load, std::size_t limb, bool own,
                                      const HardPressed& place) const
{
    Part part;
    const auto& pieces = load.limbs[limb].pieces;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const auto& piece = pieces[i];
        const auto& drag = load.wind.pieces[limb][i];
        const double force = drag.force_N[place.bearing];
        const double outline = drag.outline_m2[place.bearing];
        part.leaf_m2 += piece.leaf_m2;
        if (piece.bare()) {
            part.wood_m2 += outline;
            part.wood_N += force;
        } else {
            part.outline_m2 += outline;
            part.dense_m2 += outline * piece.density;
            part.leaf_N += force;
        }
        const double start =
            own ? std::clamp(place.along_m - piece.at_m, 0.0, piece.length_m) : 0.0;
        if (start >= piece.length_m)
            continue;
        const auto blown =
            momentAbout(load::dragOf(piece, drag, place.bearing, start), place.blows, place.at_m);
        (piece.bare() ? part.woodMoment_Nm : part.leafMoment_Nm) += dot(blown, place.bends);
        const auto weights = load::weightsOf(piece, load.wood_kg_m3, start);
        const auto moment = [&](const load::Weight& weight) {
            return dot(momentAbout(weight, place.at_m), place.bends);
        };
        part.leafWeight_Nm += moment(weights.leafy) + moment(weights.weather);
        part.restWeight_Nm += moment(weights.wood) + moment(weights.fruit) + moment(weights.props);
    }
    return part;
}

ReliefReach::Sums ReliefReach::sumsOf(const Part& part, double kept) const
{
    return {kept * part.leaf_m2,
            kept * part.dense_m2,
            part.outline_m2,
            kept * part.leaf_N,
            part.wood_m2,
            part.wood_N,
            kept * part.leafMoment_Nm + part.woodMoment_Nm,
            kept * part.leafWeight_Nm + part.restWeight_Nm};
}

ReliefReach::View ReliefReach::view(const LimbStates& states, const Allowed& allowed,
                                    double leafMost) const
{
    View view{states, states.possible(allowed), {}, leafMost, tree_};
    view.drawn.limbs.clear();
    for (std::size_t limb = 0; limb < view.states.size(); ++limb) {
        const auto& ofLimb = view.states[limb];
        const auto found = std::ranges::min_element(ofLimb, {}, &LimbState::lost);
        const LimbState least = found == ofLimb.end() ? LimbState{kGone, 0.0, 0.0} : *found;
        view.least.push_back(least);
        view.leafLeft -= least.lost;
        if (least.form == kGone)
            continue;
        view.drawn.limbs.push_back(forms_[limb][least.form]);
        if (auto& foliage = view.drawn.limbs.back().foliage)
            foliage->thinned = 1.0 - (1.0 - foliage->thinned) * least.kept;
    }
    view.leafLeft = std::max(0.0, view.leafLeft) + LeafBudget::kHair;
    return view;
}

std::vector<ReliefReach::Most> ReliefReach::most(const LimbStates& states, const Allowed& allowed,
                                                 double leafMost,
                                                 const std::vector<Asked>& asked) const
{
    const auto view = this->view(states, allowed, leafMost);
    study_.redraw(view.drawn, foliation_);
    std::vector<Most> all;
    for (const auto& one : asked)
        all.push_back(mostAt(one, study_.loadCase(), view));
    return all;
}

ReliefReach::Sums ReliefReach::sumsIn(std::size_t place, std::size_t limb,
                                      const LimbState& state) const
{
    return state.form == kGone ? Sums{} : sumsOf(parts_[place][limb][state.form], state.kept);
}

/// True if the place goes.
bool ReliefReach::goes(const HardPressed& place, std::size_t limb, const LimbState& state) const
{
    return limb == place.limb &&
           (state.form == kGone || length_m(forms_[limb][state.form]) <= place.along_m);
}

std::vector<ReliefReach::Loss> ReliefReach::losses(std::size_t place, const View& view) const
{
    std::vector<Loss> all;
    for (std::size_t limb = 0; limb < view.states.size(); ++limb) {
        if (parts_[place][limb].empty())
            continue;
        const Sums base = sumsIn(place, limb, view.least[limb]);
        for (const auto& state : view.states[limb]) {
            const double leaf = state.lost - view.least[limb].lost;
            if (goes(places_[place], limb, state) || leaf > view.leafLeft)
                continue;
            const Sums in = sumsIn(place, limb, state);
            Loss loss;
            loss.limb = limb;
            loss.state = state;
            loss.leaf = leaf;
            loss.sums = {base.leaf_m2 - in.leaf_m2,       base.dense_m2 - in.dense_m2,
                         base.outline_m2 - in.outline_m2, base.leaf_N - in.leaf_N,
                         base.wood_m2 - in.wood_m2,       base.wood_N - in.wood_N,
                         base.moment_Nm - in.moment_Nm,   base.weight_Nm - in.weight_Nm};
            loss.relief_Nm = loss.sums.weight_Nm;
            all.push_back(loss);
        }
    }
    return all;
}

namespace {

/// The most that losses within the budget come to.
template <typename Losses, typename Amount>
double mostOf(const Losses& losses, double leafLeft, Amount amount)
{
    LeafBudget budget(leafLeft);
    for (const auto& loss : losses)
        budget.offer(loss.limb, amount(loss), loss.leaf);
    return budget.most();
}

} // namespace

// The drag moment at a place is V l: V, the drag that lee leaves, and l, the mean lever arm of all
// drag. Both are bounded from below by what is there now less a sum over what goes (A6).
void ReliefReach::addLee(const load::LoadCase& load, std::size_t index, const View& view,
                         const Sums& now, std::vector<Loss>& losses, Most& most) const
{
    const auto& place = places_[index];
    const auto b = place.bearing;
    const auto limb = limbIndex(view.drawn, tree_.limbs[place.limb].id);
    std::size_t outermost = 0;
    for (const auto child : load.order.children[limb])
        outermost += view.drawn.limbs[child].attachedAt_m >= place.along_m ? 1 : 0;
    const auto& sums = load.wind.sums[limb][outermost];
    const double total_N = sums.leaf_N[b] + sums.wood_N[b];
    if (total_N < kNothing_N)
        return;
    const auto mostLoss = [&](auto amount) { return mostOf(losses, view.leafLeft, amount); };
    const auto left = [&](double whole, auto amount) {
        return std::max(whole - mostLoss(amount), 1e-6 * whole);
    };
    // The share that lee leaves of the drag on leaf: by outline, and by leaf (L9).
    const double dense_m2 = sums.dense_m2[b];
    const double denseLeft_m2 = left(dense_m2, [](const Loss& l) { return l.sums.dense_m2; });
    const double outlineLeft_m2 =
        left(sums.outline_m2[b], [](const Loss& l) { return l.sums.outline_m2; });
    const double byOutline = load.wind.outlineLeft[limb][outermost][b];
    const double byLeaf = load::leafCap(sums, load.wind.outlinePerLeaf, b);
    const auto outlineLoss = [&](const Loss& l) {
        return outlineLeft_m2 > 0.0
                   ? (1.0 - std::min(1.0, byOutline)) * l.sums.outline_m2 / outlineLeft_m2
                   : 0.0;
    };
    const auto leafLoss = [&](const Loss& l) {
        if (!std::isfinite(byLeaf))
            return 0.0;
        const double more = load.wind.outlinePerLeaf * l.sums.leaf_m2 - byLeaf * l.sums.dense_m2;
        return more / (more > 0.0 ? denseLeft_m2 : dense_m2);
    };
    const bool leafRules = byLeaf <= byOutline;
    const auto first = [&](const Loss& l) { return leafRules ? leafLoss(l) : outlineLoss(l); };
    const auto excess = [&](const Loss& l) {
        return std::isfinite(byLeaf) ? std::max(0.0, leafRules ? outlineLoss(l) - leafLoss(l)
                                                               : leafLoss(l) - outlineLoss(l))
                                     : 0.0;
    };
    const double apart = std::abs(byLeaf - byOutline);
    const double closer = mostLoss(excess);
    const double counts = closer > apart ? 1.0 - apart / closer : 0.0;
    for (auto& l : losses)
        l.lee = first(l) + counts * excess(l);
    const double shareMost =
        std::min(byLeaf, byOutline) + mostLoss([](const Loss& l) { return -l.lee; });
    const double woodPressure_Pa = now.wood_m2 > 0.0 ? sums.wood_N[b] / now.wood_m2 : 0.0;
    const double totalLeft_N =
        left(total_N, [](const Loss& l) { return l.sums.leaf_N + l.sums.wood_N; });
    const double lever_m = now.moment_Nm / total_N;
    for (auto& l : losses) {
        const double wood_N = std::max(l.sums.wood_N, woodPressure_Pa * l.sums.wood_m2);
        l.drag_N = std::max(0.0, sums.leaf_N[b] * l.lee + shareMost * l.sums.leaf_N + wood_N);
        const double more_Nm = l.sums.moment_Nm - lever_m * (l.sums.leaf_N + l.sums.wood_N);
        l.lever_m = more_Nm / (more_Nm > 0.0 ? totalLeft_N : total_N);
    }
    const double leverMost_m = lever_m + mostLoss([](const Loss& l) { return -l.lever_m; });
    const double drag_N = load.wind.share[limb][outermost][b] * total_N;
    most.asked_Nm += drag_N * lever_m;
    for (auto& l : losses)
        l.relief_Nm += drag_N * l.lever_m + leverMost_m * l.drag_N;
    const double forwards_Nm =
        now.moment_Nm - mostLoss([](const Loss& l) { return l.sums.moment_Nm; });
    if (forwards_Nm < 0.0 || leverMost_m < 0.0)
        most.asked_Nm = -HUGE_VAL; // the wind might unbend it: nothing is certain
}

ReliefReach::Most ReliefReach::mostAt(const Asked& asked, const load::LoadCase& load,
                                      const View& view) const
{
    const auto& place = places_[asked.place];
    Most most;
    most.more_Nm.assign(view.options.options(), 0.0);
    if (goes(place, place.limb, view.least[place.limb]))
        return most; // for certain: nothing is asked
    Sums now;
    for (std::size_t limb = 0; limb < view.states.size(); ++limb) {
        if (parts_[asked.place][limb].empty())
            continue;
        const Sums sums = sumsIn(asked.place, limb, view.least[limb]);
        now.moment_Nm += sums.moment_Nm;
        now.weight_Nm += sums.weight_Nm;
        now.wood_m2 += sums.wood_m2;
    }
    auto all = losses(asked.place, view);
    most.asked_Nm = now.weight_Nm - asked.bears_Nm;
    if (!place.still)
        addLee(load, asked.place, view, now, all, most);
    if (most.asked_Nm <= 0.0) {
        most.asked_Nm = 0.0;
        return most;
    }
    double against_Nm = 0.0; // that some cuts add
    for (const auto& loss : all)
        against_Nm += std::max(0.0, -loss.relief_Nm);
    const auto relief_Nm = [&](std::size_t limb, const LimbState& state) {
        if (parts_[asked.place][limb].empty())
            return 0.0;
        for (const auto& loss : all)
            if (loss.limb == limb && loss.state.form == state.form && loss.state.kept == state.kept)
                return loss.relief_Nm;
        return most.asked_Nm + against_Nm; // the place goes, or more leaf than any set has
    };
    for (std::size_t o = 0; o < view.options.options(); ++o)
        for (const auto& change : view.options.changes(o))
            most.more_Nm[o] += relief_Nm(change.limb, change.state);
    return most;
}

} // namespace model::advice
