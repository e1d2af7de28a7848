// What the bills of an overhaul that is over leave open, by what is recorded.
//
// The hard questions.
//   Which bills? Those of which something was paid. A line without a payment on record may have
//   been a quote that nobody took, or a bill that was paid and not recorded: nothing is said of it.
//   What does a bill come to? What its line says, as it stands, without a rise: its day is over.
//   For which bill was something paid after the release? For that of a line of the new estimate, if
//   it has one of this key; else for the old one.
#pragma once

#include "engine/budget/cost_line.hpp"

namespace twoclocks::budget {

/// One bill that was paid in part; minor units of the home currency.
struct PastBill {
    base::Arg name;
    std::int64_t paid{0};
    std::optional<std::int64_t> whole;  // missing: it cannot be worked out
    base::Id fact;
};

/// The line of the overhaul that is over that a payment is for; null where it is for no such line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] const timeline::CostLineState* past_line(const facts::Payment& payment,
                                                       const timeline::MoneyState& money);

/// Bills of which a part was paid, and not all.
/// Units: minor units, the whole rounded up, what was paid down. Errors: `faults`: rate_missing,
/// sum_beyond. Source: our choice.
[[nodiscard]] std::vector<PastBill> past_bills(const timeline::MoneyState& money,
                                               Setting setting,
                                               base::Problems& faults);

}  // namespace twoclocks::budget
