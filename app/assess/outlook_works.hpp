#pragma once

#include "app/document/edit.hpp"
#include "model/advice/stages.hpp"
#include "model/advice/trade_off.hpp"
#include "model/species/species.hpp"

#include <atomic>
#include <chrono>
#include <functional>
#include <string>
#include <vector>

namespace app {

/// Whose outlook is wanted.
struct OutlookAsk {
    GardenSnapshot garden;
    std::string tree; ///< id
    std::chrono::year_month_day date{};
    friend bool operator==(const OutlookAsk&, const OutlookAsk&) = default;
};

/// What looks beyond the suggested cuts, so that tests can put scripted work in its place. Each
/// takes up to seconds: ask for it on another thread. Cancelled, they give what they have so far.
struct OutlookWorks {
    /// What more and less of the leaf buys.
    std::function<std::vector<model::advice::TradeOff>(const OutlookAsk&,
                                                       const std::atomic<bool>& cancel)>
        offers;
    /// The visits that it takes where one isn't enough. \param first  what was suggested
    std::function<model::advice::Stages(const OutlookAsk&, const model::advice::Suggestion& first,
                                        const std::atomic<bool>& cancel)>
        stages;
};

/// The model's own. \param tables  outlives the result
[[nodiscard]] OutlookWorks modelOutlookWorks(const model::Tables& tables);

} // namespace app
