#include "engine/views/plan_rows.hpp"

#include "engine/base/order.hpp"
#include "engine/base/permille.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;
using plan::DayRange;
using plan::Outcome;
using plan::Stage;
using plan::Task;

constexpr std::int32_t per_hundred = 10;
constexpr std::int32_t often = 250;  // of a thousand: shown as deciding
constexpr std::int32_t hardly = 50;
constexpr std::int32_t next_days = 60;  // what begins within is to be done next

[[nodiscard]] Message estimate_of(const Lived& lived, const Task& task) {
    const auto& records = lived.aircraft.state.campaign.tasks;
    const auto found = std::find_if(records.begin(), records.end(), [&](const auto& record) {
        return record.said.task == task.key;
    });
    const bool said = found != records.end() && found->said.likely_days.has_value();
    return {said ? Word::plan_task_said : Word::plan_task_ours,
            {base::day_arg(said ? found->on : plan::default_tasks_made),
             base::whole_arg(task.days.low),
             base::whole_arg(task.days.high),
             base::whole_arg(task.days.likely)}};
}

[[nodiscard]] Message decides(std::int32_t of_thousand) {
    if (of_thousand >= base::whole_permille) return {Word::plan_decides_always, {}};
    if (of_thousand < hardly) return {Word::plan_decides_never, {}};
    return {Word::plan_decides, {base::whole_arg(of_thousand / per_hundred)}};
}

[[nodiscard]] Message days_of(const Lived& lived, const Task& task, DayRange from, DayRange to) {
    if (task.progress.finished)
        return {Word::plan_task_done, {lived.said(plan::day_at(*task.progress.finished) - 1)}};
    if (from.middle >= to.middle) return {Word::plan_task_day, {lived.said(to.middle)}};
    return {Word::plan_task_days, {lived.said(from.middle), lived.said(to.middle)}};
}

/// When a task stands on the time line: what lies ahead on its last day, unless that is behind. A
/// wait begins by itself when what it waits for is over.
struct Placed {
    DayRange from;
    DayRange to;
};

[[nodiscard]] std::vector<Placed> placed(const Lived& lived) {
    std::vector<Placed> out;
    for (std::size_t place = 0; place < lived.network.tasks.size(); ++place) {
        const Task& task = lived.network.tasks[place];
        Placed one{lived.outcome.starts[place], lived.outcome.ends[place]};
        const bool is_known = task.progress.begun || task.progress.promised;
        std::int32_t start = lived.outcome.last_start[place];
        const auto& before = lived.network.before[place];
        if (task.kind == plan::DayKind::calendar && !before.empty()) {
            start = one.from.middle;
            for (const plan::Neighbour& link : before)
                start = std::max(start, out[static_cast<std::size_t>(link.place)].to.middle + 1);
        }
        const std::int32_t later = start - one.from.middle;
        if (task.stage == Stage::ahead && !is_known && later > 0) {
            for (std::int32_t* const day : {&one.from.middle, &one.to.middle, &one.to.late})
                *day += later;
        }
        out.push_back(one);
    }
    return out;
}

}  // namespace

void add_next(const Lived& lived, PlanView& view) {
    std::vector<std::pair<std::int32_t, PlanNextRow>> rows;
    for (std::size_t place = 0; place < lived.network.tasks.size(); ++place) {
        const Task& task = lived.network.tasks[place];
        const plan::Progress& progress = task.progress;
        if (task.stage != Stage::ahead || progress.finished) continue;
        const bool waits = std::any_of(
            lived.network.before[place].begin(),
            lived.network.before[place].end(),
            [&](const plan::Neighbour& link) {
                return !lived.network.tasks[static_cast<std::size_t>(link.place)].progress.finished;
            });
        const std::int32_t last = lived.outcome.last_start[place];
        PlanNextRow row{task.key, {Word::record_of, {task.name}}, {}, false};
        if (progress.promised) {
            const std::int32_t day = plan::day_at(*progress.promised) - 1;
            row.late = day < 0;
            row.when = {row.late ? Word::plan_next_promise_past : Word::plan_next_promised,
                        {lived.said(day)}};
        } else if (progress.begun) {
            row.when = {Word::plan_next_running, {lived.said(plan::day_at(*progress.begun))}};
        } else {
            if (waits || last > next_days) continue;
            row.late = last < 0;
            row.when = {row.late ? Word::plan_next_was : Word::plan_next_by, {lived.said(last)}};
        }
        rows.emplace_back(last, std::move(row));
    }
    base::sort_stably(rows,
                      [](const auto& left, const auto& right) { return left.first < right.first; });
    for (auto& [last, row] : rows)
        view.next.push_back(std::move(row));
}

void add_rows(const Lived& lived, PlanView& view) {
    const Outcome& outcome = lived.outcome;
    const std::vector<Placed> all = placed(lived);
    std::int32_t first = all.front().from.middle;
    std::int32_t last = first + 1;
    for (const Placed& one : all) {
        first = std::min(first, one.from.middle);
        last = std::max(last, one.to.late + 1);
    }
    const auto on_line = [&](std::int32_t day) {
        const std::int64_t from_first = std::clamp(day, first, last) - first;
        return static_cast<std::int32_t>(from_first * base::whole_permille / (last - first));
    };
    for (std::size_t place = 0; place < lived.network.tasks.size(); ++place) {
        const Task& task = lived.network.tasks[place];
        const auto& [from, to] = all[place];
        const std::int32_t decided = outcome.critical_permille[place];
        PlanTaskRow row;
        row.key = task.key;
        row.name = {Word::record_of, {task.name}};
        row.days = days_of(lived, task, from, to);
        row.estimate = estimate_of(lived, task);
        row.done = task.progress.finished.has_value();
        row.decides =
            row.done || task.stage == Stage::after ? Message{Word::blank, {}} : decides(decided);
        row.decides_often = !row.done && decided >= often;
        row.grounded = task.stage == Stage::grounded;
        row.from_permille = on_line(from.middle);
        row.to_permille = on_line(to.middle + 1);
        row.late_permille = on_line(to.late + 1);
        view.rows.push_back(std::move(row));
    }
    base::sort_stably(view.rows, [](const PlanTaskRow& left, const PlanTaskRow& right) {
        return std::pair{left.from_permille, left.to_permille} <
               std::pair{right.from_permille, right.to_permille};
    });
    view.today_permille = first > 0 ? -1 : on_line(0);
    view.limit_permille = on_line(lived.run_out.likely - lived.terms.margin_days);
    view.from = {Word::record_of, {lived.said(first)}};
    view.to = {Word::record_of, {lived.said(last - 1)}};
}

}  // namespace twoclocks::views
