#pragma once

#include "model/advice/suggestion.hpp"
#include "model/crown/sketch_check.hpp"
#include "model/garden/garden.hpp"
#include "model/headroom/headroom.hpp"
#include "model/light/daylight.hpp"
#include "model/load/breaking_gust.hpp"
#include "model/load/forecast.hpp"
#include "model/load/limb_load.hpp"
#include "model/load/relief.hpp"
#include "model/load/sag.hpp"
#include "model/species/species.hpp"

#include <atomic>
#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace model {

/// What the gardener asks about: a gust and a day.
struct Question {
    std::chrono::year_month_day date{};
    std::optional<double> gust_m_s{};             ///< blank: the garden's design gust
    double air_C{load::kStandardAir_C};           ///< temperature of the air in that gust
    std::optional<load::ForecastGust> forecast{}; ///< what the gust was read from, if from words
    bool inRain{};                                ///< leaf and twigs are wet
    double glaze_m{};                             ///< radial thickness of glaze ice, >= 0
};

/// Everything known of one tree.
struct TreeAssessment {
    std::string tree; ///< id
    Foliation foliation;
    std::optional<SketchCheck> sketch; ///< against published trees of its girth; blank: none known
    load::TreeLoad load;               ///< at the gust asked for, leaf as on the date
    load::TreeLoad still;              ///< own weight, leaf and crop only
    load::Sag heaviest;                ///< wet, in leaf and in fruit
    std::vector<headroom::StripHeadroom> headroom; ///< as drawn, and when it hangs so
    advice::Suggestion suggestion;
    load::TreeLoad loadAfter; ///< after the suggested cuts
    load::Sag springBack;     ///< of the limbs that the suggested cuts leave, dry, by those cuts
    std::vector<load::BreakingGust> breaking; ///< one for each limb, in Tree::limbs order
    /// What each cut by itself buys: thinning of a limb's own shoots, then removals.
    std::vector<load::CutRelief> reliefs;
    advice::Labour labour; ///< for the tree as it stands and the suggested job together
};

/// One run of the whole job.
struct Assessment {
    Question question;
    double gust_m_s{}; ///< the gust used
    std::vector<TreeAssessment> trees;
    std::vector<light::PlantingSun> sun;      ///< as things stand, on the date
    std::vector<light::PlantingSun> sunAfter; ///< after all suggested cuts
};

/// What loads a tree on a date, at a gust: with half of its leaf or more it counts
/// as in leaf, and the crop hangs while there is any.
[[nodiscard]] load::Conditions conditionsOn(std::chrono::year_month_day date, const Tree& tree,
                                            const Species& species, const Place& place,
                                            double gust_m_s);

/// \pre  validate(garden, tables) found no fault
/// \param onlyTree  id of the one tree wanted; empty: all. Shade always counts every tree.
[[nodiscard]] Assessment assess(const Garden& garden, const Tables& tables,
                                const Question& question, const std::string& onlyTree = {},
                                const std::atomic<bool>* cancel = nullptr);

} // namespace model
