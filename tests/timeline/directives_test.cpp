// Directives: what ends what, what counts as compliance.
#include "catch_amalgamated.hpp"
#include "tests/support/directed.hpp"

using namespace twoclocks;
using facts::Applicability;
using facts::Directive;
using facts::Fact;
using support::day;
using support::Directed;
using support::directed;
using support::effective;
using support::instead_of;

TEST_CASE("what a directive replaces is ended once that one applies here and is in effect",
          "[timeline][directives]") {
    struct Row {
        const char* name;
        void (*write)(Directive& next);
        const char* stands;
    };

    for (const Row& row :
         {Row{"it does", [](Directive&) {}, "superseded"},
          Row{"in effect today",
              [](Directive& next) { next.effective_on = day("2024-07-01"); },
              "superseded"},
          Row{"not before tomorrow",
              [](Directive& next) { next.effective_on = day("2024-07-02"); },
              "open 400"},
          Row{"not here",
              [](Directive& next) { next.applies = Applicability::not_applicable; },
              "open 400"},
          Row{"nobody decided",
              [](Directive& next) { next.applies = Applicability::unknown; },
              "open 400"},
          Row{"names another", [](Directive& next) { next.replaces.clear(); }, "open 400"}}) {
        CAPTURE(row.name);
        Directed s;
        const Fact old = s.rests(s.first, effective("D 1", "2024-03-01"), directed(100));
        Directive next = instead_of(old, effective("D 2", "2024-03-01"));
        row.write(next);
        s.rests(s.first, next, directed(50));
        CHECK(s.stands(old) == row.stands);
    }
}

TEST_CASE("in a chain each is ended by the one that names it, whatever became of that",
          "[timeline][directives]") {
    Directed s;
    const Fact one = s.rests(s.first, effective("D 1", "2024-01-01"), directed(100));
    const Fact two =
        s.rests(s.first, instead_of(one, effective("D 2", "2024-03-01")), directed(90));
    const Fact three = s.asks(s.first, "D 3", directed(80));
    Directive last = instead_of(two, effective("D 3", "2024-06-01"));
    s.told(s.first, three, last);
    CHECK(s.stands(one) == "superseded");
    CHECK(s.stands(two) == "superseded");
    CHECK(s.stands(three) == "open 800");
    last.applies = Applicability::not_applicable;
    s.told(s.first, three, last, "2024-06-02");
    CHECK(s.stands(one) == "superseded");
    CHECK(s.stands(two) == "open 300");
    CHECK(s.stands(three) == "not here");
}

TEST_CASE("a ring ends nothing, and all in it count and say so", "[timeline][directives]") {
    Directed s;
    const Fact one = s.asks(s.first, "D 1", directed(100));
    const Fact two =
        s.rests(s.first, instead_of(one, effective("D 2", "2024-03-01")), directed(90));
    s.told(s.first, one, instead_of(two, effective("D 1", "2024-03-01")));
    CHECK(s.stands(one) == "open 400");
    CHECK(s.stands(two) == "open 300");
    CHECK(s.cautions() == "directive_ring directive_ring");
    // One from outside the ring ends what it names.
    s.rests(s.first, instead_of(one, effective("D 3", "2024-03-01")), directed(80));
    CHECK(s.stands(one) == "superseded");
    CHECK(s.stands(two) == "open 300");
    // By itself.
    Directed alone;
    const Fact self = alone.asks(alone.first, "D 1", directed(100));
    alone.told(alone.first, self, instead_of(self, effective("D 1", "2024-03-01")));
    CHECK(alone.stands(self) == "open 400");
    CHECK(alone.cautions() == "directive_ring");
}

TEST_CASE("an item of no directive is ended by one that replaces it", "[timeline][directives]") {
    Directed s;
    const Fact old = s.asks(s.first, "Old check", directed(2000));
    CHECK(s.stands(old) == "none 8400");
    s.rests(s.first, instead_of(old, effective("D 2", "2024-03-01")), directed(50));
    CHECK(s.stands(old) == "superseded");
}

