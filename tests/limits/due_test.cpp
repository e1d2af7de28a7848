#include "engine/limits/due.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/hangar.hpp"

#include <string>
#include <vector>

#include "engine/facts/names.hpp"

using namespace twoclocks;
using base::Count;
using base::FlightTime;
using facts::Clock;
using facts::Fact;
using facts::ItemRole;
using limits::ClockDue;
using limits::CountsFrom;
using limits::ItemDue;
using support::add_item;
using support::day;
using support::hand_state;
using support::hand_today;
using support::Hangar;
using support::renews;

namespace {

ClockDue only_clock(const timeline::AircraftState& state) {
    const std::vector<ItemDue> items = limits::due_items(state, hand_today);
    REQUIRE(items.size() == 1);
    REQUIRE(items.front().clocks.size() == 1);
    return items.front().clocks.front();
}

/// The check's hours clock when more is written about the hangar's aircraft.
ClockDue check_hours(const Hangar& hangar, const std::vector<Fact>& more) {
    facts::Journal journal = hangar.journal;
    for (const Fact& fact : more)
        journal.add(fact);
    const auto items =
        limits::due_items(timeline::replay(journal, hangar.id(), hangar.today), hangar.today);
    for (const ItemDue& item : items) {
        if (item.item == hangar.check.id) return *limits::clock_of(item, Clock::hours);
    }
    FAIL("the check is not there");
    return {};
}

}  // namespace

