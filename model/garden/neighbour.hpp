#pragma once

#include "model/garden/tree.hpp"

namespace model {

/// A tree or tall shrub that throws shade and is not sketched limb by limb: a stem and one crown,
/// an ellipsoid from the crown's base to the top. Nobody cuts it here.
struct Neighbour {
    std::string id;
    std::string name;
    std::string species;                  ///< Latin name, a key into the species tables
    Point2 position_m{};                  ///< middle of the stem at the ground, garden frame
    double height_m{};                    ///< > crownBase_m
    double crownBase_m{};                 ///< lowest leaf over the ground, >= 0
    double spread_m{};                    ///< of the crown on plan, > 0
    std::optional<double> across_m;       ///< the same across that; blank: the crown is round
    double bearing_deg{};                 ///< along which `spread_m` was measured, 0..360
    std::optional<double> stemDiameter_m; ///< blank: not known, and its shade is left out
    FoliageDensity density{FoliageDensity::medium};
    LeafDates leafDates;
    Extras extras;
    friend bool operator==(const Neighbour&, const Neighbour&) = default;
};

} // namespace model
