#pragma once

#include "app/report/text_page.hpp"
#include "app/words/wording.hpp"
#include "model/advice/stages.hpp"
#include "model/advice/trade_off.hpp"

#include <vector>

namespace app {

/// Adds the visits of a job that takes several; nothing if one does.
void addStages(TextPage& page, const model::advice::Stages& stages, const Wording& wording);

/// Adds what more and less of the leaf buys; nothing for an empty list.
void addTradeOffs(TextPage& page, const std::vector<model::advice::TradeOff>& tradeOffs,
                  const Wording& wording);

} // namespace app
