// How fast an aircraft is flown, from readings that are not on month ends.
//
// Total time between two readings is taken to grow evenly. The fan is plain: the least, the mean
// and the
// greatest rate over trailing windows of the aircraft's own history, and it says so. It is no
// forecast of
// chance: it shows how differently this aircraft was flown before.
//
// Not covered here: seasons, recency, resampling, back-test.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::forecast {

enum class RateBasis : std::uint8_t { unknown, measured, stated, stated_and_measured };

/// Rates in seconds a day, least <= likely <= greatest.
struct UsageRate {
    RateBasis basis{RateBasis::unknown};
    double least{0};
    double likely{0};
    double greatest{0};
    std::int32_t windows{0};      // how many trailing windows were looked at
    std::int32_t window_days{0};  // how long each is
    base::Date from;              // the history that was used
    base::Date to;
    bool plan_gives_way{false};  // the plan is disputed and less than what was measured
};

inline constexpr std::int32_t fewest_days = 28;  // below this, readings say nothing of a rate
inline constexpr std::int32_t year_days = 365;
inline constexpr std::int32_t step_days = 30;
inline constexpr std::int32_t history_days = 5 * 365;
inline constexpr double days_a_year = 365.25;

/// The rate of an aircraft. A stated plan is the likely rate; the fan stays what was measured,
/// widened to hold the plan. A plan that records disagree about only ever raises a measured rate.
/// Units: seconds a day. Range: 0 to 86,400. Errors: basis unknown when under 28 days of history
/// and no plan.
/// Source: our choice, because a stated plan knows more than the past and less than it thinks.
[[nodiscard]] UsageRate measure(const timeline::AircraftState& state);

/// Total time on a day between readings, by even growth; the first or last total outside them.
/// Units: seconds. Errors: an empty series gives 0. Source: linear interpolation.
[[nodiscard]] double total_at(const timeline::UsageSeries& usage, base::Date on);

/// Seconds a day as tenths of an hour a year, rounded to nearest: for showing only.
/// Units: seconds. Errors: none. Source: our choice.
[[nodiscard]] base::FlightTime a_year(double seconds_a_day);

}  // namespace twoclocks::forecast
