// When money moves: shares of prices by the terms, tax and credits that come back, payments made.
//
//   estimate, terms, payments, days of the plan -> flows -> months, the lowest point
//
// The hard questions.
//   When is a line paid? In the shares of its own terms, else of those of its group, else of those
//   of every line, else in its deposit; the rest with its group, as in the estimate. A share of
//   which the plan has no day is in the sums and in no month.
//   What was paid? It takes the earliest shares of its line. More than the line comes to is told,
//   and brings nothing back by itself.
//   What should have been paid already and was not? It is owed today.
//   On one day money goes before it comes: the lowest point is never told too high.
#pragma once

#include "engine/budget/estimate.hpp"

namespace twoclocks::budget {

/// Until tax that was paid comes back. Our estimate.
inline constexpr std::int32_t usual_tax_back_days = 60;

/// Which way the plan goes.
enum class Pace : std::uint8_t { early, likely, late };

/// What moves.
enum class FlowKind : std::uint8_t { share, rest, tax_back, credit, paid };

/// Money that goes or comes on one day; minor units of the home currency, below zero where it goes.
struct Flow {
    FlowKind kind{FlowKind::share};
    std::string line;  // key of the line or core
    base::Arg name;    // of it
    std::string term;  // what somebody called the share
    std::optional<facts::PaidAt> at;
    std::int64_t amount{0};
    std::optional<base::Date> on;
    std::optional<base::Date> was_due{};  // where that day is over and it is owed today
    base::Id fact;
};

/// One month.
struct CashMonth {
    base::Date first;
    std::int64_t goes{0};   // above zero
    std::int64_t comes{0};  // above zero
    std::int64_t left{0};   // at its end, from what is in hand
    std::int64_t lowest{0};
};

/// What moves at one pace of the plan.
struct CashCourse {
    std::vector<Flow> flows;  // by day; those without a day at the end
    std::vector<CashMonth> months;
    std::int64_t lowest{0};
    std::optional<base::Date> lowest_on;
    std::int64_t last{0};     // at the end, from what is in hand
    std::int64_t undated{0};  // of flows without a day
};

/// All that moves by the days of `setting`. Amounts are those of the estimate as expected, whatever
/// the pace.
/// Units: minor units, days. Errors: `faults`: terms_over_whole, payment_unplaced, paid_too_much,
/// rate_missing, sum_beyond. Source: our choice.
[[nodiscard]] CashCourse cash_course(const Estimate& estimate,
                                     const timeline::MoneyState& money,
                                     const Setting& setting,
                                     std::int64_t in_hand,
                                     base::Problems& faults);

/// What the flows from today on are worth today at a rate of interest a year; cost is above zero.
/// Units: minor units, rounded up. Range: permille from 0. Errors: nothing where a flow has no day.
/// Source: discounting each flow by its days over 365.
[[nodiscard]] std::optional<std::int64_t> present_cost(const CashCourse& course,
                                                       base::Date today,
                                                       std::int32_t interest_permille);

/// What a week later costs, each part by itself; minor units, a gain is below zero.
struct WeekCost {
    std::optional<std::int64_t> standing;  // margin lost less cost avoided
    std::int64_t rise{0};                  // of prices that are not paid yet, with duty and tax
    std::optional<std::int64_t> interest;  // kept on money that goes a week later
};

/// A price that still holds then does not rise; one that no longer does, rises as in the estimate.
/// Units: minor units. Errors: parts that are not known are missing. Source: our choice.
[[nodiscard]] WeekCost week_cost(const Estimate& estimate,
                                 const CashCourse& course,
                                 const facts::PlanCosts& costs,
                                 const Setting& setting);

}  // namespace twoclocks::budget
