// The records of a campaign, folded.
//
// The hard questions.
//   Which of several estimates of one task holds, and which of several terms? The last by day; of
//   one day the one recorded last: they are corrected by saying them anew.
//   Which of several steps? Begun and done on the last day that says so, promised by the last
//   promise; what is done was begun. Records that disagree have done less and promise later.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// The day on which the last overhaul was recorded: what was done for it is done.
/// Units: days. Errors: nothing where none was. Source: our choice.
[[nodiscard]] std::optional<base::Date> last_overhaul(const AircraftState& state);

/// Fills what is recorded of the campaign by today.
/// Units: days. Errors: none. Source: our choice.
void fold_campaign(const std::vector<const Record*>& records,
                   base::Date today,
                   AircraftState& state);

}  // namespace twoclocks::timeline
