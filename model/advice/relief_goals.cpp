#include "model/advice/relief_goals.hpp"

#include <algorithm>
#include <cmath>

namespace model::advice {
namespace {

// What cuts are thought to do before a closer look: their weight, and a little more than their drag
// in the lee of the whole tree, for what stays may come to stand in more lee.
constexpr double kAtMost = 1.25;
// Pieces are laid out anew on a cut tree, and outlines met by other lines (L8, L21).
constexpr double kLaidOut = 0.002;

constexpr double kLeastExcess = 0.02; // of what stress in step with bending alone would ask
constexpr double kSameLoad = 1e-9;

/// Bending that may stay at a place for its stress to fall to this share: all of the stress that is
/// left may then be bending (L10 counts axial force and torsion in).
double bears_Nm(const load::Governing& worst, const load::Piece& piece, double share)
{
    const double along = worst.along_m / piece.length_m;
    const auto section = worst.along_m > 0.0
                             ? load::solidSection(std::lerp(piece.thick_m, piece.thin_m, along))
                             : piece.section;
    return share * worst.stress_Pa * section.bending_m3;
}

load::Conditions stormOf(double gust_m_s)
{
    load::Conditions conditions;
    conditions.gust_m_s = gust_m_s;
    return conditions;
}

} // namespace

ReliefGoals::ReliefGoals(const Garden& garden, const Tree& tree, const Foliation& foliation,
                         const Species& species, std::vector<std::optional<double>> most,
                         std::optional<double> gust_m_s)
    : tree_(tree), foliation_(foliation),
      study_(tree, foliation, species, garden.place, garden.exposure,
             stormOf(gust_m_s.value_or(garden.designGust_m_s))),
      case_(study_.loadCase()), governing_(study_.governing()), wanted_(std::move(most)),
      now_(tree.limbs.size())
{
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
        if (wanted_[limb] && governing_[limb].hasStrength)
            now_[limb] = governing_[limb].utilisation;
    }
    ease(1.0);
}

void ReliefGoals::ease(double share)
{
    double lacking = 0.0;
    for (std::size_t limb = 0; limb < wanted_.size(); ++limb)
        if (now_[limb])
            lacking = std::max(lacking, *now_[limb] - *wanted_[limb]);
    most_.assign(wanted_.size(), std::nullopt);
    for (std::size_t limb = 0; limb < most_.size(); ++limb)
        if (now_[limb])
            most_[limb] = *wanted_[limb] + (1.0 - share) * lacking;
    findPlaces();
}

/// Where a limb bears most; nothing if it isn't bent.
std::optional<ReliefGoals::Place> ReliefGoals::placeOn(std::size_t limb) const
{
    const auto& worst = governing_[limb];
    const auto& piece = case_.limbs[limb].pieces[worst.piece];
    const auto asked = load::askedAt(piece, worst.along_m, worst.beyond, worst.wind);
    const Vec3 whole = asked.weightMoment_Nm + asked.windMoment_Nm;
    const Vec3 bending = whole - dot(whole, piece.direction) * piece.direction;
    const double moment = norm(bending);
    if (moment <= 0.0)
        return std::nullopt;
    Place place;
    place.limb = limb;
    place.along_m = piece.at_m + worst.along_m;
    place.at_m = piece.from_m + worst.along_m * piece.direction;
    place.bends = (1.0 / moment) * bending;
    place.bearing = worst.wind.bearing;
    place.blows = (worst.wind.opposite ? -1.0 : 1.0) * load::blowsTowards(worst.wind.bearing);
    place.share = worst.beyond.share;
    place.still = place.share <= 0.0;
    const double share = most_[limb] ? *most_[limb] / *now_[limb] : 1.0;
    place.bears_Nm = bears_Nm(worst, piece, share);
    place.excess_Nm = std::max(moment - place.bears_Nm, kLeastExcess * (1.0 - share) * moment);
    return place;
}

