// When each limit is met at the rates the aircraft has been flown at, and which clock stops it
// first.
//
// The hard questions.
//   Where does the line start? At the last reading, not at today: hours flown since then are not
// known,
//   so they are taken to have been flown at the same rate. Dates come out earlier, never later.
// While
//   records disagree, the earliest over every total that an answer may leave as the last.
//   A spell out of service ahead: likely and late wait for its end; early does not count on it.
//   A part of a day: the day before.
#pragma once

#include "engine/forecast/flying_ahead.hpp"
#include "engine/limits/due.hpp"

namespace twoclocks::forecast {

/// The last day that anything is carried forward to.
inline constexpr base::Date latest_day{84'005};  // 2199-12-31

/// Days on which a limit is met; none is "not at this rate", later than 2199 or never.
struct Projection {
    bool known{false};
    std::optional<base::Date> early;
    std::optional<base::Date> likely;
    std::optional<base::Date> late;
    facts::Clock binds{facts::Clock::calendar};  // the clock of the likely day
};

/// Total time of the aircraft at which the hours of a clock are met. A part gains what its aircraft
/// flies: its limit is met as many hours on as it has left.
/// Units: seconds. Errors: needs one reading. Source: common practice, no source.
[[nodiscard]] base::FlightTime met_at(const limits::ClockDue& clock,
                                      const timeline::AircraftState& state);

/// When one clock is met.
/// Units: days. Errors: known is false when the clock or, for hours, the rate is unknown; counts
/// have no
/// rate and are never projected.
/// Source: our choice, dates round earlier.
[[nodiscard]] Projection project(const limits::ClockDue& clock,
                                 const timeline::AircraftState& state,
                                 const FlyingAhead& ahead,
                                 base::Date today);

/// When an item is met: the sooner of its clocks, or the later where its limit says so, never after
/// a cap; each of early, likely and late on its own.
/// Unknown when
/// one of its hours or calendar clocks is.
/// Units: days. Errors: as project of one clock. Source: sooner of the limits, common practice.
[[nodiscard]] Projection project(const limits::ItemDue& item,
                                 const timeline::AircraftState& state,
                                 const FlyingAhead& ahead,
                                 base::Date today);

/// A mandatory item and when it is met; `item` is its place in the list it came from.
struct FirstStop {
    std::int32_t item{0};
    Projection projection;
};

/// The mandatory item that stops the aircraft first by its likely day (a passed one by its reading
/// or its day), with its
/// place in `items`; nothing when none has a known day.
/// Units: days. Errors: none. Source: least over all mandatory limits, our choice.
[[nodiscard]] std::optional<FirstStop> first_stop(const std::vector<limits::ItemDue>& items,
                                                  const timeline::AircraftState& state,
                                                  const FlyingAhead& ahead,
                                                  base::Date today);

/// Total time on a day to come on each line of the fan.
struct TotalsToCome {
    base::FlightTime early;  // the most
    base::FlightTime likely;
    base::FlightTime late;  // the fewest
};

/// Total time on a day to come, from the last reading on; the last total for a day before it.
/// Units: seconds. Errors: needs one reading. Source: the hours ahead, cut to the second.
[[nodiscard]] TotalsToCome totals_to_come(const timeline::AircraftState& state,
                                          const FlyingAhead& ahead,
                                          base::Date on);

/// Total time on a day in the past, between readings, cut to the second.
/// Units: seconds. Errors: zero without readings. Source: linear interpolation.
[[nodiscard]] base::FlightTime total_then(const timeline::AircraftState& state, base::Date on);

/// The rate at which both clocks of an item are met together: hours left over years left.
/// Units: seconds of flight a year of 12 months. Errors: nothing when either is unknown or used up.
/// Source: common practice, no source; whole years by anniversary and days over 365.
[[nodiscard]] std::optional<base::FlightTime> break_even(const limits::ItemDue& item,
                                                         base::Date today);

}  // namespace twoclocks::forecast
