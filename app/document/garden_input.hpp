#pragma once

#include "model/document/fault.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <istream>
#include <optional>
#include <string>
#include <vector>

namespace app {

/// A garden document as read, or everything that is wrong with it.
struct GardenInput {
    std::string name; ///< as messages call it: the path as given, or "standard input"
    std::optional<model::Garden> garden; ///< present exactly when there are no faults
    std::vector<model::Fault> faults;
};

/// Reads the file at `path` ("-": standard input), of either form, and holds it against the tables.
/// Never writes, and of a JSON form never reads more than a garden document may hold.
[[nodiscard]] GardenInput readGardenInput(const std::string& path, const model::Tables& tables,
                                          std::istream& standardInput);

} // namespace app
