// What days and hours are worth, and the plan that is kept.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_plan.hpp"
#include "wasm/app/limit_fields.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {

using base::Word;

void make_plan_costs(Form& form, const FormContext& context) {
    form.title = Word::form_plan_costs;
    form.intro = Word::form_plan_costs_intro;
    const facts::PlanCosts now =
        context.aircraft == nullptr ? facts::PlanCosts{} : context.aircraft->campaign.costs;
    const base::Currency currency = now.lost_day ? now.lost_day->currency : usual_currency(context);
    const auto field = [&](const char* id, Word label, const std::optional<base::Money>& amount) {
        form.fields.push_back(make_amount(id, label, amount, currency));
    };
    field("lost_day", Word::field_lost_day, now.lost_day);
    form.fields.back().optional = false;
    field("saved_day", Word::field_saved_day, now.saved_day);
    field("overhaul_sum", Word::field_overhaul_sum, now.sum);
    field("life_hour", Word::field_life_hour, now.life_hour);
    find_field(form, "life_hour")->hint = {Word::hint_life, {}};
    field("life_month", Word::field_life_month, now.life_month);
    find_field(form, "life_month")->hint = {Word::hint_life, {}};
    form.fields.push_back(make_field("interest_permille",
                                     Word::field_interest_percent,
                                     FieldKind::decimal,
                                     typed_percent(now.interest_permille),
                                     Need::optional));
}

std::optional<facts::PlanCosts> costs_in(Form& form) {
    FieldReader reader{form};
    facts::PlanCosts said;
    said.lost_day = reader.money("lost_day");
    said.saved_day = reader.money("saved_day");
    said.sum = reader.money("overhaul_sum");
    said.life_hour = reader.money("life_hour");
    said.life_month = reader.money("life_month");
    said.interest_permille = share_in(reader, "interest_permille");
    check_fields(reader, {{}, {form.aircraft}, said, {}});
    return reader.sound() ? std::optional{said} : std::nullopt;
}

Facts take_plan_costs(Form& form, const FormContext& context, Signer& signer) {
    const auto said = costs_in(form);
    return said ? signed_today(form, *said, context, signer) : Facts{};
}

void make_plan_kept(Form& form, const FormContext& context) {
    form.title = Word::form_plan_kept;
    form.intro = Word::form_plan_kept_intro;
    const bool is_planned = context.planned != nullptr && context.planned->id == form.aircraft;
    const facts::PlanKept now = is_planned ? context.planned->as_it_stands : facts::PlanKept{};
    const auto field = [&](const char* id, Word label, const std::optional<base::Date>& day) {
        form.fields.push_back(make_field(id, label, FieldKind::date, typed(day), Need::optional));
    };
    field("order_on", Word::field_order_on, now.order_on);
    field("book_on", Word::field_book_on, now.book_on);
    field("stop_on", Word::field_stop_on, now.stop_on);
    field("back_on", Word::field_back_on, now.back_on);
    form.fields.back().optional = false;
}

Facts take_plan_kept(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    facts::PlanKept said;
    said.order_on = reader.date("order_on");
    said.book_on = reader.date("book_on");
    said.stop_on = reader.date("stop_on");
    said.back_on = reader.date("back_on");
    if (!reader.sound()) return {};
    return signed_today(form, said, context, signer);
}

}  // namespace twoclocks::canvas
