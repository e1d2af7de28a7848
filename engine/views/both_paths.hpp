// Calendar work that keeps the hours, or the full overhaul: what each renews, and when it stops
// next.
//
// The hard questions.
//   When is the choice due? On the day the overhaul limit is likely met, with the hours expected by
//   then; today when it is past.
//   Which work renews what? As the recorded work rules say, each from its document. Calendar work
//   renews the calendar of the overhaul and not its hours. Without a rule for it there is no such
//   path: nothing is assumed to be allowed. The full overhaul renews both; without a rule it is
//   taken to renew the overhaul limit and nothing else.
//   To one horizon: until the later of the two stops next.
#pragma once

#include "engine/views/assess.hpp"
#include "engine/views/sure.hpp"

namespace twoclocks::views {

/// Units: hours, days. Errors: `missing` says why a path is not there. Source: our choice; that
/// there are two such kinds of work is common practice, no source.
[[nodiscard]] BothPathsView both_paths(const Assessed& aircraft);

}  // namespace twoclocks::views
