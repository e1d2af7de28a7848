#include "engine/timeline/parts.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/stores.hpp"

using namespace twoclocks;
using base::Count;
using base::hours;
using facts::Fact;
using support::day;
using support::Stores;
using support::troubles;
using timeline::PartState;
using timeline::Whereabouts;
using Ids = std::vector<base::Id>;

TEST_CASE("a part flies with its host and stands still on the shelf", "[timeline][parts]") {
    Stores s;
    PartState part = s.state(s.gearbox);
    CHECK(part.whereabouts == Whereabouts::shelf);
    CHECK(part.tsn == hours(300));
    CHECK(part.tso == hours(100));
    const Fact fit = s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    part = s.state(s.gearbox);
    CHECK(part.whereabouts == Whereabouts::fitted);
    CHECK(part.aircraft == s.first);
    CHECK(part.position == "Main");
    CHECK(part.tsn == hours(410));  // 1,160 less 1,050
    CHECK(part.tso == hours(210));
    const Fact removal = s.remove(s.gearbox, s.first, "2024-04-01", 11'200);
    part = s.state(s.gearbox);
    CHECK(part.whereabouts == Whereabouts::shelf);
    CHECK(part.aircraft.empty());
    CHECK(part.tsn == hours(370));
    CHECK(part.tso == hours(170));
    CHECK_FALSE(part.tsn_estimated);
    REQUIRE(part.spells.size() == 1);
    CHECK(part.spells.front().gained == hours(70));
    CHECK(part.spells.front().fit == fit.id);
    CHECK(part.spells.front().removal == removal.id);
    CHECK(part.first_fitted == day("2024-02-01"));
    CHECK(part.condition == facts::PartCondition::as_removed);
    CHECK(troubles(part).empty());
}

TEST_CASE("a part moved between aircraft adds up its spells", "[timeline][parts]") {
    Stores s;
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    s.remove(s.gearbox, s.first, "2024-03-01", 11'000);
    s.fit(s.gearbox, s.second, "2024-03-10", 5'500);
    s.remove(s.gearbox, s.second, "2024-05-01", 6'000);
    s.fit(s.gearbox, s.first, "2024-05-02", 11'500);
    const PartState part = s.state(s.gearbox);
    REQUIRE(part.spells.size() == 3);
    CHECK(part.spells[0].gained == hours(80));
    CHECK(part.spells[1].gained == hours(50));
    CHECK(part.spells[2].gained == hours(10));
    CHECK(part.tsn == hours(440));
    CHECK(part.by_papers == hours(300));
    CHECK(timeline::parts_of(s.journal, s.first, s.today).size() == 1);
    CHECK(timeline::parts_of(s.journal, s.second, s.today).empty());
    CHECK(timeline::sharing_parts(s.journal, s.first) == Ids{s.first, s.second});
    CHECK(timeline::sharing_parts(s.journal, s.gearbox.id) == Ids{s.first, s.second});
}

TEST_CASE(
    "without the host's total the least at the fit and the most at the removal serve planning",
    "[timeline][parts]") {
    Stores s;
    s.fit(s.gearbox, s.first, "2024-02-01", -1);
    PartState part = s.state(s.gearbox);
    CHECK(part.tsn == hours(460));  // from 1,000 on
    CHECK(part.tsn_estimated);
    CHECK(part.spells.front().from_estimated);
    s.remove(s.gearbox, s.first, "2024-04-01", -1);
    part = s.state(s.gearbox);
    CHECK(part.tsn == hours(460));  // to 1,160
    CHECK(part.spells.front().to_estimated);
    s.fit(s.gearbox, s.second, "2024-04-10", 5'600, 3'450);
    part = s.state(s.gearbox);
    CHECK(part.tsn == hours(345 + 60));  // its card is worth more than the estimate
    CHECK_FALSE(part.tsn_estimated);
}

TEST_CASE("a host that nobody read leaves the hours unknown", "[timeline][parts]") {
    Stores s;
    facts::PartAdded added = Stores::plate("8");
    added.tsn = hours(300);
    const Fact early = s.add(added, "2023-11-01");
    s.fit(early, s.first, "2023-12-01", -1);
    PartState part = s.state(early);
    CHECK_FALSE(part.tsn.has_value());
    CHECK_FALSE(part.spells.front().gained.has_value());
    s.remove(early, s.first, "2024-02-01", 10'500);
    s.overhaul(early, {early.id}, "2024-02-10");
    part = s.state(early);
    CHECK_FALSE(part.tsn.has_value());
    CHECK(part.tso == hours(0));  // unknown since new, certified since overhaul
    CHECK_FALSE(part.tso_estimated);
}

TEST_CASE("papers of a day on which a part was fitted already count from that day",
          "[timeline][parts]") {
    Stores s;
    s.fit(s.gearbox, s.first, "2023-12-01", 9'900);
    const PartState part = s.state(s.gearbox);
    CHECK(part.tsn == hours(460));
    CHECK(part.by_papers == hours(290));
}

TEST_CASE("an assembly takes its parts along, and each keeps its own life", "[timeline][parts]") {
    Stores s;
    facts::PartAdded bearing = Stores::plate("8");
    bearing.tsn = hours(10);
    const Fact inside = s.add(bearing);
    s.fit(inside, s.gearbox.id, "2024-01-05", 3'000);
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    PartState part = s.state(inside);
    CHECK(part.host == s.gearbox.id);
    CHECK(part.aircraft == s.first);
    CHECK(part.tsn == hours(120));
    s.remove(s.gearbox, s.first, "2024-04-01", 11'200);
    s.overhaul(s.gearbox, {s.gearbox.id}, "2024-04-15");
    CHECK(s.state(s.gearbox).tso == hours(0));
    part = s.state(inside);
    CHECK(part.aircraft.empty());
    CHECK(part.whereabouts == Whereabouts::fitted);
    CHECK(part.tsn == hours(80));
    CHECK_FALSE(part.tso.has_value());
    CHECK(part.overhauls_recorded == 0);
    s.remove(inside, s.gearbox.id, "2024-04-20", 3'700);
    s.fit(s.gearbox, s.second, "2024-05-01", 6'000);
    part = s.state(inside);
    CHECK(part.tsn == hours(80));
    CHECK(part.whereabouts == Whereabouts::shelf);
    CHECK(s.state(s.gearbox).tsn == hours(390));
    CHECK(timeline::parts_of(s.journal, s.second, s.today).size() == 1);
    CHECK(troubles(part).empty());
}

TEST_CASE("an overhaul on the aircraft splits the spell at its total", "[timeline][parts]") {
    Stores s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    s.keep(s.ann.write(
        day("2024-04-01"), {s.first, s.gearbox.id}, support::renews({s.gearbox.id}, 11'200)));
    const PartState part = s.state(s.gearbox);
    CHECK(part.tsn == hours(410));
    CHECK(part.tso == hours(40));
    CHECK(part.overhaul_count == Count{2});
    CHECK(part.renewed[0]->total == hours(370));
    CHECK(part.overhauled_on == day("2024-04-01"));
    CHECK_FALSE(part.tso_estimated);
}

TEST_CASE("work that names only the aircraft is found by the part it renews", "[timeline][parts]") {
    Stores s;
    s.overhaul(s.gearbox, {s.first}, "2024-04-01");
    CHECK(s.state(s.gearbox).tso == hours(0));
}

TEST_CASE("work on other clocks of a part is no overhaul", "[timeline][parts]") {
    Stores s;
    facts::WorkDone work = support::renews({s.gearbox.id}, -1);
    work.renews.front().clocks = {facts::Clock::calendar};
    s.keep(s.ann.write(day("2024-04-01"), {s.gearbox.id}, work));
    const PartState part = s.state(s.gearbox);
    CHECK(part.tso == hours(100));
    CHECK(part.overhaul_count == Count{1});
    CHECK(part.renewed[1]->on == day("2024-04-01"));
    CHECK_FALSE(part.renewed[0].has_value());
}

TEST_CASE("a rebuild starts time since new again", "[timeline][parts]") {
    Stores s;
    s.fit(s.gearbox, s.first, "2024-01-10", 10'200);
    s.remove(s.gearbox, s.first, "2024-02-01", 10'500);
    s.keep(
        s.ann.write(day("2024-03-01"), {s.gearbox.id}, facts::PartRebuilt{"Maker 12", {}, {}, {}}));
    s.fit(s.gearbox, s.first, "2024-04-01", 11'200);
    const PartState part = s.state(s.gearbox);
    CHECK(part.tsn == hours(40));
    CHECK(part.tso == hours(40));
    CHECK(part.overhaul_count == Count{1});
    CHECK(part.rebuilt_on == day("2024-03-01"));
}

TEST_CASE("several moves of one day come in the order of totals", "[timeline][parts]") {
    Stores s;
    // Written the wrong way round: on again at 1,101.0, off at 1,100.0.
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    s.fit(s.gearbox, s.first, "2024-03-01", 11'010);
    s.remove(s.gearbox, s.first, "2024-03-01", 11'000);
    PartState part = s.state(s.gearbox);
    CHECK(troubles(part).empty());
    REQUIRE(part.spells.size() == 2);
    CHECK(part.tsn == base::tenths(3000 + 500 + 590));
    // Onto another aircraft the same day, fit written first; its lower total says nothing.
    s.fit(s.gearbox, s.second, "2024-05-01", 6'000);
    s.remove(s.gearbox, s.first, "2024-05-01", 11'500);
    part = s.state(s.gearbox);
    CHECK(troubles(part).empty());
    CHECK(part.aircraft == s.second);
    CHECK(part.tsn == base::tenths(3000 + 500 + 490 + 200));
}

TEST_CASE("landings and starts go along where both ends are recorded", "[timeline][parts]") {
    Stores s;
    facts::PartAdded added = Stores::plate("8");
    added.landings = Count{10};
    added.starts = Count{20};
    const Fact part = s.add(added);
    facts::PartFitted fitted;
    fitted.host_landings = Count{100};
    s.keep(s.ann.write(day("2024-02-01"), {part.id, s.first}, fitted));
    facts::PartRemoved removed;
    removed.host_landings = Count{130};
    removed.host_starts = Count{7};
    s.keep(s.ann.write(day("2024-03-01"), {part.id, s.first}, removed));
    CHECK(s.state(part).landings == Count{40});
    CHECK_FALSE(s.state(part).starts.has_value());
}

TEST_CASE("a part is scrapped, lent and moved", "[timeline][parts]") {
    Stores s;
    facts::PartMoved moved{"Shelf 3", "Ann", {}, {}, {}};
    s.keep(s.ann.write(day("2024-02-01"), {s.gearbox.id}, moved));
    CHECK(s.state(s.gearbox).place == "Shelf 3");
    moved = {{}, {}, "Ben", day("2024-09-01"), {}};
    s.keep(s.ann.write(day("2024-03-01"), {s.gearbox.id}, moved));
    PartState part = s.state(s.gearbox);
    CHECK(part.whereabouts == Whereabouts::lent);
    CHECK(part.owner == "Ann");
    CHECK(part.return_by == day("2024-09-01"));
    const Fact scrapped =
        s.keep(s.ann.write(day("2024-04-01"), {s.gearbox.id}, facts::PartScrapped{"Cut in two"}));
    part = s.state(s.gearbox);
    CHECK(part.whereabouts == Whereabouts::scrapped);
    CHECK(part.scrap_proof == "Cut in two");
    const Fact fit = s.fit(s.gearbox, s.first, "2024-05-01", 11'500);
    part = s.state(s.gearbox);
    REQUIRE(troubles(part) == "part_scrapped_fitted");
    CHECK(part.problems.front().facts == Ids{scrapped.id, fit.id});
}

TEST_CASE("fits and removals show what the aircraft had", "[timeline][total]") {
    Stores s;
    s.fit(s.gearbox, s.first, "2024-06-20", 11'800);
    const auto state = timeline::replay(s.journal, s.first, s.today);
    CHECK(state.usage.back().total == hours(1180));
    CHECK(timeline::replay(s.journal, s.second, s.today).usage.back().total == hours(620));
}
