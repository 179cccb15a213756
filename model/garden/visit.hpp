#pragma once

#include "model/garden/cut.hpp"
#include "model/garden/limb.hpp"
#include "model/garden/photo.hpp"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace model {

/// Headroom over one strip, before and after a visit.
struct HeadroomRecord {
    std::string strip; ///< id of the ground strip
    std::optional<double> before_m;
    std::optional<double> after_m;
    Extras extras;
    friend bool operator==(const HeadroomRecord&, const HeadroomRecord&) = default;
};

/// Where the tip of a limb was, before and after a visit, from the middle of the tree's base.
struct TipRecord {
    std::string limb; ///< id
    std::optional<Vec3> before_m;
    std::optional<Vec3> after_m;
    Extras extras;
    friend bool operator==(const TipRecord&, const TipRecord&) = default;
};

/// A wound that a cut of the visit left.
struct Wound {
    std::string limb;    ///< id of the limb that bears it, which stays on the tree
    double at_m{};       ///< along that limb
    double diameter_m{}; ///< of the cut wood, > 0
    std::optional<std::chrono::year_month_day> closed; ///< when it was seen to be closed
    Extras extras;
    friend bool operator==(const Wound&, const Wound&) = default;
};

/// The weather of the visit. Blank: not noted.
struct VisitWeather {
    std::optional<double> air_C;    ///< in the shade
    std::optional<double> humidity; ///< relative, 0..1
    std::optional<double> gust_m_s;
    Extras extras;
    friend bool operator==(const VisitWeather&, const VisitWeather&) = default;
};

/// One visit to a tree with a saw, a pair of secateurs, or only a tape.
struct Visit {
    std::string id;
    std::chrono::year_month_day date{};
    std::string by; ///< who did it; may be empty
    std::vector<Cut> cuts;
    std::vector<Cut> left;           ///< planned, and not made
    std::optional<double> leafShare; ///< of the leaf the tree had, 0..1; blank = not known
    std::vector<HeadroomRecord> headroom;
    std::vector<TipRecord> tips;
    std::vector<Wound> wounds;
    /// The limbs that the cuts took or changed in the sketch, as they were drawn until then;
    /// empty: the sketch was not changed with the visit.
    std::vector<Limb> limbsBefore;
    std::optional<VisitWeather> weather;
    std::vector<Photo> photos;
    std::string note;
    std::optional<std::chrono::year_month_day> nextDue;
    Extras extras;
    friend bool operator==(const Visit&, const Visit&) = default;
};

} // namespace model
