// Intervals against sources from outside. [S] was read in the source named, [T] is common practice
// without a source.
// Tolerance, carry-over and overfly stand in tolerance_test.cpp.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/hangar.hpp"

#include <string>
#include <vector>

#include "engine/forecast/projection.hpp"
#include "engine/limits/due.hpp"

using namespace twoclocks;
using base::CalendarRule;
using facts::Clock;
using facts::ItemRole;
using limits::ClockDue;
using support::day;

namespace {

struct Done {
    std::int64_t interval_hours;
    std::int64_t at_tenths;
    std::int64_t next_tenths;
};

/// The total at which an item is due again after work at a total.
std::int64_t next_due(const Done& done) {
    timeline::AircraftState state = support::hand_state();
    state.usage.back().total = base::tenths(done.at_tenths);
    timeline::ItemState& item = support::add_item(state, ItemRole::inspection, base::hours(0), {});
    item.limit->hours = base::hours(done.interval_hours);
    item.renewed[0] =
        timeline::Renewed{support::hand_today, base::tenths(done.at_tenths), false, {}, {}, {}};
    return limits::due_items(state, support::hand_today).front().clocks.front().due_total.seconds /
           360;
}

}  // namespace

TEST_CASE("work done early: the next interval runs from when it was done", "[outside][hours]") {
    // [S] 14 CFR 91.409(b): done early at 1090.0, the next 100 h end at 1190.0.
    CHECK(next_due({100, 10'900, 11'900}) == 11'900);
    CHECK(next_due({100, 10'000, 11'000}) == 11'000);
    // [S] US Army TM 1-1500-328-23: a 50 h check done outside its window at 1299.9 h is next due
    // at 1349.9; a 10 h check done at 1709 h at 1719.
    CHECK(next_due({50, 12'999, 13'499}) == 13'499);
    CHECK(next_due({10, 17'090, 17'190}) == 17'190);
}

TEST_CASE("calendar months that run to the end of the last month", "[outside][calendar]") {
    struct Row {
        const char* done;
        std::int32_t months;
        const char* due;
    };

    // [S] readings of the calendar-month rule in public forums, not law.
    for (const Row& row : {Row{"2014-06-06", 12, "2015-06-30"},
                           Row{"2017-05-29", 12, "2018-05-31"},
                           Row{"2020-07-22", 24, "2022-07-31"}}) {
        CAPTURE(row.done);
        timeline::AircraftState state = support::hand_state();
        timeline::ItemState& item = support::add_item(state, ItemRole::inspection, {}, 0);
        item.limit->months = row.months;
        item.limit->rule = CalendarRule::month_end;
        item.renewed[1] = timeline::Renewed{day(row.done), {}, false, {}, {}, {}};
        const auto items = limits::due_items(state, support::hand_today);
        CHECK(base::print_date(items.front().clocks.front().due_on) == row.due);
    }
}

TEST_CASE("intervals add from their anchor and never chain", "[outside][calendar]") {
    struct Row {
        const char* anchor;
        std::int32_t months;
        std::int32_t times;
        const char* day;
    };

    // Dates on which five libraries agree (date-fns 4, luxon 3, dayjs 1, moment 2, Temporal).
    for (const Row& row : {Row{"2024-01-31", 1, 1, "2024-02-29"},
                           Row{"2024-01-31", 1, 2, "2024-03-31"},
                           Row{"2023-08-31", 6, 1, "2024-02-29"},
                           Row{"2023-08-31", 6, 2, "2024-08-31"},
                           Row{"2024-08-31", 6, 1, "2025-02-28"},
                           Row{"2024-02-29", 12, 1, "2025-02-28"},
                           Row{"2024-02-29", 12, 12, "2036-02-29"}}) {
        CAPTURE(row.anchor, row.months, row.times);
        CHECK(base::print_date(limits::occurrence(
                  day(row.anchor), row.months, row.times, CalendarRule::exact)) == row.day);
    }
    CHECK(limits::occurrence(day("2024-01-31"), 1, 0, CalendarRule::exact) ==
          limits::occurrence(day("2024-01-31"), 1, 1, CalendarRule::exact));
}

TEST_CASE("hours left are the limit less what was flown since the overhaul", "[outside][hours]") {
    // [T] fact 2: 3663.7 h after an overhaul at 2187.4 h leaves 723.7 of 2,200 h.
    timeline::AircraftState state = support::hand_state();
    state.usage.back().total = base::tenths(36'637);
    timeline::ItemState& item = support::add_item(state, ItemRole::overhaul, base::hours(0), {});
    item.limit->hours = base::hours(2200);
    item.limit->anchor_total = base::tenths(21'874);
    const ClockDue clock = limits::due_items(state, support::hand_today).front().clocks.front();
    CHECK(base::print_tenths(clock.left, base::Round::down) == "723.7");
}

TEST_CASE("a whole helicopter is due at 2,200 h or 12 years, whichever is sooner",
          "[outside][break_even]") {
    struct Row {
        std::int64_t hours_left_tenths;
        std::int32_t years_left;
        const char* a_year;
    };

    // [T] fact 1: fresh, 184 h a year or more and the hours bind; used, 736.3 h over 3 years.
    for (const Row& row : {Row{22'000, 12, "183.3"}, Row{7363, 3, "245.4"}}) {
        CAPTURE(row.hours_left_tenths);
        timeline::AircraftState state = support::hand_state();
        state.usage.back().total = base::hours(3000);
        timeline::ItemState& item =
            support::add_item(state, ItemRole::overhaul, base::hours(0), {});
        item.limit->hours = base::hours(2200);
        item.limit->anchor_total = base::hours(800) + base::tenths(row.hours_left_tenths);
        item.limit->months = 144;
        const std::int32_t used_months = 144 - 12 * row.years_left;
        item.limit->anchor_on =
            base::add_months(support::hand_today, -used_months, CalendarRule::exact);
        const auto items = limits::due_items(state, support::hand_today);
        const auto rate = forecast::break_even(items.front(), support::hand_today);
        REQUIRE(rate.has_value());
        CHECK(base::print_tenths(*rate, base::Round::down) == row.a_year);
    }
}

TEST_CASE("an overhaul starts its own clock and never the total time", "[outside][total]") {
    // [S] US Army TB 1-1500-341-01: at overhaul time since new is not zeroed, time since overhaul
    // is.
    support::Hangar h;
    facts::Journal journal = h.journal;
    journal.add(h.ann.write(day("2024-06-20"), {h.id()}, support::renews({h.overhaul.id}, 11'650)));
    const auto state = timeline::replay(journal, h.id(), h.today);
    CHECK(limits::total_time(state) == base::tenths(11'650));
    const auto items = limits::due_items(state, h.today);
    CHECK(limits::clock_of(items.front(), Clock::hours)->used == base::FlightTime{0});
    // The check keeps its own clock: 1,165.0 h less 1,120.0 h are used.
    CHECK(limits::clock_of(items.back(), Clock::hours)->used == base::tenths(450));
}
