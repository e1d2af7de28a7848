// Tasks in an order in which each stands after what it waits for, and the two passes over them.
#pragma once

#include "engine/base/problem.hpp"
#include "engine/plan/task.hpp"
#include "engine/plan/work_days.hpp"

namespace twoclocks::plan {

/// A task before or after another, by its place.
struct Neighbour {
    std::int32_t place{0};
    double lag{0};
};

/// Tasks by place, each after those it waits for.
struct Network {
    Tasks tasks;
    std::vector<std::vector<Neighbour>> before;
    std::vector<std::vector<Neighbour>> after;
};

/// When each task begins and ends.
struct Times {
    std::vector<double> start;
    std::vector<double> finish;
};

/// Puts tasks in order.
/// Units: days. Range: estimates as in task.hpp.
/// Errors: every one there is, each by name: task_negative, task_out_of_order, task_too_long,
/// task_twice, task_unknown_before, task_loop, task_waits_for_later_stage, plan_empty.
/// Source: topological order, common practice.
[[nodiscard]] base::Result<Network> make_network(const Tasks& tasks);

/// Tasks that nothing waits for beside the release and the stage `after`, by name.
/// Units: none. Errors: none. Source: our choice: a loose end is told, and stops nothing.
[[nodiscard]] std::vector<base::Arg> loose_ends(const Network& network);

/// The place of the first task with a role; -1 without one.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::int32_t place_of(const Network& network, Role role);

/// The end of a task that begins at a time, and the last moment at which it may begin.
/// Units: days of the plan. Errors: none. Source: our choice.
[[nodiscard]] double end_of(const Task& task, const WorkDays& work, double start, double days);
[[nodiscard]] double start_of(const Task& task, const WorkDays& work, double finish, double days);

/// Forward: each task as early as it can, not before a time of its own. What is finished ended when
/// it did; what was begun or promised goes by that, and never ends before now.
/// Units: days of the plan. Range: `days` and `not_before` one a task. Errors: none.
/// Source: critical path method, common practice.
void pass_forward(const Network& network,
                  const WorkDays& work,
                  const std::vector<double>& days,
                  const std::vector<double>& not_before,
                  Times& out);

/// Backward: each task as late as it may, so that none ends after a time of its own.
/// Units: days of the plan. Range: as forward. Errors: none.
/// Source: critical path method, common practice.
void pass_backward(const Network& network,
                   const WorkDays& work,
                   const std::vector<double>& days,
                   const std::vector<double>& not_after,
                   Times& out);

/// How much a task may slip.
struct Slack {
    double total{0};  // without moving the end
    double free{0};   // without moving any other task
    bool critical{false};
};

/// Slack of each task for one set of lengths, begun as early as it can be.
/// Units: days. Errors: none. Source: critical path method, common practice.
[[nodiscard]] std::vector<Slack> slack_of(const Network& network,
                                          const WorkDays& work,
                                          const std::vector<double>& days);

}  // namespace twoclocks::plan
