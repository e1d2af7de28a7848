// Tasks in order, working days, and the two passes.
#include "tests/plan/networks.hpp"
#include "tests/support/pen.hpp"

#include "engine/plan/default_tasks.hpp"

using namespace twoclocks;
using base::Trouble;
using plan::DayKind;
using plan::Role;
using plan::Stage;
using plan::WorkDays;
using support::at;
using support::day;
using support::faults;
using support::network;
using support::task;

TEST_CASE("what is wrong with tasks is told by name, all of it", "[plan][network][bad]") {
    CHECK(faults({}) == std::vector{Trouble::plan_empty});
    CHECK(faults({task("a", {-1, 2, 3})}) == std::vector{Trouble::task_negative});
    CHECK(faults({task("a", {3, 2, 3})}) == std::vector{Trouble::task_out_of_order});
    CHECK(faults({task("a", {1, 4, 3})}) == std::vector{Trouble::task_out_of_order});
    CHECK(faults({task("a", {1, 2, 3'654})}) == std::vector{Trouble::task_too_long});
    CHECK(faults({task("a", {1, 1, 1}), task("a", {1, 1, 1})}) == std::vector{Trouble::task_twice});
    CHECK(faults({task("a", {1, 1, 1}, "z")}) == std::vector{Trouble::task_unknown_before});
    CHECK(faults({task("a", {5, 2, 3}), task("b", {-1, 1, 1}, "z")}) ==
          std::vector{
              Trouble::task_out_of_order, Trouble::task_negative, Trouble::task_unknown_before});
}

TEST_CASE("a loop is told by two of its tasks, whatever hangs on it", "[plan][network][bad]") {
    const auto made = plan::make_network({task("a", {1, 1, 1}),
                                          task("d", {1, 1, 1}, "c"),
                                          task("b", {1, 1, 1}, "ac"),
                                          task("c", {1, 1, 1}, "b")});
    REQUIRE(!made.ok());
    REQUIRE(made.problems().size() == 1);
    CHECK(made.problems().front().code == Trouble::task_loop);
    const auto& args = made.problems().front().args;
    CHECK((args[0].text == "b" || args[0].text == "c"));
    CHECK((args[1].text == "b" || args[1].text == "c"));
    CHECK(args[0].text != args[1].text);
    CHECK(faults({task("a", {1, 1, 1}, "a")}) == std::vector{Trouble::task_loop});
}

TEST_CASE("what is done before the last flight waits for nothing after it", "[plan][bad]") {
    plan::Task ahead = task("a", {1, 1, 1}, "b");
    ahead.stage = Stage::ahead;
    CHECK(faults({ahead, task("b", {1, 1, 1})}) ==
          std::vector{Trouble::task_waits_for_later_stage});
}

TEST_CASE("a loose end is told and stops nothing", "[plan][network]") {
    plan::Task last = task("c", {1, 1, 1}, "a");
    last.role = Role::release;
    const auto ends =
        plan::loose_ends(network({task("a", {1, 1, 1}), task("b", {1, 1, 1}, "a"), last}));
    REQUIRE(ends.size() == 1);
    CHECK(ends.front().text == "b");
}

TEST_CASE("work stands still on weekends and closed days", "[plan][days]") {
    // 30 November 2026 is a Monday.
    const WorkDays work{day("2026-11-30"), {}};
    CHECK(work.after(0, 5) == 5);      // over on Friday evening
    CHECK(work.after(0, 6) == 8);      // over on Monday evening
    CHECK(work.after(4.5, 1) == 7.5);  // from Friday noon to Monday noon
    CHECK(work.after(5, 1) == 8);      // a Saturday begins on Monday
    CHECK(work.after(5, 0) == 5);
    CHECK(work.before(5, 5) == 0);
    CHECK(work.before(8, 6) == 0);
    CHECK(work.before(7, 1) == 4);  // to be over by Sunday evening: Friday morning
    CHECK(work.before(7.5, 1) == 4.5);
    CHECK(work.before(0, 1) == -3);  // the Friday before
    const WorkDays closed{day("2026-11-30"), {{day("2026-12-01"), day("2026-12-03")}}};
    CHECK(closed.after(0, 2) == 5);
    CHECK(closed.before(5, 2) == 0);
    const WorkDays backwards{day("2026-11-30"), {{day("2026-12-03"), day("2026-12-01")}}};
    CHECK(backwards.after(0, 5) == 5);
}

TEST_CASE("work far back and far ahead still moves", "[plan][days]") {
    const WorkDays work{day("2026-11-30"), {}};
    CHECK(work.after(5'000, 3) == 5'003);
    CHECK(work.before(-2'000, 3) == -2'003);
    CHECK(work.after(4'391, 10) > 4'400);
    CHECK(work.before(-1'090, 30) < -1'120);
}

TEST_CASE("before undoes after", "[plan][days][property]") {
    const WorkDays work{day("2026-11-30"), {{day("2026-12-24"), day("2027-01-06")}}};
    for (int start = -40; start < 60; ++start) {
        for (int days = 1; days < 30; ++days) {
            const double end = work.after(start, days);
            const double latest = work.before(end, days);
            CHECK(latest >= start);
            CHECK(work.after(latest, days) == end);
        }
    }
}

TEST_CASE("slack, by hand", "[plan][network]") {
    // a 3 and b 5 lead to c 2; d 1 follows a and nothing waits for it: 7 days in all.
    const auto net = network({task("a", {3, 3, 3}),
                              task("b", {5, 5, 5}),
                              task("c", {2, 2, 2}, "ab"),
                              task("d", {1, 1, 1}, "a")});
    std::vector<double> days;
    for (const plan::Task& one : net.tasks)
        days.push_back(one.days.likely);
    const auto slack = plan::slack_of(net, WorkDays{day("2026-11-30"), {}}, days);
    CHECK(slack[at(net, "a")].total == 2);
    CHECK(slack[at(net, "a")].free == 0);
    CHECK(slack[at(net, "b")].critical);
    CHECK(slack[at(net, "c")].critical);
    CHECK(slack[at(net, "d")].total == 3);
    CHECK(slack[at(net, "d")].free == 3);
}

TEST_CASE("a lag keeps a task waiting longer", "[plan][network]") {
    plan::Task late = task("b", {1, 1, 1});
    late.after = {{"a", 4}};
    const auto net = network({task("a", {2, 2, 2}), late});
    plan::Times times;
    plan::pass_forward(net, WorkDays{day("2026-11-30"), {}}, {2, 1}, {0, 0}, times);
    CHECK(times.start[1] == 6);
    plan::pass_backward(net, WorkDays{day("2026-11-30"), {}}, {2, 1}, {9, 9}, times);
    CHECK(times.finish[0] == 4);
}

TEST_CASE("what is recorded of a task goes before its estimate", "[plan][network]") {
    plan::Task done = task("a", {2, 2, 2});
    done.progress.finished = -3;
    plan::Task begun = task("b", {10, 10, 10});
    begun.progress.begun = -4;
    plan::Task overdue = task("c", {2, 2, 2});
    overdue.progress.begun = -9;
    plan::Task promised = task("d", {2, 2, 2}, "a");
    promised.progress.promised = 30;
    const auto net = network({done, begun, overdue, promised});
    plan::Times times;
    plan::pass_forward(
        net, WorkDays{day("2026-11-30"), {}}, {2, 10, 2, 2}, std::vector<double>(4, 0), times);
    CHECK(times.finish[0] == -3);
    CHECK(times.finish[1] == 6);
    CHECK(times.finish[2] == 0);  // should be over: it ends now at the earliest
    CHECK(times.finish[3] == 30);
}

TEST_CASE("our own campaigns hold together", "[plan][default]") {
    for (const auto work : {plan::Work::overhaul, plan::Work::calendar_work}) {
        const auto net = network(plan::default_tasks(work));
        CHECK(plan::loose_ends(net).empty());
        for (const Role role : {Role::order, Role::kit_here, Role::book, Role::stop, Role::release})
            CHECK(plan::place_of(net, role) >= 0);
    }
    const auto net = network(plan::default_tasks(plan::Work::overhaul));
    CHECK(net.tasks.size() == 27);
    // A kit takes 21 to 24 weeks, cores come back after about three months: common practice, no
    // source.
    CHECK(net.tasks[at(net, "kit")].days == plan::Estimate{21 * 7, 22 * 7, 24 * 7});
    CHECK(net.tasks[at(net, "cores_back")].days.likely == 90);
    // Two to four months on the ground: common practice, no source.
    plan::Times times;
    std::vector<double> days;
    for (const plan::Task& one : net.tasks)
        days.push_back(one.stage == Stage::ahead ? 0 : one.days.likely);
    plan::pass_forward(
        net, WorkDays{day("2026-11-30"), {}}, days, std::vector<double>(days.size(), 0), times);
    const double out = times.finish[at(net, "release")];
    CHECK(out > 60);
    CHECK(out < 122);
}
