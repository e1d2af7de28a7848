// The page of the plan in words: days to act by, what comes of it, and plain answers where there
// is no day.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"

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
using support::day;
using support::hand_state;
using support::hand_today;
using timeline::AircraftState;
using views::PlanView;

namespace {

std::string said(const Message& message) {
    return base::say(message, {});
}

PlanView planned(const AircraftState& state) {
    return views::make_plan_view(views::assess(state, hand_today));
}

/// Nothing flown for a year, so that the calendar alone ends it: in so many days.
AircraftState ends_in(std::int32_t days) {
    AircraftState state = hand_state();
    add_item(state, ItemRole::overhaul, {}, days);
    return state;
}

void promise(AircraftState& state, const char* task, const char* until) {
    state.campaign.steps.push_back({task, hand_today, day(until), {}, {}});
}

bool any_line(const std::vector<Message>& lines, const std::string& text) {
    for (const Message& line : lines)
        if (said(line) == text) return true;
    return false;
}

std::string moved(const PlanView& view, const std::string& name) {
    for (const views::SlipRow& row : view.slip)
        if (said(row.name) == name) return said(row.moved);
    return {};
}

}  // namespace

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

TEST_CASE("against the plan that was kept, days later and sooner", "[views][plan][slip]") {
    AircraftState state = ends_in(300);
    const facts::PlanKept now = planned(state).as_it_stands;
    REQUIRE(now.back_on.has_value());
    facts::PlanKept kept = now;
    kept.back_on = base::add_days(*now.back_on, -12);
    kept.stop_on = base::add_days(*now.stop_on, 1);
    state.campaign.kept = timeline::KeptState{kept, day("2024-06-01"), {}};
    const PlanView view = planned(state);
    CHECK(said(view.slip_title) == "Against the plan kept on 1 Jun 2024");
    CHECK(moved(view, "Order") == "as kept");
    CHECK(moved(view, "Last flight") == "1 day sooner");
    CHECK(moved(view, "Back in service") == "12 days later");
    // What was done counts by the day it was done: today, so many days before the last day for it.
    const std::int32_t sooner = base::days_between(hand_today, *now.order_on);
    state.campaign.steps.push_back({"order", {}, {}, hand_today, {}});
    CHECK(moved(planned(state), "Order") == std::to_string(sooner) + " days sooner");
}

TEST_CASE("the cheapest day to go in is said once days have a worth", "[views][plan][induct]") {
    AircraftState state = ends_in(300);
    CHECK(said(planned(state).induction.missing).starts_with("Say what a day of standing"));
    state.campaign.costs.lost_day = base::Money{500'00, {}};
    state.campaign.costs.sum = base::Money{240'000'00, {}};
    const PlanView view = planned(state);
    REQUIRE(view.induction.chart.has_value());
    // The calendar ends it on one day, in 300: nothing is given up then and nothing stands. The 24
    // months of the limit are 10,000 each.
    CHECK(said(view.induction.best.text) == "Cheapest to go in on 27 Apr 2025");
    CHECK(said(view.induction.lines.front())
              .starts_with("Expected to cost 0\xC2\xA0"
                           "EUR"));
    bool told = false;
    for (const auto& line : view.induction.best.why.lines)
        told = told || said(line.text) ==
                           "A month of life given up: 10,000.00\xC2\xA0"
                           "EUR. That is 240,000.00\xC2\xA0"
                           "EUR over 24 months.";
    CHECK(told);
    // 28 days sooner: 28 / (365 / 12) months of 10,000: 9,206 rounded up.
    CHECK(any_line(view.induction.lines,
                   "Four weeks sooner: 9,206\xC2\xA0"
                   "EUR more."));
    CHECK(any_line(view.induction.lines,
                   "Four weeks later: 14,000\xC2\xA0"
                   "EUR more."));
    // Once it is in, there is nothing to choose.
    state.campaign.steps.push_back({"hand_over", hand_today, {}, {}, {}});
    CHECK(!planned(state).induction.chart);
}

TEST_CASE("a chosen route whose ferry is too long gives a plain answer", "[views][plan][bad]") {
    AircraftState state = hand_state();
    add_item(state, ItemRole::overhaul, base::hours(20), {});
    facts::Route far = support::route("far");
    far.ferry = base::hours(21);
    far.chosen = true;
    state.campaign.routes = {{far, hand_today, {}}};
    state.campaign.chosen_route = 0;
    CHECK(said(planned(state).missing) ==
          "The flight there takes 21.0 h and 20.0 h are left: not without a permit.");
    far.ferry = base::hours(5);
    far.name = "Far works";
    state.campaign.routes = {{far, hand_today, {}}};
    const PlanView view = planned(state);
    CHECK(any_line(view.route, "Planned by the route Far works."));
    CHECK(any_line(view.route, "5.0 h are kept for the flight there."));
}

TEST_CASE("a promise whose day is behind is asked for again", "[views][plan][bad]") {
    AircraftState state = ends_in(300);
    promise(state, "kit", "2024-06-20");
    const PlanView view = planned(state);
    const auto row = std::find_if(
        view.next.begin(), view.next.end(), [](const auto& one) { return one.key == "kit"; });
    REQUIRE(row != view.next.end());
    CHECK(said(row->when) == "was promised for 20 Jun 2024: ask again");
    CHECK(row->late);
}
