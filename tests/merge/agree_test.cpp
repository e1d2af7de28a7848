// People who write the same on two phones do not disagree.
#include "tests/merge/book.hpp"

#include <string>
#include <vector>

#include "engine/timeline/question.hpp"

using namespace twoclocks;
using namespace twoclocks::book;

namespace {

const Case alike[] = {
    {"both correct alike: settled",
     [](Pair& p) {
         p.ann_writes(p.ann.correct(p.reading, reads(1650)));
         p.ben_writes(p.ben.correct(p.reading, reads(1650)));
     },
     0,
     11'650,
     550},
    {"both correct alike and down: settled too",
     [](Pair& p) {
         p.ann_writes(p.ann.correct(p.reading, reads(1550)));
         p.ben_writes(p.ben.correct(p.reading, reads(1550)));
     },
     0,
     11'550,
     650},
    {"both withdraw: settled",
     [](Pair& p) {
         p.ann_writes(p.ann.withdraw(p.reading));
         p.ben_writes(p.ben.withdraw(p.reading));
     },
     0,
     11'200,
     1000},
    {"alike but for the day: open",
     [](Pair& p) {
         facts::Body moved = p.reading.body;
         moved.fields = reads(1650);
         moved.on = day("2024-06-02");
         p.ann_writes(p.ann.correct(p.reading, reads(1650)));
         p.ben_writes(p.ben.correct(p.reading, moved));
     },
     1,
     11'650,
     550},
    {"alike but for a field of a newer version: open",
     [](Pair& p) {
         facts::Body more = p.reading.body;
         more.fields = reads(1650);
         facts::Json fog;
         fog.type = facts::Json::Type::text;
         fog.text = "fog";
         more.extra.emplace_back("weather", fog);
         p.ann_writes(p.ann.correct(p.reading, reads(1650)));
         p.ben_writes(p.ben.correct(p.reading, more));
     },
     1,
     11'650,
     550},
    {"both correct alike, then one corrects on: the last word counts",
     [](Pair& p) {
         const Fact first = p.ann_writes(p.ann.correct(p.reading, reads(1650)));
         p.ben_writes(p.ben.correct(p.reading, reads(1650)));
         const facts::Body& now = p.reading.body;
         p.ann_writes(p.ann.correct(first, support::body(now.on, now.about, reads(1640))));
     },
     0,
     11'640,
     560},
    {"both correct alike, then each on to another: open",
     [](Pair& p) {
         const Fact from_ann = p.ann_writes(p.ann.correct(p.reading, reads(1650)));
         const Fact from_ben = p.ben_writes(p.ben.correct(p.reading, reads(1650)));
         const facts::Body& now = p.reading.body;
         p.ann_writes(p.ann.correct(from_ann, support::body(now.on, now.about, reads(1640))));
         p.ben_writes(p.ben.correct(from_ben, support::body(now.on, now.about, reads(1660))));
     },
     1,
     11'660,
     540},
    {"two alike against a third: one question, the third chosen drops both",
     [](Pair& p) {
         const Fact from_ann = p.ann_writes(p.ann.correct(p.reading, reads(1650)));
         p.ben_writes(p.ben.correct(p.reading, reads(1650)));
         const Fact third = p.ben_writes(p.ben.correct(p.reading, reads(1620)));
         p.ann_writes(p.ann.answer(p.id(), {{from_ann.id, 0}, {third.id, 0}}, {{third.id, 0}}));
     },
     0,
     11'620,
     580},
    {"two alike against a third: one of the two chosen keeps what they say",
     [](Pair& p) {
         const Fact from_ann = p.ann_writes(p.ann.correct(p.reading, reads(1650)));
         const Fact from_ben = p.ben_writes(p.ben.correct(p.reading, reads(1650)));
         const Fact third = p.ben_writes(p.ben.correct(p.reading, reads(1620)));
         p.ann_writes(p.ann.answer(
             p.id(), {{from_ann.id, 0}, {from_ben.id, 0}, {third.id, 0}}, {{from_ann.id, 0}}));
     },
     0,
     11'650,
     550},
    {"two withdrawals against a correction: one question",
     [](Pair& p) {
         p.ann_writes(p.ann.withdraw(p.reading));
         p.ben_writes(p.ben.withdraw(p.reading));
         p.ben_writes(p.ben.correct(p.reading, reads(1650)));
     },
     1,
     11'650,
     550},
    {"one id twice with one body, told by two people: settled",
     [](Pair& p) {
         Fact twin = p.reading;
         twin.by = "Somebody else";
         p.ben_writes(twin);
     },
     0,
     11'600,
     600},
};

}  // namespace

