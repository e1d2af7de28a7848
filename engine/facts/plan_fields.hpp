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
}

template <class Io, Is<Closed> F>
void visit(Io& io, F& fields) {
    io.date("closed_last", fields.last);
    io.text("why", fields.why);
}

}  // namespace twoclocks::facts
