#pragma once

#include "model/document/garden_json.hpp"
#include "model/garden/garden.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// A garden taken apart into the rows that its file keeps, and the steps of its history in the same
/// rows. A part is the garden itself, a thing that stands in it, or a limb or visit of a tree; its
/// document is its JSON form (model/document/fields.hpp) without the parts that have their own row.
namespace app {

/// Which part of a garden.
struct PartKey {
    std::string kind; ///< "garden", or the list it stands in: "trees", "limbs", "strips"...
    std::string tree; ///< id of the tree that a limb or a visit belongs to; else empty
    std::string id;   ///< empty for the garden itself
    friend auto operator<=>(const PartKey&, const PartKey&) = default;
};

/// What a part is.
struct Part {
    std::int64_t place{}; ///< in its list, from 0
    std::string document; ///< a JSON object on one line
    friend bool operator==(const Part&, const Part&) = default;
};

using Parts = std::map<PartKey, Part>;

/// One part before and after an edit; blank: it was not there.
struct PartChange {
    PartKey key;
    std::optional<Part> before;
    std::optional<Part> after;
    friend bool operator==(const PartChange&, const PartChange&) = default;
};

/// An edit, part by part, each part once, sorted by key. Empty: nothing changed.
using GardenChange = std::vector<PartChange>;

/// \throws std::domain_error  on a garden that writeGarden() refuses
[[nodiscard]] Parts partsOf(const model::Garden& garden);

/// The garden that these parts make, or what is wrong with them. Pointers are those of its JSON
/// form. Law: gardenOf(partsOf(garden)) == garden for each garden that validate() accepts.
[[nodiscard]] model::GardenReading gardenOf(const Parts& parts);

/// What must change to make `after` of `before`.
/// \throws std::domain_error  on a garden that writeGarden() refuses
[[nodiscard]] GardenChange difference(const model::Garden& before, const model::Garden& after);

/// The garden after a change. Law: applied(a, difference(a, b)) == b for gardens that validate()
/// accepts. Parts that the garden has not are added; it is not validated.
[[nodiscard]] model::GardenReading applied(model::Garden garden, const GardenChange& change);

/// The way back.
[[nodiscard]] GardenChange reversed(GardenChange change);

/// Two edits as one.
[[nodiscard]] GardenChange merged(const GardenChange& first, const GardenChange& then);

} // namespace app
