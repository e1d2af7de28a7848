// How far the plan has moved from the one that was kept.
#pragma once

#include "engine/views/plan.hpp"
#include "engine/views/plan_lived.hpp"

namespace twoclocks::views {

/// The days of the plan as it stands, and how much later or sooner each is than in the plan kept.
/// What was done counts by its day.
/// Units: days. Errors: none. Source: our choice.
void add_slip(const Lived& lived, PlanView& view);

}  // namespace twoclocks::views
