// Parts against sources from outside. [S] was read in the source named, [T] is common practice
// without a source.
#include "catch_amalgamated.hpp"
#include "tests/support/stores.hpp"

using namespace twoclocks;
using base::Count;
using base::hours;
using base::tenths;
using facts::Fact;
using support::day;
using support::Stores;
using timeline::PartState;

// [S] US Army TB 1-1500-341-01: at overhaul time since new is not zeroed, time since overhaul is,
// and the overhaul count goes up by one.
TEST_CASE("an overhaul keeps time since new, zeroes time since overhaul and is counted",
          "[outside][parts]") {
    Stores s;
    const PartState before = s.state(s.gearbox);
    s.overhaul(s.gearbox, {s.gearbox.id}, "2024-02-01");
    const PartState after = s.state(s.gearbox);
    CHECK(before.tsn == hours(300));
    CHECK(after.tsn == hours(300));
    CHECK(before.tso == hours(100));
    CHECK(after.tso == hours(0));
    CHECK(before.overhaul_count == Count{1});
    CHECK(after.overhaul_count == Count{2});
}

// [S] 14 CFR 43.10: a part taken off temporarily keeps its status only if it is the same product,
// the same serial, and no time was accrued in between.
TEST_CASE("a temporary removal keeps the status only on the same product, serial and hours",
          "[outside][parts]") {
    struct Row {
        bool temporarily;
        bool same_product;
        bool same_serial;
        std::int64_t accrued_tenths;
        bool keeps;
    };

    const Row rows[] = {{true, true, true, 0, true},
                        {false, true, true, 0, false},
                        {true, false, true, 0, false},
                        {true, true, false, 0, false},
                        {true, true, true, 1, false}};
    for (const Row& row : rows) {
        CAPTURE(row.temporarily, row.same_product, row.same_serial, row.accrued_tenths);
        Stores s;
        const Fact other = s.add(Stores::plate("8"));
        s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
        s.remove(s.gearbox, s.first, "2024-02-01", 10'500, row.temporarily);
        const Fact& back = row.same_serial ? s.gearbox : other;
        const base::Id host = row.same_product ? s.first : s.second;
        const std::int64_t total = row.same_product ? 10'500 : 5'200;
        s.fit(back, host, "2024-02-02", total, 3'300 + row.accrued_tenths);
        CHECK(s.state(back).spells.back().keeps_status == row.keeps);
    }
}

// [S] 14 CFR 91.417(a)(2): total time of each part that is kept, its life status and its time
// since overhaul must be told, here of two parts on one aircraft.
TEST_CASE("the status of every part on an aircraft can be told", "[outside][parts]") {
    Stores s;
    facts::PartAdded blade = Stores::plate("B1");
    blade.tsn = hours(50);
    const Fact other = s.add(blade);
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    s.fit(other, s.first, "2024-02-01", 10'500);
    for (const PartState& part : timeline::parts_of(s.journal, s.first, s.today)) {
        CHECK(part.tsn == (part.id == other.id ? hours(160) : hours(410)));
        CHECK(part.tso.has_value() == (part.id == s.gearbox.id));
    }
    CHECK(timeline::parts_of(s.journal, s.first, s.today).size() == 2);
}

// [T] common practice no. 2: hours left = limit - (total time - total time recorded at overhaul);
// 3,663.7 h after an overhaul at 2,187.4 h leaves 723.7 h of 2,200.
TEST_CASE("time since overhaul is the total less the total at overhaul", "[outside][parts]") {
    Stores s;
    facts::PartAdded engine = Stores::plate("E1");
    engine.tsn = hours(0);
    const Fact part = s.add(engine, "2020-01-01");
    const base::Id plane =
        s.keep(s.ann.add(day("2020-01-01"), {}, facts::AircraftAdded{"ISLE-3", {}, {}, {}, false}))
            .id;
    const base::Id meter =
        s.keep(s.ann.add(day("2020-01-01"), {plane}, facts::MeterFitted{{}, {}, {}, {}, {}})).id;
    s.fit(part, plane, "2020-01-01", 0);
    s.keep(s.ann.write(day("2022-04-08"), {plane, part.id}, support::renews({part.id}, 21'874)));
    s.read(plane, meter, "2024-06-30", 36'637);
    const PartState state = s.state(part);
    CHECK(state.tsn == tenths(36'637));
    CHECK(hours(2200) - *state.tso == tenths(7'237));
}

// [T] common practice no. 11: a used part keeps its own hours; removal freezes hours, never the
// calendar; a life-limited part of unknown history has no life left.
TEST_CASE("a removal freezes the hours of a part and not its calendar", "[outside][parts]") {
    Stores s;
    facts::PartAdded used = Stores::plate("U1");
    used.tsn = hours(812);
    used.manufactured = day("2015-01-10");
    used.history_unknown = true;
    const Fact part = s.add(used);
    s.fit(part, s.second, "2024-02-01", 5'200);
    s.remove(part, s.second, "2024-03-01", 5'500);
    const PartState then = timeline::replay_part(s.journal, part.id, day("2024-03-02"));
    const PartState later = timeline::replay_part(s.journal, part.id, day("2034-03-02"));
    CHECK(then.tsn == hours(842));  // its own 812, not the aircraft's 550
    CHECK(later.tsn == hours(842));
    CHECK(later.manufactured == day("2015-01-10"));
    CHECK(later.history_unknown);
}
