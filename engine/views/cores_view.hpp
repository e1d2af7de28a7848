// The page "Cores": what to pack today, what is on its way, what is owed.
#pragma once

#include "engine/budget/cores.hpp"
#include "engine/views/plan_lived.hpp"
#include "engine/views/sums.hpp"

namespace twoclocks::views {

/// The page; days of the plan from the campaign lived through.
/// Units: minor units, days. Errors: `missing` where no core is recorded. Source: our choice.
[[nodiscard]] SumsView make_cores_view(const Assessed& aircraft, const Living& living);

/// What is counted on for a core, and its outcomes, as lines of a "why?".
/// Units: minor units of `home`. Errors: none. Source: our choice.
void explain_core(Why& why, const budget::CoreWorked& core, base::Currency home);

}  // namespace twoclocks::views
