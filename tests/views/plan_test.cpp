// The page of the plan in words: days to act by, what comes of it, and plain answers where there
// is no day.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"
#include "tests/views/planned.hpp"

#include <algorithm>
#include <string>

#include "engine/base/region.hpp"
#include "engine/plan/default_tasks.hpp"
#include "engine/views/plan_view.hpp"

using namespace twoclocks;
using base::Message;
using base::Word;
using facts::ItemRole;
using support::add_item;
using support::any_line;
using support::day;
using support::ends_in;
using support::hand_state;
using support::hand_today;
using support::moved;
using support::planned;
using support::promise;
using support::said;
using timeline::AircraftState;
using views::PlanView;

TEST_CASE("without an overhaul, a day or a sound plan there is no date", "[views][plan][bad]") {
    CHECK(said(planned(hand_state()).missing) ==
          "No overhaul limit is recorded, so there is nothing to plan towards.");
    AircraftState unread = hand_state();
    unread.usage.clear();
    unread.certain.clear();
    add_item(unread, ItemRole::overhaul, base::hours(100), {});
    CHECK(said(planned(unread).missing) ==
          "When the overhaul is due is not known: log readings, or say how much is to be flown.");
    AircraftState loop = ends_in(400);
    facts::PlanTask quotes;
    quotes.task = "quotes";
    quotes.waits_for = "order";
    loop.campaign.tasks.push_back({quotes, hand_today, {}});
    const PlanView view = planned(loop);
    CHECK(said(view.missing) ==
          "The plan does not hold together. Until it is mended, no date is given.");
    REQUIRE(view.faults.size() == 1);
    CHECK(view.faults.front().code == base::Trouble::task_loop);
    CHECK(view.rows.empty());
}

TEST_CASE("with time enough the days to act by lie ahead", "[views][plan]") {
    const PlanView view = planned(ends_in(600));
    CHECK(said(view.missing).empty());
    CHECK(said(view.order.text).starts_with("Order the kit by "));
    CHECK(said(view.book.text).starts_with("Book the shop by "));
    // 600 days after 1 July 2024: the calendar is sure.
    CHECK(said(view.stop.text) == "Flying can be counted on until 21 Feb 2026");
    CHECK(said(view.title) == "If all is begun today");
    CHECK(any_line(view.today, "In every way looked at the aircraft is not kept waiting."));
    CHECK(!view.order_late);
    CHECK(view.next.empty());
    CHECK(view.rows.size() == 27);
    CHECK(views::whys_of(view).size() == 5);
    // Tasks ahead stand on their last days: the first of them begins the line, long after today.
    CHECK(view.today_permille == -1);
    CHECK(view.rows.front().from_permille == 0);
}

TEST_CASE("inside the lead time it says what comes of it", "[views][plan]") {
    const PlanView view = planned(ends_in(100));
    CHECK(view.order_late);
    CHECK(said(view.order.text).starts_with("The last day to order in time was "));
    CHECK(any_line(
        view.today,
        "In 100 of 100 ways the aircraft stands a day or more and waits for what was begun too "
        "late."));
    CHECK(any_line(view.today, "Flying less does not help: the calendar ends it."));
    REQUIRE(!view.next.empty());
    CHECK(view.next.front().late);
    CHECK(said(view.next.front().name) == "Ask for quotes and choose");
    CHECK(views::assess(ends_in(100), hand_today).item_states.front() == views::State::act);
}

TEST_CASE("what is promised takes the place of the estimate", "[views][plan]") {
    AircraftState state = ends_in(100);
    state.campaign.steps.push_back({"quotes", day("2024-06-03"), {}, day("2024-06-10"), {}});
    state.campaign.steps.push_back({"money", day("2024-06-03"), {}, day("2024-06-10"), {}});
    state.campaign.steps.push_back({"order", day("2024-06-11"), {}, day("2024-06-12"), {}});
    promise(state, "kit", "2024-08-30");
    const PlanView view = planned(state);
    CHECK(said(view.order.text) == "The kit was ordered on 12 Jun 2024");
    CHECK(said(view.title) == "As it goes on");
    CHECK(any_line(view.today, "The kit comes between 30 Aug 2024 and 30 Aug 2024."));
    bool found = false;
    for (const views::PlanNextRow& row : view.next)
        found = found || (row.key == "kit" && said(row.when) == "promised for 30 Aug 2024");
    CHECK(found);
}

TEST_CASE("hours that just last until the kit is here, by hand", "[views][plan]") {
    AircraftState state = hand_state();
    state.usage.insert(state.usage.begin(),
                       {base::add_days(hand_today, -365), base::hours(800), {}});
    state.certain = state.usage;
    add_item(state, ItemRole::overhaul, base::hours(50), 2'000);
    const PlanView view = planned(state);
    std::string line;
    for (const Message& one : view.today)
        if (one.word == Word::plan_fly_less) line = said(one);
    REQUIRE(!line.empty());
    // 50 h over the days until all is ready, at about 30.4 days a month: between 190 and 240 days.
    const double hours = std::stod(line.substr(std::string{"Flown no more than "}.size()));
    CHECK(hours > 50.0 * 365 / 12 / 240);
    CHECK(hours < 50.0 * 365 / 12 / 190);
}

TEST_CASE("a kit that would wait too long has a first day too", "[views][plan]") {
    AircraftState state = ends_in(600);
    state.campaign.terms.core_days = 150;
    const PlanView view = planned(state);
    CHECK(said(view.window).starts_with("Not before "));
    state.campaign.terms.core_days = 10;
    CHECK(said(planned(state).window).starts_with("Ordered by the last day"));
}

TEST_CASE("whatever task is left out, the rest is still planned", "[views][plan][bad]") {
    for (const plan::Task& task : plan::default_tasks(plan::Work::overhaul)) {
        CAPTURE(task.key);
        AircraftState state = ends_in(400);
        facts::PlanTask out;
        out.task = task.key;
        out.left_out = true;
        state.campaign.tasks.push_back({out, hand_today, {}});
        const PlanView view = planned(state);
        CHECK(said(view.missing).empty());
        CHECK(view.rows.size() == 26);
        if (task.key == "order") CHECK(said(view.order.text) == "No task orders a kit");
        CHECK(said(view.book.text).empty() == (task.key == "slot"));
    }
}

TEST_CASE("a task that nobody waits for is told, and leaves the time line as long as it was",
          "[views][plan]") {
    AircraftState state = ends_in(400);
    const std::string end = said(planned(state).to);
    facts::PlanTask own;
    own.task = "crane";
    own.name = "Hire a crane";
    own.low_days = own.likely_days = own.high_days = 3;
    state.campaign.tasks.push_back({own, hand_today, {}});
    const PlanView view = planned(state);
    CHECK(any_line(view.notes, "Nothing waits for: Hire a crane."));
    CHECK(said(view.to).substr(said(view.to).size() - 4) == end.substr(end.size() - 4));
}
