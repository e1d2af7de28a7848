// What a person enters, checked against what is recorded, before it becomes a fact.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Problems of a new reading of the meter in use. A falling meter is refused: if the meter was
/// changed, rolled over or was dead, that is a record of its own, and then the reading is right.
/// Units: hours as the meter shows them. Range: not before the meter, not after today, not more
/// than
/// 24 hours a day since the reading before or until the one after.
/// Errors: entry_no_meter, entry_day_ahead, entry_before_meter, entry_falls, entry_above_later,
/// entry_too_fast; field is `reads` or `date`.
/// Source: common practice, no source; 24 hours in a day.
[[nodiscard]] base::Problems check_reading(const AircraftState& state,
                                           base::FlightTime reads,
                                           base::Date on,
                                           base::Date today);

/// Problems of a total time told for a day, as at the fit of a part. What else is recorded of that
/// day may have been before it or after.
/// Units: hours. Range: between what is recorded of the days before and after, not more than 24
/// hours a day from either.
/// Errors: entry_total_falls, entry_total_above_later, entry_too_fast; field is `total`.
/// Source: as above.
[[nodiscard]] base::Problems check_total(const AircraftState& state,
                                         base::FlightTime total,
                                         base::Date on);

/// The meter to read: the last one fitted; null when there is none.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] const MeterState* meter_in_use(const AircraftState& state);

}  // namespace twoclocks::timeline
