// Tolerance, carry-over and overfly against sources from outside. [S] was read in the source named.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <string>
#include <vector>

#include "engine/limits/due.hpp"

using namespace twoclocks;
using base::Date;
using base::FlightTime;
using facts::CarryOver;
using facts::Clock;
using facts::ItemRole;
using facts::LimitSet;
using limits::Carried;
using limits::ClockDue;
using support::day;
using timeline::AircraftState;
using timeline::ItemState;

namespace {

/// An inspection every so many tenths of an hour, last done at a total; now at another total.
struct CheckStory {
    LimitSet limit;
    std::int64_t last_tenths{0};
    std::vector<std::int64_t> done_tenths{};
    std::int64_t now_tenths{0};
};

ClockDue hours_of(const CheckStory& story) {
    AircraftState state = support::hand_state();
    state.usage.back().total = base::tenths(story.now_tenths);
    ItemState& item = support::add_item(state, ItemRole::inspection, FlightTime{}, {});
    item.limit = story.limit;
    item.limit->anchor_total = base::tenths(story.last_tenths);
    for (const std::int64_t tenths : story.done_tenths) {
        if (item.renewed[0]) item.earlier[0].push_back(*item.renewed[0]);
        item.renewed[0] = timeline::Renewed{
            support::hand_today, base::tenths(tenths), false, {}, {}, support::id_of(7)};
    }
    return limits::due_items(state, support::hand_today).front().clocks.front();
}

LimitSet every(std::int64_t tenths) {
    LimitSet out;
    out.hours = base::tenths(tenths);
    out.tolerance.source = "Rule";
    return out;
}

std::int64_t tenths_of(FlightTime time) {
    return time.seconds / 360;
}

std::int64_t next_tenths(const CheckStory& story) {
    return tenths_of(hours_of(story).due_total);
}

/// The calendar clock of an item last done on a day, seen from that day.
ClockDue calendar_of(const LimitSet& limit, const char* last) {
    AircraftState state = support::hand_state();
    ItemState& item = support::add_item(state, ItemRole::inspection, {}, {});
    item.limit = limit;
    item.renewed[1] = timeline::Renewed{day(last), {}, false, {}, {}, support::id_of(7)};
    const auto items = limits::due_items(state, day(last));
    return *limits::clock_of(items.front(), Clock::calendar);
}

std::string window(const ClockDue& clock) {
    return base::print_date(base::add_days(clock.due_on, -clock.tolerance_days)) + ' ' +
           base::print_date(base::add_days(clock.due_on, clock.tolerance_days));
}

}  // namespace

