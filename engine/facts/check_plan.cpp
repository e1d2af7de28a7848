#include "engine/facts/check_plan.hpp"

#include <string_view>

#include "engine/facts/refuse.hpp"

namespace twoclocks::facts {
namespace {

using base::Problems;
using base::Trouble;

constexpr std::int32_t least_confidence = 50;
constexpr std::int32_t most_confidence = 99;

/// The three points of a task, or of all the work on a route.
template <class Kind>
void check_days(const Kind& kind, const std::string& key, Problems& out) {
    const base::Arg named = base::text_arg(kind.name.empty() ? key : kind.name);
    const int given =
        (kind.low_days ? 1 : 0) + (kind.likely_days ? 1 : 0) + (kind.high_days ? 1 : 0);
    if (given != 0 && given != 3) refuse(out, Trouble::plan_task_days_missing, {named}, "low_days");
    if (given == 3 && (*kind.low_days > *kind.likely_days || *kind.likely_days > *kind.high_days))
        refuse(out, Trouble::task_out_of_order, {named}, "likely_days");
}

/// Amounts of two currencies have no sum.
void check_costs(const PlanCosts& costs, Problems& out) {
    const std::optional<base::Money>* before = nullptr;
    const auto look = [&](std::string_view key, const std::optional<base::Money>& amount) {
        if (!amount) return;
        if (before != nullptr && (*before)->currency != amount->currency)
            refuse(
                out, Trouble::costs_currencies, {base::text_arg(base::print_money(*amount))}, key);
        before = &amount;
    };
    look("overhaul_sum", costs.sum);
    look("lost_day", costs.lost_day);
    look("saved_day", costs.saved_day);
    look("life_hour", costs.life_hour);
    look("life_month", costs.life_month);
}

}  // namespace

Problems check_plan(const Body& body) {
    Problems out;
    if (const auto* task = std::get_if<PlanTask>(&body.fields)) check_days(*task, task->task, out);
    if (const auto* route = std::get_if<Route>(&body.fields)) check_days(*route, route->route, out);
    if (const auto* costs = std::get_if<PlanCosts>(&body.fields)) check_costs(*costs, out);
    if (const auto* step = std::get_if<PlanStep>(&body.fields);
        step != nullptr && step->step == TaskStep::promised && !step->promised)
        refuse(out, Trouble::plan_promise_missing, {base::text_arg(step->task)}, "promised");
    if (const auto* terms = std::get_if<PlanTerms>(&body.fields);
        terms != nullptr && (terms->confidence_percent < least_confidence ||
                             terms->confidence_percent > most_confidence))
        refuse(out,
               Trouble::plan_confidence_range,
               {base::whole_arg(terms->confidence_percent)},
               "confidence_percent");
    if (const auto* closed = std::get_if<Closed>(&body.fields);
        closed != nullptr && closed->last && *closed->last < body.on)
        refuse(out, Trouble::closed_backwards, {base::day_arg(*closed->last)}, "closed_last");
    return out;
}

}  // namespace twoclocks::facts
