#include "engine/plan/from_records.hpp"

#include <algorithm>
#include <charconv>

#include "engine/base/message_args.hpp"
#include "engine/plan/by_route.hpp"
#include "engine/plan/edit_tasks.hpp"
#include "engine/plan/moment.hpp"

namespace twoclocks::plan {
namespace {

using timeline::PlanState;
using timeline::PlanStepState;
using timeline::PlanTaskState;

constexpr std::int32_t most_lag_days = 3'653;

/// "kit+5": five days after the kit.
[[nodiscard]] Link link_in(std::string_view text) {
    const std::size_t plus = text.find('+');
    Link out{std::string{text.substr(0, plus)}, 0};
    if (plus == std::string_view::npos) return out;
    const std::string_view digits = text.substr(plus + 1);
    std::int32_t lag = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), lag);
    const bool whole = error == std::errc{} && end == digits.data() + digits.size();
    // What is not a number is told as a task that is not there.
    if (!whole || lag < 0 || lag > most_lag_days) return {std::string{text}, 0};
    out.lag = lag;
    return out;
}

[[nodiscard]] std::vector<Link> links_in(std::string_view text) {
    std::vector<Link> out;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        if (end > 0) out.push_back(link_in(text.substr(0, end)));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

void apply(const PlanTaskState& record, Tasks& tasks) {
    const facts::PlanTask& said = record.said;
    Task* task = find_task(tasks, said.task);
    if (task == nullptr) {
        if (said.left_out) return;
        Task own{said.task, task_name(said.task, said.name), {}, {}, {}, {}, {}};
        own.stage = Stage::ahead;
        task = &tasks.emplace_back(std::move(own));
    }
    if (!said.name.empty()) task->name = base::text_arg(said.name);
    if (said.low_days && said.likely_days && said.high_days)
        task->days = {*said.low_days, *said.likely_days, *said.high_days};
    if (said.runs)
        task->kind = *said.runs == facts::TaskDays::working ? DayKind::working : DayKind::calendar;
    if (!said.waits_for.empty()) task->after = links_in(said.waits_for);
    task->resource = said.resource;
}

/// What waits for a task that only another route has waits for nothing there.
void drop_links_of_routes(Tasks& tasks) {
    for (Task& task : tasks)
        std::erase_if(task.after, [&](const Link& link) {
            return is_of_routes(link.key) && find_task(tasks, link.key) == nullptr;
        });
}

/// A task of one's own is done in the latest stage of what it waits for, and of what waits for it
/// in the earliest; nobody has to say so.
void put_in_stage(Tasks& tasks, const std::string& key) {
    Task* own = find_task(tasks, key);
    if (own == nullptr) return;
    for (const Link& link : own->after) {
        const Task* before = find_task(tasks, link.key);
        if (before != nullptr) own->stage = std::max(own->stage, before->stage);
    }
}

[[nodiscard]] double days_from(base::Date today, base::Date on) {
    return static_cast<double>(on.day_number - today.day_number);
}

void apply(const PlanStepState& record, base::Date today, Tasks& tasks) {
    Task* task = find_task(tasks, record.task);
    if (task == nullptr) {
        // A step at the shop that the route reckons as one stay: with it the stay has begun.
        task = stay_of(tasks, record.task);
        const auto begun = record.begun ? record.begun : record.finished;
        if (task == nullptr || !begun) return;
        const double from = days_from(today, *begun);
        task->progress.begun = std::min(task->progress.begun.value_or(from), from);
        return;
    }
    Progress& progress = task->progress;
    if (record.begun) progress.begun = days_from(today, *record.begun);
    if (record.promised) progress.promised = days_from(today, *record.promised) + 1;
    if (!record.finished) return;
    progress.finished = days_from(today, *record.finished) + 1;
    progress.begun = std::min(progress.begun.value_or(*progress.finished - 1), *progress.finished);
    progress.promised.reset();
}

}  // namespace