void ReliefGoals::findPlaces()
{
    places_.clear();
    for (std::size_t limb = 0; limb < most_.size(); ++limb)
        if (most_[limb] && *now_[limb] > *most_[limb] + kSameLoad)
            if (const auto place = placeOn(limb))
                places_.push_back(*place);
}

double ReliefGoals::asked_Nm(const Place& place, const Taken& taken) const
{
    const bool own = taken.limb == place.limb;
    if (!own && !isBeyond(place, tree_, case_.order, taken.limb))
        return 0.0;
    const double from_m = own ? std::max(taken.from_m, place.along_m) : taken.from_m;
    const auto& pieces = case_.limbs[taken.limb].pieces;
    const auto& drags = case_.wind.pieces[taken.limb];
    Vec3 weighs;
    Vec3 blown;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const auto& piece = pieces[i];
        const double start = std::clamp(from_m - piece.at_m, 0.0, piece.length_m);
        if (start >= piece.length_m || (taken.share < 1.0 && piece.bare()))
            continue;
        auto weights = load::weightsOf(piece, case_.wood_kg_m3, start);
        if (taken.share < 1.0)
            weights.wood = {};
        load::Weight weight = weights.leafy;
        load::add(weight, weights.wood);
        load::add(weight, weights.fruit);
        weighs += momentAbout(weight, place.at_m);
        blown += place.share * momentAbout(load::dragOf(piece, drags[i], place.bearing, start),
                                           place.blows, place.at_m);
    }
    const double drag = dot(blown, place.bends);
    return taken.share * (dot(weighs, place.bends) + std::max(drag, kAtMost * drag));
}

std::vector<double> ReliefGoals::help(const Taken& taken) const
{
    std::vector<double> all;
    for (const auto& place : places_) {
        const bool placeGoes =
            taken.limb == place.limb && taken.share >= 1.0 && taken.from_m <= place.along_m;
        const double lost = asked_Nm(place, taken) / place.excess_Nm;
        all.push_back(placeGoes ? std::max(1.0, lost) : lost);
    }
    return all;
}

void ReliefGoals::lookCloser(const LimbStates& states, const Allowed& allowed, double leafMost,
                             std::size_t first, Reach& reach) const
{
    if (places_.empty() || case_.propped)
        return; // what props take shifts with every cut
    if (!reach_ || reach_->forms() != states.forms()) {
        std::vector<HardPressed> all;
        for (std::size_t limb = 0; limb < now_.size(); ++limb)
            if (const auto place = now_[limb] ? placeOn(limb) : std::nullopt)
                all.push_back(*place);
        reach_.emplace(study_, tree_, foliation_, states.forms(), std::move(all));
    }
    std::vector<ReliefReach::Asked> asked;
    for (const auto& place : places_)
        asked.push_back({reach_->placeOn(place.limb), place.bears_Nm});
    const auto most = reach_->most(states, allowed, leafMost, asked);
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const double whole_Nm = places_[i].excess_Nm;
        const double rough_Nm = kLaidOut * (places_[i].bears_Nm + most[i].asked_Nm);
        reach.asked[first + i] = std::max(0.0, most[i].asked_Nm - rough_Nm) / whole_Nm;
        for (std::size_t o = 0; o < most[i].more_Nm.size(); ++o)
            reach.helps[first + i][o] = most[i].more_Nm[o] / whole_Nm;
    }
}

bool ReliefGoals::met(const Tree& cut) const
{
    return std::ranges::all_of(missing(cut), [](double over) { return over <= 0.0; });
}

std::vector<double> ReliefGoals::missing(const Tree& cut) const
{
    std::vector<double> all(tree_.limbs.size(), 0.0);
    if (places_.empty())
        return all;
    const auto& loads = study_.redraw(cut, foliation_);
    for (const auto& limb : loads.limbs) {
        const auto before = limbIndex(tree_, cut.limbs[limb.limb].id);
        if (limb.hasStrength && most_[before])
            all[before] = limb.utilisation - *most_[before] - kSameLoad;
    }
    return all;
}

} // namespace model::advice
