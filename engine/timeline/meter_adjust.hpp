// Hours that a meter did not count: it was dead, rolled over, or was wrong in another way.
//
// The hard questions.
//   From when do they count? From the day of the record on, on top of what the meter shows. Nothing
//   recorded before that day changes.
//   The day of a rollover itself: a reading in the upper half of what the meter can count was taken
//   before it, one in the lower half after it. Of a dead meter every reading of that day is after.
//   Hours of a dead meter come at once, and may be more than a day has. Hours of a rollover do not:
//   they only make good what the reading fell by.
//   Records that disagree about them: the most hours, from the first day of any; what is read from
//   that day on is in dispute, and no estimate rests on it.
//   A new meter starts with its own total: what an old one did not count stays with the old one.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Fills what the meters of an aircraft did not count, after the meters. Hours dated after today
/// count, and a caution says so.
/// Units: seconds. Errors: none, a caution. Source: our choice, used is never understated.
void fold_adjustments(const std::vector<Record>& records, base::Date today, AircraftState& state);

/// Total time when a meter shows some hours on a day.
/// Units: seconds. Errors: none. Source: common practice, no source: meter, offset, and what the
/// meter did not count.
[[nodiscard]] base::FlightTime total_of(const MeterState& meter,
                                        base::FlightTime reads,
                                        base::Date on);

/// What a meter shows at a total time on a day; the other way round.
/// Units: seconds. Errors: none. Source: as above.
[[nodiscard]] base::FlightTime shown_at(const MeterState& meter,
                                        base::FlightTime total,
                                        base::Date on);

/// True when records disagree about hours that a total of this meter holds on a day.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool adds_in_dispute(const MeterState& meter, base::Date on);

/// Hours that came at once, all meters together, by a day.
/// Units: seconds. Errors: none. Source: our choice.
[[nodiscard]] base::FlightTime uncounted_by(const std::vector<MeterState>& meters, base::Date on);

}  // namespace twoclocks::timeline
