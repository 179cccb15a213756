#pragma once

#include "model/garden/extras.hpp"
#include "model/geometry/vec3.hpp"

#include <optional>
#include <string>
#include <vector>

namespace model {

/// One measured place along a limb.
struct Station {
    Vec3 position_m{};   ///< from the middle of the tree's base at the ground
    double diameter_m{}; ///< over bark, > 0
    Extras extras{};
    friend bool operator==(const Station&, const Station&) = default;
};

/// How a limb joins the one it grows from.
enum class Union {
    sound,        ///< a collar, wood to wood
    codominant,   ///< two stems of much the same size, no collar
    includedBark, ///< bark pressed between the two
};

/// How the diameters of a limb were found; it decides how far they are trusted.
enum class Measured { taped, sighted, guessed };

enum class DefectKind {
    cavity,     ///< hollow with a closed wall
    openCavity, ///< hollow with an opening
    crack,
    dead,    ///< dead from here to the tip
    broken,  ///< snapped or torn here: what lies beyond hangs or is lost
    rubbing, ///< crosses another limb here and rubs on it; this one is to go
};

/// Something wrong at a place along a limb.
struct Defect {
    DefectKind kind{};
    double at_m{};                        ///< along the limb from its union
    std::optional<double> residualWall_m; ///< sound wood left around a cavity, where it is
                                          ///< thinnest; blank = not known
    std::optional<double> thickestWall_m; ///< the same where it is thickest, of a closed cavity
                                          ///< that lies off the middle; blank = as thick all round
    std::optional<double> opening_deg;    ///< of an open cavity, share of the circle, 0..360
    std::string note;
    Extras extras;
    friend bool operator==(const Defect&, const Defect&) = default;
};

enum class FoliageDensity { sparse, medium, dense };

/// The leafy part of a limb: a body of one radius around its axis, and shoots that hang from it.
struct Foliage {
    double from_m{};    ///< where leaves start, along the limb from its union
    double radius_m{};  ///< of the leafy body, > 0
    double hanging_m{}; ///< length of the shoots that hang below the body, >= 0
    std::optional<double>
        hem_m; ///< height above the ground that the shoots were lifted to, if ever
    FoliageDensity density{FoliageDensity::medium};
    double thinned{}; ///< share of its own small shoots that was thinned out since, 0..1
    Extras extras;
    friend bool operator==(const Foliage&, const Foliage&) = default;
};

/// A post or stay that carries a limb from below.
struct Prop {
    double at_m{}; ///< along the limb from its union
    Extras extras;
    friend bool operator==(const Prop&, const Prop&) = default;
};

/// A limb. The trunk is the one without a parent.
struct Limb {
    std::string id;                    ///< unique in its tree
    std::string name;                  ///< what the gardener calls it; may be empty
    std::optional<std::string> parent; ///< id of the limb it grows from; none for the trunk
    double attachedAt_m{};             ///< along the parent's axis from the parent's union
    std::vector<Station> stations;     ///< from the union to the tip, at least two
    Union unionKind{Union::sound};
    Measured measured{Measured::sighted};
    std::vector<Defect> defects;
    std::optional<Foliage> foliage; ///< none: a bare limb
    double fruit_kg{};              ///< ripe crop carried by this limb alone, >= 0
    std::vector<Prop> props;
    Extras extras;
    friend bool operator==(const Limb&, const Limb&) = default;
};

/// Length of the axis, m.
[[nodiscard]] double length_m(const Limb& limb);

/// A place along a limb: position, diameter and the direction of the axis (unit, towards the tip).
struct AxisPoint {
    Vec3 position_m{};
    double diameter_m{};
    Vec3 direction{};
};

/// The place `at_m` along a limb; straight and linearly tapered between stations. Clamped to
/// the limb's ends.
[[nodiscard]] AxisPoint axisPoint(const Limb& limb, double at_m);

/// Distance along the limb of the axis point nearest to `position_m`.
[[nodiscard]] double nearestAlong_m(const Limb& limb, Vec3 position_m);

/// The limb's axis from `from_m` to `to_m` as stations: the ends and all stations between.
[[nodiscard]] std::vector<Station> stretch(const Limb& limb, double from_m, double to_m);

} // namespace model
