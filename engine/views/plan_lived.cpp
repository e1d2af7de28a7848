#include "engine/views/plan_lived.hpp"

#include <utility>

#include "engine/budget/from_records.hpp"
#include "engine/plan/edit_tasks.hpp"

namespace twoclocks::views {
namespace {

using base::Message;
using base::Word;

/// Nothing, or that the flight to the shop takes more hours than are left.
[[nodiscard]] std::optional<Message> too_far(const limits::ItemDue& item,
                                             const facts::Route* route) {
    const limits::ClockDue* hours = plan::hours_of(item);
    if (route == nullptr || hours == nullptr || route->carriage != facts::Carriage::flown)
        return std::nullopt;
    const base::FlightTime way = plan::hours_on_the_way(*route);
    if (way <= hours->left && hours->left.seconds > 0) return std::nullopt;
    return Message{Word::plan_ferry_too_long,
                   {base::hours_used_arg(way), base::hours_left_arg(hours->left)}};
}

/// Working days that the options add which were chosen for this route and this work.
[[nodiscard]] std::int32_t days_of_options(const Assessed& aircraft,
                                           const timeline::PlanState& records,
                                           const facts::Route* route) {
    const std::string key = route == nullptr ? std::string{} : route->route;
    const auto lines = budget::lines_of(aircraft.state, key);
    const budget::Settled settled =
        budget::settle(lines, {key, records.terms.work, aircraft.state.serial});
    std::int32_t out = 0;
    for (std::size_t place = 0; place < settled.lines.size(); ++place) {
        const facts::CostLine& said = settled.lines[place]->said;
        if (settled.counts[place] && said.taken == facts::CostTaken::chosen)
            out += said.added_days.value_or(0);
    }
    return std::min(out, plan::most_task_days);
}

/// One task before the release: it makes the stay that much longer.
void add_options(std::int32_t days, plan::Tasks& tasks) {
    plan::Task* release = plan::find_task(tasks, "release");
    if (days == 0 || release == nullptr) return;
    plan::Task options;
    options.key = "options";
    options.name = base::word_arg(Word::task_options);
    options.days = {days, days, days};
    options.stage = plan::Stage::grounded;
    options.after = std::exchange(release->after, {{options.key, 0}});
    tasks.push_back(std::move(options));
}

[[nodiscard]] bool has_stopped(const plan::Tasks& tasks) {
    return std::any_of(tasks.begin(), tasks.end(), [](const plan::Task& task) {
        return task.role == plan::Role::stop && (task.progress.begun || task.progress.finished);
    });
}

}  // namespace

base::Arg hundredths_up(std::int32_t of_thousand) {
    constexpr std::int32_t per_hundred = 10;
    return base::whole_arg((of_thousand + per_hundred - 1) / per_hundred);
}

Life::Life(const Assessed& aircraft, const timeline::PlanState& records, std::int32_t ways)
    : aircraft_(aircraft), ways_(ways) {
    make_ready(records);
}

void Life::cannot(Message missing, std::vector<base::Problem> faults) {
    missing_ = std::move(missing);
    faults_ = std::move(faults);
}

void Life::make_ready(const timeline::PlanState& records) {
    const limits::ItemDue* item = overhaul_of(aircraft_);
    if (item == nullptr) return cannot({Word::plan_no_overhaul, {}});
    const facts::Route* route = plan::chosen_route(records);
    plan::Tasks tasks = plan::tasks_of(records, aircraft_.today);
    add_options(days_of_options(aircraft_, records, route), tasks);
    const auto message = too_far(*item, route);
    if (message && !has_stopped(tasks)) return cannot(*message);
    const forecast::Projection projection =
        plan::project_by_route(route,
                               *item,
                               aircraft_.projections[static_cast<std::size_t>(aircraft_.overhaul)],
                               aircraft_.state,
                               aircraft_.ahead,
                               aircraft_.today);
    auto run_out = plan::run_out_of(*item, projection, aircraft_.today);
    if (!run_out) return cannot({Word::plan_no_day, {}});
    if (route != nullptr) run_out = plan::sooner_by(*run_out, plan::days_on_the_way(*route));
    auto made = plan::make_network(tasks);
    if (!made.ok()) return cannot({Word::plan_faulty, {}}, made.problems());
    const plan::Terms terms = plan::terms_of(records);
    plan::Campaign campaign{
        made.value(), plan::work_days_of(records, aircraft_.today), *run_out, terms};
    ready_.emplace(
        Ready{route == nullptr ? *item : plan::keeping_back(*item, plan::hours_on_the_way(*route)),
              projection,
              std::move(made.value()),
              *run_out,
              terms,
              std::move(campaign)});
}

bool Life::go_on(std::int32_t more) {
    if (!ready_) return true;
    const std::int32_t now = std::min(more, ways_ - done_);
    ready_->campaign.go_on(now);
    done_ += now;
    return done_ == ways_;
}

Living Life::end() const {
    Living out{{}, missing_, faults_};
    if (!ready_) return out;
    out.lived.emplace(Lived{aircraft_,
                            ready_->item,
                            ready_->projection,
                            ready_->network,
                            ready_->run_out,
                            ready_->terms,
                            ready_->campaign.outcome(),
                            ready_->campaign.draws()});
    return out;
}

Living live(const Assessed& aircraft, const timeline::PlanState& records, std::int32_t ways) {
    Life life{aircraft, records, ways};
    life.go_on(ways);
    return life.end();
}

}  // namespace twoclocks::views
