// A book of cases: two people start from one journal, write apart, and join.
// Each row says how many questions are open, the total time and what is left of the check's 100 h.
#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <string>
#include <vector>

#include "engine/limits/due.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Journal;
using facts::Ref;
using support::day;
using support::Hangar;
using support::reads;
using timeline::AircraftState;
using timeline::QuestionKind;

namespace {

/// Two devices with the same nine facts, and what is written on each.
struct Pair : Hangar {
    Journal ann_has = journal;
    Journal ben_has = journal;

    Fact ann_writes(const Fact& fact) {
        ann_has.add(fact);
        return fact;
    }

    Fact ben_writes(const Fact& fact) {
        ben_has.add(fact);
        return fact;
    }

    /// Both correct the last reading: 165.0 and 170.0 instead of 160.0.
    std::vector<Ref> both_correct() {
        const Fact first = ann_writes(ann.correct(reading, reads(1650)));
        const Fact second = ben_writes(ben.correct(reading, reads(1700)));
        return {{first.id, 0}, {second.id, 0}};
    }

    /// Everybody has everything.
    void join() { ann_has = ben_has = facts::merge(ann_has, ben_has); }
};

struct Case {
    const char* name;
    void (*write)(Pair&);
    std::int32_t questions;
    std::int64_t total_tenths;
    std::int64_t left_tenths;
};

std::int64_t left_of(const AircraftState& state, base::Id item) {
    for (const limits::ItemDue& due : limits::due_items(state, day("2024-07-01"))) {
        if (due.item != item) continue;
        const limits::ClockDue* clock = limits::clock_of(due, facts::Clock::hours);
        REQUIRE(clock != nullptr);
        return clock->left.seconds / 360;
    }
    FAIL("the item is not there");
    return 0;
}

void tell(const Case& one) {
    CAPTURE(one.name);
    Pair pair;
    one.write(pair);
    const Journal joined = facts::merge(pair.ann_has, pair.ben_has);
    CHECK(print_journal(joined) == print_journal(facts::merge(pair.ben_has, pair.ann_has)));
    const AircraftState state = timeline::replay(joined, pair.id(), pair.today);
    CHECK(static_cast<std::int32_t>(state.questions.size()) == one.questions);
    REQUIRE(limits::total_time(state).has_value());
    CHECK(limits::total_time(state)->seconds == one.total_tenths * 360);
    CHECK(left_of(state, pair.check.id) == one.left_tenths);
}

}  // namespace

