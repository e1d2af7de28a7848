#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/flown_monthly.hpp"
#include "tests/support/said.hpp"

#include <string>
#include <vector>

#include "engine/views/both_paths.hpp"
#include "engine/views/sure_view.hpp"

using namespace twoclocks;
using base::Message;
using base::Word;
using facts::Clock;
using facts::ItemRole;
using support::add_item;
using support::day;
using support::hand_state;
using support::hand_today;
using support::said;
using timeline::AircraftState;
using views::BothPathsView;
using views::SureView;
using Lines = std::vector<std::string>;

namespace {

SureView sure(const AircraftState& state,
              std::optional<base::FlightTime> month = {},
              base::Date today = hand_today) {
    return views::make_sure_view(views::assess(state, today), month);
}

/// 400 h and 100 days left of 500 h and 24 months; 30.4375 h a month.
AircraftState calendar_first() {
    AircraftState state = hand_state();
    add_item(state, ItemRole::overhaul, base::hours(400), 100);
    return state;
}

void add_rule(AircraftState& state, const char* name, std::vector<Clock> clocks) {
    timeline::WorkRuleState rule;
    rule.name = name;
    rule.renews = {{state.items.front().id, std::move(clocks)}};
    rule.source = "Manual";
    state.work_rules.push_back(rule);
}

}  // namespace

TEST_CASE("both paths, worked out by hand", "[views][paths]") {
    AircraftState state = calendar_first();
    add_rule(state, "Calendar inspection", {Clock::calendar});
    add_rule(state, "Overhaul", {});
    add_item(state, ItemRole::inspection, {}, 300);
    const BothPathsView view = sure(state).paths;
    CHECK(view.missing.word == Word::blank);
    // To 9 October: 30 of 31 days of July, August and September, nine days of October: 99.17 h.
    CHECK(said(view.when) == "On 9 Oct 2024, with about 1,099.2 h in total, there is a choice.");
    CHECK(said(view.given_up) == "The full overhaul then gives up about 300.8 h.");
    REQUIRE(view.paths.size() == 2);
    CHECK(said(view.paths[0].title) == "Calendar inspection");
    CHECK(said(view.paths[0].source) == "Manual, revision not given");
    // 22 days of October have 21.6 h. 279.23 h more are nine months and 5.4 days of August.
    CHECK(said(view.paths[0].next_stop) ==
          "Stops next about 5 Aug 2025, by hours, with 300.4 h flown from then.");
    // 478.4 h more are fifteen months and 20.1 days of February.
    CHECK(said(view.paths[1].next_stop) ==
          "Stops next about 20 Feb 2026, by hours, with 499.9 h flown from then.");
    CHECK(said(view.paths[0].after) ==
          "It needs the next overhaul on 5 Aug 2025; the other path goes on to 20 Feb 2026.");
    CHECK(view.paths[1].after.word == Word::blank);
    REQUIRE(view.items.size() == 1);
    CHECK(said(view.items[0].calendar_path) == "renewed, next 5 Aug 2025");
    CHECK(said(view.others) == "1 other limit stays as it is on both paths.");
    // 400 h in 100 days: 1,460 h a year, 121.6 a month, cut down.
    CHECK(said(view.meet) ==
          "At 121.6 h a month both clocks end together and nothing is given up.");
}

TEST_CASE("without a document there is no calendar path, and no second one is made up",
          "[views][paths]") {
    AircraftState state = calendar_first();
    BothPathsView view = sure(state).paths;
    CHECK(view.missing.word == Word::path_no_rule);
    REQUIRE(view.paths.size() == 1);
    CHECK(view.paths[0].title.word == Word::path_full_untold);
    CHECK(view.paths[0].source.word == Word::source_none);
    // Work that renews both is no calendar path either.
    add_rule(state, "Overhaul", {});
    view = sure(state).paths;
    CHECK(view.missing.word == Word::path_no_rule);
    CHECK(said(view.paths[0].title) == "Overhaul");
    AircraftState hours_first = hand_state();
    add_item(hours_first, ItemRole::overhaul, base::hours(10), 400);
    // Ten hours are ten days, and 390 days of the calendar are left then.
    CHECK(said(sure(hours_first).paths.given_up) ==
          "The full overhaul then gives up 1 y 25 d of the calendar.");
    CHECK(sure(hand_state()).paths.missing.word == Word::path_no_limit);
    AircraftState no_rate = calendar_first();
    no_rate.plan.reset();
    CHECK(sure(no_rate).paths.missing.word == Word::path_no_date);
}