TEST_CASE("hours run on through a change of meter", "[limits][meter]") {
    Hangar h;
    // The second meter shows 12.3 h when the aircraft has 1,165.0 h.
    const Fact meter = h.ann.add(
        day("2024-06-10"),
        {h.id()},
        facts::MeterFitted{"Second", {}, base::tenths(123), base::tenths(11'650), "Failed"});
    CHECK(check_hours(h, {meter}).left == base::tenths(550));
    const Fact reading = h.ann.write(day("2024-06-20"), {h.id(), meter.id}, support::reads(223));
    const ClockDue after = check_hours(h, {meter, reading});
    CHECK(after.used == base::tenths(550));
    CHECK(after.left == base::tenths(450));
    CHECK(after.due_total == base::tenths(12'200));
}

TEST_CASE("work without a total is estimated from the last reading before it", "[limits][hours]") {
    Hangar h;
    const Fact early = h.ann.write(day("2024-06-01"), {h.id()}, renews({h.check.id}, -1));
    const ClockDue on_its_day = check_hours(h, {early});
    CHECK(on_its_day.estimated);
    CHECK(on_its_day.anchor_total == base::tenths(11'600));
    CHECK(on_its_day.anchor_fact == early.id);
    const Fact day_before = h.ann.write(day("2024-05-31"), {h.id()}, renews({h.check.id}, -1));
    CHECK(check_hours(h, {day_before}).anchor_total == base::tenths(11'200));
    const Fact with_total = h.ann.write(day("2024-06-01"), {h.id()}, renews({h.check.id}, 11'580));
    CHECK_FALSE(check_hours(h, {with_total}).estimated);
    CHECK(check_hours(h, {with_total}).left == base::tenths(980));
}

TEST_CASE("an estimate never rests on a reading that is disputed", "[limits][hours]") {
    Hangar h;
    const Fact disputed = h.read(h.ben, "2024-06-20", 1400);  // falls below 160.0 on 1 June
    const Fact work = h.ann.write(day("2024-06-25"), {h.id()}, renews({h.check.id}, -1));
    CHECK(check_hours(h, {work}).anchor_total == base::tenths(11'600));
    CHECK(check_hours(h, {work, disputed}).anchor_total == base::tenths(11'200));
}

TEST_CASE("work that lacks a figure keeps that of the work before it", "[limits][counts]") {
    Hangar h;
    facts::LimitSet interval = support::limit(0, 0);
    interval.landings = Count{500};
    facts::WorkDone first = renews({h.check.id}, 11'000);
    first.landings = Count{300};
    facts::Reading reading = support::reads(1600);
    reading.landings = Count{450};
    facts::Journal journal = h.journal;
    journal.add(h.ann.write(day("2024-01-02"), h.with(h.check), interval));
    journal.add(h.ann.write(day("2024-04-02"), {h.id()}, first));
    journal.add(h.ann.write(day("2024-04-20"), {h.id()}, renews({h.check.id}, 11'400)));
    journal.add(h.ann.write(day("2024-06-01"), h.with(h.meter), reading));
    const auto items = limits::due_items(timeline::replay(journal, h.id(), h.today), h.today);
    CHECK(limits::clock_of(items.back(), Clock::landings)->left_count == Count{350});
}

TEST_CASE("hours count from work, then the limit's anchor, then nothing", "[limits][anchor]") {
    timeline::AircraftState state = hand_state();
    timeline::ItemState& item = add_item(state, ItemRole::inspection, base::hours(20), {});
    CHECK(only_clock(state).counts_from == CountsFrom::anchor);
    CHECK(only_clock(state).left == base::hours(20));
    item.limit->anchor_total = std::nullopt;
    CHECK(only_clock(state).counts_from == CountsFrom::assumed);
    CHECK(only_clock(state).left == base::hours(-500));
    item.renewed[0] = timeline::Renewed{hand_today, base::hours(900), true, {}, {}, {}};
    CHECK(only_clock(state).counts_from == CountsFrom::work);
    CHECK(only_clock(state).left == base::hours(400));
    CHECK(only_clock(state).estimated);
    item.renewed[0]->total = base::hours(1001);
    // Work above the total cannot be: no more than the whole limit is left.
    CHECK(only_clock(state).left == base::hours(500));
    CHECK(only_clock(state).used == FlightTime{0});
    state.usage.clear();
    CHECK_FALSE(only_clock(state).known);
}

TEST_CASE("the calendar counts from work, anchor, manufacture or nothing", "[limits][anchor]") {
    timeline::AircraftState state = hand_state();
    timeline::ItemState& item = add_item(state, ItemRole::inspection, {}, 30);
    CHECK(only_clock(state).counts_from == CountsFrom::anchor);
    CHECK(only_clock(state).days_left == 30);
    item.limit->anchor_on = std::nullopt;
    CHECK(only_clock(state).counts_from == CountsFrom::unknown);
    CHECK_FALSE(only_clock(state).known);
    state.manufactured = day("2022-06-15");
    CHECK(only_clock(state).counts_from == CountsFrom::assumed);
    CHECK(base::print_date(only_clock(state).due_on) == "2024-06-15");
    CHECK(only_clock(state).days_left == -16);
    item.renewed[1] = timeline::Renewed{day("2024-01-31"), {}, false, {}, {}, {}};
    item.limit->months = 1;
    CHECK(only_clock(state).counts_from == CountsFrom::work);
    CHECK(base::print_date(only_clock(state).due_on) == "2024-02-29");
    item.renewed[1]->on = day("2024-02-05");
    CHECK(base::print_date(only_clock(state).due_on) == "2024-03-05");
    item.limit->rule = base::CalendarRule::month_end;
    CHECK(base::print_date(only_clock(state).due_on) == "2024-03-31");
}

TEST_CASE("a clock has passed the moment after its limit", "[limits][passed]") {
    const auto passed = [](std::optional<FlightTime> left, std::optional<std::int32_t> days) {
        timeline::AircraftState state = hand_state();
        add_item(state, ItemRole::inspection, left, days);
        return only_clock(state).passed();
    };
    CHECK_FALSE(passed(FlightTime{1}, {}));
    CHECK_FALSE(passed(FlightTime{0}, {}));
    CHECK(passed(FlightTime{-1}, {}));
    CHECK_FALSE(passed({}, 1));
    CHECK_FALSE(passed({}, 0));
    CHECK(passed({}, -1));
    CHECK_FALSE(ClockDue{}.passed());
}

TEST_CASE("counts need a count and start at nothing when no anchor is known", "[limits][counts]") {
    timeline::AircraftState state = hand_state();
    timeline::ItemState& item = add_item(state, ItemRole::component, {}, {});
    item.limit->landings = Count{1000};
    CHECK_FALSE(only_clock(state).known);
    state.landings = Count{1200};
    CHECK(only_clock(state).counts_from == CountsFrom::assumed);
    CHECK(only_clock(state).left_count == Count{-200});
    CHECK(only_clock(state).passed());
    item.limit->anchor_landings = Count{200};
    CHECK(only_clock(state).left_count == Count{0});
    CHECK_FALSE(only_clock(state).passed());
    item.renewed[2] = timeline::Renewed{hand_today, {}, false, Count{1100}, {}, {}};
    CHECK(only_clock(state).left_count == Count{900});
    item.renewed[2]->landings = Count{1300};
    CHECK(only_clock(state).left_count == Count{1000});
}

TEST_CASE("every class stops but recommended", "[limits][class]") {
    for (const facts::Name& name : facts::names_of(facts::Choices::limit_class)) {
        ItemDue item;
        item.limit_class = static_cast<facts::LimitClass>(name.value);
        CHECK(item.mandatory() == (name.word != "recommended"));
    }
}
