#pragma once

#include "app/format/units.hpp"
#include "app/report/json_text.hpp"
#include "model/crown/sketch_check.hpp"

#include <optional>

namespace app {

/// A sketch against published trees of its girth; null where nothing is known of such trees.
[[nodiscard]] Json sketchJson(const std::optional<model::SketchCheck>& check, const Units& units);

} // namespace app