Tasks tasks_of(const PlanState& records, base::Date today) {
    Tasks out = default_tasks(
        records.terms.work == facts::PlanWork::overhaul ? Work::overhaul : Work::calendar_work);
    const facts::Route* route = chosen_route(records);
    for (const PlanTaskState& record : records.tasks)
        if (!is_of_routes(record.said.task)) apply(record, out);
    if (route != nullptr) go_by(*route, out);
    for (const PlanTaskState& record : records.tasks)
        if (find_task(out, record.said.task) != nullptr && is_of_routes(record.said.task))
            apply(record, out);
    for (const PlanTaskState& record : records.tasks)
        if (record.said.left_out) leave_out(out, record.said.task);
    drop_links_of_routes(out);
    // A chain of one's own tasks is as long as there are such tasks.
    for (std::size_t round = 0; round < records.tasks.size(); ++round)
        for (const PlanTaskState& record : records.tasks)
            put_in_stage(out, record.said.task);
    for (const PlanStepState& record : records.steps)
        apply(record, today, out);
    return out;
}

WorkDays work_days_of(const PlanState& records, base::Date today) {
    std::vector<Closure> closures;
    for (const timeline::ClosedState& closed : records.closed)
        closures.push_back({closed.from, closed.last});
    return {today, closures};
}

Terms terms_of(const PlanState& records) {
    return {records.terms.confidence_percent,
            records.terms.margin_days.value_or(0),
            records.terms.core_days,
            records.terms.keeps_days};
}

std::optional<RunOut> run_out_of(const limits::ItemDue& item,
                                 const forecast::Projection& projection,
                                 base::Date today) {
    if (!projection.known || !projection.early) return std::nullopt;
    const auto days = [&](base::Date on) { return base::days_between(today, on); };
    RunOut out;
    out.early = days(*projection.early);
    // Not at this rate: as far as days are told apart.
    constexpr std::int32_t far_away = 50 * 366;
    out.likely = projection.likely ? days(*projection.likely) : out.early + far_away;
    if (projection.late) out.late = days(*projection.late);
    for (const limits::ClockDue& clock : item.clocks) {
        const bool is_last = clock.clock == facts::Clock::calendar && clock.known &&
                             item.combine != facts::Combine::later;
        if (is_last) out.calendar = days(clock.due_on);
    }
    return out;
}

std::optional<std::int32_t> first_lead_day(const PlanState& records,
                                           std::int32_t early_limit,
                                           base::Date today) {
    const auto made = make_network(tasks_of(records, today));
    if (!made.ok()) return std::nullopt;
    const Network& network = made.value();
    const WorkDays work = work_days_of(records, today);
    const double limit = static_cast<double>(early_limit) - records.terms.margin_days.value_or(0);
    std::vector<double> days;
    for (const Task& task : network.tasks)
        days.push_back(static_cast<double>(task.days.likely));
    // On the ground from the day of the limit on, then backwards what has to be over by then.
    Times ground;
    ground.start.resize(days.size());
    ground.finish.resize(days.size());
    for (std::size_t place = 0; place < days.size(); ++place) {
        double start = limit;
        for (const auto& [before, lag] : network.before[place]) {
            const auto other = static_cast<std::size_t>(before);
            if (network.tasks[other].stage != Stage::ahead)
                start = std::max(start, ground.finish[other] + lag);
        }
        ground.start[place] = start;
        ground.finish[place] = end_of(network.tasks[place], work, start, days[place]);
    }
    std::optional<std::int32_t> out;
    for (std::size_t place = days.size(); place-- > 0;) {
        const Task& task = network.tasks[place];
        if (task.stage != Stage::ahead || network.after[place].empty()) continue;
        double finish = 1e9;
        for (const auto& [later, lag] : network.after[place])
            finish = std::min(finish, ground.start[static_cast<std::size_t>(later)] - lag);
        ground.start[place] = start_of(task, work, finish, days[place]);
        if (task.progress.begun || finish >= 1e9) continue;
        const auto last = day_at(ground.start[place]);
        out = std::min(out.value_or(last), last);
    }
    return out;
}

}  // namespace twoclocks::plan
