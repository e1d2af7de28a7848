// First interval and repeat, once, later and cap, days, permits.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <optional>
#include <string>
#include <vector>

#include "engine/limits/permit.hpp"
#include "engine/views/assess.hpp"

using namespace twoclocks;
using base::Count;
using base::FlightTime;
using facts::Clock;
using facts::Combine;
using facts::ItemRole;
using limits::ClockDue;
using limits::ItemDue;
using support::add_item;
using support::day;
using support::hand_state;
using support::hand_today;
using timeline::AircraftState;
using timeline::ItemState;
using views::State;

namespace {

ItemDue only(const AircraftState& state) {
    return limits::due_items(state, hand_today).front();
}

/// The clocks that count, with what is left of each: "hours 20 calendar 30".
std::string clocks(const ItemDue& item) {
    std::string out;
    for (const ClockDue& clock : item.clocks) {
        if (!out.empty()) out += ' ';
        if (clock.clock == Clock::hours)
            out += "hours " + std::to_string(clock.left.seconds / 3600);
        if (clock.clock == Clock::calendar) out += "calendar " + std::to_string(clock.days_left);
        if (clock.clock == Clock::landings)
            out += "landings " + std::to_string(clock.left_count.value);
        if (clock.clock == Clock::starts) out += "starts " + std::to_string(clock.left_count.value);
    }
    return out.empty() ? "none" : out;
}

/// Renews one clock today.
void renew(ItemState& item, Clock clock) {
    item.renewed[static_cast<std::size_t>(clock)] = timeline::Renewed{
        hand_today, base::hours(1000), false, Count{10}, Count{20}, support::id_of(7)};
}

/// State of an only item, which is past so many hours (below zero: not yet) and days.
State state_of(Combine combine, std::int64_t hours_left, std::int32_t days_left) {
    AircraftState state = hand_state();
    // Nothing was flown since yesterday.
    state.usage.insert(state.usage.begin(),
                       {base::add_days(hand_today, -1), base::hours(1000), support::id_of(4)});
    ItemState& item = add_item(state, ItemRole::inspection, base::hours(hours_left), days_left);
    item.limit->combine = combine;
    return views::assess(state, hand_today).item_states.front();
}

}  // namespace

TEST_CASE("the first interval counts by itself, then the repeat", "[limits][first]") {
    AircraftState state = hand_state();
    ItemState& item = add_item(state, ItemRole::inspection, base::hours(20), 30);
    item.limit->anchor_total = base::hours(900);
    item.limit->first.hours = base::hours(250);
    CHECK(clocks(only(state)) == "hours 150");
    CHECK(only(state).clocks.front().is_first);
    CHECK(only(state).clocks.front().limit_hours == base::hours(250));
    // Work that renews one clock begins the repeat; the other counts from its anchor.
    renew(item, Clock::hours);
    CHECK(clocks(only(state)) == "hours 500 calendar 30");
    CHECK_FALSE(only(state).clocks.front().is_first);
    item.renewed[0].reset();
    renew(item, Clock::calendar);
    CHECK(clocks(only(state)) == "hours 150 calendar 730");
}

TEST_CASE("a first interval of counts", "[limits][first]") {
    AircraftState state = hand_state();
    state.landings = Count{10};
    state.starts = Count{20};
    ItemState& item = add_item(state, ItemRole::component, {}, {});
    item.limit->landings = Count{50};
    item.limit->starts = Count{60};
    item.limit->first.landings = Count{300};
    CHECK(clocks(only(state)) == "landings 290");
    renew(item, Clock::landings);
    CHECK(clocks(only(state)) == "landings 50 starts 40");
}

TEST_CASE("once: what is complied with leaves nothing to do", "[limits][once]") {
    AircraftState state = hand_state();
    ItemState& item = add_item(state, ItemRole::component, base::hours(-20), 30);
    item.limit->once = true;
    CHECK(clocks(only(state)) == "hours -20 calendar 30");
    renew(item, Clock::hours);
    CHECK(clocks(only(state)) == "calendar 30");
    CHECK_FALSE(only(state).complied);
    renew(item, Clock::calendar);
    const ItemDue done = only(state);
    CHECK(clocks(done) == "none");
    CHECK(done.complied);
    CHECK_FALSE(done.passed());
    CHECK(done.all_known());
    CHECK(done.binding() == nullptr);
    const views::Assessed assessed = views::assess(state, hand_today);
    CHECK(assessed.item_states.front() == State::nothing_due);
    CHECK(assessed.projections.front().known);
    CHECK_FALSE(assessed.projections.front().likely);
    CHECK_FALSE(assessed.first);
}

TEST_CASE("sooner stops with the first clock, later with the last", "[limits][combine]") {
    CHECK(state_of(Combine::sooner, 400, 400) == State::nothing_due);
    CHECK(state_of(Combine::sooner, -1, 400) == State::over);
    CHECK(state_of(Combine::later, -1, 400) == State::nothing_due);
    CHECK(state_of(Combine::later, 400, -1) == State::nothing_due);
    CHECK(state_of(Combine::later, -1, -1) == State::before_next_flight);
    CHECK(state_of(Combine::sooner, -1, -1) == State::over);
    CHECK(state_of(Combine::later, -1, 20) == State::due);
    CHECK(state_of(Combine::later, 400, 20) == State::nothing_due);
}

