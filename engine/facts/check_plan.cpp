#include "engine/facts/check_plan.hpp"

#include <string_view>

#include "engine/base/message_args.hpp"

namespace twoclocks::facts {
namespace {

using base::Problems;
using base::Trouble;

constexpr std::int32_t least_confidence = 50;
constexpr std::int32_t most_confidence = 99;

void complain(Problems& out, Trouble code, base::Arg about, std::string_view key) {
    base::Problem problem = base::trouble(code, {std::move(about)});
    problem.field = key;
    out.push_back(std::move(problem));
}

void check(const PlanTask& task, Problems& out) {
    const base::Arg named = base::text_arg(task.name.empty() ? task.task : task.name);
    const int given =
        (task.low_days ? 1 : 0) + (task.likely_days ? 1 : 0) + (task.high_days ? 1 : 0);
    if (given != 0 && given != 3) complain(out, Trouble::plan_task_days_missing, named, "low_days");
    if (given == 3 && (*task.low_days > *task.likely_days || *task.likely_days > *task.high_days))
        complain(out, Trouble::task_out_of_order, named, "likely_days");
}

}  // namespace

Problems check_plan(const Body& body) {
    Problems out;
    if (const auto* task = std::get_if<PlanTask>(&body.fields)) check(*task, out);
    if (const auto* step = std::get_if<PlanStep>(&body.fields);
        step != nullptr && step->step == TaskStep::promised && !step->promised)
        complain(out, Trouble::plan_promise_missing, base::text_arg(step->task), "promised");
    if (const auto* terms = std::get_if<PlanTerms>(&body.fields);
        terms != nullptr && (terms->confidence_percent < least_confidence ||
                             terms->confidence_percent > most_confidence))
        complain(out,
                 Trouble::plan_confidence_range,
                 base::whole_arg(terms->confidence_percent),
                 "confidence_percent");
    if (const auto* closed = std::get_if<Closed>(&body.fields);
        closed != nullptr && closed->last && *closed->last < body.on)
        complain(out, Trouble::closed_backwards, base::day_arg(*closed->last), "closed_last");
    return out;
}

}  // namespace twoclocks::facts
