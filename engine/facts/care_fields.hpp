// The fields of directives, events, wear and use: a stretch of the list in field_list.hpp, which
// says how it is used.
#pragma once

#include "engine/facts/part_fields.hpp"

namespace twoclocks::facts {

/// Most days of a calendar interval: a hundred years.
inline constexpr std::int32_t most_days = 36'525;

/// Most days of a tolerance.
inline constexpr std::int32_t most_tolerance_days = 1'200;

/// Most that a kind of flying can use, in thousandths of the hours flown.
inline constexpr std::int32_t most_factor_thousandths = 10'000;

template <class Io, Is<Directive> F>
void visit(Io& io, F& fields) {
    io.needed_text("number", fields.number);
    io.text("revision", fields.revision);
    io.text("issuer", fields.issuer);
    io.date("effective_on", fields.effective_on);
    io.text("serials", fields.serials);
    io.text("part_number", fields.part_number);
    io.name("applies", fields.applies);
    io.text("applies_why", fields.applies_why);
    io.truth("before_flight", fields.before_flight);
    io.truth("credit", fields.credit);
    io.maybe_ids("replaces", fields.replaces);
    io.maybe_ids("ended_by", fields.ended_by);
}

template <class Io, Is<AlternativeMeans> F>
void visit(Io& io, F& fields) {
    io.needed_text("issuer", fields.issuer);
    io.needed_text("reference", fields.reference);
    io.text("method", fields.method);
    io.time("hours", fields.interval.hours);
    io.months("months", fields.interval.months);
    io.number("days", fields.interval.days, most_days);
    io.count("landings", fields.interval.landings);
    io.count("starts", fields.interval.starts);
    io.time("grace_hours", fields.grace_hours);
    io.number("grace_days", fields.grace_days, most_tolerance_days);
    io.date("valid_until", fields.until);
}

template <class Io, Is<Event> F>
void visit(Io& io, F& fields) {
    io.name("happened", fields.happened);
    io.text("found", fields.found);
    io.time("total", fields.total);
    io.text("source", fields.source);
    io.text("revision", fields.revision);
}

template <class Io, Is<WearLimit> F>
void visit(Io& io, F& fields) {
    io.needed_number("limit_thousandths", fields.limit_thousandths, most_wear_thousandths);
    io.needed_text("unit", fields.unit);
    io.name("sense", fields.sense);
    io.text("source", fields.source);
    io.text("revision", fields.revision);
}

template <class Io, Is<Wear> F>
void visit(Io& io, F& fields) {
    io.needed_number("value_thousandths", fields.value_thousandths, most_wear_thousandths);
    io.needed_text("unit", fields.unit);
    io.time("total", fields.total);
    io.text("done_by", fields.done_by);
    io.text("reference", fields.reference);
}

template <class Io, Is<MeterAdjusted> F>
void visit(Io& io, F& fields) {
    io.name("reason", fields.reason);
    io.needed_time("added_hours", fields.hours);
    io.needed_time("reads", fields.reads);
    io.needed_text("source", fields.source);
    io.text("why", fields.why);
}

template <class Io, Is<WorkRule> F>
void visit(Io& io, F& fields) {
    io.needed_text("name", fields.name);
    io.renewals("renews", fields.renews);
    io.text("source", fields.source);
    io.text("revision", fields.revision);
}

template <class Io, Is<HoursFactor> F>
void visit(Io& io, F& fields) {
    io.name("operation", fields.operation);
    io.needed_number("factor_thousandths", fields.factor_thousandths, most_factor_thousandths);
    io.needed_text("source", fields.source);
    io.text("revision", fields.revision);
}

template <class Io, Is<FlownAs> F>
void visit(Io& io, F& fields) {
    io.name("operation", fields.operation);
    io.date("from", fields.from);
    io.needed_time("flown_hours", fields.hours);
    io.text("why", fields.why);
}

}  // namespace twoclocks::facts
