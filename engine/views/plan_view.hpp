// The plan of an aircraft's overhaul in words.
#pragma once

#include "engine/views/assess.hpp"
#include "engine/views/plan.hpp"
#include "engine/views/plan_lived.hpp"

namespace twoclocks::views {

/// The whole page. Ten thousand campaigns are lived through: keep it while nothing changes.
/// Units: days. Errors: `missing` and `faults` say why there is no date. Source: our choice.
[[nodiscard]] PlanView make_plan_view(const Assessed& aircraft);

/// The same of a campaign that was lived through already.
/// Units: days. Errors: as above. Source: our choice.
[[nodiscard]] PlanView make_plan_view(const Assessed& aircraft, const Living& living);

/// Every "why?" of the page: order, book, stop, back, the day to go in.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Why> whys_of(const PlanView& view);

}  // namespace twoclocks::views
