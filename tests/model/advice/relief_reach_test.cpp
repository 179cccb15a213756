#include "model/advice/relief_reach.hpp"

#include "model/advice/prune.hpp"
#include "tests/model/advice/drawn_garden.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace model::advice {
namespace {

/// A place in the middle of each limb, in the wind that asks most of it.
std::vector<HardPressed> placesOf(const load::LoadStudy& study, const Tree& tree)
{
    std::vector<HardPressed> places;
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
        const auto& worst = study.governing()[limb];
        const auto& piece = study.loadCase().limbs[limb].pieces[worst.piece];
        const auto asked = load::askedAt(piece, worst.along_m, worst.beyond, worst.wind);
        const Vec3 whole = asked.weightMoment_Nm + asked.windMoment_Nm;
        const Vec3 bending = whole - dot(whole, piece.direction) * piece.direction;
        places.push_back(
            {limb, piece.at_m + worst.along_m, piece.from_m + worst.along_m * piece.direction,
             (1.0 / norm(bending)) * bending,
             (worst.wind.opposite ? -1.0 : 1.0) * load::blowsTowards(worst.wind.bearing),
             worst.wind.bearing, false});
    }
    return places;
}

/// Bending at a place of a cut tree, in the place's wind and the way it bends; nothing if it went.
std::optional<double> bending_Nm(const load::LoadCase& load, const Tree& cut, const Tree& tree,
                                 const HardPressed& place)
{
    const auto limb = limbIndex(cut, tree.limbs[place.limb].id);
    if (limb == kNoLimb || length_m(cut.limbs[limb]) <= place.along_m)
        return std::nullopt;
    const auto& pieces = load.limbs[limb].pieces;
    std::size_t i = pieces.size() - 1;
    while (i > 0 && pieces[i].at_m > place.along_m + 1e-9)
        --i;
    const double within_m = place.along_m - pieces[i].at_m;
    const auto ends = load::beyondPieces(load, limb, place.bearing);
    const auto beyond = within_m > 1e-9
                            ? load::beyondWithin(load, limb, i, within_m, ends, place.bearing)
                            : ends[i];
    const Vec3 moment = momentAbout(beyond.weight, place.at_m) +
                        beyond.share * momentAbout(beyond.drag, place.blows, place.at_m);
    return dot(moment, place.bends);
}

// Law: no set of cuts leaves less bending at a place than the bound says that holds for all sets of
// allowed options with no more leaf. Bending of the cut tree by the load case, whose own tests are
// published ones. With nothing left to decide the bound is the bending itself.
TEST(ReliefReach, IsNeverExceededByTheLoadsOfACutTree)
{
    constexpr double kLaidOut = 0.002; // pieces and lines lie elsewhere on the cut tree
    std::mt19937 random(31);
    load::Conditions storm;
    storm.gust_m_s = 30.0;
    int relieved = 0;
    double worst = 0.0;
    for (int garden = 0; garden < 30; ++garden) {
        const Garden drawn = drawnGarden(random);
        const Tree& tree = drawn.trees[0];
        const auto& species = *findSpecies(shippedTables(), tree.species);
        const auto foliation = foliate(tree, species);
        const auto decisions = options(tree, foliation, everything());
        const LimbStates states(tree, foliation, decisions);
        load::LoadStudy study(tree, foliation, species, drawn.place, drawn.exposure, storm);
        load::LoadStudy after = study;
        const auto places = placesOf(study, tree);
        const ReliefReach reach(study, tree, foliation, states.forms(), places);
        std::vector<ReliefReach::Asked> all;
        for (std::size_t place = 0; place < places.size(); ++place)
            all.push_back({place, 0.0});
        for (int i = 0; i < 40; ++i) {
            const auto set = drawnSet(random, decisions);
            if (!set)
                continue;
            const bool decided = i % 4 == 0;
            Allowed allowed = drawnAround(random, *set, states.options());
            if (decided) {
                std::ranges::fill(allowed, std::uint8_t{0});
                for (const auto option : set->options)
                    allowed[option] = 1;
            }
            const auto most =
                reach.most(states, allowed, set->leaf + drawnBetween(random, 0.0, 0.1), all);
            const Tree cut = afterCuts(tree, set->cuts);
            after.redraw(cut, foliation);
            for (std::size_t place = 0; place < places.size(); ++place) {
                const auto bends_Nm = bending_Nm(after.loadCase(), cut, tree, places[place]);
                if (!bends_Nm || most[place].asked_Nm <= 0.0)
                    continue; // the place went, or nothing is said of it
                double least_Nm = most[place].asked_Nm;
                for (const auto option : set->options)
                    least_Nm -= most[place].more_Nm[option];
                const double rough_Nm = kLaidOut * most[place].asked_Nm + 1e-6;
                worst = std::max(worst, (least_Nm - *bends_Nm) / (most[place].asked_Nm + 1e-6));
                EXPECT_GE(*bends_Nm, least_Nm - rough_Nm)
                    << garden << ' ' << i << ' ' << place << ' ' << most[place].asked_Nm;
                if (decided) {
                    EXPECT_NEAR(*bends_Nm, least_Nm, rough_Nm)
                        << garden << ' ' << i << ' ' << place;
                }
                relieved += least_Nm < most[place].asked_Nm ? 1 : 0;
            }
        }
    }
    RecordProperty("worst", std::to_string(worst));
    EXPECT_GT(relieved, 200);
}

} // namespace
} // namespace model::advice
