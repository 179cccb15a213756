#pragma once

#include "model/document/fault.hpp"
#include "model/garden/garden.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace model {

/// A garden read from its JSON form (docs/garden.schema.json), or what is wrong with the text.
struct GardenReading {
    std::optional<Garden> garden; ///< present exactly when there are no faults
    std::vector<Fault> faults;
};

/// Reads a garden document. Checks form and limits (limits.hpp) and that the garden makes sense
/// by itself (validate.hpp, without tables). Never throws for bad text.
[[nodiscard]] GardenReading readGarden(std::string_view text);

/// Writes a garden: fields in a fixed order, numbers in the shortest form that reads back to the
/// same double, unknown fields where they were found. writeGarden(readGarden(t)) == t for any t
/// that writeGarden made.
/// \throws std::domain_error  on a garden that validate() refuses for a number that is not finite,
///         and on extras that are not JSON or bear the name of a known field
[[nodiscard]] std::string writeGarden(const Garden& garden);

} // namespace model