TEST_CASE("the book: a reading that two people change", "[merge][reading]") {
    const Case cases[] = {
        {"nobody writes", [](Pair&) {}, 0, 11'600, 600},
        {"one corrects",
         [](Pair& p) { p.ann_writes(p.ann.correct(p.reading, reads(1650))); },
         0,
         11'650,
         550},
        {"one corrects down",
         [](Pair& p) { p.ann_writes(p.ann.correct(p.reading, reads(1550))); },
         0,
         11'550,
         650},
        {"one corrects twice",
         [](Pair& p) {
             const Fact first = p.ann_writes(p.ann.correct(p.reading, reads(1650)));
             p.ann_writes(p.ann.correct(
                 first, support::body(p.reading.body.on, p.reading.body.about, reads(1660))));
         },
         0,
         11'660,
         540},
        {"both correct", [](Pair& p) { p.both_correct(); }, 1, 11'700, 500},
        {"one corrects, the other withdraws: it may have been flown",
         [](Pair& p) {
             p.ann_writes(p.ann.correct(p.reading, reads(1650)));
             p.ben_writes(p.ben.withdraw(p.reading));
         },
         1,
         11'650,
         550},
        {"one withdraws",
         [](Pair& p) { p.ann_writes(p.ann.withdraw(p.reading)); },
         0,
         11'200,
         1000},
        {"both withdraw: they agree",
         [](Pair& p) {
             p.ann_writes(p.ann.withdraw(p.reading));
             p.ben_writes(p.ben.withdraw(p.reading));
         },
         0,
         11'200,
         1000},
        {"one withdraws the other's correction: the record is taken back",
         [](Pair& p) {
             const Fact first = p.ann_writes(p.ann.correct(p.reading, reads(1650)));
             p.ben_writes(first);
             p.ben_writes(p.ben.withdraw(first));
         },
         0,
         11'200,
         1000},
        {"both go on from one correction",
         [](Pair& p) {
             const Fact first = p.ann_writes(p.ann.correct(p.reading, reads(1650)));
             p.ben_writes(first);
             const facts::Body& now = p.reading.body;
             p.ann_writes(p.ann.correct(first, support::body(now.on, now.about, reads(1660))));
             p.ben_writes(p.ben.correct(first, support::body(now.on, now.about, reads(1670))));
         },
         1,
         11'670,
         530},
        {"a stale copy comes in again: nothing changes",
         [](Pair& p) {
             p.ann_writes(p.ann.correct(p.reading, reads(1650)));
             p.ann_has = facts::merge(p.ann_has, p.ben_has);
         },
         0,
         11'650,
         550},
        {"one id with two bodies: the higher",
         [](Pair& p) {
             Fact twin = p.reading;
             twin.body.fields = reads(1630);
             p.ben_writes(twin);
         },
         1,
         11'630,
         570},
    };
    for (const Case& one : cases)
        tell(one);
}

TEST_CASE("the book: answers", "[merge][answer]") {
    const Case cases[] = {
        {"one answers",
         [](Pair& p) {
             const auto sides = p.both_correct();
             p.join();
             p.ann_writes(p.ann.answer(p.id(), sides, {sides[0]}));
         },
         0,
         11'650,
         550},
        {"both answer alike",
         [](Pair& p) {
             const auto sides = p.both_correct();
             p.join();
             p.ann_writes(p.ann.answer(p.id(), sides, {sides[0]}));
             p.ben_writes(p.ben.answer(p.id(), sides, {sides[0]}));
         },
         0,
         11'650,
         550},
        {"both answer, each for another: it stays open",
         [](Pair& p) {
             const auto sides = p.both_correct();
             p.join();
             p.ann_writes(p.ann.answer(p.id(), sides, {sides[0]}));
             p.ben_writes(p.ben.answer(p.id(), sides, {sides[1]}));
         },
         1,
         11'700,
         500},
        {"an answer that settles the answer before it",
         [](Pair& p) {
             auto sides = p.both_correct();
             p.join();
             const Fact first = p.ann_writes(p.ann.answer(p.id(), sides, {sides[0]}));
             p.ben_writes(first);
             sides.push_back({first.id, 0});
             p.ben_writes(p.ben.answer(p.id(), sides, {sides[1]}));
         },
         0,
         11'700,
         500},
        {"an answer that is withdrawn: open again",
         [](Pair& p) {
             const auto sides = p.both_correct();
             p.join();
             const Fact first = p.ann_writes(p.ann.answer(p.id(), sides, {sides[0]}));
             p.ann_writes(p.ann.withdraw(first));
         },
         1,
         11'700,
         500},
        {"an answer that keeps none: the record is dropped",
         [](Pair& p) {
             const auto sides = p.both_correct();
             p.join();
             p.ann_writes(p.ann.answer(p.id(), sides, {}));
         },
         0,
         11'200,
         1000},
        {"one id with two bodies, answered by content",
         [](Pair& p) {
             Fact twin = p.reading;
             twin.body.fields = reads(1630);
             p.ben_writes(twin);
             p.join();
             const Ref first = ref_to(p.ann_has, p.reading);
             p.ann_writes(p.ann.answer(p.id(), {first, ref_to(p.ann_has, twin)}, {first}));
         },
         0,
         11'600,
         600},
        {"a correction settled, then corrected again",
         [](Pair& p) {
             const auto sides = p.both_correct();
             p.join();
             p.ann_writes(p.ann.answer(p.id(), sides, {sides[0]}));
             const Fact kept = *p.ann_has.with_id(sides[0].id).front();
             const facts::Body& now = p.reading.body;
             p.ann_writes(p.ann.correct(kept, support::body(now.on, now.about, reads(1640))));
         },
         0,
         11'640,
         560},
    };
    for (const Case& one : cases)
        tell(one);
}

TEST_CASE("the book: meters that fall or run too fast", "[merge][falling]") {
    const Case cases[] = {
        {"a later reading is lower: the higher stands",
         [](Pair& p) { p.ben_writes(p.read(p.ben, "2024-06-20", 1400)); },
         1,
         11'600,
         600},
        {"settled for the lower",
         [](Pair& p) {
             const Fact low = p.ben_writes(p.read(p.ben, "2024-06-20", 1400));
             p.ben_writes(p.ben.answer(p.id(), {{p.reading.id, 0}, {low.id, 0}}, {{low.id, 0}}));
         },
         0,
         11'400,
         800},
        {"settled for the higher",
         [](Pair& p) {
             const Fact low = p.ben_writes(p.read(p.ben, "2024-06-20", 1400));
             p.ben_writes(
                 p.ben.answer(p.id(), {{p.reading.id, 0}, {low.id, 0}}, {{p.reading.id, 0}}));
         },
         0,
         11'600,
         600},
        {"48 hours in two days can be",
         [](Pair& p) { p.ben_writes(p.read(p.ben, "2024-06-02", 2080)); },
         0,
         12'080,
         120},
        {"a tenth more cannot",
         [](Pair& p) { p.ben_writes(p.read(p.ben, "2024-06-02", 2081)); },
         1,
         12'081,
         119},
        {"both log the same day, the lower first",
         [](Pair& p) {
             p.ann_writes(p.read(p.ann, "2024-06-10", 1610));
             p.ben_writes(p.read(p.ben, "2024-06-10", 1615));
         },
         0,
         11'615,
         585},
    };
    for (const Case& one : cases)
        tell(one);
}
