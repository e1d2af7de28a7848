// Limits that hang on a part: which hours they count, from where, and what resets them.
#include "tests/support/hung.hpp"

#include "catch_amalgamated.hpp"

using namespace twoclocks;
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

TEST_CASE("a retirement life counts time since new wherever the part goes", "[limits][hung]") {
    Hung s;
    const Fact life_limit = s.item(s.gearbox, ItemRole::component, life(1000));
    CHECK(s.hours(s.gearbox, life_limit).left == hours(700));
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    CHECK(s.hours(s.gearbox, life_limit).left == hours(560));  // ISLE-1 has 1,160.0 h
    s.remove(s.gearbox, s.first, "2024-03-01", 11'000);
    CHECK(s.hours(s.gearbox, life_limit).left == hours(620));
    s.fit(s.gearbox, s.second, "2024-04-01", 5'700);
    const ClockDue clock = s.hours(s.gearbox, life_limit);
    CHECK(clock.left == hours(570));
    CHECK(clock.used == hours(430));
    CHECK(clock.hours_in == HoursIn::since_new);
    CHECK(clock.counts_from == CountsFrom::assumed);
    CHECK(clock.due_total == hours(1000));
}

TEST_CASE("a life has passed the moment after it, in the part's own hours", "[limits][hung]") {
    struct Row {
        std::int64_t off_tenths;
        bool passed;
    };

    const Row rows[] = {{11'699, false}, {11'700, false}, {11'701, true}};
    for (const Row& row : rows) {
        CAPTURE(row.off_tenths);
        Hung s;
        const Fact item = s.item(s.gearbox, ItemRole::component, life(450));
        s.fit(s.gearbox, s.first, "2024-01-10", 10'200);  // with 300.0 h since new
        s.remove(s.gearbox, s.first, "2024-06-10", row.off_tenths);
        CHECK(s.hours(s.gearbox, item).passed() == row.passed);
        CHECK(s.hours(s.gearbox, item).left == tenths(11'700 - row.off_tenths));
    }
}

TEST_CASE("work counts in the part's own time since new", "[limits][hung][work]") {
    Hung s;
    const Fact item = s.item(s.gearbox, ItemRole::inspection, limit(100, 0));
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    const Fact work = s.work(item, {s.first, s.gearbox.id, item.id}, "2024-03-10", 11'200);
    const ClockDue clock = s.hours(s.gearbox, item);
    CHECK(clock.counts_from == CountsFrom::work);
    CHECK(clock.anchor_fact == work.id);
    CHECK(clock.anchor_total == hours(400));  // 300 + 1,120 - 1,020
    CHECK(clock.used == hours(40));
    CHECK(clock.left == hours(60));
    CHECK_FALSE(clock.estimated);
}

TEST_CASE("work is found by its item alone, and counts once", "[limits][hung][work]") {
    for (const bool by_renewal_alone : {true, false}) {
        Hung s;
        facts::LimitSet carrying = limit(100, 0);
        carrying.anchor_total = hours(290);
        carrying.tolerance.hours = hours(10);
        carrying.tolerance.source = "Programme";
        carrying.tolerance.carry_over = facts::CarryOver::from_due;
        const Fact item = s.item(s.gearbox, ItemRole::inspection, carrying);
        s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
        std::vector<base::Id> about{s.first};
        if (!by_renewal_alone) about.insert(about.end(), {s.gearbox.id, item.id});
        s.work(item, about, "2024-03-10", 11'150);
        // Due at 390.0, done at 395.0: a second count of the same work would move the due point.
        CHECK(s.state(s.gearbox).items.front().earlier[0].empty());
        CHECK(s.hours(s.gearbox, item).due_total == hours(490));
    }
}

TEST_CASE("work on the shelf is at the hours that the part has then", "[limits][hung][work]") {
    Hung s;
    const Fact item = s.item(s.gearbox, ItemRole::inspection, limit(100, 0));
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    s.remove(s.gearbox, s.first, "2024-03-01", 11'000);
    // A total of anything else says nothing of the part.
    s.work(item, {s.gearbox.id, item.id}, "2024-03-10", 9'999);
    CHECK(s.hours(s.gearbox, item).left == hours(100));
    CHECK_FALSE(s.hours(s.gearbox, item).estimated);
    s.fit(s.gearbox, s.second, "2024-04-01", 5'700);
    CHECK(s.hours(s.gearbox, item).left == hours(50));
    CHECK(s.hours(s.gearbox, item).anchor_total == hours(380));
}

TEST_CASE("work without a total takes the last reading before it and says so",
          "[limits][hung][work]") {
    Hung s;
    const Fact item = s.item(s.gearbox, ItemRole::inspection, limit(100, 0));
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    s.work(item, {s.first, s.gearbox.id, item.id}, "2024-05-31", -1);
    const ClockDue clock = s.hours(s.gearbox, item);
    CHECK(clock.estimated);
    CHECK(clock.anchor_total == hours(380));  // 1,100.0 h read on 1 March
    // An estimate at work adds no hours to the part.
    CHECK(s.state(s.gearbox).tsn == hours(440));
    CHECK_FALSE(s.state(s.gearbox).tsn_estimated);
}

TEST_CASE("an overhaul of the part renews its overhaul and nothing else", "[limits][hung]") {
    Hung s;
    const Fact overhaul = s.item(s.gearbox, ItemRole::overhaul, limit(2000, 0));
    const Fact retirement = s.item(s.gearbox, ItemRole::component, life(5000));
    const Fact check = s.item(s.gearbox, ItemRole::inspection, limit(200, 0));
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    // Before any recorded overhaul it counts the 100.0 h since overhaul of its papers.
    const ClockDue before = s.hours(s.gearbox, overhaul);
    CHECK(before.hours_in == HoursIn::since_overhaul);
    CHECK(before.used == hours(240));
    CHECK(before.left == hours(1760));
    s.keep(s.ann.write(
        day("2024-03-10"), {s.first, s.gearbox.id}, support::renews({s.gearbox.id}, 11'200)));
    const ClockDue after = s.hours(s.gearbox, overhaul);
    CHECK(after.hours_in == HoursIn::since_new);
    CHECK(after.anchor_total == hours(400));
    CHECK(after.left == hours(1960));
    CHECK(s.hours(s.gearbox, retirement).used == hours(440));
    CHECK(s.hours(s.gearbox, check).used == hours(440));
}

TEST_CASE("an overhaul renews the clocks it names", "[limits][hung]") {
    Hung s;
    facts::PartAdded plate = Stores::plate("9");
    plate.tsn = hours(500);
    plate.tso = hours(400);
    plate.manufactured = day("2015-06-15");
    const Fact part = s.add(plate);
    const Fact overhaul = s.item(part, ItemRole::overhaul, limit(2000, 144));
    facts::WorkDone work = support::renews({part.id}, -1);
    work.renews.front().clocks = {facts::Clock::calendar};
    s.keep(s.ann.write(day("2024-03-10"), {part.id}, work));
    CHECK(s.hours(part, overhaul).used == hours(400));
    CHECK(base::print_date(s.calendar(part, overhaul).due_on) == "2036-03-10");
}

TEST_CASE("an overhaul takes the papers' time, else time since new, else nothing",
          "[limits][hung]") {
    struct Row {
        std::int64_t tsn;
        std::int64_t tso;
        std::int64_t used;  // below zero: not known
    };

    for (const Row& row :
         {Row{300, 100, 100}, Row{300, -1, 300}, Row{-1, 100, 100}, Row{-1, -1, -1}}) {
        CAPTURE(row.tsn, row.tso);
        Hung s;
        facts::PartAdded plate = Stores::plate("9");
        if (row.tsn >= 0) plate.tsn = hours(row.tsn);
        if (row.tso >= 0) plate.tso = hours(row.tso);
        const Fact part = s.add(plate);
        const Fact overhaul = s.item(part, ItemRole::overhaul, limit(2000, 0));
        const ClockDue clock = s.hours(part, overhaul);
        CHECK(clock.known == (row.used >= 0));
        if (row.used >= 0) CHECK(clock.used == hours(row.used));
    }
}

TEST_CASE("only the maker's rebuild starts a life again", "[limits][hung]") {
    Hung s;
    facts::LimitSet anchored = life(1000, 120);
    anchored.anchor_total = hours(200);
    anchored.anchor_on = day("2020-01-01");
    const Fact retirement = s.item(s.gearbox, ItemRole::component, anchored);
    const Fact check = s.item(s.gearbox, ItemRole::inspection, limit(100, 0));
    s.work(check, {s.gearbox.id, check.id}, "2024-01-05", -1);
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    s.overhaul(s.gearbox, {s.first, s.gearbox.id}, "2024-02-01");
    CHECK(s.hours(s.gearbox, retirement).used == hours(240));
    CHECK(base::print_date(s.calendar(s.gearbox, retirement).due_on) == "2030-01-01");
    facts::PartRebuilt rebuilt{"Maker 1", base::tenths(11'200), {}, {}};
    s.keep(s.ann.write(day("2024-03-10"), {s.gearbox.id}, rebuilt));
    CHECK(s.hours(s.gearbox, retirement).used == hours(40));
    CHECK(base::print_date(s.calendar(s.gearbox, retirement).due_on) == "2034-03-10");
    CHECK(s.calendar(s.gearbox, retirement).from_rebuild);
    // Work before it belongs to the life before.
    CHECK(s.hours(s.gearbox, check).used == hours(40));
    CHECK(s.hours(s.gearbox, check).counts_from == CountsFrom::assumed);
}

TEST_CASE("an overhaul of an assembly leaves the limits of what is in it", "[limits][hung]") {
    Hung s;
    facts::PartAdded plate = Stores::plate("8");
    plate.tsn = hours(50);
    const Fact inside = s.add(plate);
    const Fact retirement = s.item(inside, ItemRole::component, life(1000));
    const Fact overhaul = s.item(inside, ItemRole::overhaul, limit(500, 0));
    s.fit(inside, s.gearbox.id, "2024-01-05", 3'000);
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    CHECK(s.hours(inside, retirement).used == hours(190));
    s.keep(s.ann.write(
        day("2024-06-10"), {s.first, s.gearbox.id}, support::renews({s.gearbox.id}, 11'600)));
    CHECK(s.state(s.gearbox).tso == hours(0));
    CHECK(s.hours(inside, retirement).used == hours(190));
    CHECK(s.hours(inside, overhaul).used == hours(190));
}

TEST_CASE("work on what is inside an assembly takes the total of the aircraft it is on",
          "[limits][hung][work]") {
    struct Row {
        std::int64_t total_tenths;
        std::int64_t at_work_tenths;
        bool estimated;
    };

    // Fitted at 1,020.0 h with 50.0 h since new; 1,100.0 h was read before the work.
    const Row rows[] = {
        {11'200, 1'500, false}, {10'200, 500, false}, {10'199, 1'300, true}, {-1, 1'300, true}};
    for (const Row& row : rows) {
        CAPTURE(row.total_tenths);
        Hung s;
        facts::PartAdded plate = Stores::plate("8");
        plate.tsn = hours(50);
        const Fact inside = s.add(plate);
        const Fact item = s.item(inside, ItemRole::inspection, limit(500, 0));
        s.fit(inside, s.gearbox.id, "2024-01-05", 3'000);
        s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
        s.work(item, {s.first, inside.id, item.id}, "2024-03-10", row.total_tenths);
        const ClockDue clock = s.hours(inside, item);
        CHECK(clock.anchor_total == tenths(row.at_work_tenths));
        CHECK(clock.estimated == row.estimated);
        CHECK(clock.used == tenths(1'900 - row.at_work_tenths));
    }
}

TEST_CASE("an overhaul that may be longer ago than papers have it is not counted by them",
          "[limits][hung][disagreement]") {
    // On the shelf it was overhauled on 10 February; whether it was fitted before or after that is
    // asked, and so is whether its papers know the hours since new.
    const auto left = [](bool hours_are_asked) {
        Hung s;
        const Fact overhaul = s.item(s.gearbox, ItemRole::overhaul, limit(2000, 0));
        s.keep(s.ann.write(day("2024-02-10"), {s.gearbox.id}, support::renews({s.gearbox.id}, -1)));
        const Fact fit = s.fit(s.gearbox, s.first, "2024-02-05", 10'900);
        facts::Body later = fit.body;
        later.on = day("2024-02-20");
        s.keep(s.ben.correct(fit, later));
        later.on = day("2024-02-05");
        s.keep(s.ann.correct(fit, later));
        facts::PartAdded papers = std::get<facts::PartAdded>(s.gearbox.body.fields);
        papers.tsn = hours(301);
        s.keep(s.ben.correct(s.gearbox, papers));
        papers.tsn.reset();
        if (hours_are_asked) s.keep(s.ann.correct(s.gearbox, papers));
        return s.hours(s.gearbox, overhaul);
    };
    const ClockDue settled = left(false);
    REQUIRE(settled.known);
    CHECK(settled.left < hours(2000 - 301));
    CHECK_FALSE(left(true).known);
}

TEST_CASE("work on one of two days promises no more than either, while a fit is asked about",
          "[limits][hung][disagreement]") {
    // Overhauled before its papers begin, or when it may have been inside another part or not.
    const auto left = [](bool before, bool after) {
        Hung s;
        const Fact overhaul = s.item(s.gearbox, ItemRole::overhaul, limit(2000, 0));
        const Fact outer = s.add(Stores::plate("8"));
        facts::Body papers = s.gearbox.body;
        papers.on = day("2024-04-01");
        s.keep(s.ben.correct(s.gearbox, papers));
        const Fact fit = s.fit(s.gearbox, outer.id, "2024-03-01", -1);
        s.keep(s.ann.correct(fit, fit.body.fields));
        s.keep(s.ben.withdraw(fit));
        const Fact work = s.work(overhaul, {s.gearbox.id, overhaul.id}, "2024-02-01", -1);
        facts::Body done = work.body;
        done.on = day("2024-02-02");
        if (before) s.keep(s.ann.correct(work, done));
        done.on = day("2024-06-01");
        if (after) s.keep(s.ben.correct(work, done));
        return s.hours(s.gearbox, overhaul);
    };
    const ClockDue open = left(true, true);
    for (const ClockDue& settled : {left(true, false), left(false, true)}) {
        REQUIRE(settled.known);
        CHECK((!open.known || open.left <= settled.left));
    }
    CHECK(left(false, true).left != left(true, false).left);
}