TEST_CASE("the book: two people who write the same", "[merge][agree]") {
    for (const Case& one : alike)
        tell(one);
}

TEST_CASE("sides that say the same stand once, and one answer settles them all", "[merge][agree]") {
    Hangar h;
    Journal journal = h.journal;
    const Fact from_ann = h.ann.correct(h.reading, reads(1650));
    const Fact from_ben = h.ben.correct(h.reading, reads(1650));
    const Fact third = h.ben.correct(h.reading, reads(1620));
    for (const Fact& fact : {from_ann, from_ben, third})
        journal.add(fact);
    const AircraftState state = timeline::replay(journal, h.id(), h.today);
    REQUIRE(state.questions.size() == 1);
    const timeline::Question& question = state.questions.front();
    REQUIRE(question.sides.size() == 2);
    for (std::size_t side = 0; side < 2; ++side) {
        Journal answered = journal;
        const facts::Body body = timeline::answer_to(journal, question, side, h.id(), h.today);
        const auto& answer = std::get<facts::Answer>(body.fields);
        for (const Fact& fact : {from_ann, from_ben, third})
            CHECK(timeline::any_names(answer.settles, fact));
        answered.add(h.ann.write(body.on, body.about, body.fields));
        const AircraftState after = timeline::replay(answered, h.id(), h.today);
        CHECK(after.questions.empty());
        const bool is_third = question.sides[side].fact.id == third.id;
        CHECK(question.sides[side].same.size() == (is_third ? 0 : 1));
        CHECK(limits::total_time(after) == base::tenths(is_third ? 11'620 : 11'650));
    }
}

TEST_CASE("a twin that comes after the answer does not open it again", "[merge][agree]") {
    Hangar h;
    Journal journal = h.journal;
    const Fact from_ann = h.ann.correct(h.reading, reads(1650));
    const Fact third = h.ben.correct(h.reading, reads(1620));
    for (const Fact& fact :
         {from_ann,
          third,
          h.ben.answer(h.id(), {{from_ann.id, 0}, {third.id, 0}}, {{third.id, 0}})})
        journal.add(fact);
    support::Pen cay{"cay"};
    journal.add(cay.correct(h.reading, reads(1650)));
    const AircraftState state = timeline::replay(journal, h.id(), h.today);
    CHECK(state.questions.empty());
    CHECK(limits::total_time(state) == base::tenths(11'620));
}

TEST_CASE("agreement does not depend on the order in which facts come", "[merge][agree]") {
    Hangar h;
    const Fact from_ann = h.ann.correct(h.reading, reads(1650));
    const facts::Body& now = h.reading.body;
    std::vector<Fact> more{from_ann,
                           h.ben.correct(h.reading, reads(1650)),
                           h.ann.correct(from_ann, support::body(now.on, now.about, reads(1640))),
                           h.ann.withdraw(h.first_reading),
                           h.ben.withdraw(h.first_reading)};
    const auto by_id = [](const Fact& left, const Fact& right) { return left.id < right.id; };
    std::sort(more.begin(), more.end(), by_id);
    std::int32_t orders = 0;
    do {
        Journal journal;
        for (const Fact& fact : more)
            journal.add(fact);
        for (const Fact& fact : h.journal.facts())
            journal.add(fact);
        const AircraftState state = timeline::replay(journal, h.id(), h.today);
        REQUIRE(state.questions.empty());
        REQUIRE(limits::total_time(state) == base::tenths(11'640));
        REQUIRE(state.usage.size() == 3);
        ++orders;
    } while (std::next_permutation(more.begin(), more.end(), by_id));
    CHECK(orders == 120);
}
