#pragma once

#include "app/report/json_text.hpp"
#include "model/advice/hold.hpp"

namespace app {

[[nodiscard]] Json toJson(const model::growth::Regrowth& regrowth);
[[nodiscard]] Json toJson(const model::growth::ShootRate& shoots);
[[nodiscard]] Json toJson(const model::advice::Hold& hold);

} // namespace app
