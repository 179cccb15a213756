#pragma once

#include "app/words/wording.hpp"
#include "model/diary/tree_diary.hpp"

namespace app {

/// What is to be done: "Cut again over “path”", "Look it over before the storms".
[[nodiscard]] QString dueWhat(const model::diary::Due& due, const Wording& wording);
/// When: "1 July to 30 September 2026", "since 20 July 2025".
[[nodiscard]] QString dueWhen(const model::diary::Due& due, const Units& units);
/// Why, a sentence or two.
[[nodiscard]] QString dueWhy(const model::diary::Due& due, const Wording& wording);
/// "overdue", "now", "later".
[[nodiscard]] QString dueStateWords(model::diary::DueState state);

/// One cut as the diary tells it: "took off “old limb”". A limb that is gone keeps its name where
/// the visit kept its shape.
[[nodiscard]] QString cutMade(const model::Cut& cut, const model::Visit& visit,
                              const Wording& wording);
/// What was done on a visit, measured and noted, a sentence each.
[[nodiscard]] QStringList visitLines(const model::Visit& visit, const Wording& wording);
/// The photos of a visit, a line each, where they can't be shown.
[[nodiscard]] QStringList photoLines(const model::Visit& visit);
/// "20 July 2024, the gardener and a neighbour".
[[nodiscard]] QString visitTitle(const model::Visit& visit, const Units& units);

/// "2025: 14 % of the leaf taken, 25 % may go; 11 % left."
[[nodiscard]] QString seasonSentence(const model::diary::SeasonLeaf& season, const Units& units);
/// The season by its summer: "2025", or "2024-25" where that spans two calendar years.
[[nodiscard]] QString seasonName(const model::diary::SeasonLeaf& season, const Wording& wording);

/// "Over “path” the headroom shrank by 0.30 m from ... to ...".
[[nodiscard]] QString sentence(const model::growth::MeasuredGrowth& grown, const Wording& wording);
/// "8 cm on “stem”, of 14 July 2023: about 5 cm open, closed by about 2030."
[[nodiscard]] QString sentence(const model::diary::WoundState& wound, const Wording& wording);

} // namespace app
