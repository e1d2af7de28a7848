// How an aircraft may fly from its last reading on: what is expected, and how early and how late
// its hours may come.
//
// The hard questions.
//   Likely is what the pattern expects, month by month, without the days out of service that are
//   known. It can be added up by hand; half of the ways are there within days of it.
//   Early and late: in one of ten ways more is flown by then, in one of ten less. Early counts on
//   no day out of service.
//   A stated plan is the level of likely. It knows more than the past and less than it thinks:
//   early is never later than what was measured goes on to, late never sooner.
//   A plan that records disagree about only ever raises what was measured.
#pragma once

#include "engine/forecast/flight_paths.hpp"
#include "engine/forecast/hours_curve.hpp"

namespace twoclocks::forecast {

enum class RateBasis : std::uint8_t { unknown, measured, stated, stated_and_measured };

/// The hours ahead of one aircraft, counted from a day.
struct FlyingAhead {
    RateBasis basis{RateBasis::unknown};
    base::Date from;   // the day of the first reading that may be the last
    HoursCurve early;  // the most hours
    HoursCurve likely;
    HoursCurve late;             // the fewest
    FlyingModel model;           // of likely
    bool plan_gives_way{false};  // the plan is disputed and less than what was measured
};

/// The hours ahead as recorded, and as planned where there is a plan.
/// Units: days, seconds. Errors: basis unknown without a reading, or under 28 days of service and
/// no plan.
/// Source: our choice; of a thousand invented histories the band holds between 750 and 850.
[[nodiscard]] FlyingAhead flying_ahead(const timeline::AircraftState& state);

/// The hours ahead at even rates.
/// Units: seconds a day. Range: least <= likely <= greatest. Errors: as above.
/// Source: our choice.
[[nodiscard]] FlyingAhead even_ahead(const timeline::AircraftState& state,
                                     double least,
                                     double likely,
                                     double greatest);

/// True for a total that may be the last: while records disagree, each one that an answer might
/// leave as the last.
/// Units: none. Errors: none. Source: our choice, dates come out earlier.
[[nodiscard]] bool may_be_last(const timeline::AircraftState& state,
                               const timeline::UsagePoint& point);

/// What the plan had for the days from the one it was made on to the last reading.
/// Units: seconds. Errors: nothing without a plan, or when it is younger than 28 days of readings.
/// Source: our choice.
[[nodiscard]] std::optional<base::FlightTime> planned_since(const timeline::AircraftState& state);

/// What is expected in a year, in service throughout.
/// Units: seconds. Errors: zero where nothing is known. Source: our choice.
[[nodiscard]] base::FlightTime a_year(const FlyingAhead& ahead);

}  // namespace twoclocks::forecast
