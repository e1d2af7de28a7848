// Which lines of an estimate count: what every overhaul has, and of what can be had what was
// chosen and fits.
#pragma once

#include "engine/budget/cost_line.hpp"

namespace twoclocks::budget {

/// What an estimate is asked for.
struct EstimateFor {
    std::string route;  // key of the route; empty: lines of every route only
    facts::PlanWork work{facts::PlanWork::overhaul};
    std::string serial;  // of the aircraft
};

/// The lines that are of this route and this work, each with whether it counts.
struct Settled {
    std::vector<const timeline::CostLineState*> lines;
    std::vector<bool> counts;         // one a line
    std::vector<base::Problems> why;  // one a line: why it cannot be had
    base::Problems faults;            // of choices that are not made, or made twice
};

/// Settles them. One chosen that does not fit, lacks what it needs or is excluded does not count,
/// and says so; of lines that exclude each other in the record the one that says so goes.
/// Units: none. Errors: option_unsettled, option_twice, option_serial, option_needs,
/// option_excludes. Source: our choice.
[[nodiscard]] Settled settle(const std::vector<timeline::CostLineState>& lines,
                             const EstimateFor& asked);

}  // namespace twoclocks::budget
