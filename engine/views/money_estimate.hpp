// An estimate from the records of one aircraft, paid on the days that its plan says.
#pragma once

#include "engine/budget/cash.hpp"
#include "engine/views/assess.hpp"
#include "engine/views/plan_lived.hpp"

namespace twoclocks::views {

/// The days on which things are agreed on and paid, as the plan has them. For the likely pace the
/// aircraft is back on the day that can be counted on, for the others on those of the range.
/// Units: days. Errors: none; without a plan none is known. Source: our choice.
[[nodiscard]] budget::PayDays pay_days(const Living& living,
                                       budget::Pace pace = budget::Pace::likely);

/// What the estimate of the plan is asked for: its route, its work.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] budget::EstimateFor asked_of(const Assessed& aircraft);

/// Everything agreed on and paid on one day.
/// Units: none. Errors: none. Source: none needed.
[[nodiscard]] budget::PayDays paid_on(base::Date day);

/// What the lines of an aircraft come to.
/// Units: minor units. Errors: as budget::estimate. Source: our choice.
[[nodiscard]] budget::Estimate estimate_of(const Assessed& aircraft,
                                           const budget::EstimateFor& asked,
                                           const budget::PayDays& days,
                                           std::int32_t draws);

/// Whether any line stands behind the sums: of none they are not nothing but not known.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool has_sum(const budget::Estimate& estimate);

}  // namespace twoclocks::views
