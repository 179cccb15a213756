#pragma once

#include "model/garden/garden.hpp"

#include <cstdint>

/// A garden that validate() accepts, with every kind of field in it somewhere, odd names, unknown
/// fields and numbers of full length. The same seed always gives the same garden.
[[nodiscard]] model::Garden randomGarden(std::uint32_t seed);
