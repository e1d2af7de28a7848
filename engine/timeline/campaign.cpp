#include "engine/timeline/campaign.hpp"

#include <algorithm>

namespace twoclocks::timeline {
namespace {

using base::Date;

template <class State>
[[nodiscard]] State& of_task(std::vector<State>& states, const std::string& key) {
    const auto found = std::find_if(states.begin(), states.end(), [&](const State& one) {
        if constexpr (requires { one.said; })
            return one.said.task == key;
        else
            return one.task == key;
    });
    if (found != states.end()) return *found;
    return states.emplace_back();
}

/// The routes while they are folded.
struct Routes {
    PlanState& plan;
    std::optional<std::string> chosen{};
};

/// Only what a record gives takes the place of what was said before, also on one day: an estimate
/// is corrected by saying it anew.
[[nodiscard]] facts::PlanTask over(const facts::PlanTask& before, facts::PlanTask said) {
    if (!said.likely_days) {
        said.low_days = before.low_days;
        said.likely_days = before.likely_days;
        said.high_days = before.high_days;
        said.said_by = before.said_by;
    }
    if (!said.runs) said.runs = before.runs;
    if (said.name.empty()) said.name = before.name;
    if (said.waits_for.empty()) said.waits_for = before.waits_for;
    if (said.resource.empty()) said.resource = before.resource;
    return said;
}

void fold_task(const Record& record, const facts::PlanTask& said, PlanState& plan) {
    PlanTaskState& state = of_task(plan.tasks, said.task);
    state = {over(state.said, said), record.in_use.on, record.root};
}

/// A later record takes the place of an earlier one of its route, also of one day: what it is to be
/// had for is corrected by saying it anew. The one chosen last is the one, until it no longer is.
void fold_route(const Record& record, const facts::Route& said, bool may_choose, Routes& routes) {
    PlanState& plan = routes.plan;
    const Date on = record.in_use.on;
    const auto found = std::find_if(plan.routes.begin(), plan.routes.end(), [&](const auto& one) {
        return one.said.route == said.route;
    });
    if (found == plan.routes.end())
        plan.routes.push_back({said, on, record.root});
    else
        *found = {said, on, record.root};
    if (said.chosen && may_choose)
        routes.chosen = said.route;
    else if (routes.chosen == said.route)
        routes.chosen.reset();
}

/// Those left out are gone, also the one that was chosen.
void close_routes(Routes& routes) {
    PlanState& plan = routes.plan;
    std::erase_if(plan.routes, [](const RouteState& one) { return one.said.left_out; });
    for (std::size_t place = 0; place < plan.routes.size(); ++place)
        if (plan.routes[place].said.route == routes.chosen)
            plan.chosen_route = static_cast<std::int32_t>(place);
}

void fold_step(const Record& record, const facts::PlanStep& said, PlanState& plan) {
    PlanStepState& state = of_task(plan.steps, said.task);
    state.task = said.task;
    state.fact = record.root;
    const Date on = record.in_use.on;
    switch (said.step) {
        case facts::TaskStep::begun:
            state.begun = on;
            break;
        case facts::TaskStep::promised:
            state.promised = said.promised;
            break;
        case facts::TaskStep::finished:
            state.finished = on;
            break;
    }
}

}  // namespace

std::optional<Date> last_overhaul(const AircraftState& state) {
    std::optional<Date> out;
    for (const ItemState& item : state.items) {
        if (item.role != facts::ItemRole::overhaul) continue;
        for (const auto& renewed : item.renewed)
            if (renewed) out = std::max(out.value_or(renewed->on), renewed->on);
    }
    return out;
}

void fold_campaign(const std::vector<const Record*>& records, Date today, AircraftState& state) {
    Routes routes{state.campaign};
    const std::optional<Date> ended = last_overhaul(state);
    for (const Record* record : records) {
        const facts::Body& body = record->in_use;
        if (record->withdrawn) continue;
        // Days on which nobody works lie ahead.
        if (const auto* closed = std::get_if<facts::Closed>(&body.fields))
            state.campaign.closed.push_back(
                {body.on, std::max(body.on, closed->last.value_or(body.on)), record->root});
        if (body.on > today) continue;
        const bool is_over = ended && body.on <= *ended;
        if (const auto* task = std::get_if<facts::PlanTask>(&body.fields))
            fold_task(*record, *task, state.campaign);
        if (const auto* step = std::get_if<facts::PlanStep>(&body.fields); step && !is_over)
            fold_step(*record, *step, state.campaign);
        if (const auto* terms = std::get_if<facts::PlanTerms>(&body.fields)) {
            state.campaign.terms = *terms;
            state.campaign.terms_fact = record->root;
        }
        if (const auto* route = std::get_if<facts::Route>(&body.fields))
            fold_route(*record, *route, !is_over, routes);
        if (const auto* costs = std::get_if<facts::PlanCosts>(&body.fields)) {
            state.campaign.costs = *costs;
            state.campaign.costs_fact = record->root;
        }
        const auto* kept = std::get_if<facts::PlanKept>(&body.fields);
        if (kept != nullptr && !is_over && !state.campaign.kept)
            state.campaign.kept = {*kept, body.on, record->root};
    }
    close_routes(routes);
}

}  // namespace twoclocks::timeline
