// Limits that hang on a part, against sources from outside. [S] was read in the source named, [T]
// is common practice without a source.
#include "tests/support/hung.hpp"

#include "catch_amalgamated.hpp"

#include "engine/views/assess.hpp"

using namespace twoclocks;
using base::hours;
using base::tenths;
using facts::Fact;
using facts::ItemRole;
using limits::ClockDue;
using support::day;
using support::Hung;
using support::life;
using support::limit;
using support::Stores;

// [S] US Army TB 1-1500-341-01: at overhaul time since new is not zeroed, time since overhaul is.
TEST_CASE("an overhaul gives back the overhaul interval and no hour of a life", "[outside][hung]") {
    Hung s;
    const Fact overhaul = s.item(s.gearbox, ItemRole::overhaul, limit(2200, 0));
    const Fact retirement = s.item(s.gearbox, ItemRole::component, life(4400));
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    CHECK(s.hours(s.gearbox, overhaul).left == hours(2200 - 100 - 110));
    CHECK(s.hours(s.gearbox, retirement).left == hours(4400 - 300 - 110));
    s.keep(s.ann.write(
        day("2024-06-02"), {s.first, s.gearbox.id}, support::renews({s.gearbox.id}, 11'600)));
    CHECK(s.hours(s.gearbox, overhaul).left == hours(2200));
    CHECK(s.hours(s.gearbox, retirement).left == hours(4400 - 300 - 110));
}

// [S] GM M.A.305: the status of a life-limited part is its limit, the time accumulated and the time
// remaining, for each parameter of its own.
TEST_CASE("the status of a life-limited part is limit, accumulated and remaining",
          "[outside][hung]") {
    Hung s;
    facts::PartAdded plate = Stores::plate("B1");
    plate.tsn = tenths(8'125);
    plate.landings = base::Count{1200};
    plate.manufactured = day("2014-06-15");
    const Fact part = s.add(plate);
    facts::LimitSet ends = life(2000, 144);
    ends.landings = base::Count{5000};
    ends.anchor = facts::Anchor::manufacture;
    const Fact item = s.item(part, ItemRole::component, ends);
    const limits::ItemDue due = s.due(part, item);
    REQUIRE(due.clocks.size() == 3);
    const ClockDue& flown = due.clocks[0];
    CHECK(flown.limit_hours == hours(2000));
    CHECK(flown.used == tenths(8'125));
    CHECK(flown.left == tenths(11'875));
    // 12 years from 2014-06-15 are 4,383 days [L: date-fns 4, luxon 3, dayjs 1, moment 2 agree].
    const ClockDue& years = due.clocks[1];
    CHECK(base::days_between(years.anchor_on, years.due_on) == 4383);
    CHECK(base::days_between(years.anchor_on, s.today) + years.days_left == 4383);
    const ClockDue& landings = due.clocks[2];
    CHECK(landings.limit_count == base::Count{5000});
    CHECK(landings.left_count == base::Count{3800});
}

// [T] common practice no. 11: a used part keeps its own hours.
TEST_CASE("a used part brings its own hours to the aircraft it goes on", "[outside][hung]") {
    Hung s;
    const Fact retirement = s.item(s.gearbox, ItemRole::component, life(1000));
    s.fit(s.gearbox, s.second, "2024-06-02", 6'200);
    // Its own 300 h count, not the aircraft's 620.
    CHECK(s.hours(s.gearbox, retirement).left == hours(700));
}

// [T] common practice no. 11: removal freezes hours, never the calendar.
TEST_CASE("on the shelf the calendar of a part runs and its hours do not", "[outside][hung]") {
    Hung s;
    facts::PartAdded plate = Stores::plate("H1");
    plate.tsn = hours(100);
    plate.manufactured = day("2020-07-01");
    const Fact part = s.add(plate);
    const Fact item = s.item(part, ItemRole::component, life(1000, 120));
    s.fit(part, s.first, "2024-02-01", 10'500);
    s.remove(part, s.first, "2024-03-01", 11'000);
    CHECK(s.hours(part, item).left == hours(850));
    CHECK(s.calendar(part, item).days_left == 2191);
    s.today = day("2030-06-30");
    CHECK(s.hours(part, item).left == hours(850));
    CHECK(s.calendar(part, item).days_left == 1);
    s.today = day("2030-07-02");
    CHECK(s.calendar(part, item).days_left == -1);
}

// [T] common practice no. 11: a life-limited part of unknown history has no life left.
TEST_CASE("a life-limited part of unknown history stops the aircraft it is on", "[outside][hung]") {
    Hung s;
    facts::PartAdded plate = Stores::plate("U1");
    plate.tsn = hours(812);
    plate.history_unknown = true;
    const Fact part = s.add(plate);
    const Fact item = s.item(part, ItemRole::component, life(2000));
    CHECK(s.hours(part, item).left == hours(0));
    const auto state = [&] {
        const auto assessed = views::assess(timeline::replay(s.journal, s.second, s.today),
                                            s.today,
                                            timeline::parts_of(s.journal, s.second, s.today));
        return assessed.item_states.empty() ? views::State::nothing_due
                                            : assessed.item_states.front();
    };
    CHECK(state() == views::State::nothing_due);  // on the shelf it is nobody's
    s.fit(part, s.second, "2024-06-02", 6'200);
    CHECK(state() == views::State::due);
    s.read(s.second, s.second_meter, "2024-06-20", 1'201);
    CHECK(state() == views::State::over);
}

// [T] common practice no. 2: hours left = limit - (total time - total time recorded at overhaul);
// 3,663.7 h after an overhaul at 2,187.4 h leaves 723.7 h of 2,200. Here of an engine that has gone
// to another aircraft in between.
TEST_CASE("hours left since overhaul follow an engine to another aircraft", "[outside][hung]") {
    Hung s;
    facts::PartAdded engine = Stores::plate("E1");
    engine.tsn = tenths(21'874);
    engine.tso = tenths(21'874);
    const Fact part = s.add(engine);
    const Fact overhaul = s.item(part, ItemRole::overhaul, limit(2200, 0));
    s.overhaul(part, {part.id}, "2024-01-02");
    s.fit(part, s.first, "2024-01-10", 10'000);
    s.remove(part, s.first, "2024-05-01", 18'000);
    s.fit(part, s.second, "2024-05-10", 6'000);
    s.remove(part, s.second, "2024-06-20", 12'763);
    CHECK(s.state(part).tsn == tenths(36'637));
    CHECK(s.hours(part, overhaul).left == tenths(7'237));
}
