// What the page of the plan says of the plan that was kept, of the cheapest day, of a chosen route.
#include "catch_amalgamated.hpp"
#include "tests/views/planned.hpp"

#include <algorithm>
#include <string>

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

TEST_CASE("what nobody gave a worth is not weighed as nothing", "[views][plan][induct][bad]") {
    AircraftState state = ends_in(300);
    state.campaign.costs.lost_day = base::Money{500'00, {}};
    CHECK(said(planned(state).induction.missing).starts_with("Say also what the overhaul costs"));
    state.campaign.costs.sum = base::Money{240'000'00, {}};
    CHECK(planned(state).induction.chart);
    state.campaign.costs.saved_day = base::Money{500'00, {}};
    CHECK(said(planned(state).induction.missing)
              .starts_with("By these figures a day standing costs nothing"));
}

TEST_CASE("the order that nobody waits for has no last day", "[views][plan][bad]") {
    AircraftState state = ends_in(300);
    facts::PlanTask kit;
    kit.task = "kit";
    kit.waits_for = "quotes";
    state.campaign.tasks.push_back({kit, hand_today, {}});
    const PlanView view = planned(state);
    CHECK(view.order.text.word == Word::blank);
    CHECK(view.missing.word == Word::blank);
}

TEST_CASE("days and hours of the flight there end the flying sooner", "[views][plan][route]") {
    AircraftState state = ends_in(300);
    const facts::PlanKept before = planned(state).as_it_stands;
    facts::Route far = support::route("far");
    far.there_days = 4;
    state.campaign.routes = {{far, hand_today, {}}};
    state.campaign.chosen_route = 0;
    const PlanView view = planned(state);
    CHECK(base::days_between(*view.as_it_stands.stop_on, *before.stop_on) == 4);
    CHECK(any_line(view.route, "4 days are kept for the way there."));
    CHECK(any_line(view.route, "Ask your registry before you order: is its release accepted?"));
}

TEST_CASE("once it is in, the last flight was", "[views][plan]") {
    AircraftState state = ends_in(300);
    state.campaign.steps.push_back({"hand_over", day("2024-06-20"), {}, {}, {}});
    CHECK(said(planned(state).stop.text) == "The last flight was on 20 Jun 2024");
}
