// Totals between readings, and rates in words.
//
// Total time between two readings is taken to grow evenly.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::forecast {

inline constexpr std::int32_t fewest_days = 28;  // below this, readings say nothing of a rate
inline constexpr std::int32_t year_days = 365;
inline constexpr double days_a_year = 365.25;

/// Total time on a day between readings, by even growth; the first or last total outside them.
/// Units: seconds. Errors: an empty series gives 0. Source: linear interpolation.
[[nodiscard]] double total_at(const timeline::UsageSeries& usage, base::Date on);

/// To the nearest tenth of an hour: an expectation is no record.
/// Units: seconds. Range: below nothing is nothing. Errors: none. Source: our choice.
[[nodiscard]] base::FlightTime nearest_tenth(double seconds);

/// As above.
/// Units: seconds. Errors: none. Source: our choice.
[[nodiscard]] base::FlightTime nearest_tenth(base::FlightTime time);

/// Seconds a day as tenths of an hour a year, rounded to nearest: for showing only.
/// Units: seconds. Errors: none. Source: our choice.
[[nodiscard]] base::FlightTime a_year(double seconds_a_day);

}  // namespace twoclocks::forecast
