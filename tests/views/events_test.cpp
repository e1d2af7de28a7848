// What happened, as the aircraft page, the card, the report and a part's history say it.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/happened.hpp"
#include "tests/support/said.hpp"

#include <string>
#include <vector>

#include "engine/facts/print.hpp"
#include "engine/views/event_view.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/part_views.hpp"
#include "engine/views/print_views.hpp"
#include "engine/views/sentence.hpp"

using namespace twoclocks;
using facts::EventKind;
using facts::Fact;
using support::add_item;
using support::day;
using support::hand_state;
using support::hand_today;
using support::Happened;
using support::said;
using views::State;
using Lines = std::vector<std::string>;

namespace {

views::AircraftView aircraft_view(const Happened& s, base::Id aircraft) {
    return views::make_aircraft_view(
        views::assess(timeline::replay(s.journal, aircraft, s.today), s.today));
}

/// An event of 3 May 2024 that the aircraft is not signed for.
timeline::EventState open_event() {
    timeline::EventState out;
    out.id = support::id_of(9);
    out.on = day("2024-05-03");
    out.event.happened = EventKind::hard_landing;
    out.subjects = {{support::id_of(1), "ISLE-1", false, true, true}};
    return out;
}

}  // namespace

TEST_CASE("an event is before the next flight whatever the limits say, and over stays over",
          "[views][events]") {
    struct Row {
        const char* name;
        std::int64_t hours_left;
        std::int32_t days_left;
        State before;
        State with_event;
        const char* card;
        const char* answer;
    };

    const char* card = "Not signed for: hard landing on 3 May 2024";
    const char* answer = "Before next flight: hard landing on 3 May 2024 is not signed for.";
    for (const Row& row :
         {Row{"nothing due", 900, 900, State::nothing_due, State::before_next_flight, card, answer},
          Row{"due", 20, 900, State::due, State::before_next_flight, card, answer},
          Row{"flown past",
              -1,
              900,
              State::over,
              State::over,
              "Item 0 flown past",
              "Over: Item 0 was flown past its hours limit."}}) {
        CAPTURE(row.name);
        timeline::AircraftState state = hand_state();
        add_item(state, facts::ItemRole::overhaul, base::hours(row.hours_left), row.days_left);
        CHECK(views::assess(state, hand_today).overall == row.before);
        state.events = {open_event()};
        const views::Assessed assessed = views::assess(state, hand_today);
        CHECK(assessed.overall == row.with_event);
        CHECK(said(views::card_sentence(assessed)) == row.card);
        CHECK(said(views::answer_sentence(assessed)) == row.answer);
        CHECK(views::make_aircraft_view(assessed).events.size() == 1);
        CHECK(views::make_fleet_view({assessed}).cards.front().state == row.with_event);
    }
}

