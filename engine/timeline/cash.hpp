// Cores, payments and the reserve, folded.
//
// The hard questions.
//   Which of several records of a core, a term or a share holds? The last by day; of one day the
//   one recorded last. What happened to a core, payments and balances all stand.
//   What ends with an overhaul? Payments before its day were for it: they stand apart, and left the
//   account all the same. Its cores go on until they are settled: their credit comes months later.
//   Terms, shares and the reserve go on.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Fills what is recorded of them by today; `ended` is the day of the last overhaul.
/// Units: days, minor units. Errors: none. Source: our choice.
void fold_cash(const std::vector<const Record*>& records,
               base::Date today,
               std::optional<base::Date> ended,
               AircraftState& state);

}  // namespace twoclocks::timeline
