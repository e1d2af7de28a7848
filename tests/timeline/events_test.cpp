// What happened stops the aircraft, and the parts it names wherever they are, until it is signed.
#include "engine/timeline/events.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/happened.hpp"

#include <string>

using namespace twoclocks;
using facts::EventKind;
using facts::Fact;
using support::day;
using support::Happened;

TEST_CASE("an event stops the aircraft until work signs it, a row either side of every boundary",
          "[timeline][events]") {
    struct Row {
        const char* name;
        const char* on;       // of the work; null is none
        bool renews;          // it renews the event
        bool about_aircraft;  // or something else
        const char* open;
    };

    for (const Row& row :
         {Row{"no work", nullptr, true, true, "ISLE-1*"},
          Row{"the day before it", "2024-05-02", true, true, "ISLE-1*"},
          Row{"the day itself", "2024-05-03", true, true, ""},
          Row{"the day after", "2024-05-04", true, true, ""},
          Row{"today", "2024-07-01", true, true, ""},
          Row{"tomorrow", "2024-07-02", true, true, "ISLE-1*"},
          Row{"work that renews something else", "2024-05-03", false, true, "ISLE-1*"},
          Row{"work about another", "2024-05-03", true, false, "ISLE-1*"}}) {
        CAPTURE(row.name);
        Happened s;
        const Fact event = s.happens("2024-05-03", {s.first});
        if (row.on != nullptr) {
            const base::Id renewed = row.renews ? event.id : s.gearbox.id;
            s.sign(renewed, row.on, {row.about_aircraft ? s.first : s.second});
        }
        CHECK(s.stops(s.first) == row.open);
        CHECK(s.stops(s.second).empty());
    }
}

TEST_CASE("a part that is named is signed for by work that names it", "[timeline][events]") {
    struct Row {
        const char* name;
        bool aircraft;
        bool part;
        const char* open;
    };

    for (const Row& row : {Row{"neither", false, false, "ISLE-1* Main gearbox 7*"},
                           Row{"the aircraft alone", true, false, "Main gearbox 7*"},
                           Row{"the part alone", false, true, "ISLE-1*"},
                           Row{"both", true, true, ""}}) {
        CAPTURE(row.name);
        Happened s;
        s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
        const Fact event = s.happens("2024-05-03", {s.first, s.gearbox.id});
        std::vector<base::Id> about;
        if (row.aircraft) about.push_back(s.first);
        if (row.part) about.push_back(s.gearbox.id);
        if (!about.empty()) s.sign(event.id, "2024-05-04", about);
        CHECK(s.stops(s.first) == row.open);
    }
}

TEST_CASE("several works sign an event together", "[timeline][events]") {
    Happened s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    const Fact event = s.happens("2024-05-03", {s.first, s.gearbox.id});
    const Fact one = s.sign(event.id, "2024-05-04", {s.first});
    const auto half = timeline::replay(s.journal, s.first, s.today).events;
    REQUIRE(half.size() == 1);
    REQUIRE(half.front().signed_by.size() == 1);
    CHECK(half.front().signed_by.front().fact == one.id);
    CHECK(half.front().signed_by.front().subjects == std::vector<base::Id>{s.first});
    s.sign(event.id, "2024-05-05", {s.gearbox.id});
    CHECK(s.stops(s.first).empty());
}

