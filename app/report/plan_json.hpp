#pragma once

#include "app/report/json_text.hpp"
#include "app/words/wording.hpp"
#include "model/advice/stages.hpp"
#include "model/advice/trade_off.hpp"

namespace app {

[[nodiscard]] Json toJson(const model::advice::TradeOff& tradeOff);
[[nodiscard]] Json toJson(const model::advice::Stages& stages, const Wording& wording);

} // namespace app
