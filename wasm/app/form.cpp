#include "wasm/app/form.hpp"

#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/written.hpp"

namespace twoclocks::canvas {

base::Id aircraft_of_subject(const facts::Journal& journal, base::Id subject) {
    for (const facts::Fact* fact : journal.with_id(subject)) {
        if (!fact->body.about.empty()) return fact->body.about.front();
    }
    return {};
}

Form make_form(FormKind kind, base::Id subject, const FormContext& context) {
    Form form;
    form.kind = kind;
    form.subject = subject;
    form.aircraft = aircraft_of_subject(context.journal, subject);
    form.intro = base::Word::blank;
    form.submit = base::Word::form_save;
    switch (kind) {
        case FormKind::new_aircraft:
            make_new_aircraft(form, context);
            break;
        case FormKind::meter_change:
            make_meter_change(form, context);
            break;
        case FormKind::work_done:
            make_work_done(form, context);
            break;
        case FormKind::new_item:
            make_new_item(form, context);
            break;
        case FormKind::change_limit:
            make_change_limit(form, context);
            break;
        case FormKind::permit:
            make_permit(form, context);
            break;
        case FormKind::rename_item:
            make_rename_item(form, context);
            break;
        case FormKind::usage_plan:
            make_usage_plan(form, context);
            break;
        case FormKind::parked:
            make_parked(form, context);
            break;
        case FormKind::correct:
            make_correct(form, context);
            break;
        case FormKind::withdraw:
            make_withdraw(form, context);
            break;
        case FormKind::author:
            make_author(form, context);
            break;
        case FormKind::specimen:
            make_specimen(form, context);
            break;
    }
    // The day of an entry mostly is a recent one; a day out of old papers is not.
    FieldView* day = find_field(form, "date");
    if (day != nullptr && day->kind == FieldKind::date) day->quick = quick_days(context.today);
    put_apart(form);
    return form;
}

FormPage page_of_form(const Form& form) {
    FormPage page{{form.title, {}}, {form.intro, {}}, {}, {form.submit, {}}, form.problems};
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
        case FormKind::correct:
            return take_correct(form, context, signer);
        case FormKind::withdraw:
            return take_withdraw(form, context, signer);
        case FormKind::author:
        case FormKind::specimen:
            return {};
    }
    return {};
}

}  // namespace twoclocks::canvas
