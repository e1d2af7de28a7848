// Storage, meters and kinds of flying against the trade. [T] is common practice without a source.
#include "tests/support/stored.hpp"

using namespace twoclocks;
using support::day;
using support::Stored;

// [T] Preservation is renewed at intervals that start when the aircraft is preserved: seven tasks
// of 14 days fall into a storage of 100 days, whatever was done before it.
TEST_CASE("a storage of 100 days asks for seven tasks of 14 days", "[outside][storage]") {
    Stored s;
    const facts::Fact task = s.item(facts::InForce::in_storage, 14);
    s.work(task, "2024-02-28");
    s.stored("2024-03-01", "2024-06-09");
    std::int32_t done = 0;
    for (base::Date on = day("2024-03-01"); on < day("2024-06-09"); on = base::add_days(on, 1)) {
        const std::string today = base::print_date(on);
        const limits::ItemDue due = s.due(task, today.c_str());
        if (limits::clock_of(due, facts::Clock::calendar)->days_left > 0) continue;
        s.work(task, today.c_str());
        ++done;
    }
    CHECK(done == 7);
}

// [T] A meter of four digits and a tenth shows 000.0 after 999.9: total time is the reading plus
// 1,000 h for each time round.
TEST_CASE("total time goes on by one whole round of the meter", "[outside][adjust]") {
    Stored s;
    const facts::Fact meter = s.keep(
        s.ann.add(day("2024-06-02"),
                  {s.id()},
                  facts::MeterFitted{"Second", {}, base::tenths(9'999), base::tenths(11'600), {}}));
    for (std::int64_t round = 1; round <= 3; ++round) {
        const base::Date on = base::add_days(day("2024-06-02"), static_cast<std::int32_t>(round));
        s.keep(s.ann.write(on,
                           {s.id(), meter.id},
                           facts::MeterAdjusted{facts::AdjustReason::rolled_over,
                                                base::hours(1000),
                                                base::tenths(0),
                                                "Manual",
                                                {}}));
        CHECK(s.total_tenths() == 11'600 - 9'999 + 10'000 * round);
    }
}

// [T] Flying that loads the aircraft more uses retirement lives by a multiple of the hours flown:
// at 1.5, 100 h of which 10 h so leave 95 h of 200 h, and the log says 100 h.
TEST_CASE("a multiple of the hours is taken off the life, not put into the log",
          "[outside][factor]") {
    Stored s;
    facts::LimitSet life = support::limit(200, 0);
    life.limit_class = facts::LimitClass::airworthiness_limitation;
    life.anchor_total = base::hours(1060);
    const facts::Fact grip = s.keep(s.ann.add(
        day("2024-01-01"), {s.id()}, facts::ItemAdded{"Grip", facts::ItemRole::component, {}}));
    s.keep(s.ann.write(day("2024-01-01"), s.with(grip), life));
    s.keep(s.ann.write(day("2024-01-01"),
                       {s.id()},
                       facts::HoursFactor{facts::Operation::external_load, 1500, "Manual", {}}));
    s.keep(s.ann.write(day("2024-05-01"),
                       {s.id()},
                       facts::FlownAs{facts::Operation::external_load, {}, base::hours(10), {}}));
    const limits::ItemDue due = s.due(grip);
    CHECK(limits::clock_of(due, facts::Clock::hours)->left == base::hours(200 - 100 - 5));
    CHECK(s.total_tenths() == 11'600);
}
