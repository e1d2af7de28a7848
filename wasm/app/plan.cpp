#include "wasm/app/plan.hpp"

#include "wasm/app/form_kinds.hpp"

#include <array>
#include <utility>

#include "engine/views/plan_induction.hpp"
#include "engine/views/plan_view.hpp"
#include "engine/views/routes_view.hpp"

namespace twoclocks::canvas {
namespace {

/// What is recorded of the worth of days, to be changed; what is left empty is not tried.
[[nodiscard]] Form make_weighed(AppState::Inside& in, base::Id aircraft) {
    Form out = make_form(FormKind::plan_costs, aircraft, in.context_of(aircraft));
    for (FieldView& field : out.fields)
        field.optional = true;
    return out;
}

/// What chooses a record by its key in a form of a kind.
[[nodiscard]] auto chooser_of(FormKind kind) {
    struct Row {
        FormKind kind;
        void (*choose)(Form&, const FormContext&, const std::string&);
    };

    constexpr std::array rows{Row{FormKind::route, choose_route},
                              Row{FormKind::cost_line, choose_cost_line},
                              Row{FormKind::core_step, choose_core},
                              Row{FormKind::pay_term, choose_pay_term},
                              Row{FormKind::balance, choose_balance},
                              Row{FormKind::holder, choose_holder},
                              Row{FormKind::item_price, choose_item_price},
                              Row{FormKind::closing, choose_closing}};
    for (const Row& row : rows)
        if (row.kind == kind) return row.choose;
    return choose_task;
}

}  // namespace

LifeAsked as_planned(const views::Assessed& aircraft) {
    return {aircraft.state.id, -1, plan::campaign_count};
}

std::vector<LifeAsked> routes_asked(const views::Assessed& aircraft) {
    std::vector<LifeAsked> out;
    const auto count = static_cast<std::int32_t>(aircraft.state.campaign.routes.size());
    for (std::int32_t place = 0; place < count; ++place)
        out.push_back({aircraft.state.id, place, views::ways_a_route});
    return out;
}

std::vector<LifeAsked> fleet_asked(const AppState::Inside& in) {
    std::vector<LifeAsked> out;
    for (const auto& [id, aircraft] : in.fleet)
        out.push_back({id, -1, views::ways_a_route});
    return out;
}

std::vector<const views::Living*> lives_of(const AppState::Inside& in,
                                           const std::vector<LifeAsked>& asked) {
    std::vector<const views::Living*> out;
    for (const LifeAsked& one : asked)
        out.push_back(&in.lives.of(one));
    return out;
}

PlanPage plan_page(AppState::Inside& in, const views::Assessed& aircraft) {
    if (!in.planned || in.planned->id != aircraft.state.id) {
        in.planned = views::make_plan_view(aircraft, in.lives.of(as_planned(aircraft)));
    }
    PlanPage page{*in.planned};
    if (in.weighed.fields.empty()) return page;
    const auto costs = costs_in(in.weighed);
    page.is_tried = !costs || !(*costs == aircraft.state.campaign.costs);
    page.worth = page_of_form(in.weighed).fields;
    const views::Living& living = in.lives.of(as_planned(aircraft));
    if (costs && living.lived) page.view.induction = views::induction_view(*living.lived, *costs);
    return page;
}

RoutesPage routes_page(AppState::Inside& in, const views::Assessed& aircraft) {
    if (!in.routes || in.routes->id != aircraft.state.id)
        in.routes = views::make_routes_view(aircraft, lives_of(in, routes_asked(aircraft)));
    return {*in.routes};
}

StaggerPage stagger_page(AppState::Inside& in) {
    if (!in.staggered) {
        std::vector<const views::Assessed*> fleet;
        for (const auto& [id, aircraft] : in.fleet)
            fleet.push_back(&aircraft);
        in.staggered = views::make_stagger_view(fleet, lives_of(in, fleet_asked(in)));
    }
    return {*in.staggered};
}

void open_page(AppState::Inside& in, const intent::OpenPlan& intent) {
    if (in.assessed(intent.aircraft) == nullptr) return;
    in.weighed = {};
    in.open({Place::Kind::plan, intent.aircraft});
}

void open_page(AppState::Inside& in, const intent::WeighDays&) {
    const base::Id aircraft = in.here().subject;
    if (in.weighed.fields.empty())
        in.weighed = make_weighed(in, aircraft);
    else
        in.weighed = {};
}

void stop_weighing(AppState::Inside& in) {
    in.weighed = make_weighed(in, in.here().subject);
}

void keep_weighed(AppState::Inside& in) {
    const base::Id aircraft = in.here().subject;
    const Form weighed = std::exchange(in.weighed, {});
    in.open({Place::Kind::form, aircraft});
    in.open_form(FormKind::plan_costs, aircraft);
    for (const FieldView& tried : weighed.fields) {
        FieldView* field = find_field(in.form, tried.id);
        if (field == nullptr) continue;
        field->text = tried.text;
        field->chosen = tried.chosen;
    }
}

void open_page(AppState::Inside& in, const intent::OpenTask& intent) {
    in.open({Place::Kind::form, intent.aircraft});
    in.open_form(intent.kind, intent.aircraft);
    const FormContext context = in.context_of(intent.aircraft);
    const auto choose = chooser_of(intent.kind);
    for (Form* const form : {&in.form, &in.entry.fresh})
        choose(*form, context, intent.task);
}

void open_page(AppState::Inside& in, const intent::OpenRoutes& intent) {
    if (in.assessed(intent.aircraft) != nullptr) in.open({Place::Kind::routes, intent.aircraft});
}

void open_page(AppState::Inside& in, const intent::OpenStagger&) {
    in.open({Place::Kind::stagger, {}});
}

}  // namespace twoclocks::canvas
