#pragma once

#include "app/words/wording.hpp"
#include "model/assessment/light_year.hpp"

namespace app {

/// "full sun", "part sun", "part shade", "full shade".
[[nodiscard]] QString lightClassWords(model::light::LightClass lightClass);

/// "enough", "barely enough", "too dark"; empty when the table has no figure.
[[nodiscard]] QString suitsWords(model::light::Suits suits);

/// The months that count for plants at a place: "April to September".
[[nodiscard]] QString growingMonthsWords(const model::Place& place, const Units& units);

/// Which part of a planting it is: “yew hedge”, its south face; “yew hedge”, its top; “herb bed”.
[[nodiscard]] QString surfaceName(const model::light::SurfaceLight& light,
                                  const model::Garden& garden);
/// The same without the planting's name: "south face", "top"; empty for a bed or lawn.
[[nodiscard]] QString partName(const model::light::SurfaceLight& light,
                               const model::Garden& garden);

/// The growing season in a few sentences: hours, moles, the class, and whether the plant there has
/// enough.
[[nodiscard]] QString seasonSentence(const model::light::SurfaceLight& light,
                                     const model::Garden& garden, const model::Tables& tables,
                                     const Units& units);

/// What each tree, and the limbs of it that take most, takes of a mean day: a sentence for each
/// tree that takes anything worth telling, the greatest first. \param of  the growing season or a
/// month of this surface
[[nodiscard]] QStringList takenSentences(const model::light::MonthLight& of,
                                         const model::Garden& garden, const Units& units);

/// One cut and what it gives: “Take off “path limb” of “the old apple”: 0.9 h of sun and 2.4 mol a
/// day for 11 % of its leaf, 5 minutes of sun for each percent.”
[[nodiscard]] QString cutSentence(const model::CutLight& cut, const model::Garden& garden,
                                  const Units& units);

/// The same cut in a few words: "take off “path limb”", "thin “path limb” by 25 %".
[[nodiscard]] QString cutTitle(const model::CutLight& cut, const model::Garden& garden,
                               const Units& units);

/// Whose weather the year was reckoned with.
[[nodiscard]] QString weatherSentence(const model::light::Weather& weather, const Units& units);

/// Hours as a clock tells short times: "2.4 h", "12 min".
[[nodiscard]] QString timeWords(double hours, const Units& units);

/// A daily light integral: "24 mol", "3.4 mol".
[[nodiscard]] QString molWords(double dli_mol, const Units& units);

} // namespace app
