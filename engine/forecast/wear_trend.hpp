// When the wear of an item would meet its limit if it went on as it was measured.
//
// The hard questions.
//   Which pace? The steeper of two straight lines that end at the last measurement: one from the
//   measurement before it, one from the first. So a sudden change for the worse counts at once.
//   By hours or by days? By total time where both ends have one, else by days.
//   A trend is no limit: it extends nothing, and an item with an interval keeps it.
//   Measurements that records disagree about, but for the one that counts, draw no line.
#pragma once

#include "engine/forecast/projection.hpp"
#include "engine/timeline/wear.hpp"

namespace twoclocks::forecast {

enum class TrendKind : std::uint8_t {
    none,     // nothing to compare: no limit, no measurement, another unit, or past the limit
    one,      // a single measurement
    flat,     // not getting worse
    no_rate,  // by hours, and the rate of flying is not known
    far,      // not before 2199
    on_a_day  // `likely` holds
};

/// The trend of an item, and the line it was taken from.
struct WearTrend {
    TrendKind kind{TrendKind::none};
    std::optional<base::Date> likely;
    timeline::WearPoint from;
    timeline::WearPoint to;
    bool by_hours{false};
    base::FlightTime hours_between;
    base::FlightTime hours_left;  // from the last measurement on
    std::int32_t days_between{0};
    std::int32_t days_left{0};
};

/// The trend of measured wear towards its limit.
/// Units: days, seconds of flight. Range: likely is today or later. Errors: see TrendKind.
/// Source: a straight line through two points; the steeper of two, our choice, because wear speeds
/// up; what is left is cut to whole seconds and days, so that it comes earlier.
[[nodiscard]] WearTrend wear_trend(const timeline::WearState& wear,
                                   const timeline::AircraftState& state,
                                   const FlyingAhead& ahead,
                                   base::Date today);

}  // namespace twoclocks::forecast
