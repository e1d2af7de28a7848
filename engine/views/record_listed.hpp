// Records whose further fields are told as lines, whatever they are about.
#pragma once

#include "engine/views/record_care.hpp"
#include "engine/views/record_cash.hpp"
#include "engine/views/record_money.hpp"
#include "engine/views/record_plan.hpp"
#include "engine/views/record_sale.hpp"

namespace twoclocks::views {

/// Kinds whose further fields are lines.
template <class F>
concept ListedRecord =
    CareRecord<F> || PlanRecord<F> || MoneyRecord<F> || CashRecord<F> || SaleRecord<F>;

/// What the record says, in one line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message what_of(const CareRecord auto& fields) {
    return care_what(fields);
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message what_of(const PlanRecord auto& fields) {
    return plan_what(fields);
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message what_of(const MoneyRecord auto& fields) {
    return money_what(fields);
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message what_of(const CashRecord auto& fields) {
    return cash_what(fields);
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message what_of(const SaleRecord auto& fields) {
    return sale_what(fields);
}

/// Every further field, one line each; the first is the second line of the record.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> more_of(const CareRecord auto& fields) {
    return care_more(fields);
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> more_of(const PlanRecord auto& fields) {
    return plan_more(fields);
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> more_of(const MoneyRecord auto& fields) {
    return money_more(fields);
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> more_of(const CashRecord auto& fields) {
    return cash_more(fields);
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> more_of(const SaleRecord auto& fields) {
    return sale_more(fields);
}

}  // namespace twoclocks::views
