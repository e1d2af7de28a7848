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

/// Everything recorded of the campaign of one aircraft.
struct PlanState {
    std::vector<PlanTaskState> tasks;  // one a key
    std::vector<PlanStepState> steps;  // one a key
    std::vector<ClosedState> closed;
    facts::PlanTerms terms;
    std::optional<base::Id> terms_fact;
};

}  // namespace twoclocks::timeline
