// The campaign by another route: its tasks, and the hours of life it takes on the way.
#include "engine/plan/by_route.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"

#include <string>

#include "engine/limits/due.hpp"
#include "engine/plan/default_tasks.hpp"
#include "engine/plan/from_records.hpp"

using namespace twoclocks;
using facts::Carriage;
using facts::Route;
using plan::Role;
using plan::Task;
using plan::Tasks;
using support::hand_today;

namespace {

const Task* task_in(const Tasks& tasks, const std::string& key) {
    for (const Task& task : tasks)
        if (task.key == key) return &task;
    return nullptr;
}

Tasks by(const Route& route) {
    timeline::PlanState records;
    records.routes = {{route, hand_today, {}}};
    return plan::tasks_of(plan::choosing(records, 0), hand_today);
}

bool waits_for(const Task& task, const std::string& key) {
    for (const plan::Link& link : task.after)
        if (link.key == key) return true;
    return false;
}

std::int32_t with_role(const Tasks& tasks, Role role) {
    std::int32_t out = 0;
    for (const Task& task : tasks)
        if (task.role == role) ++out;
    return out;
}

void is_sound(const Tasks& tasks) {
    const auto made = plan::make_network(tasks);
    REQUIRE(made.ok());
    CHECK(plan::loose_ends(made.value()).empty());
    CHECK(with_role(tasks, Role::release) == 1);
    CHECK(with_role(tasks, Role::stop) == 1);
}

}  // namespace

TEST_CASE("a route of which nothing is said is planned as the campaign is", "[plan][route]") {
    const Tasks usual = plan::default_tasks(plan::Work::overhaul);
    const Tasks tasks = by(support::route("r"));
    REQUIRE(tasks.size() == usual.size());
    for (const Task& task : tasks) {
        CAPTURE(task.key);
        CHECK(task.days == task_in(usual, task.key)->days);
        CHECK(task.after == task_in(usual, task.key)->after);
    }
    is_sound(tasks);
}

TEST_CASE("what a route says of kit, place and way is taken as it is said", "[plan][route]") {
    Route route = support::route("r");
    route.kit_days = 0;
    route.queue_days = 75;
    route.there_days = 2;
    route.back_days = 3;
    const Tasks tasks = by(route);
    CHECK(task_in(tasks, "kit")->days == plan::Estimate{0, 0, 0});
    CHECK(task_in(tasks, "queue")->days == plan::Estimate{75, 75, 75});
    CHECK(task_in(tasks, "transport")->days == plan::Estimate{2, 2, 2});
    CHECK(task_in(tasks, "home")->days == plan::Estimate{3, 3, 3});
    CHECK(waits_for(*task_in(tasks, "home"), "release"));
    CHECK(task_in(tasks, "home")->role == Role::release);  // with it the aircraft is back
    is_sound(tasks);
}

TEST_CASE("the days at the shop stand for every step there", "[plan][route]") {
    Route route = support::route("r");
    route.low_days = 60;
    route.likely_days = 80;
    route.high_days = 120;
    const Tasks tasks = by(route);
    CHECK(task_in(tasks, "shop")->days == plan::Estimate{60, 80, 120});
    CHECK(task_in(tasks, "strip") == nullptr);
    CHECK(task_in(tasks, "induct") == nullptr);
    CHECK(waits_for(*task_in(tasks, "shop"), "transport"));
    CHECK(waits_for(*task_in(tasks, "shop"), "kit_check"));
    CHECK(waits_for(*task_in(tasks, "release"), "shop"));
    CHECK(waits_for(*task_in(tasks, "cores_out"), "shop"));
    is_sound(tasks);
}

TEST_CASE("crated it is packed before and assembled after", "[plan][route]") {
    Route route = support::route("r");
    route.carriage = Carriage::crated;
    route.there_days = 21;
    const Tasks tasks = by(route);
    CHECK(waits_for(*task_in(tasks, "transport"), "crate"));
    CHECK(waits_for(*task_in(tasks, "crate"), "hand_over"));
    CHECK(task_in(tasks, "home")->days ==
          plan::Estimate{21, 21, 21});  // nobody said how long back: as there
    CHECK(waits_for(*task_in(tasks, "assemble"), "home"));
    CHECK(task_in(tasks, "assemble")->role == Role::release);
    is_sound(tasks);
}

TEST_CASE("in its own hangar there is no way", "[plan][route]") {
    Route route = support::route("r");
    route.carriage = Carriage::stays;
    route.there_days = 9;
    const Tasks tasks = by(route);
    CHECK(task_in(tasks, "transport") == nullptr);
    CHECK(waits_for(*task_in(tasks, "induct"), "hand_over"));
    is_sound(tasks);
}

TEST_CASE("every route holds together, whatever of it is said", "[plan][route]") {
    for (const Carriage carriage :
         {Carriage::flown, Carriage::on_permit, Carriage::crated, Carriage::stays}) {
        for (unsigned given = 0; given < 16; ++given) {
            Route route = support::route("r");
            route.carriage = carriage;
            if ((given & 1U) != 0) route.kit_days = 10;
            if ((given & 2U) != 0) route.back_days = 2;
            if ((given & 4U) != 0) route.low_days = route.likely_days = route.high_days = 70;
            timeline::PlanState records;
            records.routes = {{route, hand_today, {}}};
            if ((given & 8U) != 0) records.terms.work = facts::PlanWork::calendar_work;
            CAPTURE(given, static_cast<int>(carriage));
            is_sound(plan::tasks_of(plan::choosing(records, 0), hand_today));
        }
    }
}

TEST_CASE("the flight there is taken off the hours left, on a permit it is not", "[plan][route]") {
    // 100 h left at one hour a day: in 100 days. Ten hours of ferry kept back: in 90.
    timeline::AircraftState state = support::hand_state();
    support::add_item(state, facts::ItemRole::overhaul, base::hours(100), {});
    const auto items = limits::due_items(state, hand_today);
    const auto ahead = forecast::even_ahead(state, 3600, 3600, 3600);
    const auto as_is = forecast::project(items.front(), state, ahead, hand_today);
    Route route = support::route("r");
    route.ferry = base::hours(10);
    const auto kept =
        plan::project_by_route(&route, items.front(), as_is, state, ahead, hand_today);
    CHECK(base::days_between(hand_today, *as_is.likely) == 100);
    CHECK(base::days_between(hand_today, *kept.likely) == 90);
    route.carriage = Carriage::on_permit;
    const auto permitted =
        plan::project_by_route(&route, items.front(), as_is, state, ahead, hand_today);
    CHECK(permitted.likely == as_is.likely);
    CHECK(plan::project_by_route(nullptr, items.front(), as_is, state, ahead, hand_today).likely ==
          as_is.likely);
}
