#include "wasm/app/plan.hpp"

#include "wasm/app/form_kinds.hpp"

#include "engine/views/plan_view.hpp"
#include "engine/views/routes_view.hpp"

namespace twoclocks::canvas {

PlanPage plan_page(AppState::Inside& in, const views::Assessed& aircraft) {
    if (!in.planned || in.planned->id != aircraft.state.id)
        in.planned = views::make_plan_view(aircraft);
    return {*in.planned};
}

RoutesPage routes_page(AppState::Inside& in, const views::Assessed& aircraft) {
    if (!in.routes || in.routes->id != aircraft.state.id)
        in.routes = views::make_routes_view(aircraft);
    return {*in.routes};
}

StaggerPage stagger_page(AppState::Inside& in) {
    if (!in.staggered) {
        std::vector<const views::Assessed*> fleet;
        for (const auto& [id, aircraft] : in.fleet)
            fleet.push_back(&aircraft);
        in.staggered = views::make_stagger_view(fleet);
    }
    return {*in.staggered};
}

void open_plan(AppState::Inside& in, const intent::OpenPlan& intent) {
    if (in.assessed(intent.aircraft) != nullptr) in.open({Place::Kind::plan, intent.aircraft});
}

void open_plan(AppState::Inside& in, const intent::OpenTask& intent) {
    in.open({Place::Kind::form, intent.aircraft});
    in.open_form(intent.kind, intent.aircraft);
    const FormContext context = in.context_of(intent.aircraft);
    for (Form* const form : {&in.form, &in.entry.fresh})
        if (intent.kind == FormKind::route)
            choose_route(*form, context, intent.task);
        else
            choose_task(*form, context, intent.task);
}

void open_plan(AppState::Inside& in, const intent::OpenRoutes& intent) {
    if (in.assessed(intent.aircraft) != nullptr) in.open({Place::Kind::routes, intent.aircraft});
}

void open_plan(AppState::Inside& in, const intent::OpenStagger&) {
    in.open({Place::Kind::stagger, {}});
}

}  // namespace twoclocks::canvas
