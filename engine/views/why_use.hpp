// Whys of storage, of hours that a meter did not count, and of kinds of flying.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Adds what storage has to do with a calendar; true when that says where it counts from.
/// Units: days. Errors: none. Source: limits/in_force.hpp.
[[nodiscard]] bool explain_storage_day(Why& why, const limits::ClockDue& clock);

/// Adds when a limit counts, where that is not always.
/// Units: none. Errors: none. Source: limits/in_force.hpp.
void explain_in_force(Why& why, const limits::ItemDue& item);

/// Adds every hour of the total that no meter counted.
/// Units: hours. Errors: none. Source: timeline/meter_adjust.hpp.
void explain_adjusted(Why& why, const Assessed& aircraft, base::HoursForm form);

/// Hours of every adjustment, for one form that loses nothing.
/// Units: seconds. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::FlightTime> adjusted_hours(const Assessed& aircraft);

/// Adds what kinds of flying used of an interval on top of the hours flown.
/// Units: hours. Errors: none. Source: limits/hours_factor.hpp.
void explain_factors(Why& why,
                     const Assessed& aircraft,
                     const limits::ItemDue& item,
                     const limits::ClockDue& clock,
                     base::HoursForm form);

/// Kinds of flying on record that no factor is on record for, and storage without its document.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> use_cautions(const Assessed& aircraft);

}  // namespace twoclocks::views