TEST_CASE("an event goes with the part", "[timeline][events]") {
    Happened s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    const Fact event = s.happens("2024-05-03", {s.first, s.gearbox.id});
    s.sign(event.id, "2024-05-04", {s.first});
    CHECK(s.stops(s.first) == "Main gearbox 7*");
    s.remove(s.gearbox, s.first, "2024-05-05", 11'500);
    CHECK(s.stops(s.first).empty());
    CHECK(s.of_part(s.gearbox) == "Main gearbox 7*");  // on the shelf it is in its own history
    s.fit(s.gearbox, s.second, "2024-05-06", 6'000);
    CHECK(s.stops(s.first).empty());
    CHECK(s.stops(s.second) == "Main gearbox 7*");
    s.sign(event.id, "2024-05-07", {s.second, s.gearbox.id});
    CHECK(s.stops(s.second).empty());
    CHECK(s.of_part(s.gearbox).empty());
}

TEST_CASE("an event of a part inside an assembly stops the aircraft the assembly is on",
          "[timeline][events]") {
    Happened s;
    facts::PartAdded plate = support::Stores::plate("3");
    plate.name = "Bearing";
    const Fact bearing = s.add(plate);
    s.fit(bearing, s.gearbox.id, "2024-02-01", -1);
    s.fit(s.gearbox, s.second, "2024-02-02", 5'200);
    s.happens("2024-05-03", {bearing.id}, EventKind::overtorque);
    CHECK(s.stops(s.first).empty());
    CHECK(s.stops(s.second) == "Bearing 3*");
    CHECK(s.of_part(bearing) == "Bearing 3*");
    CHECK(s.of_part(s.gearbox).empty());
}

TEST_CASE("an event that leaves the aircraft itself open stays with it when the part has gone",
          "[timeline][events]") {
    Happened s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    s.happens("2024-05-03", {s.first, s.gearbox.id});
    s.remove(s.gearbox, s.first, "2024-05-05", 11'500);
    CHECK(s.stops(s.first) == "ISLE-1* Main gearbox 7");
}

TEST_CASE("an event dated ahead counts already and says so", "[timeline][events]") {
    Happened s;
    const Fact event = s.happens("2024-07-02", {s.first});
    const auto state = timeline::replay(s.journal, s.first, s.today);
    CHECK(state.events.size() == 1);
    REQUIRE(state.cautions.size() == 1);
    CHECK(state.cautions.front().code == base::Trouble::event_ahead);
    CHECK(state.cautions.front().fact == event.id);
}

TEST_CASE("events come oldest first and each is signed by itself", "[timeline][events]") {
    Happened s;
    const Fact later = s.happens("2024-06-01", {s.first}, EventKind::lightning);
    const Fact earlier = s.happens("2024-05-03", {s.first}, EventKind::overspeed);
    auto events = timeline::replay(s.journal, s.first, s.today).events;
    REQUIRE(events.size() == 2);
    CHECK(events[0].id == earlier.id);
    CHECK(events[1].id == later.id);
    s.sign(earlier.id, "2024-06-02", {s.first});
    events = timeline::replay(s.journal, s.first, s.today).events;
    REQUIRE(events.size() == 1);
    CHECK(events[0].id == later.id);
}

TEST_CASE("an event of a part whose papers are not here stops the aircraft it is fitted to",
          "[timeline][events]") {
    Happened s;
    Fact stranger = s.gearbox;
    stranger.id = support::id_of(77);
    s.fit(stranger, s.first, "2024-02-01", 10'500);
    const Fact event = s.happens("2024-05-03", {s.first, stranger.id});
    s.sign(event.id, "2024-05-04", {s.first});
    CHECK(s.stops(s.first) == "?*");
}

TEST_CASE("an event of a part that was taken back stops nothing", "[timeline][events]") {
    Happened s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    s.happens("2024-05-03", {s.gearbox.id});
    CHECK(s.stops(s.first) == "Main gearbox 7*");
    s.keep(s.ann.withdraw(s.gearbox));
    CHECK(s.stops(s.first).empty());
}

TEST_CASE("one event is found by its id, signed or not", "[timeline][events]") {
    Happened s;
    const Fact event = s.happens("2024-05-03", {s.first});
    s.sign(event.id, "2024-05-04", {s.first});
    const auto found = timeline::find_event(s.journal, event.id, s.today);
    REQUIRE(found.has_value());
    CHECK_FALSE(found->subjects.front().open);
    CHECK_FALSE(timeline::find_event(s.journal, s.gearbox.id, s.today).has_value());
    CHECK_FALSE(timeline::find_event(s.journal, support::id_of(99), s.today).has_value());
}
