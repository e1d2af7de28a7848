// The fields of what is recorded of cores, payments and the reserve: a stretch of the list in
// field_list.hpp, which says how it is used.
#pragma once

#include "engine/facts/cost_fields.hpp"

namespace twoclocks::facts {

template <class Io, Is<Core> F>
void visit(Io& io, F& fields) {
    io.needed_text("core_key", fields.core);
    io.text("core_name", fields.name);
    io.text("kit", fields.kit);
    io.text("part_numbers", fields.part_numbers);
    io.text("core_serial", fields.serial);
    io.money("core_charge", fields.charge);
    io.money("best_credit", fields.best_credit);
    io.money("part_credit", fields.part_credit);
    io.money("core_bill", fields.bill);
    io.number("part_permille", fields.part_permille, whole_permille);
    io.number("nothing_permille", fields.nothing_permille, whole_permille);
    io.number("billed_permille", fields.billed_permille, whole_permille);
    io.name("returns_from", fields.returns_from);
    io.number("return_days", fields.return_days, most_plan_days);
    io.date("shipped_on", fields.shipped_on);
    io.date("core_by", fields.return_by);
    io.number("credit_days", fields.credit_days, most_plan_days);
    io.truth("log_card", fields.log_card);
    io.text("lien", fields.lien);
    io.truth("destroy", fields.destroy);
    io.name("tax", fields.tax);
    io.number("tax_permille", fields.tax_permille, whole_permille);
    io.name("duty_relief", fields.relief);
    io.date("export_by", fields.export_by);
    io.truth("left_out", fields.left_out);
    io.text("said_by", fields.said_by);
}

template <class Io, Is<CoreStep> F>
void visit(Io& io, F& fields) {
    io.needed_text("core_key", fields.core);
    io.name("core_stage", fields.stage);
    io.maybe_name("core_grade", fields.grade);
    io.money("core_credit", fields.credit);
    io.money("billed", fields.billed);
    io.text("core_reference", fields.reference);
}

template <class Io, Is<PayTerm> F>
void visit(Io& io, F& fields) {
    io.needed_text("term_key", fields.term);
    io.text("term_name", fields.name);
    io.text("line_key", fields.line);
    io.maybe_name("cost_group", fields.group);
    io.needed_number("share_permille", fields.permille, whole_permille);
    io.name("paid_at", fields.at);
    io.number("after_days", fields.after_days, most_plan_days);
    io.truth("left_out", fields.left_out);
    io.text("said_by", fields.said_by);
}

template <class Io, Is<Payment> F>
void visit(Io& io, F& fields) {
    io.text("line_key", fields.line);
    io.money("amount", fields.amount);
    io.truth("came_back", fields.back);
    io.text("payee", fields.payee);
    io.text("payment_reference", fields.reference);
}

template <class Io, Is<Balance> F>
void visit(Io& io, F& fields) {
    io.needed_text("account", fields.account);
    io.money("amount", fields.amount);
    io.text("held_by", fields.held_by);
}

template <class Io, Is<ReserveTerms> F>
void visit(Io& io, F& fields) {
    io.money("per_hour", fields.hour);
    io.money("per_month", fields.month);
    io.money("goal", fields.goal);
    io.number("goal_rise_permille", fields.goal_rise_permille, whole_permille);
    io.number("interest_permille", fields.interest_permille, whole_permille);
}

template <class Io, Is<Holder> F>
void visit(Io& io, F& fields) {
    io.needed_text("holder", fields.holder);
    io.name("holder_role", fields.role);
    io.needed_number("share_permille", fields.permille, whole_permille);
    io.truth("left_out", fields.left_out);
}

}  // namespace twoclocks::facts
