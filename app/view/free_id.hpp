#pragma once

#include "model/garden/garden.hpp"

#include <string>

namespace app {

/// An id that nothing in the garden has: "hedge-1", "hedge-2", ...
[[nodiscard]] std::string freeId(const model::Garden& garden, const std::string& word);

} // namespace app
