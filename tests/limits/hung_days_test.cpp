// Limits that hang on a part: a life that nobody knows, its days, its counts, and what else
// stands beside an interval.
#include "catch_amalgamated.hpp"
#include "tests/support/hung.hpp"

using namespace twoclocks;
using base::Count;
using base::hours;
using base::tenths;
using facts::Fact;
using facts::ItemRole;
using limits::ClockDue;
using limits::CountsFrom;
using limits::HoursIn;
using support::day;
using support::Hung;
using support::life;
using support::limit;
using support::Stores;

TEST_CASE("a part nobody knows the life of has none left, and only what is limited by life",
          "[limits][hung][history]") {
    struct Row {
        bool history_unknown;
        std::int64_t tsn;
        bool flies;
        std::int64_t left_of_life;  // of 1,000 h
        bool check_known;
    };

    const Row rows[] = {{false, 300, false, 700, true},
                        {true, 300, false, 0, false},
                        {false, -1, false, 0, false},
                        {true, -1, false, 0, false},
                        {true, 300, true, -140, false},
                        {false, -1, true, -140, false},
                        {true, 1200, false, -200, false}};
    for (const Row& row : rows) {
        CAPTURE(row.history_unknown, row.tsn, row.flies);
        Hung s;
        facts::PartAdded plate = Stores::plate("9");
        plate.history_unknown = row.history_unknown;
        if (row.tsn >= 0) plate.tsn = hours(row.tsn);
        const Fact part = s.add(plate);
        const Fact retirement = s.item(part, ItemRole::component, life(1000));
        const Fact check = s.item(part, ItemRole::inspection, limit(2000, 0));
        if (row.flies) s.fit(part, s.first, "2024-01-10", 10'200);
        const ClockDue clock = s.hours(part, retirement);
        CHECK(clock.known);
        CHECK(clock.left == hours(row.left_of_life));
        CHECK(clock.left + clock.used == hours(1000));
        CHECK(s.hours(part, check).known == row.check_known);
        // Work makes a limit that is renewed known again, whatever the part's age.
        s.work(check, {part.id, check.id}, "2024-01-05", -1);
        CHECK(s.hours(part, check).known);
        CHECK(s.hours(part, check).used == hours(row.flies ? 140 : 0));
    }
}

TEST_CASE("work before hours that nobody knows says nothing", "[limits][hung][history]") {
    Hung s;
    const Fact check = s.item(s.gearbox, ItemRole::inspection, limit(200, 0));
    s.work(check, {s.gearbox.id, check.id}, "2024-01-05", -1);
    s.fit(s.gearbox, support::id_of(77), "2024-01-10", 0);
    s.remove(s.gearbox, support::id_of(77), "2024-02-10", -1);
    CHECK_FALSE(s.state(s.gearbox).tsn);
    CHECK_FALSE(s.hours(s.gearbox, check).known);
    // A card that tells the time since new makes it known again.
    s.fit(s.gearbox, s.first, "2024-03-10", 11'000, 3'550);
    CHECK(s.hours(s.gearbox, check).used == hours(55 + 60));
    // And so does work after it.
    Hung later;
    const Fact again = later.item(later.gearbox, ItemRole::inspection, limit(200, 0));
    later.fit(later.gearbox, support::id_of(77), "2024-01-10", 0);
    later.remove(later.gearbox, support::id_of(77), "2024-02-10", -1);
    later.work(again, {later.gearbox.id, again.id}, "2024-02-11", -1);
    later.fit(later.gearbox, later.first, "2024-03-10", 11'000);
    CHECK(later.hours(later.gearbox, again).hours_in == HoursIn::recorded);
    CHECK(later.hours(later.gearbox, again).used == hours(60));
}

TEST_CASE("the calendar of a part counts from its own days", "[limits][hung][calendar]") {
    using facts::Anchor;

    struct Row {
        Anchor anchor;
        bool has_dates;
        const char* due;  // empty: not known
        CountsFrom from;
    };

    const Row rows[] = {{Anchor::manufacture, true, "2025-01-10", CountsFrom::anchor},
                        {Anchor::cure, true, "2024-12-10", CountsFrom::anchor},
                        {Anchor::shipment, true, "2025-02-10", CountsFrom::anchor},
                        {Anchor::first_fit, true, "2034-02-10", CountsFrom::anchor},
                        {Anchor::release, true, "2025-01-10", CountsFrom::assumed},
                        {Anchor::unknown, true, "2025-01-10", CountsFrom::assumed},
                        {Anchor::overhaul, true, "2025-01-10", CountsFrom::assumed},
                        {Anchor::manufacture, false, "", CountsFrom::unknown}};
    for (const Row& row : rows) {
        CAPTURE(static_cast<int>(row.anchor), row.has_dates);
        Hung s;
        facts::PartAdded plate = Stores::plate("9");
        plate.tsn = hours(0);
        if (row.has_dates) {
            plate.manufactured = day("2015-01-10");
            plate.cured = day("2014-12-10");
            plate.shipped = day("2015-02-10");
        }
        const Fact part = s.add(plate);
        facts::LimitSet years = life(0, 120);
        years.anchor = row.anchor;
        if (row.anchor == Anchor::first_fit) s.fit(part, s.first, "2024-02-10", 10'600);
        const Fact item = s.item(part, ItemRole::component, years);
        const ClockDue clock = s.calendar(part, item);
        CHECK(clock.known == (row.due[0] != 0));
        CHECK(clock.counts_from == row.from);
        if (clock.known) CHECK(base::print_date(clock.due_on) == row.due);
    }
}

TEST_CASE("the first fit recorded is not the first of a part that had flown",
          "[limits][hung][calendar]") {
    for (const std::int64_t before : {0, 1}) {
        Hung s;
        facts::PartAdded plate = Stores::plate("9");
        plate.tsn = tenths(before);
        plate.manufactured = day("2015-01-10");
        const Fact part = s.add(plate);
        facts::LimitSet years = life(0, 120);
        years.anchor = facts::Anchor::first_fit;
        const Fact item = s.item(part, ItemRole::component, years);
        s.fit(part, s.first, "2024-02-10", 10'600);
        CHECK(base::print_date(s.calendar(part, item).due_on) ==
              (before == 0 ? "2034-02-10" : "2025-01-10"));
    }
}

TEST_CASE("counts of a part are its own", "[limits][hung][counts]") {
    Hung s;
    facts::PartAdded plate = Stores::plate("9");
    plate.landings = Count{400};
    const Fact part = s.add(plate);
    facts::LimitSet landings = limit(0, 0);
    landings.landings = Count{1000};
    const Fact item = s.item(part, ItemRole::component, landings);
    const auto left = [&] {
        const limits::ItemDue due = s.due(part, item);
        return limits::clock_of(due, facts::Clock::landings)->left_count;
    };
    CHECK(left() == Count{600});
    facts::PartFitted fitted;
    fitted.host_landings = Count{5000};
    s.keep(s.ann.write(day("2024-01-10"), {part.id, s.first}, fitted));
    facts::WorkDone work = support::renews({item.id}, 10'500);
    work.landings = Count{5120};
    s.keep(s.ann.write(day("2024-02-10"), {s.first, part.id, item.id}, work));
    facts::PartRemoved removed;
    removed.host_landings = Count{5150};
    s.keep(s.ann.write(day("2024-03-10"), {part.id, s.first}, removed));
    // 550 since new; the work was at 520.
    CHECK(left() == Count{970});
}

TEST_CASE("permits and tolerances hang on the part with the limit", "[limits][hung]") {
    Hung s;
    facts::LimitSet check = limit(100, 0);
    check.tolerance.hours = hours(10);
    check.tolerance.source = "Programme";
    const Fact item = s.item(s.gearbox, ItemRole::inspection, check);
    s.keep(s.ann.write(day("2024-02-01"),
                       {s.gearbox.id, item.id},
                       facts::Permit{"Authority", {}, {}, hours(20), {}}));
    s.keep(s.ann.write(
        day("2024-02-02"), {s.gearbox.id, item.id}, facts::ItemChanged{"Chip check", {}}));
    CHECK(s.hours(s.gearbox, item).left == hours(-200));
    CHECK(s.hours(s.gearbox, item).tolerance == hours(10));
    CHECK(s.due(s.gearbox, item).name == "Chip check");
    CHECK(s.state(s.gearbox).items.front().permits.size() == 1);
    CHECK(s.due(s.gearbox, item).part.serial == "7");
    CHECK(s.due(s.gearbox, item).part.position.empty());
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    CHECK(s.due(s.gearbox, item).part.position == "Main");
}
