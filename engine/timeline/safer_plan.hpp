// Of two records of a campaign that people say otherwise, the more careful. Planning decides
// nothing about flying: the dates come out earlier, the costs higher.
#pragma once

#include "engine/facts/plan_facts.hpp"
#include "engine/timeline/safer_values.hpp"

namespace twoclocks::timeline {

inline void join(facts::PlanTask& into, const facts::PlanTask& other) {
    into.low_days = greatest(into.low_days, other.low_days);
    into.likely_days = greatest(into.likely_days, other.likely_days);
    into.high_days = greatest(into.high_days, other.high_days);
    into.left_out = into.left_out && other.left_out;
}

inline void join(facts::PlanStep& into, const facts::PlanStep& other) {
    if (into.step != other.step) into.step = facts::TaskStep::begun;
    into.promised = greatest(into.promised, other.promised);
}

inline void join(facts::PlanTerms& into, const facts::PlanTerms& other) {
    into.work = std::min(into.work, other.work);
    into.confidence_percent = std::max(into.confidence_percent, other.confidence_percent);
    into.margin_days = greatest(into.margin_days, other.margin_days);
    into.core_days = least(into.core_days, other.core_days);
    into.keeps_days = least(into.keeps_days, other.keeps_days);
    into.out_at_once = least(into.out_at_once, other.out_at_once);
}

/// The dearer of two amounts; of two currencies nobody can tell, and the first stays.
/// Units: minor units. Errors: none. Source: our choice.
[[nodiscard]] inline std::optional<base::Money> dearer(const std::optional<base::Money>& left,
                                                       const std::optional<base::Money>& right) {
    if (!left) return right;
    if (!right || left->currency != right->currency) return left;
    return left->minor_units < right->minor_units ? right : left;
}

/// The smaller of two amounts of one currency; otherwise it is not known.
/// Units: minor units. Errors: none. Source: our choice.
[[nodiscard]] inline std::optional<base::Money> cheaper(const std::optional<base::Money>& left,
                                                        const std::optional<base::Money>& right) {
    if (!left || !right || left->currency != right->currency) return std::nullopt;
    return left->minor_units < right->minor_units ? left : right;
}

/// What two records of a route say otherwise is not known of it.
/// Units: those of the values. Errors: none. Source: our choice.
template <class T>
[[nodiscard]] T agreed(T left, T right) {
    return left == right ? left : T::unknown;
}

inline void join(facts::Route& into, const facts::Route& other) {
    for (const auto field : {&facts::Route::there_days,
                             &facts::Route::back_days,
                             &facts::Route::queue_days,
                             &facts::Route::kit_days,
                             &facts::Route::low_days,
                             &facts::Route::likely_days,
                             &facts::Route::high_days,
                             &facts::Route::tax_permille,
                             &facts::Route::duty_permille})
        into.*field = greatest(into.*field, other.*field);
    // Flown before the limit takes hours and days of it: the dates come out earlier.
    if (into.carriage != other.carriage) into.carriage = facts::Carriage::flown;
    into.ferry = greatest(into.ferry, other.ferry);
    into.price = dearer(into.price, other.price);
    into.freight = dearer(into.freight, other.freight);
    if (into.basis != other.basis) into.basis = facts::PriceBasis::estimate;
    into.tax = agreed(into.tax, other.tax);
    into.price_until = least(into.price_until, other.price_until);
    into.warranty_months = least_anchor(into.warranty_months, other.warranty_months);
    into.warranty_hours = least_anchor(into.warranty_hours, other.warranty_hours);
    into.warranty_from = agreed(into.warranty_from, other.warranty_from);
    into.accepted = agreed(into.accepted, other.accepted);
    into.shop_takes = least(into.shop_takes, other.shop_takes);
    into.chosen = into.chosen && other.chosen;
    into.left_out = into.left_out && other.left_out;
}

inline void join(facts::PlanCosts& into, const facts::PlanCosts& other) {
    into.sum = dearer(into.sum, other.sum);
    into.lost_day = dearer(into.lost_day, other.lost_day);
    into.saved_day = cheaper(into.saved_day, other.saved_day);
    into.life_hour = dearer(into.life_hour, other.life_hour);
    into.life_month = dearer(into.life_month, other.life_month);
    into.interest_permille = greatest(into.interest_permille, other.interest_permille);
}

/// The earlier plan is the stricter one.
inline void join(facts::PlanKept& into, const facts::PlanKept& other) {
    into.order_on = least(into.order_on, other.order_on);
    into.book_on = least(into.book_on, other.book_on);
    into.stop_on = least(into.stop_on, other.stop_on);
    into.back_on = least(into.back_on, other.back_on);
}

inline void join(facts::Closed& into, const facts::Closed& other) {
    into.last = greatest(into.last, other.last);
}

}  // namespace twoclocks::timeline
