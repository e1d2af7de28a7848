#include "wasm/app/form.hpp"

#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/written.hpp"

#include <algorithm>
#include <array>

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

/// How a form is laid out and what becomes of it; none of those that save nothing here.
struct Steps {
    FormKind kind;
    void (*make)(Form& form, const FormContext& context);
    Facts (*take)(Form& form, const FormContext& context, Signer& signer);
};

/// In the order of FormKind.
constexpr std::array all_steps{
    Steps{FormKind::new_aircraft, make_new_aircraft, take_new_aircraft},
    Steps{FormKind::meter_change, make_meter_change, take_meter_change},
    Steps{FormKind::work_done, make_work_done, take_work_done},
    Steps{FormKind::new_item, make_new_item, take_new_item},
    Steps{FormKind::change_limit, make_change_limit, take_change_limit},
    Steps{FormKind::permit, make_permit, take_permit},
    Steps{FormKind::rename_item, make_rename_item, take_rename_item},
    Steps{FormKind::usage_plan, make_usage_plan, take_usage_plan},
    Steps{FormKind::parked, make_parked, take_parked},
    Steps{FormKind::from_template, make_from_template, take_from_template},
    Steps{FormKind::correct, make_correct, take_correct},
    Steps{FormKind::withdraw, make_withdraw, take_withdraw},
    Steps{FormKind::author, make_author, nullptr},
    Steps{FormKind::specimen, make_specimen, nullptr},
    Steps{FormKind::new_part, make_new_part, take_new_part},
    Steps{FormKind::part_fit, make_part_fit, take_part_fit},
    Steps{FormKind::part_remove, make_part_remove, take_part_remove},
    Steps{FormKind::part_move, make_part_move, take_part_move},
    Steps{FormKind::part_scrap, make_part_scrap, take_part_scrap},
    Steps{FormKind::part_work, make_part_work, take_part_work},
    Steps{FormKind::part_rebuild, make_part_rebuild, take_part_rebuild},
    Steps{FormKind::event, make_event, take_event},
    Steps{FormKind::sign_event, make_sign_event, take_sign_event},
    Steps{FormKind::wear_limit, make_wear_limit, take_wear_limit},
    Steps{FormKind::measure_wear, make_measure_wear, take_measure_wear},
    Steps{FormKind::storage, make_storage, take_storage},
    Steps{FormKind::return_to_service, make_return, take_return},
    Steps{FormKind::meter_adjusted, make_adjust, take_adjust},
    Steps{FormKind::flown_as, make_flown_as, take_flown_as},
    Steps{FormKind::hours_factor, make_factor, take_factor},
    Steps{FormKind::directive, make_directive, take_directive},
    Steps{FormKind::decide, make_decide, take_decide},
    Steps{FormKind::means, make_means, take_means},
    Steps{FormKind::plan_task, make_plan_task, take_plan_task},
    Steps{FormKind::plan_step, make_plan_step, take_plan_step},
    Steps{FormKind::plan_terms, make_plan_terms, take_plan_terms},
    Steps{FormKind::closed_days, make_closed, take_closed},
    Steps{FormKind::route, make_route, take_route},
    Steps{FormKind::plan_costs, make_plan_costs, take_plan_costs},
    Steps{FormKind::plan_kept, make_plan_kept, take_plan_kept},
    Steps{FormKind::fleet_bound, make_fleet_bound, take_fleet_bound},
    Steps{FormKind::cost_line, make_cost_line, take_cost_line},
    Steps{FormKind::exchange_rate, make_exchange_rate, take_exchange_rate},
    Steps{FormKind::price_list, make_price_list, take_price_list},
    Steps{FormKind::cost_terms, make_cost_terms, take_cost_terms},
    Steps{FormKind::core, make_core, take_core},
    Steps{FormKind::core_step, make_core_step, take_core_step},
    Steps{FormKind::pay_term, make_pay_term, take_pay_term},
    Steps{FormKind::payment, make_payment, take_payment},
    Steps{FormKind::balance, make_balance, take_balance},
    Steps{FormKind::reserve_terms, make_reserve_terms, take_reserve_terms},
    Steps{FormKind::holder, make_holder, take_holder},
    Steps{FormKind::item_price, make_item_price, take_item_price},
    Steps{FormKind::closing, make_closing, take_closing},
    Steps{FormKind::readings_table, make_readings_table, take_readings_table},
    Steps{FormKind::parts_table, make_parts_table, take_parts_table},
    Steps{FormKind::share, make_share, nullptr},
    Steps{FormKind::unlock, make_unlock, nullptr},
};

constexpr bool is_in_order() {
    for (std::size_t place = 0; place < all_steps.size(); ++place) {
        if (all_steps[place].kind != static_cast<FormKind>(place)) return false;
    }
    return all_steps.back().kind == FormKind::unlock;
}

static_assert(is_in_order());

[[nodiscard]] const Steps& steps_of(FormKind kind) {
    return all_steps[static_cast<std::size_t>(kind)];
}

}  // namespace

Form make_form(FormKind kind, base::Id subject, const FormContext& context) {
    Form form;
    form.kind = kind;
    form.subject = subject;
    form.aircraft = aircraft_of_subject(context.journal, subject);
    form.intro = base::Word::blank;
    form.submit = base::Word::form_save;
    steps_of(kind).make(form, context);
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
    if (form.kind == FormKind::plan_task) reshape_plan_task(form, context);
    if (form.kind == FormKind::route) reshape_route(form, context);
    if (form.kind == FormKind::cost_line) reshape_cost_line(form, context);
    if (form.kind == FormKind::core) reshape_core(form, context);
    if (form.kind == FormKind::pay_term) reshape_pay_term(form, context);
    if (form.kind == FormKind::holder) reshape_holder(form, context);
    if (form.kind == FormKind::closing) reshape_closing(form, context);
    if (is_table(form.kind)) reshape_table(form, context);
    if (form.kind == FormKind::share) reshape_share(form, context);
}

std::vector<facts::Fact> submit_form(Form& form, const FormContext& context, Signer& signer) {
    const auto take = steps_of(form.kind).take;
    return take == nullptr ? std::vector<facts::Fact>{} : take(form, context, signer);
}

}  // namespace twoclocks::canvas
