// Why the hours ahead are taken as they are, and how sure they are.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// The level, the season and the plan that the expected hours rest on.
/// Units: hours. Errors: says so where nothing is known. Source: forecast/pattern.hpp.
[[nodiscard]] Why why_rate(const Assessed& aircraft);

/// How far the hours ahead may stray from what is expected.
/// Units: hours. Errors: nothing is added where nothing is known.
/// Source: forecast/flight_paths.hpp.
void explain_ways(Why& why, const Assessed& aircraft);

/// The months from the last reading to the day on which the hours of a clock end, so that a person
/// can add them up.
/// Units: hours. Errors: says so when they never end. Source: forecast/flying_ahead.hpp.
void explain_months_to(Why& why, const Assessed& aircraft, const limits::ClockDue& clock);

}  // namespace twoclocks::views
