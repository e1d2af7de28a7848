// The page "Cash": when money goes and comes, how low it gets, what a week later costs.
#pragma once

#include "engine/budget/cash.hpp"
#include "engine/views/plan_lived.hpp"
#include "engine/views/sums.hpp"

namespace twoclocks::views {

/// The page; days of the plan from the campaign lived through.
/// Units: minor units, days. Errors: `missing` where nothing moves. Source: our choice.
[[nodiscard]] SumsView make_cash_view(const Assessed& aircraft, const Living& living);

/// What is in the accounts of an aircraft, in its home currency.
/// Units: minor units. Errors: `faults` where a rate is missing; that account is not in the sum.
/// Source: our choice.
[[nodiscard]] std::int64_t in_hand(const Assessed& aircraft,
                                   const budget::Setting& setting,
                                   base::Problems& faults);

}  // namespace twoclocks::views