TEST_CASE("names of what hangs elsewhere count for nothing", "[timeline][directives]") {
    Directed s;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    const Fact on_part = s.rests(s.gearbox.id, effective("D 1", "2024-03-01"), directed(100));
    Directive next = instead_of(on_part, effective("D 2", "2024-03-01"));
    next.ended_by = {on_part.id};
    const Fact on_aircraft = s.rests(s.first, next, directed(100));
    s.work(on_part, {s.first, s.gearbox.id}, "2024-05-01", 11'300);
    CHECK(s.cautions() == "directive_elsewhere");
    CHECK(s.here(on_part).directive->standing == limits::DirectiveStanding::open);
    CHECK(s.stands(on_aircraft) == "open 400");
}

TEST_CASE("earlier work on what it replaces counts where it says so, by way of further credit too",
          "[timeline][directives]") {
    struct Row {
        bool second_credits;
        bool third_credits;
        const char* worked_on;
        const char* stands;  // of the third: 100 h from the work at 1,080.0 h, or from 1,100.0 h
    };

    for (const Row& row : {Row{true, true, "2024-02-01", "open 200"},
                           Row{true, false, "2024-02-01", "open 400"},
                           Row{false, true, "2024-02-01", "open 400"},
                           Row{false, false, "2024-02-01", "open 400"},
                           Row{true, true, "2024-03-01", "open 200"},
                           Row{true, true, "2024-03-02", "open 400"}}) {
        CAPTURE(row.second_credits, row.third_credits, row.worked_on);
        Directed s;
        const Fact one = s.rests(s.first, effective("D 1", "2024-01-01"), directed(100));
        const Fact two =
            s.rests(s.first,
                    instead_of(one, effective("D 2", "2024-03-01"), row.second_credits),
                    directed(100));
        const Fact three =
            s.rests(s.first,
                    instead_of(two, effective("D 3", "2024-03-01"), row.third_credits),
                    directed(100));
        s.work(one, {s.first}, row.worked_on, 10'800);
        CHECK(s.stands(three) == row.stands);
    }
}

TEST_CASE("a terminating action ends the repeats until it is taken back or in dispute",
          "[timeline][directives]") {
    Directed s;
    const Fact end = s.asks(s.first, "New mast");
    Directive told = effective("D 1", "2024-03-01");
    told.ended_by = {end.id};
    const Fact item = s.rests(s.first, told, directed(100));
    CHECK(s.stands(item) == "open 400");
    // A part of it ends nothing.
    facts::WorkDone half = support::renews({}, 11'000);
    half.renews = {{end.id, {facts::Clock::hours}}};
    s.keep(s.ann.write(day("2024-04-01"), {s.first}, half));
    CHECK(s.stands(item) == "open 400");
    const Fact work = s.work(end, {s.first}, "2024-05-01", 11'300);
    CHECK(s.stands(item) == "ended");
    CHECK(s.here(item).clocks.empty());
    const Fact back = s.ann.withdraw(work);
    Directed disputed = s;
    s.keep(back);
    CHECK(s.stands(item) == "open 400");
    disputed.keep(back);
    disputed.keep(disputed.ben.correct(work, support::renews({end.id}, 11'400)));
    CHECK(disputed.stands(item) == "open 400");
}

TEST_CASE("two directives that act on each other come out right on a part that moves",
          "[timeline][directives]") {
    Directed s;
    const base::Id box = s.gearbox.id;
    s.fit(s.gearbox, s.first, "2024-02-01", 10'500);
    const Fact one = s.rests(box, effective("D 1", "2024-01-01"), directed(100));
    s.work(one, {s.first, box}, "2024-02-15", 10'800);  // the part has 330.0 h
    const Fact end = s.asks(box, "New mast");
    Directive told = instead_of(one, effective("D 2", "2024-03-01"), true);
    told.ended_by = {end.id};
    const Fact two = s.rests(box, told, directed(200));
    s.remove(s.gearbox, s.first, "2024-04-01", 11'200);  // 370.0 h
    s.fit(s.gearbox, s.second, "2024-05-01", 6'000);
    const auto stands = [&](const Fact& item) {
        const views::Assessed now = s.assessed(s.second);
        return Directed::told_of(now.items.at(s.place_of(now, item)));
    };
    CHECK(stands(one) == "superseded");
    CHECK(stands(two) == "open 1400");  // 330.0 and 200 h, less the 390.0 h it has
    const Fact work = s.work(end, {s.second, box}, "2024-06-10", 6'200);
    CHECK(stands(two) == "ended");
    s.remove(s.gearbox, s.second, "2024-06-20", 6'300);
    s.fit(s.gearbox, s.first, "2024-06-25", 11'600);
    CHECK(s.stands(one) == "superseded");
    CHECK(s.stands(two) == "ended");
    s.keep(s.ann.withdraw(work));
    CHECK(s.stands(one) == "superseded");
    CHECK(s.stands(two) == "open 1300");
}