TEST_CASE("a clock that is not known extends no later limit", "[limits][combine]") {
    AircraftState state = hand_state();
    ItemState& item = add_item(state, ItemRole::inspection, base::hours(-5), 30);
    item.limit->combine = Combine::later;
    item.limit->anchor_on = std::nullopt;
    CHECK(only(state).passed());
    CHECK_FALSE(only(state).all_known());
    CHECK(views::assess(state, hand_today).item_states.front() == State::over);
    item.limit->anchor_total = base::hours(1000);
    CHECK_FALSE(only(state).passed());
    CHECK(views::assess(state, hand_today).item_states.front() == State::unknown);
}

TEST_CASE("a cap ends the later of two clocks", "[limits][cap]") {
    AircraftState state = hand_state();
    ItemState& item = add_item(state, ItemRole::inspection, base::hours(-5), 400);
    item.limit->combine = Combine::later;
    item.limit->cap.hours = base::hours(510);
    const ItemDue due = only(state);
    REQUIRE(due.caps.size() == 1);
    CHECK(due.caps.front().left == base::hours(5));
    CHECK_FALSE(due.passed());
    CHECK(due.binding() == &due.caps.front());
    const views::Assessed assessed = views::assess(state, hand_today);
    CHECK(assessed.item_states.front() == State::due);
    CHECK(base::print_date(*assessed.projections.front().likely) == "2024-07-06");
    CHECK(assessed.projections.front().binds == Clock::hours);
    item.limit->cap.hours = base::hours(504);
    CHECK(only(state).passed());
    CHECK(views::assess(state, hand_today).item_states.front() == State::over);
    item.limit->tolerance.hours = base::hours(50);
    CHECK(only(state).caps.front().tolerance == FlightTime{});
    item.limit->cap = {};
    item.limit->cap.starts = Count{5};
    CHECK_FALSE(only(state).all_known());
}

TEST_CASE("the binding clock has the least share left, or the greatest", "[limits][binding]") {
    AircraftState state = hand_state();
    ItemState& item = add_item(state, ItemRole::inspection, base::hours(50), 300);
    CHECK(only(state).binding() != nullptr);
    const auto binds = [&] { return only(state).binding()->clock; };
    CHECK(binds() == Clock::hours);  // 50 of 500 h against 300 of 731 days
    item.limit->combine = Combine::later;
    CHECK(binds() == Clock::calendar);
    item.limit->combine = std::nullopt;
    item.limit->anchor_total = base::hours(1000);
    CHECK(binds() == Clock::calendar);
    item.limit->cap.hours = base::hours(1);
    item.limit->anchor_total = base::hours(999);
    CHECK(only(state).binding()->limit_hours == base::hours(1));
}

TEST_CASE("a calendar in days, and of months and days the sooner", "[limits][days]") {
    AircraftState state = hand_state();
    ItemState& item = add_item(state, ItemRole::inspection, {}, 30);
    item.limit->months = std::nullopt;
    item.limit->days = 14;
    item.limit->anchor_on = day("2024-06-25");
    CHECK(base::print_date(only(state).clocks.front().due_on) == "2024-07-09");
    CHECK(only(state).clocks.front().limit_days == 14);
    CHECK(only(state).clocks.front().limit_months == 0);
    item.limit->months = 1;
    CHECK(base::print_date(only(state).clocks.front().due_on) == "2024-07-09");
    item.limit->days = 40;
    CHECK(base::print_date(only(state).clocks.front().due_on) == "2024-07-25");
}

TEST_CASE("a permit covers so many hours and so long, and changes nothing", "[limits][permit]") {
    AircraftState state = hand_state();
    ItemState& item = add_item(state, ItemRole::inspection, base::hours(-4), {});
    item.permits.push_back(
        {{"Authority", "P 7", "Home to works", base::hours(5), hand_today}, hand_today, {}});
    const auto use = [&] { return limits::permit_uses(item, only(state), hand_today).front(); };
    CHECK(use().past == base::hours(4));
    CHECK_FALSE(use().expired);
    CHECK_FALSE(use().exceeded);
    CHECK(views::assess(state, hand_today).item_states.front() == State::over);
    item.permits.front().permit.until = base::add_days(hand_today, -1);
    item.permits.front().permit.hours = base::hours(4);
    CHECK(use().expired);
    CHECK_FALSE(use().exceeded);
    item.permits.front().permit.hours = FlightTime{4 * 3600 - 1};
    CHECK(use().exceeded);
    // What is not past its limit needs no permit.
    item.limit->anchor_total = base::hours(900);
    CHECK_FALSE(use().expired);
    CHECK_FALSE(use().exceeded);
    CHECK(use().past == FlightTime{});
}
