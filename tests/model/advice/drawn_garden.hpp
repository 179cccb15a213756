#pragma once

#include "model/advice/options.hpp"
#include "model/garden/garden.hpp"
#include "tests/model/advice/limb_from.hpp"

#include <numbers>
#include <optional>
#include <random>

namespace model::advice {

inline double drawnBetween(std::mt19937& random, double low, double high)
{
    return std::uniform_real_distribution<double>(low, high)(random);
}

/// An apple of a stem alone, 6 m tall, leafy at its top.
inline Tree drawnStem()
{
    Tree tree;
    tree.id = "tree";
    tree.species = "Malus domestica";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.35, {}}, {{0, 0, 6}, 0.12, {}}};
    trunk.foliage = Foliage{4.0, 1.2, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    tree.limbs.push_back(std::move(trunk));
    return tree;
}

/// A stem with limbs of all densities, with laterals that can take over, some with hanging shoots;
/// a bed to the north of it.
inline Garden drawnGarden(std::mt19937& random)
{
    constexpr FoliageDensity kDensities[]{FoliageDensity::sparse, FoliageDensity::medium,
                                          FoliageDensity::dense};
    Tree tree = drawnStem();
    const Limb trunk = tree.limbs.front();
    for (int i = 0; i < 4; ++i) {
        const double turn = drawnBetween(random, 0.0, 2.0 * std::numbers::pi);
        const double reach = drawnBetween(random, 2.0, 3.5);
        auto limb = limbFrom(
            "limb" + std::to_string(i), trunk, drawnBetween(random, 1.8, 4.5),
            {reach * std::cos(turn), reach * std::sin(turn), drawnBetween(random, 0.0, 1.5)},
            drawnBetween(random, 0.05, 0.09));
        const auto leaf = [&] {
            return Foliage{0.4,
                           drawnBetween(random, 0.4, 0.9),
                           drawnBetween(random, 0.0, 1.0) < 0.4 ? drawnBetween(random, 0.3, 1.2)
                                                                : 0.0,
                           {},
                           kDensities[random() % 3],
                           0.0,
                           {}};
        };
        limb.foliage = leaf();
        auto lateral =
            limbFrom(limb.id + "a", limb, drawnBetween(random, 0.6, 1.6),
                     {drawnBetween(random, -1, 1), drawnBetween(random, -1, 1), 0.8}, 0.045);
        lateral.foliage = leaf();
        tree.limbs.push_back(std::move(lateral));
        tree.limbs.push_back(std::move(limb));
    }
    Garden garden;
    garden.place = {51.5, 0.0, 50.0, "Europe/London", {}};
    garden.trees = {tree};
    garden.plantings.resize(1);
    garden.plantings[0].id = "bed";
    garden.plantings[0].outline_m = {{-2, 1}, {2, 1}, {2, 4}, {-2, 4}};
    return garden;
}

/// Everything that may be done to a tree, with headroom wanted all round it.
inline Wanted everything()
{
    Wanted wanted;
    wanted.headroom = {{{{-6, -6}, {6, -6}, {6, 6}, {-6, 6}}, 1.9, true}};
    wanted.goals = 1;
    wanted.help = [](const Taken& taken) { return std::vector<double>{taken.share}; };
    return wanted;
}

/// A complete set of cuts, and its options in the order of Allowed.
struct DrawnSet {
    std::vector<std::size_t> options;
    std::vector<Cut> cuts;
    double leaf{};
};

/// Some set; nothing if a limb that has to be decided has no way to stay or go.
inline std::optional<DrawnSet> drawnSet(std::mt19937& random, const Decisions& decisions)
{
    std::vector<std::size_t> first{0};
    for (const auto& limb : decisions.options)
        first.push_back(first.back() + limb.size());
    DrawnSet set;
    std::vector<std::size_t> open{decisions.root};
    while (!open.empty()) {
        const auto limb = open.back();
        open.pop_back();
        const auto count = decisions.options[limb].size();
        if (count == 0)
            return std::nullopt;
        const std::size_t i = random() % 3 == 0 ? random() % count : 0;
        const auto& option = decisions.options[limb][i];
        set.options.push_back(first[limb] + i);
        set.cuts.insert(set.cuts.end(), option.cuts.begin(), option.cuts.end());
        set.leaf += option.leaf;
        open.insert(open.end(), option.decide.begin(), option.decide.end());
    }
    return set;
}

/// The options taken, and some of the others.
inline Allowed drawnAround(std::mt19937& random, const DrawnSet& set, std::size_t options)
{
    Allowed allowed(options);
    const double more = drawnBetween(random, 0.0, 1.0);
    for (auto& each : allowed)
        each = drawnBetween(random, 0.0, 1.0) < more ? 1 : 0;
    for (const auto option : set.options)
        allowed[option] = 1;
    return allowed;
}

} // namespace model::advice
