#pragma once

#include "model/garden/extras.hpp"
#include "model/garden/goal.hpp"
#include "model/garden/limb.hpp"
#include "model/garden/photo.hpp"
#include "model/garden/visit.hpp"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace model {

enum class Vigour { young, mature, old, stressed };

/// Whether a law, order or by-law protects the tree; only the local authority knows.
enum class Protection { unknown, none, listed };

/// A sign that a tree needs a professional's eyes, as a gardener can see it from the ground.
enum class Sign {
    fungus,       ///< brackets or mushrooms on stem or roots
    oozing,       ///< wet or bleeding bark
    heavingSoil,  ///< soil lifting or cracking at the base
    newLean,      ///< leans, or leans more than it did
    hungBranch,   ///< broken and caught in the crown
    deadTop,      ///< the top has died back
    rootsCut,     ///< digging or paving cut roots
    cavityAtBase, ///< a hollow at the foot of the stem
    batsOrHole,   ///< a hole in use by bats or birds
    nest,         ///< a nest in use
};

struct Observation {
    Sign sign{};
    std::string note;
    Extras extras;
    friend bool operator==(const Observation&, const Observation&) = default;
};

/// When a deciduous tree is in leaf, as the gardener has seen it. Blank: by species and place
/// (docs/methods/light.md, L14).
struct LeafDates {
    std::optional<std::chrono::month_day> on;  ///< its buds break
    std::optional<std::chrono::month_day> off; ///< half of its leaves are down
    friend bool operator==(const LeafDates&, const LeafDates&) = default;
};

/// From one day of the year to the next time another comes, 0..364 (days of a common year).
[[nodiscard]] int daysBetween(std::chrono::month_day from, std::chrono::month_day to);

/// A tree: its place, its limbs, what was seen of it and what was done to it.
struct Tree {
    std::string id;      ///< unique in the garden
    std::string name;    ///< what the gardener calls it
    std::string species; ///< Latin name, a key into the species tables
    Point2 position_m{}; ///< middle of the stem at the ground, garden frame
    std::optional<int> plantedYear;
    Vigour vigour{Vigour::mature};
    Protection protection{Protection::unknown};
    LeafDates leafDates;
    std::vector<Limb> limbs; ///< the trunk and all others, in any order
    std::vector<Observation> observations;
    std::vector<Photo> photos;
    std::vector<Goal> goals; ///< beyond the headroom of the strips
    std::vector<Visit> visits;
    Extras extras;
    friend bool operator==(const Tree&, const Tree&) = default;
};

inline constexpr std::size_t kNoLimb = static_cast<std::size_t>(-1);

/// Index of the limb with this id, or kNoLimb.
[[nodiscard]] std::size_t limbIndex(const Tree& tree, const std::string& id);

/// The limbs as a rooted tree, worked out once: every walk over limbs starts here.
struct LimbOrder {
    std::size_t trunk{kNoLimb};
    std::vector<std::size_t> parent;                ///< per limb; kNoLimb for the trunk
    std::vector<std::vector<std::size_t>> children; ///< per limb, by where they join, base first
    std::vector<std::size_t> rootFirst;             ///< every limb after the one it grows from
};

/// \throws std::domain_error  if there is not exactly one trunk, a parent is missing, or limbs
///         grow from each other in a circle. A valid garden (validate.hpp) never does.
[[nodiscard]] LimbOrder limbOrder(const Tree& tree);

/// The limb and everything that grows from it.
[[nodiscard]] std::vector<std::size_t> limbAndBeyond(const LimbOrder& order, std::size_t limb);

/// Height of a limb's highest wood or leaf above the ground at its tree's base, m; 0 if all of it
/// is below.
[[nodiscard]] double top_m(const Limb& limb);

/// Height of the tree's highest wood or leaf above the ground at its base, m.
[[nodiscard]] double height_m(const Tree& tree);

/// In the US; the 1.3 m of most of Europe differs by less than the tape's error.
inline constexpr double kBreastHeight_m = 1.37;

/// Over-bark diameter of the stem at breast height, m, or where its lowest limb joins if that is
/// lower, as a low-forking tree is taped below its fork.
[[nodiscard]] double stemDiameter_m(const Tree& tree);

} // namespace model
