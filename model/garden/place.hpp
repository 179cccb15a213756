#pragma once

#include "model/garden/extras.hpp"

#include <string>
#include <vector>

namespace model {

/// Where the garden lies on the earth.
struct Place {
    double latitude_deg{};  ///< -90..90, north positive
    double longitude_deg{}; ///< -180..180, east positive
    double altitude_m{};    ///< above the sea, -430..6000
    std::string timeZone;   ///< IANA name, "Europe/Dublin"; may be empty: then sun time is used
    /// Bright sunshine as a share of the time it could shine, mean of each month from January;
    /// empty: not known, and light is reckoned for cloudless skies.
    std::vector<double> sunshineShare{};
    /// Months in which storms come, 1..12, in any order; empty: by latitude
    /// (docs/methods/diary.md).
    std::vector<int> stormMonths{};
    Extras extras{};
    friend bool operator==(const Place&, const Place&) = default;
};

/// What the wind crosses before it reaches the garden, as a gardener can judge it.
enum class Exposure {
    open,      ///< fields, water or lawns with scattered low obstacles
    scattered, ///< scattered trees, hedges and houses
    builtUp,   ///< closely spaced houses or woodland
    walled,    ///< built-up and enclosed by walls or tall hedges as well
};

} // namespace model
