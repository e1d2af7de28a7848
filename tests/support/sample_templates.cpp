// Pages of type templates and of work done by a rule.
#include "tests/support/sample_screens.hpp"

#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas::samples {
namespace {

using base::Word;

FieldView made(std::string id, std::string label, FieldKind kind, std::string text) {
    FieldView out;
    out.id = std::move(id);
    out.label = told(std::move(label));
    out.hint = {Word::blank, {}};
    out.kind = kind;
    out.text = std::move(text);
    return out;
}

FieldView choice(std::string id,
                 std::string label,
                 std::vector<base::Message> options,
                 std::int32_t chosen) {
    FieldView out = made(std::move(id), std::move(label), FieldKind::choice, {});
    out.options = std::move(options);
    out.chosen = chosen;
    return out;
}

FieldView taken(std::string key, std::string name, std::int32_t taking) {
    FieldView out =
        choice("take-" + key,
               std::move(name),
               {{Word::template_take, {}}, {Word::template_change, {}}, {Word::template_leave, {}}},
               taking);
    out.alike = true;
    out.told = {
        {Word::record_limit_both, {base::hours_left_arg(base::hours(2200)), base::whole_arg(144)}},
        {Word::class_airworthiness, {}},
        {Word::template_from_overhaul, {}}};
    return out;
}

Screen saved_form(FormPage form) {
    Screen screen;
    screen.page = std::move(form);
    screen.can_go_back = true;
    screen.status = told("saved");
    screen.revision = 3;
    return screen;
}

}  // namespace

Screen template_form() {
    FormPage form;
    form.title = {Word::form_template, {}};
    form.intro = {Word::form_template_intro, {}};
    form.submit = {Word::form_template_submit, {}};
    FieldView type = choice("template",
                            "Start from a type template",
                            {{Word::template_none, {}},
                             told("Light piston helicopter, overhauled as a whole"),
                             told("Piston trainer, short intervals")},
                            1);
    type.told = {
        told("Invented. It belongs to no real type, and its figures come from no document.")};
    form.fields = {type,
                   choice("part",
                          "Part of the template",
                          {told("62 Rotors"),
                           told("25 Equipment and instruments"),
                           {Word::template_all, {}},
                           {Word::template_works, {}}},
                          0),
                   made("source", "Source document", FieldKind::text, "Maintenance manual"),
                   made("revision", "Revision", FieldKind::text, ""),
                   taken("blades", "Main rotor blades", 0),
                   taken("swashplate", "Swashplate", 1),
                   made("hours-swashplate", "Swashplate: hours", FieldKind::hours, "2100.0")};
    return saved_form(std::move(form));
}

Screen work_by_rule() {
    FormPage form;
    form.title = {Word::form_work_done, {}};
    form.intro = {Word::form_work_rule_intro, {}};
    form.submit = {Word::form_save, {}};
    FieldView rule = choice("rule",
                            "Which work",
                            {{Word::work_rule_none, {}},
                             told("Overhaul"),
                             told("Calendar inspection"),
                             told("100 h inspection")},
                            2);
    const base::Arg overhaul = base::text_arg("Overhaul of the helicopter");
    rule.told = {
        {Word::work_renews_all, {base::text_arg("Drive belts, Fuel and oil hoses, Gearbox oil")}},
        {Word::work_renews_some, {overhaul, base::word_arg(Word::clock_calendar)}},
        {Word::work_keeps, {overhaul, base::word_arg(Word::clock_hours)}},
        {Word::work_keeps_others, {base::whole_arg(18)}}};
    form.fields = {rule,
                   made("what", "What was done", FieldKind::text, "Calendar inspection"),
                   made("date", "Day", FieldKind::date, "2026-05-03")};
    return saved_form(std::move(form));
}

}  // namespace twoclocks::canvas::samples
