#include "wasm/app/form.hpp"

#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/written.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {

bool is_aircraft(const facts::Journal& journal, base::Id id) {
    const std::vector<const facts::Fact*> facts = journal.with_id(id);
    return std::any_of(facts.begin(), facts.end(), [](const facts::Fact* fact) {
        return std::holds_alternative<facts::AircraftAdded>(fact->body.fields);
    });
}

base::Id aircraft_of_subject(const facts::Journal& journal, base::Id subject) {
    base::Id first;
    for (const facts::Fact* fact : journal.with_id(subject)) {
        for (const base::Id& id : fact->body.about) {
            if (is_aircraft(journal, id)) return id;
            if (first.empty()) first = id;
        }
    }
    return first;
}

namespace {

void lay_out(Form& form, const FormContext& context) {
    switch (form.kind) {
        case FormKind::new_aircraft:
            return make_new_aircraft(form, context);
        case FormKind::meter_change:
            return make_meter_change(form, context);
        case FormKind::work_done:
            return make_work_done(form, context);
        case FormKind::new_item:
            return make_new_item(form, context);
        case FormKind::change_limit:
            return make_change_limit(form, context);
        case FormKind::permit:
            return make_permit(form, context);
        case FormKind::rename_item:
            return make_rename_item(form, context);
        case FormKind::usage_plan:
            return make_usage_plan(form, context);
        case FormKind::parked:
            return make_parked(form, context);
        case FormKind::from_template:
            return make_from_template(form, context);
        case FormKind::correct:
            return make_correct(form, context);
        case FormKind::withdraw:
            return make_withdraw(form, context);
        case FormKind::author:
            return make_author(form, context);
        case FormKind::specimen:
            return make_specimen(form, context);
        case FormKind::new_part:
            return make_new_part(form, context);
        case FormKind::part_fit:
            return make_part_fit(form, context);
        case FormKind::part_remove:
            return make_part_remove(form, context);
        case FormKind::part_move:
            return make_part_move(form, context);
        case FormKind::part_scrap:
            return make_part_scrap(form, context);
        case FormKind::part_work:
            return make_part_work(form, context);
        case FormKind::part_rebuild:
            return make_part_rebuild(form, context);
        case FormKind::event:
            return make_event(form, context);
        case FormKind::sign_event:
            return make_sign_event(form, context);
        case FormKind::wear_limit:
            return make_wear_limit(form, context);
        case FormKind::measure_wear:
            return make_measure_wear(form, context);
    }
}

}  // namespace

Form make_form(FormKind kind, base::Id subject, const FormContext& context) {
    Form form;
    form.kind = kind;
    form.subject = subject;
    form.aircraft = aircraft_of_subject(context.journal, subject);
    form.intro = base::Word::blank;
    form.submit = base::Word::form_save;
    lay_out(form, context);
    // The day of an entry mostly is a recent one; a day out of old papers is not.
    FieldView* day = find_field(form, "date");
    if (day != nullptr && day->kind == FieldKind::date) day->quick = quick_days(context.today);
    put_apart(form);
    return form;
}

FormPage page_of_form(const Form& form) {
    FormPage page{{form.title, {}},
                  {form.intro, {base::text_arg(form.named)}},
                  {},
                  {form.submit, {}},
                  form.problems};
    page.about = form.about;
    page.asks_more = form.asks_more;
    for (const FieldView& field : form.fields) {
        if (field.more && page.more_at < 0)
            page.more_at = static_cast<std::int32_t>(page.fields.size());
        if (field.apart) continue;
        page.fields.push_back(field);
        understand(page.fields.back());
    }
    return page;
}

void reshape(Form& form, const FormContext& context) {
    if (form.kind == FormKind::work_done) reshape_work_done(form, context);
    if (form.kind == FormKind::from_template) reshape_from_template(form, context);
}

std::vector<facts::Fact> submit_form(Form& form, const FormContext& context, Signer& signer) {
    switch (form.kind) {
        case FormKind::new_aircraft:
            return take_new_aircraft(form, context, signer);
        case FormKind::meter_change:
            return take_meter_change(form, context, signer);
        case FormKind::work_done:
            return take_work_done(form, context, signer);
        case FormKind::new_item:
            return take_new_item(form, context, signer);
        case FormKind::change_limit:
            return take_change_limit(form, context, signer);
        case FormKind::permit:
            return take_permit(form, context, signer);
        case FormKind::rename_item:
            return take_rename_item(form, context, signer);
        case FormKind::usage_plan:
            return take_usage_plan(form, context, signer);
        case FormKind::parked:
            return take_parked(form, context, signer);
        case FormKind::from_template:
            return take_from_template(form, context, signer);
        case FormKind::correct:
            return take_correct(form, context, signer);
        case FormKind::withdraw:
            return take_withdraw(form, context, signer);
        case FormKind::new_part:
            return take_new_part(form, context, signer);
        case FormKind::part_fit:
            return take_part_fit(form, context, signer);
        case FormKind::part_remove:
            return take_part_remove(form, context, signer);
        case FormKind::part_move:
            return take_part_move(form, context, signer);
        case FormKind::part_scrap:
            return take_part_scrap(form, context, signer);
        case FormKind::part_work:
            return take_part_work(form, context, signer);
        case FormKind::part_rebuild:
            return take_part_rebuild(form, context, signer);
        case FormKind::event:
            return take_event(form, context, signer);
        case FormKind::sign_event:
            return take_sign_event(form, context, signer);
        case FormKind::wear_limit:
            return take_wear_limit(form, context, signer);
        case FormKind::measure_wear:
            return take_measure_wear(form, context, signer);
        case FormKind::author:
        case FormKind::specimen:
            return {};
    }
    return {};
}

}  // namespace twoclocks::canvas
