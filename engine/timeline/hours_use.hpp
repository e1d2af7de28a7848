// Kinds of flying and how fast they use limits, as records have it.
//
// The hard questions.
//   Which of several factors holds? Of one kind and one subject the last that began by today; a
//   factor of an item takes the place of the one of the aircraft. It counts for all hours of its
//   kind, whenever they were flown: the document says how fast they use the limit, not since when.
//   A factor below 1? Is refused where it is written (facts/check_care.hpp): an hour flown never
//   counts as less than an hour.
//   A kind without a factor counts as flown, and a caution says so.
//   Records that disagree: the most hours, by the last day, of the kind that uses the most; the
//   highest factor that any version may leave in force.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Fills the kinds of flying on record and the factors that hold. Hours dated after today count.
/// Units: seconds, thousandths. Errors: none. Source: our choice, more use is less life.
void fold_hours_use(const std::vector<Record>& records, base::Date today, AircraftState& state);

}  // namespace twoclocks::timeline
