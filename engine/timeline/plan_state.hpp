// What is recorded of a campaign, worked out.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/date.hpp"
#include "engine/base/id.hpp"
#include "engine/facts/plan_facts.hpp"

namespace twoclocks::timeline {

/// What is recorded of one task.
struct PlanTaskState {
    facts::PlanTask said;
    base::Date on;
    base::Id fact;
};

/// How far one task is.
struct PlanStepState {
    std::string task;
    std::optional<base::Date> begun;
    std::optional<base::Date> promised;
    std::optional<base::Date> finished;
    base::Id fact;  // the last that says so
};

/// Days on which nobody works.
struct ClosedState {
    base::Date from;
    base::Date last;
    base::Id fact;
};

/// One route.
struct RouteState {
    facts::Route said;
    base::Date on;
    base::Id fact;
};

/// The plan as it was kept.
struct KeptState {
    facts::PlanKept said;
    base::Date on;
    base::Id fact;
};

/// Everything recorded of the campaign of one aircraft.
struct PlanState {
    std::vector<PlanTaskState> tasks;  // one a key
    std::vector<PlanStepState> steps;  // one a key
    std::vector<ClosedState> closed;
    facts::PlanTerms terms;
    std::optional<base::Id> terms_fact;
    std::vector<RouteState> routes;            // one a key, without those left out
    std::optional<std::int32_t> chosen_route;  // its place among them
    facts::PlanCosts costs;
    std::optional<base::Id> costs_fact;
    std::optional<KeptState> kept;  // the first that was
};

}  // namespace twoclocks::timeline