TEST_CASE("the banner says what happened, when, at what total and what to do", "[views][events]") {
    Happened s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    facts::Event event;
    event.happened = EventKind::overtorque;
    event.found = "104 % for 3 s";
    event.total = base::tenths(11'305);
    event.source = "Manual";
    event.revision = "revision 7";
    s.keep(s.ann.write(day("2024-05-03"), {s.first, s.gearbox.id}, event));
    const views::AircraftView view = aircraft_view(s, s.first);
    REQUIRE(view.events.size() == 1);
    const views::EventView& banner = view.events.front();
    CHECK(said(banner.title.text) == "Event: overtorque on 3 May 2024");
    CHECK(said(banner.total) == "At 1,130.5 h total.");
    CHECK(said(banner.found) == "Found: 104 % for 3 s");
    CHECK(said(banner.source) == "Conditional inspection by Manual, revision 7.");
    REQUIRE(banner.open.size() == 2);
    CHECK(said(banner.open[0]) == "Not signed for: ISLE-1");
    CHECK(said(banner.open[1]) == "Not signed for: Main gearbox 7");
    CHECK(said(banner.look) ==
          "Do not fly until it has been looked at. A licensed person decides.");
    CHECK(said(banner.disputed).empty());
}

TEST_CASE("a banner without total and source says so; vibration says to land", "[views][events]") {
    Happened s;
    s.keep(s.ann.write(
        day("2024-05-03"), {s.first}, facts::Event{EventKind::vibration, {}, {}, {}, {}}));
    const views::EventView banner = aircraft_view(s, s.first).events.front();
    CHECK(said(banner.total) == "Total time not recorded.");
    CHECK(said(banner.found).empty());
    CHECK(said(banner.source) ==
          "Conditional inspection: source not given. Check the approved maintenance data.");
    CHECK(said(banner.look) ==
          "Land as soon as it is safe and have it looked at. A licensed person decides.");
}

TEST_CASE("the why of an event names what is open, where, and the work that signed the rest",
          "[views][events]") {
    Happened s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    const Fact event = s.happens("2024-05-03", {s.first, s.gearbox.id});
    const Fact work = s.sign(event.id, "2024-05-04", {s.first});
    const views::AircraftView view = aircraft_view(s, s.first);
    const views::Why& why = view.events.front().title.why;
    CHECK(said(why) ==
          Lines{"Recorded: hard landing on 3 May 2024.",
                "Conditional inspection by Manual, revision not given.",
                "Main gearbox 7: not signed for.",
                "ISLE-1: signed by the work of 4 May 2024.",
                "A part carries what happened to it from one aircraft to the next.",
                "Work signs for the aircraft and the parts it names, from the day it happened on. "
                "Work that records disagree about signs nothing.",
                "A planning aid. Limits come from the approved maintenance data; a licensed person "
                "decides."});
    CHECK(why.lines[0].fact == event.id);
    CHECK(why.lines[3].fact == work.id);
    CHECK(said(why.figure) == "Event: hard landing on 3 May 2024");
    const std::vector<views::Why> whys = views::whys_of(view);
    REQUIRE(whys.size() == 8);  // no limits: the seven of the page, and the event
    CHECK(said(whys.back()) == said(why));
    CHECK(said(view.answer.why).front() == "Recorded: hard landing on 3 May 2024.");
}

TEST_CASE("an event open elsewhere too is told apart", "[views][events]") {
    Happened s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    s.happens("2024-05-03", {s.first, s.gearbox.id});
    s.remove(s.gearbox, s.first, "2024-05-05", 11'500);
    const views::EventView banner = aircraft_view(s, s.first).events.front();
    REQUIRE(banner.open.size() == 1);
    CHECK(said(banner.title.why)[3] ==
          "Main gearbox 7: not signed for. It is not on this aircraft.");
}

TEST_CASE("records that disagree about an event are told of", "[views][events]") {
    Happened s;
    const Fact event = s.happens("2024-05-03", {s.first});
    facts::Body moved = event.body;
    moved.on = day("2024-05-05");
    s.keep(s.ann.correct(event, moved));
    s.keep(s.ben.withdraw(event));
    const views::EventView banner = aircraft_view(s, s.first).events.front();
    CHECK(said(banner.disputed) == "Records disagree about it. Until you choose, it stays open.");
    CHECK(said(banner.title.text) == "Event: hard landing on 5 May 2024");
}

TEST_CASE("a part on the shelf shows what it is not signed for in its own history",
          "[views][events]") {
    Happened s;
    const Fact event = s.happens("2024-05-03", {s.gearbox.id});
    const auto history = [&] { return views::part_history(s.journal, s.gearbox.id, s.today); };
    REQUIRE(history().events.size() == 1);
    CHECK(said(history().events.front().open.front()) == "Not signed for: Main gearbox 7");
    s.sign(event.id, "2024-05-04", {s.gearbox.id});
    CHECK(history().events.empty());
}

TEST_CASE("the report holds what is open, and nothing of it when nothing is", "[views][events]") {
    Happened s;
    const auto report = [&] {
        return views::print_report(facts::print_journal(s.journal), s.today, {});
    };
    CHECK(report().find("\"events\"") == std::string::npos);
    const Fact event = s.happens("2024-05-03", {s.first});
    CHECK(report().find("\"events\":[{\"event\":\"" + base::print_id(event.id)) !=
          std::string::npos);
    CHECK(report().find("\"open\":[\"Not signed for: ISLE-1\"]") != std::string::npos);
    s.sign(event.id, "2024-05-04", {s.first});
    CHECK(report().find("\"events\"") == std::string::npos);
}
