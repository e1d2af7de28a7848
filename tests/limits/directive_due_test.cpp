// What is due of a directive: from the day it took effect, from each compliance, by another way.
#include "catch_amalgamated.hpp"
#include "tests/support/directed.hpp"

using namespace twoclocks;
using facts::AlternativeMeans;
using facts::Clock;
using facts::Directive;
using facts::Fact;
using limits::ClockDue;
using support::day;
using support::Directed;
using support::directed;
using support::directive;
using support::effective;
using views::State;

namespace {

ClockDue clock_in(const limits::ItemDue& due, Clock clock) {
    const ClockDue* out = limits::clock_of(due, clock);
    REQUIRE(out != nullptr);
    return *out;
}

}  // namespace

TEST_CASE("the first interval counts from the day the directive took effect",
          "[limits][directives]") {
    struct Row {
        const char* on;
        std::int64_t due_tenths;  // 100 h after what is on record by then
        const char* due_on;       // twelve months after
    };

    for (const Row& row : {Row{"2024-03-01", 12'000, "2025-03-01"},
                           Row{"2024-03-02", 12'000, "2025-03-02"},
                           Row{"2024-02-29", 11'000, "2025-02-28"},
                           Row{"2024-05-31", 12'000, "2025-05-31"},
                           Row{"2024-06-01", 12'600, "2025-06-01"},
                           Row{"2024-08-01", 12'600, "2025-08-01"},
                           Row{"2023-12-31", 1'000, "2024-12-31"}}) {
        CAPTURE(row.on);
        Directed s;
        const Fact item = s.rests(s.first, effective("D 1", row.on), directed(100, 12));
        const limits::ItemDue due = s.here(item);
        CHECK(clock_in(due, Clock::hours).due_total == base::tenths(row.due_tenths));
        CHECK(clock_in(due, Clock::calendar).due_on == day(row.due_on));
    }
}

TEST_CASE("an anchor of the limit counts where it is earlier", "[limits][directives]") {
    Directed s;
    facts::LimitSet limit = directed(100, 12);
    limit.anchor_total = base::hours(1050);
    limit.anchor_on = day("2024-04-01");
    const Fact item = s.rests(s.first, effective("D 1", "2024-03-01"), limit);
    CHECK(clock_in(s.here(item), Clock::hours).due_total == base::hours(1150));
    CHECK(clock_in(s.here(item), Clock::calendar).due_on == day("2025-03-01"));
}

TEST_CASE("a repeat counts from compliance, early or late, whatever a tolerance says",
          "[limits][directives]") {
    struct Row {
        std::int64_t done_tenths;
        std::int64_t due_tenths;
    };

    for (const Row& row : {Row{10'950, 11'950}, Row{11'000, 12'000}, Row{11'050, 12'050}}) {
        CAPTURE(row.done_tenths);
        Directed s;
        facts::LimitSet limit = directed(100);
        limit.tolerance.hours = base::hours(10);
        limit.tolerance.carry_over = facts::CarryOver::from_due;
        limit.tolerance.source = "D 1";
        const Fact item = s.rests(s.first, effective("D 1", "2024-01-01"), limit);
        s.work(item, {s.first}, "2024-03-01", row.done_tenths);
        const ClockDue hours = clock_in(s.here(item), Clock::hours);
        CHECK(hours.due_total == base::tenths(row.due_tenths));
        CHECK(hours.tolerance == base::hours(10));  // told, not counted
    }
}

TEST_CASE("before further flight stands until all of it was complied with once",
          "[limits][directives]") {
    Directed s;
    Directive told = effective("D 1", "2024-03-01");
    told.before_flight = true;
    const Fact item = s.asks(s.first, "D 1");
    s.told(s.first, item, told);
    CHECK(s.stands(item) == "before flight");
    CHECK(s.state_of(item) == State::before_next_flight);
    facts::WorkDone half = support::renews({}, 11'000);
    half.renews = {{item.id, {Clock::hours}}};
    s.keep(s.ann.write(day("2024-04-01"), {s.first}, half));
    CHECK(s.state_of(item) == State::before_next_flight);
    const Fact work = s.work(item, {s.first}, "2024-05-01", 11'300);
    CHECK(s.stands(item) == "complied");
    CHECK(s.state_of(item) == State::nothing_due);
    s.keep(s.ann.withdraw(work));
    CHECK(s.state_of(item) == State::before_next_flight);
}

TEST_CASE("before further flight with an interval goes on as a repeat", "[limits][directives]") {
    Directed s;
    Directive told = effective("D 1", "2024-03-01");
    told.before_flight = true;
    const Fact item = s.rests(s.first, told, directed(1000));
    CHECK(s.stands(item) == "before flight 9400");
    CHECK(s.state_of(item) == State::before_next_flight);
    s.work(item, {s.first}, "2024-05-01", 11'300);
    CHECK(s.stands(item) == "open 9700");
}

TEST_CASE("one that is not in effect yet is due and stops nothing", "[limits][directives]") {
    Directed s;
    Directive told = effective("D 1", "2024-07-02");
    told.before_flight = true;
    const Fact item = s.asks(s.first, "D 1");
    const Fact record = s.told(s.first, item, told);
    CHECK(s.state_of(item) == State::due);
    CHECK(s.here(item).directive->ahead == day("2024-07-02"));
    told.effective_on = day("2024-07-01");
    s.keep(s.ann.correct(record, told));
    CHECK(s.state_of(item) == State::before_next_flight);
    CHECK_FALSE(s.here(item).directive->ahead.has_value());
}

TEST_CASE("what nobody decided is unknown, never nothing", "[limits][directives]") {
    Directed s;
    Directive told = effective("D 1", "2024-03-01");
    told.applies = facts::Applicability::unknown;
    const Fact item = s.rests(s.first, told, directed(5000, 120));
    CHECK(s.state_of(item) == State::unknown);
    for (const ClockDue& clock : s.here(item).clocks)
        CHECK_FALSE(clock.known);
    CHECK(s.here(item).clocks.size() == 2);
    told.before_flight = true;
    const Fact bare = s.asks(s.first, "D 2");
    s.told(s.first, bare, told);
    CHECK(s.state_of(bare) == State::unknown);
}

TEST_CASE("another approved way has its interval, its grace and its last day",
          "[limits][directives]") {
    Directed s;
    facts::LimitSet limit = directed(100);
    limit.tolerance.hours = base::hours(10);
    limit.tolerance.source = "D 1";
    const Fact item = s.rests(s.first, effective("D 1", "2024-01-01"), limit);
    s.work(item, {s.first}, "2024-03-01", 11'000);
    CHECK(s.stands(item) == "open 400");
    AlternativeMeans way;
    way.interval.hours = base::hours(150);
    way.grace_hours = base::hours(3);
    const Fact approval = s.means(s.first, item, way);
    const ClockDue by_way = clock_in(s.here(item), Clock::hours);
    CHECK(by_way.left == base::hours(90));
    CHECK(by_way.tolerance == base::hours(3));
    CHECK(s.here(item).directive->means == approval.id);
    // Through its last day, and not after it.
    way.until = day("2024-07-01");
    s.means(s.first, item, way, "2024-06-01");
    CHECK(clock_in(s.here(item), Clock::hours).left == base::hours(90));
    way.until = day("2024-06-30");
    s.keep(s.ann.withdraw(approval));
    s.means(s.first, item, way, "2024-06-02");
    CHECK(clock_in(s.here(item), Clock::hours).left == base::hours(90));
    s.today = day("2024-07-02");
    CHECK(clock_in(s.here(item), Clock::hours).left == base::hours(40));
    CHECK(clock_in(s.here(item), Clock::hours).tolerance == base::hours(10));
}

TEST_CASE("without an interval of its own another way changes the grace alone",
          "[limits][directives]") {
    Directed s;
    const Fact item = s.rests(s.first, effective("D 1", "2024-03-01"), directed(0, 12));
    AlternativeMeans way;
    way.grace_days = 5;
    s.means(s.first, item, way);
    const ClockDue calendar = clock_in(s.here(item), Clock::calendar);
    CHECK(calendar.due_on == day("2025-03-01"));
    CHECK(calendar.tolerance_days == 5);
}

TEST_CASE("the last day of another way is the end where what is printed has passed by then",
          "[limits][directives]") {
    Directed s;
    const Fact item = s.rests(s.first, effective("D 1", "2024-01-01"), directed(100, 4));
    AlternativeMeans way;
    way.interval.hours = base::hours(500);
    way.interval.months = 24;
    way.until = day("2024-07-20");
    s.work(item, {s.first}, "2024-03-01", 11'000);
    s.means(s.first, item, way);
    const limits::ItemDue due = s.here(item);
    CHECK(clock_in(due, Clock::calendar).due_on == day("2026-03-01"));
    REQUIRE(due.caps.size() == 1);
    CHECK(due.caps.front().due_on == day("2024-07-20"));
    CHECK(due.caps.front().days_left == 19);
    CHECK(s.state_of(item) == State::due);
    // What is printed ends later than the approval: then it is the end.
    Directed later;
    const Fact other = later.rests(later.first, effective("D 1", "2024-01-01"), directed(0, 6));
    later.work(other, {later.first}, "2024-03-01", 11'000);
    way.until = day("2024-08-01");
    later.means(later.first, other, way);
    REQUIRE(later.here(other).caps.size() == 1);
    CHECK(later.here(other).caps.front().due_on == day("2024-09-01"));
}

TEST_CASE("a directive on a part counts its hours since it took effect, wherever it is",
          "[limits][directives]") {
    Directed s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    const Fact item = s.rests(s.gearbox.id, effective("D 1", "2024-03-01"), directed(100));
    // 300.0 h new, 350.0 h on 1 March, 410.0 h on 1 June.
    CHECK(s.stands(item) == "open 400");
    s.remove(s.gearbox, s.first, "2024-06-02", 11'600);
    CHECK(Directed::told_of(s.due(s.gearbox, item)) == "open 400");
    s.fit(s.gearbox, s.second, "2024-06-03", 6'200);
    const views::Assessed now = s.assessed(s.second);
    CHECK(Directed::told_of(now.items.at(s.place_of(now, item))) == "open 400");
    // A card that tells more: the hours in between may have been flown after that day.
    s.remove(s.gearbox, s.second, "2024-06-04", 6'200);
    s.fit(s.gearbox, s.second, "2024-06-05", 6'200, 4'300);
    CHECK(Directed::told_of(s.due(s.gearbox, item)) == "open 200");
}
