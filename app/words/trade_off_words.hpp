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

/// The thing itself in a few words, to be chosen from a list: "Room over “drive”". \param subject
/// index into TradeOff::subjects
[[nodiscard]] QString tradeOffSubject(const model::advice::TradeOff& tradeOff, std::size_t subject,
                                      const Wording& wording);

/// What is measured, as the scale beside a curve of it says: "height that is clear".
[[nodiscard]] QString tradeOffAxis(model::advice::Lack lack);

/// How much of it there is: a height, a share of strength, hours of sun.
[[nodiscard]] QString tradeOffFigure(model::advice::Lack lack, const std::optional<double>& value,
                                     const Units& units);

} // namespace app