TEST_CASE("what is tried moves every day, and says what the record has", "[views][sure]") {
    AircraftState state = hand_state();
    add_item(state, ItemRole::overhaul, base::hours(400), 900);
    add_item(state, ItemRole::inspection, {}, 50);
    const SureView recorded = sure(state);
    CHECK(recorded.tried.word == Word::blank);
    CHECK(base::print_tenths(recorded.month, base::Round::down) == "30.4");
    REQUIRE(recorded.rows.size() == 2);
    CHECK(recorded.rows[0].name == "Item 1");
    CHECK(said(recorded.rows[0].range) == "fixed");
    CHECK(said(recorded.rows[1].likely) == "5 Aug 2025");
    CHECK(recorded.rows[1].before.word == Word::blank);
    const SureView tried = sure(state, base::hours(100));
    CHECK(said(tried.tried) == "Tried, not recorded: 100.0 h a month.");
    // July has lost a day of 31: to the end of October 396.8 h, and of November 3.2 h are less
    // than a day: the day before.
    CHECK(said(tried.rows[1].likely) == "31 Oct 2024");
    CHECK(said(tried.rows[1].before) == "as recorded: 5 Aug 2025");
    CHECK(tried.rows[0].before.word == Word::blank);
    // Nothing flown never ends the hours: the calendar does.
    CHECK(said(sure(state, base::FlightTime{0}).rows[1].likely) == "18 Dec 2026");
    CHECK(views::whys_of(recorded).size() == 3);
}

TEST_CASE("a point of the life box is a rate", "[views][sure]") {
    AircraftState state = hand_state();
    // 100 of 500 h used, 366 of 731 days gone: today stands at 500 across, 200 up.
    add_item(state, ItemRole::overhaul, base::hours(400), 365);
    const views::Assessed one = views::assess(state, hand_today);
    const auto through = [&](std::int32_t across, std::int32_t up) {
        const auto month = views::month_through(one, {across, up});
        return month ? base::print_tenths(*month, base::Round::down) : std::string{"none"};
    };
    // To the corner 400 h in 365.5 days: 33.3 h a month, to half an hour.
    CHECK(through(1000, 1000) == "33.5");
    CHECK(through(750, 1000) == "66.5");
    CHECK(through(1000, 600) == "16.5");
    CHECK(through(1000, 100) == "0.0");
    CHECK(through(501, 1000) == "744.0");
    CHECK(through(500, 1000) == "none");
    CHECK_FALSE(views::month_through(views::assess(hand_state(), hand_today), {1000, 1000}));
}

TEST_CASE("the look back says how far off a year ago was", "[views][sure]") {
    const AircraftState state = support::flown_monthly(30);
    const SureView view = sure(state, {}, day("2024-01-02"));
    REQUIRE(view.look_back.size() == 3);
    CHECK(said(view.look_back[0]) ==
          "Asked on 1 Jan 2023, with the readings of that day: when are the next 360.0 h flown?");
    CHECK(view.look_back[1].word == Word::sure_back_late);
    CHECK(view.look_back[2].word == Word::sure_back_outside);
    const SureView even = sure(support::flown_monthly(), {}, day("2024-01-02"));
    CHECK(even.look_back[2].word == Word::sure_back_inside);
    CHECK(said(sure(hand_state()).look_back) ==
          Lines{"No look back: it takes a year of readings and some before it."});
}

TEST_CASE("the plan is set against what was flown since", "[views][sure]") {
    AircraftState state = support::flown_monthly(20);
    state.plan = timeline::StatedPlan{base::hours(16), "Two summers", day("2023-07-01"), {}};
    const SureView view = sure(state, {}, day("2024-01-02"));
    REQUIRE(view.plan.size() == 3);
    CHECK(said(view.plan[0]) == "It rests on: Two summers.");
    // Six months of 20 h; of the 16 planned each month has its share of the season.
    CHECK(view.plan[1].word == Word::sure_plan_since);
    CHECK(said(view.plan[1]).find("Flown: 120.0 h.") != std::string::npos);
    state.plan->on = day("2023-12-10");
    CHECK(sure(state, {}, day("2024-01-02")).plan[1].word == Word::sure_plan_young);
    state.plan.reset();
    CHECK(sure(state, {}, day("2024-01-02")).plan[0].word == Word::sure_plan_none);
}

TEST_CASE("the chart has the months flown and those expected", "[views][sure]") {
    const SureView view = sure(support::flown_monthly(), {}, day("2024-01-02"));
    REQUIRE(view.months);
    // The last reading is of 1 January 2024: that month is one of the twelve expected.
    REQUIRE(view.months->bars.size() == 35);
    CHECK_FALSE(view.months->bars[22].planned);
    CHECK(view.months->bars[23].planned);
    CHECK(said(view.months->bars[23].label) == "2024");
    CHECK(view.months->bars[24].label.word == Word::blank);
    CHECK(said(view.months->bars[29].label) == "Jul");
    std::int32_t greatest = 0;
    for (const views::ChartBar& bar : view.months->bars)
        greatest = std::max(greatest, bar.permille);
    CHECK(greatest == 1000);
    CHECK_FALSE(sure(AircraftState{}).months);
}
