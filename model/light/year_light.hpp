#pragma once

#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"
#include "model/light/light_class.hpp"
#include "model/light/weather.hpp"
#include "model/species/species.hpp"

#include <array>
#include <atomic>
#include <chrono>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace model::light {

/// Light of a mean day.
struct DayLight {
    double sun_h{};   ///< effective sun hours (daylight.hpp)
    double dli_mol{}; ///< daily light integral, mol/m2, beam and sky
};

/// What a tree or a limb takes of a mean day's light (docs/methods/light.md, L24).
struct LightTaken {
    DayLight removal; ///< what taking it away would give back, all else standing
    DayLight firstIn; ///< what it would take if it stood alone in the garden
};

/// A mean day of one month on one surface.
struct MonthLight {
    DayLight open;                      ///< under the open sky
    DayLight withoutTrees;              ///< structures only
    DayLight standing;                  ///< as things are
    double clearSun_h{};                ///< sun hours as things are if the sky were cloudless
    std::vector<LightTaken> trees;      ///< one for each tree
    std::vector<LightTaken> neighbours; ///< one for each neighbour
    /// One for each tree and limb: the limb with all that grows from it. Empty unless asked for.
    std::vector<std::vector<LightTaken>> limbs;
};

/// A year of light on a bed, a lawn, a hedge's top or one of its faces.
struct SurfaceLight {
    std::string planting;             ///< id
    std::optional<double> facing_deg; ///< bearing that a hedge's face looks to; blank: level
    std::array<MonthLight, 12> months;
    MonthLight growingSeason;     ///< mean of April to September, or October to March in the south
    double clearSun_h{};          ///< mean of the growing season as things are, cloudless
    LightClass lightClass{};      ///< by clearSun_h
    Suits suits{Suits::notKnown}; ///< the planting's plant, in the growing season (L25)
    std::vector<Vec3> points_m;   ///< garden frame
    std::vector<DayLight> atPoints; ///< growing season as things are, one for each point
};

/// How closely to look.
struct LightDetail {
    std::chrono::seconds step{std::chrono::minutes{10}};
    int daysPerMonth{4}; ///< sample days, each the middle of an equal part of the month
    int skyDirections{200};
    bool byLimb{true};
    unsigned threads{0}; ///< 0: as many as the machine has
};

/// What is asked for.
struct LightQuestion {
    std::chrono::year year{};
    Weather weather;
    std::string onlyPlanting; ///< id; empty: all
    LightDetail detail;
};

/// A year of light on every surface of every planting; leaves as in each season. Results do not
/// depend on the number of threads.
///
/// Method, sources, limits and measured errors: docs/methods/light.md.
/// \param foliations  one for each tree, in order, of the trees as they were sketched
/// \param cancel      looked at between sample days; set: the result is empty
/// \throws std::domain_error  on a species that the tables don't hold
[[nodiscard]] std::vector<SurfaceLight>
yearOfLight(const Garden& garden, std::span<const Foliation> foliations, const Tables& tables,
            const LightQuestion& question, const std::atomic<bool>* cancel = nullptr);

} // namespace model::light
