// A book of cases: two people start from one journal, write apart, and join.
// Each row says how many questions are open, the total time and what is left of the check's 100 h.
#include "tests/merge/book.hpp"

using namespace twoclocks;
using namespace twoclocks::book;

namespace {

const Case readings[] = {
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
    {"one withdraws", [](Pair& p) { p.ann_writes(p.ann.withdraw(p.reading)); }, 0, 11'200, 1000},
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

}  // namespace

TEST_CASE("the book: a reading that two people change", "[merge][reading]") {
    for (const Case& one : readings)
        tell(one);
}
