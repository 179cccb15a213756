#pragma once

#include "model/advice/suggestion.hpp"
#include "model/light/daylight.hpp"
#include "tests/model/advice/drawn_garden.hpp"
#include "tests/model/advice/limb_from.hpp"
#include "tests/model/species/table_files.hpp"

#include <chrono>
#include <numbers>
#include <random>

namespace model::advice {

/// In winter, when an apple may be cut.
inline constexpr std::chrono::year_month_day kAskedOn{std::chrono::year(2026), std::chrono::January,
                                                      std::chrono::day(15)};

inline Limb leafyLimbFrom(std::string id, const Limb& parent, double at_m, Vec3 run_m,
                          double thickness_m)
{
    auto limb = limbFrom(std::move(id), parent, at_m, run_m, thickness_m);
    limb.foliage = Foliage{0.4, 0.7, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    return limb;
}

/// A stem with three or four limbs, some with a lateral, south of a bed.
inline Garden randomGarden(std::mt19937& random)
{
    Tree tree = drawnStem();
    const Limb trunk = tree.limbs.front();
    const int limbs = std::uniform_int_distribution<int>(2, 3)(random);
    for (int i = 0; i < limbs; ++i) {
        const double turn = drawnBetween(random, 0.0, 2.0 * std::numbers::pi);
        const double reach = drawnBetween(random, 2.0, 3.5);
        auto limb = limbFrom(
            "limb" + std::to_string(i), trunk, drawnBetween(random, 1.8, 4.5),
            {reach * std::cos(turn), reach * std::sin(turn), drawnBetween(random, 0.0, 1.5)},
            drawnBetween(random, 0.05, 0.09));
        if (drawnBetween(random, 0.0, 1.0) < 0.5)
            tree.limbs.push_back(
                leafyLimbFrom(limb.id + "a", limb, drawnBetween(random, 0.6, 1.4),
                              {drawnBetween(random, -1, 1), drawnBetween(random, -1, 1), 0.8},
                              drawnBetween(random, 0.025, 0.045)));
        tree.limbs.push_back(std::move(limb));
    }
    Garden garden;
    garden.place = {51.5, 0.0, 50.0, "Europe/London"};
    garden.designGust_m_s = 28.0;
    garden.trees = {tree};
    garden.plantings = {{"bed",
                         "",
                         PlantingKind::bed,
                         "Solanum lycopersicum",
                         {{-2, 1}, {2, 1}, {2, 4}, {-2, 4}},
                         0.0,
                         {}}};
    return garden;
}

/// A garden, and all that its tree is asked about with.
struct Asked {
    Garden garden;
    Foliation foliation;
    const Species* species;
    std::vector<Foliation> all;
    Surroundings around;
    explicit Asked(Garden g)
        : garden(std::move(g)), species(findSpecies(shippedTables(), garden.trees[0].species)),
          all(light::foliations(garden, shippedTables())), around{shippedTables(), all}
    {
        foliation = all[0];
    }
    [[nodiscard]] const Tree& tree() const { return garden.trees[0]; }
    [[nodiscard]] Suggestion suggest(std::vector<Goal> goals) const
    {
        return advice::suggest(garden, tree(), foliation, *species, kAskedOn,
                               {.spare_m = 0.0, .goals = std::move(goals), .around = &around});
    }
};

/// The same garden with shoots that hang from every limb.
inline Garden weepingGarden(std::mt19937& random)
{
    Garden garden = randomGarden(random);
    for (auto& limb : garden.trees[0].limbs)
        if (limb.parent && limb.foliage)
            limb.foliage->hanging_m = drawnBetween(random, 0.4, 1.5);
    return garden;
}

} // namespace model::advice
