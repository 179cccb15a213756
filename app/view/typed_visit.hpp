#pragma once

#include "app/format/units.hpp"
#include "app/view/strip_model.hpp"
#include "model/garden/visit.hpp"

#include <QString>

#include <chrono>
#include <span>
#include <string>
#include <vector>

namespace app {

/// What a person typed of a visit besides its cuts, in the reader's units; blank: not known.
struct TypedVisit {
    QString date;
    QString nextDue;
    QString air;
    QString humidity;
    QString gust;
};

/// A day as it is typed and shown again: ISO 8601.
[[nodiscard]] QString isoDay(std::chrono::year_month_day date);

/// These read a part into the visit.
/// \param today  an example of a day, where one can't be read
/// \returns a sentence on what can't be read and how to write it; empty: all could be
[[nodiscard]] QString readDays(const TypedVisit& typed, const Units& units,
                               std::chrono::year_month_day today, model::Visit& visit);
[[nodiscard]] QString readWeather(const TypedVisit& typed, const Units& units, model::Visit& visit);
[[nodiscard]] QString readHeadroom(std::span<const StripHeights> strips, const Units& units,
                                   model::Visit& visit);

} // namespace app
