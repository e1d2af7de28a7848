#include "engine/plan/by_route.hpp"

#include <algorithm>

#include "engine/plan/default_tasks.hpp"
#include "engine/plan/edit_tasks.hpp"

namespace twoclocks::plan {
namespace {

using facts::Carriage;
using facts::Route;

// Our estimates, for a light helicopter.
constexpr Estimate days_to_crate{2, 3, 5};
constexpr Estimate days_to_assemble{3, 5, 8};

void set_days(Tasks& tasks, std::string_view key, const std::optional<std::int32_t>& days) {
    Task* task = find_task(tasks, key);
    if (task == nullptr || !days) return;
    task->days = {*days, *days, *days};
    task->kind = DayKind::calendar;
}

[[nodiscard]] Task grounded(std::string key, Estimate days, DayKind kind, std::vector<Link> after) {
    const base::Arg name = task_name(key, {});
    return {std::move(key), name, days, kind, Stage::grounded, Role::none, std::move(after)};
}

/// Crated, somebody packs it before it goes.
void pack(Tasks& tasks) {
    Task* way = find_task(tasks, "transport");
    if (way == nullptr) return;
    Task crate = grounded("crate", days_to_crate, DayKind::working, way->after);
    way->after = {{crate.key, 0}};
    tasks.push_back(std::move(crate));
}

/// The way home comes after the release; with it the aircraft is back.
void come_home(const Route& route, Tasks& tasks) {
    const bool is_crated = route.carriage == Carriage::crated;
    Task* release = find_task(tasks, "release");
    const Task* way = find_task(tasks, "transport");
    // Nobody said how long either way takes: as in the campaign, which ends with the release.
    const bool is_said = route.back_days || route.there_days;
    if (release == nullptr || (!is_crated && !is_said)) return;
    Task home = grounded(
        "home", way == nullptr ? Estimate{} : way->days, DayKind::calendar, {{release->key, 0}});
    release->role = Role::none;
    if (!is_crated) home.role = Role::release;
    tasks.push_back(std::move(home));
    set_days(tasks, "home", route.back_days);
    if (!is_crated) return;
    tasks.push_back(grounded("assemble", days_to_assemble, DayKind::working, {{"home", 0}}));
    tasks.back().role = Role::release;
}

void carry(const Route& route, Tasks& tasks) {
    if (route.carriage == Carriage::stays) {
        leave_out(tasks, "transport");
        return;
    }
    set_days(tasks, "transport", route.there_days);
    if (route.carriage == Carriage::crated) pack(tasks);
    come_home(route, tasks);
}

[[nodiscard]] bool is_outside(std::string_view key) {
    return key == "hand_over" || key == "transport" || key == "release";
}

[[nodiscard]] bool is_a_step_there(const Task& task) {
    return task.stage == Stage::grounded && is_ours(task.key) && !is_outside(task.key);
}

/// All steps at the shop as the one stay that the shop speaks of.
void stay_once(const Route& route, Tasks& tasks) {
    Task* first = find_task(tasks, "induct");
    if (first == nullptr || !route.low_days || !route.likely_days || !route.high_days) return;
    Task shop = grounded("shop",
                         {*route.low_days, *route.likely_days, *route.high_days},
                         DayKind::calendar,
                         first->after);
    shop.role = Role::fit;
    std::vector<std::string> steps;
    for (const Task& task : tasks)
        if (is_a_step_there(task)) steps.push_back(task.key);
    for (const std::string& key : steps)
        leave_out(tasks, key);
    // Cores leave some day of the stay; the end of it is the day that can be counted on.
    for (const char* const key : {"release", "cores_out"})
        if (Task* const task = find_task(tasks, key)) task->after.push_back({shop.key, 0});
    tasks.push_back(std::move(shop));
}

}  // namespace

const Route* chosen_route(const timeline::PlanState& records) {
    if (!records.chosen_route) return nullptr;
    return &records.routes[static_cast<std::size_t>(*records.chosen_route)].said;
}

timeline::PlanState choosing(timeline::PlanState records, std::int32_t place) {
    records.chosen_route = place;
    return records;
}

void go_by(const Route& route, Tasks& tasks) {
    set_days(tasks, "queue", route.queue_days);
    set_days(tasks, "kit", route.kit_days);
    carry(route, tasks);
    stay_once(route, tasks);
}

Task* stay_of(Tasks& tasks, std::string_view step) {
    const Tasks usual = default_tasks(Work::overhaul);
    const auto found = std::find_if(
        usual.begin(), usual.end(), [&](const Task& task) { return task.key == step; });
    return found != usual.end() && is_a_step_there(*found) ? find_task(tasks, "shop") : nullptr;
}

std::int32_t days_on_the_way(const Route& route) {
    return route.carriage == Carriage::flown ? route.there_days.value_or(0) : 0;
}

base::FlightTime hours_on_the_way(const Route& route) {
    return route.carriage == Carriage::flown ? route.ferry.value_or(base::FlightTime{})
                                             : base::FlightTime{};
}

limits::ItemDue keeping_back(limits::ItemDue item, base::FlightTime hours) {
    for (auto* const clocks : {&item.clocks, &item.caps}) {
        for (limits::ClockDue& clock : *clocks) {
            if (clock.clock != facts::Clock::hours || !clock.known) continue;
            clock.left = clock.left - hours;
            clock.due_total = clock.due_total - hours;
        }
    }
    return item;
}

forecast::Projection project_by_route(const Route* route,
                                      const limits::ItemDue& item,
                                      const forecast::Projection& projection,
                                      const timeline::AircraftState& state,
                                      const forecast::FlyingAhead& ahead,
                                      base::Date today) {
    if (route == nullptr || hours_on_the_way(*route).seconds == 0) return projection;
    return forecast::project(keeping_back(item, hours_on_the_way(*route)), state, ahead, today);
}

}  // namespace twoclocks::plan
