// The cheapest day to go in, in words and as a chart.
#pragma once

#include "engine/views/plan.hpp"
#include "engine/views/plan_lived.hpp"

namespace twoclocks::views {

/// By these worths, recorded or tried.
/// Units: days, money. Errors: `missing` where nobody said what anything is worth.
/// Source: plan/induction.hpp.
[[nodiscard]] InductionView induction_view(const Lived& lived, const facts::PlanCosts& costs);

}  // namespace twoclocks::views
