// The fields of what is recorded of a campaign: a stretch of the list in field_list.hpp, which says
// how it is used.
#pragma once

#include "engine/facts/care_fields.hpp"

namespace twoclocks::facts {

template <class Io, Is<PlanTask> F>
void visit(Io& io, F& fields) {
    io.needed_text("task", fields.task);
    io.text("task_name", fields.name);
    io.number("low_days", fields.low_days, most_plan_days);
    io.number("likely_days", fields.likely_days, most_plan_days);
    io.number("high_days", fields.high_days, most_plan_days);
    io.maybe_name("runs", fields.runs);
    io.text("waits_for", fields.waits_for);
    io.text("resource", fields.resource);
    io.truth("left_out", fields.left_out);
    io.text("said_by", fields.said_by);
}

template <class Io, Is<PlanStep> F>
void visit(Io& io, F& fields) {
    io.needed_text("task", fields.task);
    io.name("step", fields.step);
    io.date("promised", fields.promised);
    io.text("reference", fields.reference);
}

/// A whole, in hundredths.
inline constexpr std::int32_t whole_percent = 100;

template <class Io, Is<PlanTerms> F>
void visit(Io& io, F& fields) {
    io.name("plan_work", fields.work);
    io.needed_number("confidence_percent", fields.confidence_percent, whole_percent);
    io.number("margin_days", fields.margin_days, most_plan_days);
    io.number("core_days", fields.core_days, most_plan_days);
    io.number("keeps_days", fields.keeps_days, most_plan_days);
    io.number("out_at_once", fields.out_at_once, most_at_once);
}

template <class Io, Is<Closed> F>
void visit(Io& io, F& fields) {
    io.date("closed_last", fields.last);
    io.text("why", fields.why);
}

template <class Io, Is<Route> F>
void visit(Io& io, F& fields) {
    io.needed_text("route_key", fields.route);
    io.text("route_name", fields.name);
    io.name("route_by", fields.by);
    io.name("carriage", fields.carriage);
    io.time("ferry_hours", fields.ferry);
    io.number("there_days", fields.there_days, most_plan_days);
    io.number("back_days", fields.back_days, most_plan_days);
    io.number("queue_days", fields.queue_days, most_plan_days);
    io.number("kit_days", fields.kit_days, most_plan_days);
    io.number("low_days", fields.low_days, most_plan_days);
    io.number("likely_days", fields.likely_days, most_plan_days);
    io.number("high_days", fields.high_days, most_plan_days);
    io.name("price_basis", fields.basis);
    io.money("price", fields.price);
    io.money("freight", fields.freight);
    io.name("tax", fields.tax);
    io.number("tax_permille", fields.tax_permille, whole_permille);
    io.number("duty_permille", fields.duty_permille, whole_permille);
    io.date("price_until", fields.price_until);
    io.months("warranty_months", fields.warranty_months);
    io.time("warranty_hours", fields.warranty_hours);
    io.name("warranty_from", fields.warranty_from);
    io.name("release_accepted", fields.accepted);
    io.number("shop_takes", fields.shop_takes, most_at_once);
    io.truth("chosen", fields.chosen);
    io.truth("left_out", fields.left_out);
    io.text("said_by", fields.said_by);
}

template <class Io, Is<PlanCosts> F>
void visit(Io& io, F& fields) {
    io.money("overhaul_sum", fields.sum);
    io.money("lost_day", fields.lost_day);
    io.money("saved_day", fields.saved_day);
    io.money("life_hour", fields.life_hour);
    io.money("life_month", fields.life_month);
    io.number("interest_permille", fields.interest_permille, whole_permille);
}

template <class Io, Is<PlanKept> F>
void visit(Io& io, F& fields) {
    io.date("order_on", fields.order_on);
    io.date("book_on", fields.book_on);
    io.date("stop_on", fields.stop_on);
    io.date("back_on", fields.back_on);
}

}  // namespace twoclocks::facts
