#pragma once

#include "app/words/wording.hpp"
#include "model/advice/trade_off.hpp"

#include <QStringList>

namespace app {

/// What is being bought: "headroom", "relief of the hardest pressed limb", "sun on the hedge".
[[nodiscard]] QString tradeOffTitle(const model::advice::TradeOff& tradeOff,
                                    const Wording& wording);

/// What there is now and what each share of the leaf buys, a line for each; a share that buys no
/// more than the one before is left out.
[[nodiscard]] QStringList tradeOffLines(const model::advice::TradeOff& tradeOff,
                                        const Wording& wording);

} // namespace app
