// The page "Cash": when money goes and comes, how low it gets, what a week later costs.
#pragma once

#include "engine/budget/cash.hpp"
#include "engine/views/plan_lived.hpp"
#include "engine/views/sums.hpp"

namespace twoclocks::views {

/// The page; days of the plan from the campaign lived through.
/// Units: minor units, days. Errors: `missing` where nothing moves. Source: our choice.
[[nodiscard]] SumsView make_cash_view(const Assessed& aircraft, const Living& living);

/// What is in the accounts of an aircraft, in its home currency: the last balances, and what was
/// paid since.
/// Units: minor units. Errors: nothing where no account is recorded or a rate is missing, which
/// `faults` tells. Source: our choice.
[[nodiscard]] std::optional<std::int64_t> in_hand(const Assessed& aircraft,
                                                  const budget::Setting& setting,
                                                  base::Problems& faults);

/// Payments after the last balance: they are not in it.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] std::vector<const timeline::PaymentState*> paid_since(
    const timeline::MoneyState& money);

}  // namespace twoclocks::views
