#pragma once

#include "app/report/json_text.hpp"
#include "model/advice/shared_work.hpp"

#include <span>

namespace app {

/// The work in JSON, as docs/assessment.schema.json describes it.
[[nodiscard]] Json piecesJson(std::span<const model::advice::Piece> pieces);
[[nodiscard]] Json dropZoneJson(std::span<const model::advice::InZone> inZone);
[[nodiscard]] Json toJson(const model::advice::Debris& debris);
/// Numbers of the cuts, counted from 1 as they are shown.
[[nodiscard]] Json toJson(const model::advice::SharedWork& shared);

} // namespace app
