// What the groups of an estimate have in common: how fast their prices rise, and when things are
// agreed on and paid.
#pragma once

#include <optional>

#include "engine/base/date.hpp"
#include "engine/facts/cost_facts.hpp"

namespace twoclocks::budget {

/// When things are agreed on and when they are paid, where the plan gives a day.
struct PayDays {
    std::optional<base::Date> ordered;
    std::optional<base::Date> booked;
    std::optional<base::Date> shipped;
    std::optional<base::Date> stopped;
    std::optional<base::Date> back;
    std::optional<base::Date> off{};    // old parts can go back
    std::optional<base::Date> cores{};  // their credit has come
};

/// How fast the prices of a group rise.
/// Units: thousandths a year. Errors: nothing where none is recorded. Source: our choice.
[[nodiscard]] std::optional<std::int32_t> rise_of(facts::CostGroup group,
                                                  const facts::CostTerms& terms);

/// The day on which something of a group is agreed on: the order, or the booking.
/// Units: days. Errors: nothing where the plan has none. Source: our choice.
[[nodiscard]] std::optional<base::Date> agreed_on(facts::CostGroup group, const PayDays& days);

/// The day on which it is paid.
/// Units: days. Errors: nothing where the plan has none. Source: our choice.
[[nodiscard]] std::optional<base::Date> paid_on(facts::CostGroup group, const PayDays& days);

}  // namespace twoclocks::budget
