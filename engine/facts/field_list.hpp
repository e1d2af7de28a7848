// The fields of every kind, once: what they are called in the file, in which order they print, and
// which of them must be there. The reader and the writer both walk this list, so they cannot
// disagree. Only fields.cpp includes it: everyone else overrides a FieldTeller or a FieldTaker.
//
// To add a field: add it here and to journal.schema.json. To add a kind: also to `Fields` in
// fact.hpp and to `kind_words` in fields.hpp.
#pragma once

#include "engine/facts/fact.hpp"
#include "engine/facts/sale_fields.hpp"

namespace twoclocks::facts {

template <class Io, Is<UnknownKind> F>
void visit(Io&, F&) {}

template <class Io, Is<AircraftAdded> F>
void visit(Io& io, F& fields) {
    io.needed_text("registration", fields.registration);
    io.text("type", fields.type);
    io.text("serial", fields.serial);
    io.date("manufactured", fields.manufactured);
    io.truth("invented", fields.invented);
}

template <class Io, Is<AircraftChanged> F>
void visit(Io& io, F& fields) {
    io.needed_text("registration", fields.registration);
    io.text("why", fields.why);
}

template <class Io, Is<Interval> F>
void visit_first(Io& io, F& fields) {
    io.time("first_hours", fields.hours);
    io.months("first_months", fields.months);
    io.number("first_days", fields.days, most_days);
    io.count("first_landings", fields.landings);
    io.count("first_starts", fields.starts);
}

template <class Io, Is<Interval> F>
void visit_cap(Io& io, F& fields) {
    io.time("cap_hours", fields.hours);
    io.months("cap_months", fields.months);
    io.number("cap_days", fields.days, most_days);
    io.count("cap_landings", fields.landings);
    io.count("cap_starts", fields.starts);
}

template <class Io, Is<Tolerance> F>
void visit(Io& io, F& fields) {
    io.time("tolerance_hours", fields.hours);
    io.number("tolerance_days", fields.days, most_tolerance_days);
    io.number("tolerance_permille", fields.permille, whole_permille);
    io.time("tolerance_cap_hours", fields.cap_hours);
    io.number("tolerance_cap_days", fields.cap_days, most_tolerance_days);
    io.maybe_name("carry_over", fields.carry_over);
    io.time("overfly_hours", fields.overfly_hours);
    io.text("tolerance_source", fields.source);
}

template <class Io, Is<LimitSet> F>
void visit(Io& io, F& fields) {
    io.name("class", fields.limit_class);
    io.time("hours", fields.hours);
    io.months("months", fields.months);
    io.count("landings", fields.landings);
    io.count("starts", fields.starts);
    io.name("calendar_rule", fields.rule);
    io.name("anchor", fields.anchor);
    io.date("anchor_on", fields.anchor_on);
    io.time("anchor_total", fields.anchor_total);
    io.count("anchor_landings", fields.anchor_landings);
    io.count("anchor_starts", fields.anchor_starts);
    io.text("source", fields.source);
    io.text("revision", fields.revision);
    io.number("days", fields.days, most_days);
    visit_first(io, fields.first);
    io.truth("once", fields.once);
    io.maybe_name("combine", fields.combine);
    visit_cap(io, fields.cap);
    visit(io, fields.tolerance);
    io.maybe_name("in_force", fields.in_force);
}

template <class Io, Is<MeterFitted> F>
void visit(Io& io, F& fields) {
    io.text("name", fields.name);
    io.name("drive", fields.drive);
    io.needed_time("reads", fields.reads);
    io.needed_time("total", fields.total);
    io.text("why", fields.why);
}

template <class Io, Is<Reading> F>
void visit(Io& io, F& fields) {
    io.needed_time("reads", fields.reads);
    io.count("landings", fields.landings);
    io.count("starts", fields.starts);
}

template <class Io, Is<ItemAdded> F>
void visit(Io& io, F& fields) {
    io.needed_text("name", fields.name);
    io.name("role", fields.role);
    io.text("chapter", fields.chapter);
}

template <class Io, Is<ItemChanged> F>
void visit(Io& io, F& fields) {
    io.needed_text("name", fields.name);
    io.text("why", fields.why);
}

template <class Io, Is<WorkDone> F>
void visit(Io& io, F& fields) {
    io.needed_text("what", fields.what);
    io.renewals("renews", fields.renews);
    io.time("total", fields.total);
    io.count("landings", fields.landings);
    io.count("starts", fields.starts);
    io.text("place", fields.place);
    io.text("done_by", fields.done_by);
    io.text("reference", fields.reference);
}

template <class Io, Is<UsagePlanned> F>
void visit(Io& io, F& fields) {
    io.needed_time("month", fields.month);
    io.text("why", fields.why);
    for (std::size_t month = 0; month < month_keys.size(); ++month)
        io.time(month_keys[month], fields.by_month[month]);
}

template <class Io, Is<OutOfService> F>
void visit(Io& io, F& fields) {
    io.date("until", fields.until);
    io.text("why", fields.why);
    io.truth("stored", fields.stored);
    io.text("source", fields.source);
    io.text("revision", fields.revision);
}

template <class Io, Is<Note> F>
void visit(Io& io, F& fields) {
    io.note("text", fields.text);
}

template <class Io, Is<Correction> F>
void visit(Io& io, F& fields) {
    io.ref("replaces", fields.replaces);
    io.needed_text("why", fields.why);
    io.body("instead", fields.instead);
}

template <class Io, Is<Withdrawal> F>
void visit(Io& io, F& fields) {
    io.ref("withdraws", fields.withdraws);
    io.needed_text("why", fields.why);
}

template <class Io, Is<Answer> F>
void visit(Io& io, F& fields) {
    io.refs("settles", fields.settles);
    io.refs("keeps", fields.keeps);
    io.text("why", fields.why);
}

template <class Io, Is<Permit> F>
void visit(Io& io, F& fields) {
    io.needed_text("issuer", fields.issuer);
    io.text("reference", fields.reference);
    io.text("route", fields.route);
    io.time("hours", fields.hours);
    io.date("until", fields.until);
}

}  // namespace twoclocks::facts
