// The book goes on: what happened, and what two people say of it.
#include "catch_amalgamated.hpp"
#include "tests/support/happened.hpp"

#include <string>

using namespace twoclocks;
using facts::Fact;
using support::day;
using support::Happened;
using support::renews;

namespace {

/// The gearbox is on ISLE-1; on 3 May it landed hard, and the gearbox is named.
struct Two : Happened {
    Fact fitted = fit(gearbox, first, "2024-02-01", 10'500);
    Fact event = happens("2024-05-03", {first, gearbox.id});

    [[nodiscard]] facts::Body as_of(const char* on) const {
        facts::Body out = event.body;
        out.on = day(on);
        return out;
    }

    void ann_corrects(const Fact& fact, facts::Body instead) {
        keep(ann.correct(fact, std::move(instead)));
    }

    void ben_corrects(const Fact& fact, facts::Body instead) {
        keep(ben.correct(fact, std::move(instead)));
    }
};

struct EventCase {
    const char* name;
    void (*write)(Two&);
    const char* first;   // what stops ISLE-1
    const char* second;  // and ISLE-2
};

const EventCase event_cases[] = {
    {"nobody writes", [](Two&) {}, "ISLE-1* Main gearbox 7*", ""},
    {"it is taken back", [](Two& s) { s.keep(s.ann.withdraw(s.event)); }, "", ""},
    {"it is taken back and corrected: it stays open",
     [](Two& s) {
         s.keep(s.ann.withdraw(s.event));
         s.ben_corrects(s.event, s.as_of("2024-05-04"));
     },
     "ISLE-1* Main gearbox 7*",
     ""},
    {"one names the gearbox and one does not: both are open",
     [](Two& s) {
         facts::Body alone = s.event.body;
         alone.about = {s.first};
         s.ann_corrects(s.event, alone);
         s.ben_corrects(s.event, s.as_of("2024-05-04"));
     },
     "ISLE-1* Main gearbox 7*",
     ""},
    {"it is moved to the other aircraft: there it is open, and the gearbox stays where it is",
     [](Two& s) {
         facts::Body moved = s.event.body;
         moved.about = {s.second, s.gearbox.id};
         s.ann_corrects(s.event, moved);
     },
     "ISLE-2 Main gearbox 7*",
     "ISLE-2* Main gearbox 7"},
    {"two move it to different aircraft: it is open on both",
     [](Two& s) {
         facts::Body moved = s.event.body;
         moved.about = {s.second};
         s.ann_corrects(s.event, moved);
         s.ben_corrects(s.event, s.as_of("2024-05-04"));
     },
     "ISLE-1* Main gearbox 7* ISLE-2",
     "ISLE-1 Main gearbox 7 ISLE-2*"},
    {"work between the two days that people give: it signs the earlier only, so it is open",
     [](Two& s) {
         s.ann_corrects(s.event, s.as_of("2024-05-01"));
         s.ben_corrects(s.event, s.as_of("2024-05-10"));
         s.sign(s.event.id, "2024-05-05", {s.first, s.gearbox.id});
     },
     "ISLE-1* Main gearbox 7*",
     ""},
    {"work after both days signs both",
     [](Two& s) {
         s.ann_corrects(s.event, s.as_of("2024-05-01"));
         s.ben_corrects(s.event, s.as_of("2024-05-10"));
         s.sign(s.event.id, "2024-05-10", {s.first, s.gearbox.id});
     },
     "",
     ""},
    {"work that two people corrected differently signs nothing",
     [](Two& s) {
         const Fact work = s.sign(s.event.id, "2024-05-05", {s.first, s.gearbox.id});
         facts::Body moved = work.body;
         moved.on = day("2024-05-06");
         s.ann_corrects(work, moved);
         moved.on = day("2024-05-07");
         s.ben_corrects(work, moved);
     },
     "ISLE-1* Main gearbox 7*",
     ""},
    {"work that one takes back and one corrects signs nothing",
     [](Two& s) {
         const Fact work = s.sign(s.event.id, "2024-05-05", {s.first, s.gearbox.id});
         s.keep(s.ann.withdraw(work));
         s.ben_corrects(work, work.body);
     },
     "ISLE-1* Main gearbox 7*",
     ""},
    {"work that is corrected before the event signs nothing",
     [](Two& s) {
         const Fact work = s.sign(s.event.id, "2024-05-05", {s.first, s.gearbox.id});
         facts::Body moved = work.body;
         moved.on = day("2024-05-02");
         s.ann_corrects(work, moved);
     },
     "ISLE-1* Main gearbox 7*",
     ""},
    {"other work does not sign for work in dispute; new work does",
     [](Two& s) {
         const Fact work = s.sign(s.event.id, "2024-05-05", {s.first, s.gearbox.id});
         s.keep(s.ann.withdraw(work));
         s.ben_corrects(work, work.body);
         s.sign(s.event.id, "2024-05-06", {s.first, s.gearbox.id});
     },
     "",
     ""},
    {"a fit that one takes back: the part counts as being there",
     [](Two& s) {
         s.sign(s.event.id, "2024-05-05", {s.first});
         s.keep(s.ann.withdraw(s.fitted));
         s.ben_corrects(s.fitted, s.fitted.body);
     },
     "Main gearbox 7*",
     ""},
    {"a fit that one says was to the other aircraft: it counts on both",
     [](Two& s) {
         s.sign(s.event.id, "2024-05-05", {s.first});
         facts::Body other = s.fitted.body;
         other.about = {s.gearbox.id, s.second};
         s.ann_corrects(s.fitted, other);
         other.about = {s.gearbox.id, s.first};
         other.on = day("2024-02-02");
         s.ben_corrects(s.fitted, other);
     },
     "Main gearbox 7*",
     "Main gearbox 7*"},
    {"a removal that one takes back: the part counts as being there",
     [](Two& s) {
         s.sign(s.event.id, "2024-05-05", {s.first});
         const Fact removal = s.remove(s.gearbox, s.first, "2024-05-06", 11'500);
         s.keep(s.ann.withdraw(removal));
         s.ben_corrects(removal, removal.body);
     },
     "Main gearbox 7*",
     ""},
    {"an end that one takes back: the part counts as being there",
     [](Two& s) {
         s.sign(s.event.id, "2024-05-05", {s.first});
         const Fact end =
             s.keep(s.ann.write(day("2024-05-06"), {s.gearbox.id}, facts::PartScrapped{"Cut"}));
         s.keep(s.ann.withdraw(end));
         s.ben_corrects(end, end.body);
     },
     "Main gearbox 7*",
     ""},
    {"an end that nobody doubts takes it off",
     [](Two& s) {
         s.sign(s.event.id, "2024-05-05", {s.first});
         s.keep(s.ann.write(day("2024-05-06"), {s.gearbox.id}, facts::PartScrapped{"Cut"}));
     },
     "",
     ""},
};

}  // namespace

TEST_CASE("of what happened the side that leaves it open counts until an answer",
          "[merge][events]") {
    for (const EventCase& one : event_cases) {
        CAPTURE(one.name);
        Two s;
        one.write(s);
        CHECK(s.stops(s.first) == one.first);
        CHECK(s.stops(s.second) == one.second);
    }
}

TEST_CASE("two works that bear one id sign nothing where one of them does not renew the event",
          "[merge][events]") {
    Two s;
    const Fact work = s.sign(s.event.id, "2024-05-05", {s.first, s.gearbox.id});
    CHECK(s.stops(s.first).empty());
    Fact twin = work;
    twin.body.about = {s.second};
    twin.body.fields = renews({s.second}, -1);
    s.keep(twin);
    CHECK(s.stops(s.first) == "ISLE-1* Main gearbox 7*");
}

TEST_CASE("an answer closes what it settles", "[merge][events]") {
    Two s;
    const Fact gone = s.keep(s.ann.withdraw(s.event));
    const Fact kept = s.keep(s.ben.correct(s.event, s.as_of("2024-05-04")));
    CHECK(s.stops(s.first) == "ISLE-1* Main gearbox 7*");
    facts::Journal stays = s.journal;
    s.keep(s.ann.answer(s.first, {{gone.id, 0}, {kept.id, 0}}, {{gone.id, 0}}));
    CHECK(s.stops(s.first).empty());
    stays.add(s.ann.answer(s.first, {{gone.id, 0}, {kept.id, 0}}, {{kept.id, 0}}));
    CHECK(support::told(timeline::replay(stays, s.first, s.today).events) ==
          "ISLE-1* Main gearbox 7*");
}
