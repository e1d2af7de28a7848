// How many of the fleet may be out at once: one figure for all, in the terms of each plan.
#include "wasm/app/form_fields.hpp"
#include "wasm/app/form_kinds.hpp"
#include "wasm/app/form_plan.hpp"

#include <algorithm>

#include "engine/views/assess.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

/// Every aircraft that has an overhaul to plan.
[[nodiscard]] std::vector<const views::Assessed*> planned_fleet(const FormContext& context) {
    std::vector<const views::Assessed*> out;
    if (context.fleet == nullptr) return out;
    for (const auto& [id, aircraft] : *context.fleet)
        if (views::overhaul_of(aircraft) != nullptr) out.push_back(&aircraft);
    return out;
}

/// The least that any of the plans says.
[[nodiscard]] std::optional<std::int32_t> bound_now(const FormContext& context) {
    std::optional<std::int32_t> out;
    for (const views::Assessed* aircraft : planned_fleet(context)) {
        const auto& said = aircraft->state.campaign.terms.out_at_once;
        if (said) out = std::min(out.value_or(*said), *said);
    }
    return out;
}

}  // namespace

void make_fleet_bound(Form& form, const FormContext& context) {
    form.title = Word::form_fleet_bound;
    form.intro = Word::form_fleet_bound_intro;
    form.fields.push_back(make_field("at_once",
                                     Word::field_out_at_once,
                                     FieldKind::whole,
                                     typed(bound_now(context)),
                                     Need::optional));
}

Facts take_fleet_bound(Form& form, const FormContext& context, Signer& signer) {
    FieldReader reader{form};
    auto at_once = count_in(reader, "at_once", facts::most_at_once);
    if (at_once == 0) at_once.reset();  // as good as no bound
    if (!reader.sound()) return {};
    Facts out;
    for (const views::Assessed* aircraft : planned_fleet(context)) {
        facts::PlanTerms terms = aircraft->state.campaign.terms;
        if (terms.out_at_once == at_once) continue;
        terms.out_at_once = at_once;
        form.aircraft = aircraft->state.id;
        out.push_back(signed_on(context.today, form, terms, context, signer));
    }
    form.aircraft = {};
    if (out.empty()) reader.complain("at_once", base::Trouble::form_same_as_before);
    return out;
}

}  // namespace twoclocks::canvas
