#pragma once

#include "model/garden/garden.hpp"

#include <string>
#include <vector>

namespace app {

/// JSON pointers to every field that this version doesn't know, in document order. They are kept
/// when the garden is saved; but one may be a known field misspelt.
[[nodiscard]] std::vector<std::string> unknownFields(const model::Garden& garden);

} // namespace app
