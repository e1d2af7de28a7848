#include "wasm/app/plan.hpp"

#include "wasm/app/form_kinds.hpp"

#include "engine/views/plan_view.hpp"

namespace twoclocks::canvas {

PlanPage plan_page(AppState::Inside& in, const views::Assessed& aircraft) {
    if (!in.planned || in.planned->id != aircraft.state.id)
        in.planned = views::make_plan_view(aircraft);
    return {*in.planned};
}

void open_plan(AppState::Inside& in, const intent::OpenPlan& intent) {
    if (in.assessed(intent.aircraft) != nullptr) in.open({Place::Kind::plan, intent.aircraft});
}

void open_plan(AppState::Inside& in, const intent::OpenTask& intent) {
    in.open({Place::Kind::form, intent.aircraft});
    in.open_form(intent.kind, intent.aircraft);
    const FormContext context = in.context_of(intent.aircraft);
    for (Form* const form : {&in.form, &in.entry.fresh})
        choose_task(*form, context, intent.task);
}

}  // namespace twoclocks::canvas
