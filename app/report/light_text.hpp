#pragma once

#include "app/format/units.hpp"
#include "app/report/text_page.hpp"
#include "model/assessment/light_year.hpp"

#include <optional>

namespace app {

/// The year of light on each planting: class and need, month by month, who takes it, what a cut
/// would give back.
/// \param month  blank: the whole year
void addLightYear(TextPage& page, const model::LightYear& year,
                  std::optional<std::chrono::month> month, const model::Garden& garden,
                  const model::Tables& tables, const Units& units);

} // namespace app
