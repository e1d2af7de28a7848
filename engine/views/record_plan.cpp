#include "engine/views/record_plan.hpp"

#include "engine/plan/default_tasks.hpp"
#include "engine/views/record_lines.hpp"

namespace twoclocks::views {

using base::Message;
using base::Word;

Word plan_work_word(facts::PlanWork work) {
    return work == facts::PlanWork::overhaul ? Word::plan_work_overhaul : Word::plan_work_calendar;
}

Message plan_what(const facts::PlanTask& fields) {
    return {fields.left_out ? Word::record_plan_left_out : Word::record_plan_task,
            {plan::task_name(fields.task, fields.name)}};
}

Message plan_what(const facts::PlanStep& fields) {
    const base::Arg task = plan::task_name(fields.task, {});
    switch (fields.step) {
        case facts::TaskStep::begun:
            return {Word::record_plan_begun, {task}};
        case facts::TaskStep::finished:
            return {Word::record_plan_finished, {task}};
        case facts::TaskStep::promised:
            break;
    }
    if (!fields.promised) return {Word::record_plan_promised_open, {task}};
    return {Word::record_plan_promised, {task, base::day_arg(*fields.promised)}};
}

Message plan_what(const facts::PlanTerms& fields) {
    return {Word::record_plan_terms, {base::whole_arg(fields.confidence_percent)}};
}

Message plan_what(const facts::Closed& fields) {
    if (!fields.last) return {Word::record_closed_day, {}};
    return {Word::record_closed, {base::day_arg(*fields.last)}};
}

std::vector<Message> plan_more(const facts::PlanTask& fields) {
    Lines lines;
    if (fields.low_days && fields.likely_days && fields.high_days)
        lines.out.push_back({Word::record_plan_task_days,
                             {base::whole_arg(*fields.low_days),
                              base::whole_arg(*fields.high_days),
                              base::whole_arg(*fields.likely_days)}});
    if (fields.runs)
        lines.out.push_back({*fields.runs == facts::TaskDays::working ? Word::plan_task_working
                                                                      : Word::plan_task_calendar,
                             {}});
    lines.text(Word::record_plan_waits, fields.waits_for);
    lines.text(Word::record_plan_resource, fields.resource);
    lines.text(Word::record_plan_said, fields.said_by);
    return lines.out;
}

std::vector<Message> plan_more(const facts::PlanStep& fields) {
    Lines lines;
    lines.text(Word::record_reference, fields.reference);
    return lines.out;
}

std::vector<Message> plan_more(const facts::PlanTerms& fields) {
    Lines lines;
    lines.out.push_back({plan_work_word(fields.work), {}});
    lines.whole(Word::record_plan_margin, fields.margin_days);
    lines.whole(Word::record_plan_cores, fields.core_days);
    lines.whole(Word::record_plan_keeps, fields.keeps_days);
    return lines.out;
}

std::vector<Message> plan_more(const facts::Closed& fields) {
    Lines lines;
    lines.text(Word::record_why, fields.why);
    return lines.out;
}

}  // namespace twoclocks::views
