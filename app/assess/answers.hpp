#pragma once

#include "app/document/edit.hpp"
#include "model/assessment/assessment.hpp"
#include "model/light/daylight.hpp"
#include "model/light/shadow_study.hpp"

#include <atomic>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace app {

/// What the window wants to know.
struct Ask {
    GardenSnapshot garden;
    std::string tree;                ///< id of the chosen tree
    model::Question question;        ///< the gust and the day
    model::light::Instant instant{}; ///< for the shadow on the plan
};

/// What answers under the hand, in a few milliseconds: loads and headroom of the chosen tree.
struct QuickAnswer {
    model::load::TreeLoad load;
    std::vector<model::headroom::StripHeadroom> headroom;
};

/// The shadows at one instant.
struct ShadowAnswer {
    model::light::SunPosition sun;
    model::light::Shadows shadows;
};

/// The three pieces of work, so that tests can put slow or scripted ones in their place. Each is
/// called by one thread at a time: it may keep what the next answer needs.
struct Works {
    std::function<QuickAnswer(const Ask&)> quick;
    std::function<ShadowAnswer(const Ask&)> shadow;
    std::function<model::Assessment(const Ask&, const std::atomic<bool>& cancel)> full;
};

/// The model's own. \param tables  outlives the result
[[nodiscard]] Works modelWorks(const model::Tables& tables);

} // namespace app
