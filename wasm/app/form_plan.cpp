// The campaign: how long a task takes, how far it is, how sure to be, when nobody works.
#include "wasm/app/form_plan.hpp"

#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/plan/from_records.hpp"

namespace twoclocks::canvas {
namespace {

using base::Trouble;
using base::Word;
using facts::PlanTask;

constexpr std::int32_t whole_hundred = 100;

[[nodiscard]] plan::Tasks tasks_in(const FormContext& context) {
    if (context.aircraft == nullptr) return {};
    return plan::tasks_of(context.aircraft->campaign, context.today);
}

/// Every task of the plan, after some words of ours.
[[nodiscard]] FieldView task_list(const char* id,
                                  Word label,
                                  const std::vector<Word>& first,
                                  const plan::Tasks& tasks) {
    FieldView out = make_choice(id, label, first, 0);
    for (const plan::Task& task : tasks)
        out.options.push_back({Word::record_of, {task.name}});
    return out;
}

/// The task chosen in a list that begins with so many words of ours; null for one of those.
[[nodiscard]] const plan::Task* chosen_in(const plan::Tasks& tasks,
                                          std::int32_t choice,
                                          std::int32_t words) {
    const std::int32_t place = choice - words;
    const bool is_one = place >= 0 && place < static_cast<std::int32_t>(tasks.size());
    return is_one ? &tasks[static_cast<std::size_t>(place)] : nullptr;
}

void put(Form& form, const char* id, std::string text) {
    if (FieldView* field = find_field(form, id)) field->text = std::move(text);
}

/// The days of the chosen task where nothing else was typed.
void propose_days(Form& form, const FormContext& context) {
    const FieldView* list = find_field(form, "task");
    if (list == nullptr) return;
    const plan::Tasks tasks = tasks_in(context);
    const plan::Task* task = chosen_in(tasks, list->chosen, 0);
    const std::string key = task == nullptr ? std::string{} : task->key;
    if (form.named == key) return;
    form.named = key;
    const bool known = task != nullptr;
    put(form, "low", known ? std::to_string(task->days.low) : std::string{});
    put(form, "likely", known ? std::to_string(task->days.likely) : std::string{});
    put(form, "high", known ? std::to_string(task->days.high) : std::string{});
}

void read_days(FieldReader& reader, PlanTask& task) {
    task.low_days = days_in(reader, "low");
    task.likely_days = days_in(reader, "likely");
    task.high_days = days_in(reader, "high");
    check_points(reader, "low", "likely", task, task.name.empty() ? task.task : task.name);
}

/// What a task waits for, with one more.
[[nodiscard]] std::string waits_with(const plan::Task& task, const std::string& key) {
    std::string out;
    for (const plan::Link& link : task.after)
        out += link.key + (link.lag > 0 ? '+' + std::to_string(link.lag) : std::string{}) + ' ';
    return out + key;
}

}  // namespace

void make_plan_task(Form& form, const FormContext& context) {
    form.title = Word::form_plan_task;
    form.intro = Word::form_plan_task_intro;
    const plan::Tasks tasks = tasks_in(context);
    const auto field = [&](const char* id, Word label, FieldKind kind, Need need) {
        form.fields.push_back(make_field(id, label, kind, {}, need));
    };
    FieldView list = task_list("task", Word::field_task, {}, tasks);
    list.options.push_back({Word::plan_add_task, {}});
    form.fields.push_back(std::move(list));
    field("low", Word::field_low_days, FieldKind::whole, Need::optional);
    field("likely", Word::field_likely_days, FieldKind::whole, Need::optional);
    field("high", Word::field_high_days, FieldKind::whole, Need::optional);
    field("said_by", Word::field_said_by, FieldKind::text, Need::optional);
    field("name", Word::field_task_name, FieldKind::text, Need::optional);
    form.fields.push_back(
        make_choice("runs",
                    Word::field_calendar_days,
                    {Word::choice_as_before, Word::runs_working, Word::runs_calendar},
                    0));
    form.fields.push_back(
        task_list("after", Word::field_waits_for, {Word::choice_as_before}, tasks));
    form.fields.push_back(
        task_list("before", Word::field_over_before, {Word::option_no_other}, tasks));
    field("resource", Word::field_resource, FieldKind::text, Need::optional);
    form.fields.push_back(
        make_choice("left_out", Word::field_left_out, {Word::choice_no, Word::choice_yes}, 0));
    for (const char* id : {"name", "runs", "after", "before", "resource", "left_out"})
        find_field(form, id)->more = true;
    form.named = "-";
    propose_days(form, context);
}

void reshape_plan_task(Form& form, const FormContext& context) {
    propose_days(form, context);
}

void choose_task(Form& form, const FormContext& context, const std::string& key) {
    FieldView* list = find_field(form, "task");
    const plan::Tasks tasks = tasks_in(context);
    const auto found = std::find_if(
        tasks.begin(), tasks.end(), [&](const plan::Task& one) { return one.key == key; });
    if (list == nullptr || found == tasks.end()) return;
    list->chosen = static_cast<std::int32_t>(found - tasks.begin());
    if (form.kind == FormKind::plan_task) propose_days(form, context);
}

Facts take_plan_task(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const plan::Tasks tasks = tasks_in(context);
    const plan::Task* task = chosen_in(tasks, reader.choice("task"), 0);
    PlanTask said;
    said.name = reader.text("name");
    said.task = task == nullptr ? base::print_id(signer.new_id()) : task->key;
    if (task == nullptr && said.name.empty())
        reader.complain("name", Trouble::plan_task_nameless, {base::text_arg({})});
    read_days(reader, said);
    if (task == nullptr && !said.likely_days) reader.complain("likely", Trouble::form_needed);
    const std::int32_t runs = reader.choice("runs");
    if (runs > 0) said.runs = static_cast<facts::TaskDays>(runs - 1);
    if (const plan::Task* after = chosen_in(tasks, reader.choice("after"), 1))
        said.waits_for = after->key;
    said.resource = reader.text("resource");
    said.left_out = reader.choice("left_out") > 0;
    said.said_by = reader.text("said_by");
    const plan::Task* before = chosen_in(tasks, reader.choice("before"), 1);
    if (!reader.sound()) return {};
    PlanTask later;
    if (before != nullptr) {
        later.task = before->key;
        later.waits_for = waits_with(*before, said.task);
    }
    Facts out{signed_on(context.today, form, std::move(said), context, signer)};
    if (!later.task.empty())
        out.push_back(signed_on(context.today, form, std::move(later), context, signer));
    return out;
}

void make_plan_step(Form& form, const FormContext& context) {
    form.title = Word::form_plan_step;
    form.intro = Word::form_plan_step_intro;
    form.fields.push_back(task_list("task", Word::field_task, {}, tasks_in(context)));
    form.fields.push_back(make_choice(
        "step", Word::field_step, {Word::step_begun, Word::step_promised, Word::step_finished}, 0));
    form.fields.push_back(make_field(
        "date", Word::field_date, FieldKind::date, base::print_date(context.today), Need::needed));
    form.fields.push_back(
        make_field("promised", Word::field_promised, FieldKind::date, {}, Need::optional));
    form.fields.push_back(
        make_field("reference", Word::field_reference, FieldKind::text, {}, Need::optional));
}

Facts take_plan_step(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const plan::Tasks tasks = tasks_in(context);
    const plan::Task* task = chosen_in(tasks, reader.choice("task"), 0);
    facts::PlanStep said;
    said.step = static_cast<facts::TaskStep>(reader.choice("step"));
    const auto on = reader.date("date");
    const auto promised = reader.date("promised");
    said.reference = reader.text("reference");
    if (on && *on > context.today) reader.complain("date", Trouble::form_day_ahead);
    if (said.step == facts::TaskStep::promised && !promised)
        reader.complain("promised", Trouble::form_needed);
    if (task == nullptr || !reader.sound()) return {};
    said.task = task->key;
    if (said.step == facts::TaskStep::promised) said.promised = promised;
    return {signed_on(*on, form, std::move(said), context, signer)};
}

void make_plan_terms(Form& form, const FormContext& context) {
    form.title = Word::form_plan_terms;
    form.intro = Word::form_plan_terms_intro;
    const facts::PlanTerms now =
        context.aircraft == nullptr ? facts::PlanTerms{} : context.aircraft->campaign.terms;
    form.fields.push_back(make_choice("work",
                                      Word::field_plan_work,
                                      {Word::plan_work_overhaul, Word::plan_work_calendar},
                                      static_cast<std::int32_t>(now.work)));
    form.fields.push_back(make_field("confidence",
                                     Word::field_confidence_percent,
                                     FieldKind::whole,
                                     std::to_string(now.confidence_percent),
                                     Need::needed));
    const auto field = [&](const char* id, Word label, const std::optional<std::int32_t>& value) {
        form.fields.push_back(
            make_field(id, label, FieldKind::whole, typed(value), Need::optional));
    };
    field("margin", Word::field_margin_days, now.margin_days);
    field("cores", Word::field_core_days, now.core_days);
    field("keeps", Word::field_keeps_days, now.keeps_days);
    field("at_once", Word::field_out_at_once, now.out_at_once);
}

Facts take_plan_terms(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::PlanTerms said;
    said.work = static_cast<facts::PlanWork>(reader.choice("work"));
    const auto confidence = reader.whole("confidence");
    said.margin_days = days_in(reader, "margin");
    said.core_days = days_in(reader, "cores");
    said.keeps_days = days_in(reader, "keeps");
    said.out_at_once = count_in(reader, "at_once", facts::most_at_once);
    constexpr std::int64_t least = 50;
    if (confidence && (*confidence < least || *confidence >= whole_hundred))
        reader.complain(
            "confidence", Trouble::plan_confidence_range, {base::whole_arg(*confidence)});
    if (!reader.sound()) return {};
    said.confidence_percent = static_cast<std::int32_t>(*confidence);
    return {signed_on(context.today, form, std::move(said), context, signer)};
}

void make_closed(Form& form, const FormContext& context) {
    form.title = Word::form_closed;
    form.intro = Word::form_closed_intro;
    form.fields.push_back(make_field("first",
                                     Word::field_first_day,
                                     FieldKind::date,
                                     base::print_date(context.today),
                                     Need::needed));
    form.fields.push_back(
        make_field("last", Word::field_closed_last, FieldKind::date, {}, Need::optional));
    form.fields.push_back(make_field("why", Word::field_why, FieldKind::text, {}, Need::optional));
}

Facts take_closed(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    const auto first = reader.date("first");
    facts::Closed said;
    said.last = reader.date("last");
    said.why = reader.text("why");
    if (first && said.last && *said.last < *first)
        reader.complain("last", Trouble::closed_backwards, {base::day_arg(*said.last)});
    if (!reader.sound()) return {};
    return {signed_on(*first, form, std::move(said), context, signer)};
}

}  // namespace twoclocks::canvas
