#pragma once

#include "model/garden/cut.hpp"

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

/// One visit to a tree with a saw, a pair of secateurs, or only a tape.
struct Visit {
    std::string id;
    std::chrono::year_month_day date{};
    std::string by; ///< who did it; may be empty
    std::vector<Cut> cuts;
    std::optional<double> leafShare; ///< of the leaf the tree had, 0..1; blank = not known
    std::vector<HeadroomRecord> headroom;
    std::string note;
    std::optional<std::chrono::year_month_day> nextDue;
    Extras extras;
    friend bool operator==(const Visit&, const Visit&) = default;
};

} // namespace model
