// Three points of a length, and the chance of a date the way handbooks work it out by hand: one
// path, its lengths added up.
//
// It looks at the critical path alone. Where several paths are about as long, the real chance is
// lower: the last of them to end decides. That is what `campaign` shows.
#pragma once

#include "engine/plan/network.hpp"

namespace twoclocks::plan {

/// Mean and variance of one task, by its three points.
struct ThreePoint {
    double mean{0};
    double variance{0};
};

/// Units: days, days squared. Range: estimates as in task.hpp. Errors: none.
/// Source: PERT, (low + 4 likely + high) / 6 and ((high - low) / 6) squared.
[[nodiscard]] ThreePoint three_point(const Estimate& days);

/// One draw from a triangle.
/// Units: those of the points. Range: chance 0 to 1. Errors: none; three equal points are that.
/// Source: inverse of the triangular distribution function.
[[nodiscard]] double triangular(double low, double likely, double high, double chance);

/// The path that decides when every task takes its mean.
struct Pert {
    std::vector<Slack> slack;        // one a task
    std::vector<std::int32_t> path;  // places of the critical path, in order
    double mean{0};                  // of its sum
    double variance{0};
};

/// Units: days counted as calendar days. Errors: none. Source: PERT.
[[nodiscard]] Pert pert_of(const Network& network);

/// The chance that the path is over within so many days.
/// Units: days; 0 to 1. Errors: a path that cannot vary is over or not. Source: PERT, normal sum.
[[nodiscard]] double pert_chance(const Pert& pert, double days);

}  // namespace twoclocks::plan
