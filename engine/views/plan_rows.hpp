// The tasks of a plan as rows: what to do next, and all of them on the time line.
#pragma once

#include "engine/views/plan.hpp"
#include "engine/views/plan_lived.hpp"

namespace twoclocks::views {

/// Fills what should begin soon and what runs, in the order of its last day.
/// Units: days. Errors: none. Source: our choice.
void add_next(const Lived& lived, PlanView& view);

/// Fills the time line, in the order in which tasks begin.
/// Units: days, thousandths. Errors: none. Source: our choice.
void add_rows(const Lived& lived, PlanView& view);

}  // namespace twoclocks::views
