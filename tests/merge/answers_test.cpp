// The book goes on: answers, and meters that fall or run too fast.
#include "tests/merge/book.hpp"

using namespace twoclocks;
using namespace twoclocks::book;

namespace {

const Case answers[] = {
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

const Case meters[] = {
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
         p.ben_writes(p.ben.answer(p.id(), {{p.reading.id, 0}, {low.id, 0}}, {{p.reading.id, 0}}));
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

}  // namespace

TEST_CASE("the book: answers", "[merge][answer]") {
    for (const Case& one : answers)
        tell(one);
}

TEST_CASE("the book: meters that fall or run too fast", "[merge][falling]") {
    for (const Case& one : meters)
        tell(one);
}
