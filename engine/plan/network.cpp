#include "engine/plan/network.hpp"

#include <algorithm>
#include <map>

#include "engine/base/message_args.hpp"
#include "engine/plan/moment.hpp"

namespace twoclocks::plan {
namespace {

constexpr double never = 1e9;

[[nodiscard]] base::Problems faults_alone(const Tasks& tasks) {
    base::Problems out;
    std::map<std::string, int> seen;
    for (const Task& task : tasks) {
        const auto [low, likely, high] = task.days;
        if (low < 0) out.push_back(base::trouble(base::Trouble::task_negative, {task.name}));
        if (low > likely || likely > high)
            out.push_back(base::trouble(base::Trouble::task_out_of_order, {task.name}));
        if (high > most_task_days)
            out.push_back(base::trouble(base::Trouble::task_too_long, {task.name}));
        if (++seen[task.key] == 2)
            out.push_back(base::trouble(base::Trouble::task_twice, {task.name}));
    }
    return out;
}

/// Places of what each task waits for.
[[nodiscard]] std::vector<std::vector<Neighbour>> links_of(const Tasks& tasks,
                                                           base::Problems& faults) {
    std::map<std::string, std::int32_t> places;
    for (std::int32_t place = 0; place < static_cast<std::int32_t>(tasks.size()); ++place)
        places.emplace(tasks[static_cast<std::size_t>(place)].key, place);
    std::vector<std::vector<Neighbour>> out(tasks.size());
    for (std::size_t at = 0; at < tasks.size(); ++at) {
        const Task& task = tasks[at];
        for (const Link& link : task.after) {
            const auto found = places.find(link.key);
            if (found == places.end()) {
                faults.push_back(base::trouble(base::Trouble::task_unknown_before,
                                               {task.name, base::text_arg(link.key)}));
                continue;
            }
            const Task& before = tasks[static_cast<std::size_t>(found->second)];
            if (before.stage > task.stage)
                faults.push_back(base::trouble(base::Trouble::task_waits_for_later_stage,
                                               {task.name, before.name}));
            out[at].push_back({found->second, static_cast<double>(link.lag)});
        }
    }
    return out;
}

/// Places in order; those of a loop, and what waits for it, are left out.
[[nodiscard]] std::vector<std::int32_t> in_order(
    const std::vector<std::vector<Neighbour>>& before) {
    std::vector<std::int32_t> out;
    std::vector<bool> placed(before.size(), false);
    for (bool more = true; more;) {
        more = false;
        for (std::size_t at = 0; at < before.size(); ++at) {
            if (placed[at]) continue;
            const bool ready =
                std::all_of(before[at].begin(), before[at].end(), [&](const Neighbour& link) {
                    return placed[static_cast<std::size_t>(link.place)];
                });
            if (!ready) continue;
            placed[at] = true;
            more = true;
            out.push_back(static_cast<std::int32_t>(at));
        }
    }
    return out;
}

/// The tasks of one loop, by following what each waits for.
[[nodiscard]] base::Problem loop_in(const Tasks& tasks,
                                    const std::vector<std::vector<Neighbour>>& before,
                                    const std::vector<std::int32_t>& order) {
    std::vector<bool> free(tasks.size(), false);
    for (const std::int32_t place : order)
        free[static_cast<std::size_t>(place)] = true;
    std::size_t at = 0;
    while (free[at])
        ++at;
    std::vector<std::size_t> walked;
    while (std::find(walked.begin(), walked.end(), at) == walked.end()) {
        walked.push_back(at);
        const auto bound =
            std::find_if(before[at].begin(), before[at].end(), [&](const Neighbour& link) {
                return !free[static_cast<std::size_t>(link.place)];
            });
        at = static_cast<std::size_t>(bound->place);
    }
    const Task& one = tasks[at];
    const auto back =
        std::find_if(before[at].begin(), before[at].end(), [&](const Neighbour& link) {
            return !free[static_cast<std::size_t>(link.place)];
        });
    return base::trouble(base::Trouble::task_loop,
                         {one.name, tasks[static_cast<std::size_t>(back->place)].name});
}

[[nodiscard]] Network put_in_order(const Tasks& tasks,
                                   const std::vector<std::vector<Neighbour>>& links,
                                   const std::vector<std::int32_t>& order) {
    Network out;
    out.before.resize(tasks.size());
    out.after.resize(tasks.size());
    std::vector<std::int32_t> now(tasks.size());
    for (std::size_t place = 0; place < order.size(); ++place)
        now[static_cast<std::size_t>(order[place])] = static_cast<std::int32_t>(place);
    for (std::size_t place = 0; place < order.size(); ++place) {
        const auto was = static_cast<std::size_t>(order[place]);
        out.tasks.push_back(tasks[was]);
        for (const auto& [before, lag] : links[was]) {
            const std::int32_t other = now[static_cast<std::size_t>(before)];
            out.before[place].push_back({other, lag});
            out.after[static_cast<std::size_t>(other)].push_back(
                {static_cast<std::int32_t>(place), lag});
        }
    }
    return out;
}

}  // namespace

base::Result<Network> make_network(const Tasks& tasks) {
    if (tasks.empty()) return base::trouble(base::Trouble::plan_empty);
    base::Problems faults = faults_alone(tasks);
    const auto links = links_of(tasks, faults);
    const auto order = in_order(links);
    if (order.size() < tasks.size()) faults.push_back(loop_in(tasks, links, order));
    if (!faults.empty()) return faults;
    return put_in_order(tasks, links, order);
}

std::vector<base::Arg> loose_ends(const Network& network) {
    std::vector<base::Arg> out;
    for (std::size_t place = 0; place < network.tasks.size(); ++place) {
        const Task& task = network.tasks[place];
        const bool may_end = task.stage == Stage::after || task.role == Role::release;
        if (!may_end && network.after[place].empty()) out.push_back(task.name);
    }
    return out;
}

std::int32_t place_of(const Network& network, Role role) {
    const auto found = std::find_if(network.tasks.begin(),
                                    network.tasks.end(),
                                    [&](const Task& one) { return one.role == role; });
    if (found == network.tasks.end()) return -1;
    return static_cast<std::int32_t>(found - network.tasks.begin());
}

double end_of(const Task& task, const WorkDays& work, double start, double days) {
    return task.kind == DayKind::calendar ? start + days : work.after(start, days);
}

double start_of(const Task& task, const WorkDays& work, double finish, double days) {
    return task.kind == DayKind::calendar ? finish - days : work.before(finish, days);
}

void pass_forward(const Network& network,
                  const WorkDays& work,
                  const std::vector<double>& days,
                  const std::vector<double>& not_before,
                  Times& out) {
    out.start.resize(network.tasks.size());
    out.finish.resize(network.tasks.size());
    for (std::size_t place = 0; place < network.tasks.size(); ++place) {
        const Task& task = network.tasks[place];
        const Progress& progress = task.progress;
        double start = not_before[place];
        for (const auto& [before, lag] : network.before[place])
            start = std::max(start, out.finish[static_cast<std::size_t>(before)] + lag);
        if (progress.begun) start = *progress.begun;
        double finish = end_of(task, work, start, days[place]);
        if (progress.promised) finish = *progress.promised;
        if (progress.begun || progress.promised) finish = std::max(finish, 0.0);
        if (progress.finished) finish = *progress.finished;
        out.start[place] = std::min(start, finish);
        out.finish[place] = finish;
    }
}

void pass_backward(const Network& network,
                   const WorkDays& work,
                   const std::vector<double>& days,
                   const std::vector<double>& not_after,
                   Times& out) {
    out.start.resize(network.tasks.size());
    out.finish.resize(network.tasks.size());
    for (std::size_t place = network.tasks.size(); place-- > 0;) {
        double finish = not_after[place];
        for (const auto& [later, lag] : network.after[place])
            finish = std::min(finish, out.start[static_cast<std::size_t>(later)] - lag);
        out.finish[place] = finish;
        out.start[place] = start_of(network.tasks[place], work, finish, days[place]);
    }
}

std::vector<Slack> slack_of(const Network& network,
                            const WorkDays& work,
                            const std::vector<double>& days) {
    Times early;
    pass_forward(network, work, days, std::vector<double>(days.size(), 0.0), early);
    const double end = *std::max_element(early.finish.begin(), early.finish.end());
    Times late;
    pass_backward(network, work, days, std::vector<double>(days.size(), end), late);
    std::vector<Slack> out;
    for (std::size_t place = 0; place < days.size(); ++place) {
        double next = never;
        for (const auto& [later, lag] : network.after[place])
            next = std::min(next, early.start[static_cast<std::size_t>(later)] - lag);
        if (network.after[place].empty()) next = end;
        const double total = late.finish[place] - early.finish[place];
        out.push_back({total, next - early.finish[place], total < hair});
    }
    return out;
}

}  // namespace twoclocks::plan