TEST_CASE("14 CFR 91.409(b): 10 h en route, and the excess counts in the next 100 h",
          "[outside][overfly]") {
    // [S] 14 CFR 91.409(b).
    LimitSet limit = every(1000);
    limit.tolerance.overfly_hours = base::hours(10);
    // Last 1000.0: due 1100.0, and flying to 1106.0 on the way leaves nothing of the limit.
    const ClockDue on_the_way = hours_of({limit, 9'000, {10'000}, 11'060});
    CHECK(tenths_of(on_the_way.due_total) == 11'000);
    CHECK(tenths_of(on_the_way.left) == -60);
    CHECK(on_the_way.passed());
    CHECK_FALSE(limits::overflown(on_the_way));
    // Flown to 1106.0, then inspected: the next is due at 1200.0.
    const ClockDue after = hours_of({limit, 9'000, {10'000, 11'060}, 11'060});
    CHECK(tenths_of(after.due_total) == 12'000);
    CHECK(after.carried == Carried::excess);
    CHECK(tenths_of(after.past_at_work) == 60);
    CHECK_FALSE(limits::overflown(after));
    // To 1110.0 is allowed, to 1110.1 is a violation, before the inspection and after it.
    CHECK_FALSE(limits::overflown(hours_of({limit, 9'000, {10'000}, 11'100})));
    CHECK(limits::overflown(hours_of({limit, 9'000, {10'000}, 11'101})));
    CHECK_FALSE(limits::overflown(hours_of({limit, 9'000, {10'000, 11'100}, 11'100})));
    const ClockDue violated = hours_of({limit, 9'000, {10'000, 11'101}, 11'101});
    CHECK(limits::overflown(violated));
    CHECK(tenths_of(violated.due_total) == 12'000);
    // Done early at 1090.0: the next is due at 1190.0.
    CHECK(next_tenths({limit, 9'000, {10'000, 10'900}, 10'900}) == 11'900);
}

TEST_CASE("US Army TM 1-1500-328-23: 50 h and more have 5 h either way", "[outside][tolerance]") {
    // [S] US Army TM 1-1500-328-23 (public).
    LimitSet limit = every(750);
    limit.tolerance.hours = base::hours(5);
    limit.tolerance.carry_over = CarryOver::from_due;
    // 75 h check due 1609.4: window 1604.4 to 1614.4, done inside, the next at 1684.4.
    const ClockDue due = hours_of({limit, 0, {15'344}, 15'344});
    CHECK(tenths_of(due.due_total) == 16'094);
    CHECK(tenths_of(due.due_total - due.tolerance) == 16'044);
    CHECK(tenths_of(due.due_total + due.tolerance) == 16'144);
    for (const std::int64_t inside : {16'044, 16'060, 16'094, 16'100, 16'144}) {
        CAPTURE(inside);
        CHECK(next_tenths({limit, 0, {15'344, inside}, inside}) == 16'844);
    }
    CHECK(next_tenths({limit, 0, {15'344, 16'043}, 16'043}) == 16'793);
    CHECK(next_tenths({limit, 0, {15'344, 16'145}, 16'145}) == 16'895);
    // 50 h check due 1306.4, done at 1299.9, outside: the next at 1349.9.
    limit.hours = base::hours(50);
    CHECK(next_tenths({limit, 12'564, {12'999}, 12'999}) == 13'499);
}

TEST_CASE("US Army TM 1-1500-328-23: below 50 h it is 10 %", "[outside][tolerance]") {
    // [S] US Army TM 1-1500-328-23: 25 h due 1472.7, 1470.2 to 1475.2.
    LimitSet limit = every(250);
    limit.tolerance.permille = 100;
    const ClockDue due = hours_of({limit, 0, {14'477}, 14'477});
    CHECK(tenths_of(due.due_total) == 14'727);
    CHECK(tenths_of(due.due_total - due.tolerance) == 14'702);
    CHECK(tenths_of(due.due_total + due.tolerance) == 14'752);
}

TEST_CASE("US Army TM 1-1500-328-23: 10 h or 14 days, each side on its own",
          "[outside][tolerance]") {
    // [S] US Army TM 1-1500-328-23: last 1709 h on 1997-05-22: 1719 h or 1997-06-05; 1718 to 1720 h
    // and 4 to 6 June, 1.4 days being 1.
    LimitSet limit = every(100);
    limit.days = 14;
    limit.tolerance.permille = 100;
    const ClockDue hours = hours_of({limit, 0, {17'090}, 17'090});
    CHECK(tenths_of(hours.due_total) == 17'190);
    CHECK(tenths_of(hours.due_total - hours.tolerance) == 17'180);
    CHECK(tenths_of(hours.due_total + hours.tolerance) == 17'200);
    const ClockDue calendar = calendar_of(limit, "1997-05-22");
    CHECK(base::print_date(calendar.due_on) == "1997-06-05");
    CHECK(window(calendar) == "1997-06-04 1997-06-06");
}

TEST_CASE("US Army TM 1-1500-328-23: 12 months have 30 days either way", "[outside][tolerance]") {
    // [S] US Army TM 1-1500-328-23: due 1999-02-06, 7 January to 8 March 1999.
    LimitSet limit;
    limit.months = 12;
    limit.tolerance.days = 30;
    limit.tolerance.source = "Rule";
    const ClockDue calendar = calendar_of(limit, "1998-02-06");
    CHECK(base::print_date(calendar.due_on) == "1999-02-06");
    CHECK(window(calendar) == "1999-01-07 1999-03-08");
}

TEST_CASE("AMC M.A.302 counts from the scheduled point, Part-ML from when the work is done",
          "[outside][carry_over]") {
    // [S] 2015 AMC M.A.302 and Part-ML: 100 h due 1100, done 1108: the next 1200 or 1208.
    LimitSet limit = every(1000);
    limit.tolerance.hours = base::hours(10);
    limit.tolerance.carry_over = CarryOver::from_due;
    const ClockDue scheduled = hours_of({limit, 0, {10'000, 11'080}, 11'080});
    CHECK(tenths_of(scheduled.due_total) == 12'000);
    CHECK(scheduled.carried == Carried::due_point);
    limit.tolerance.carry_over = CarryOver::from_done;
    CHECK(next_tenths({limit, 0, {10'000, 11'080}, 11'080}) == 12'080);
    limit.tolerance.carry_over = std::nullopt;
    CHECK(next_tenths({limit, 0, {10'000, 11'080}, 11'080}) == 12'080);
    // No tolerance by default, so nothing is inside one.
    limit.tolerance = {};
    limit.tolerance.carry_over = CarryOver::from_due;
    CHECK(next_tenths({limit, 0, {10'000, 11'080}, 11'080}) == 12'080);
}

TEST_CASE("a Dutch authority leaflet: 10 %, at most 500 h, never for airworthiness limitations",
          "[outside][tolerance]") {
    // [S] leaflet of the Dutch authority.
    LimitSet limit = every(22'000);
    limit.tolerance.permille = 100;
    limit.tolerance.cap_hours = base::hours(500);
    CHECK(limits::tolerance_hours(limit, base::hours(2200)) == base::hours(220));
    CHECK(limits::tolerance_hours(limit, base::hours(5000)) == base::hours(500));
    CHECK(limits::tolerance_hours(limit, base::hours(6000)) == base::hours(500));
    limit.limit_class = facts::LimitClass::airworthiness_limitation;
    CHECK(limits::tolerance_hours(limit, base::hours(2200)) == FlightTime{});
    limit.tolerance.days = 30;
    CHECK(limits::tolerance_days(limit, 365) == 0);
}
