// Answering again: an answer made on the canvas takes over from those before it, closes the
// question for good, and counts for every aircraft that it is about.
#include "tests/merge/book.hpp"

#include <string>

#include "engine/timeline/question.hpp"

using namespace twoclocks;
using namespace twoclocks::book;
using timeline::Question;

namespace {

/// Answers the first question of an aircraft for the side that this fact is on.
Fact answer_for(Hangar& h, Journal& journal, const Fact& chosen, base::Id aircraft) {
    const AircraftState state = timeline::replay(journal, aircraft, h.today);
    REQUIRE(state.questions.size() == 1);
    const Question& question = state.questions.front();
    for (std::size_t side = 0; side < question.sides.size(); ++side) {
        if (question.sides[side].fact.id != chosen.id) continue;
        facts::Body body = timeline::answer_to(journal, question, side, aircraft, h.today);
        const Fact fact = h.ann.write(body.on, body.about, body.fields);
        journal.add(fact);
        return fact;
    }
    FAIL("no side is the chosen fact");
    return {};
}

std::int64_t total_tenths(const Journal& journal, const Hangar& h, base::Id aircraft) {
    return limits::total_time(timeline::replay(journal, aircraft, h.today))->seconds / 360;
}

std::size_t questions(const Journal& journal, const Hangar& h, base::Id aircraft) {
    return timeline::replay(journal, aircraft, h.today).questions.size();
}

}  // namespace

TEST_CASE("a third correction that comes after the answer can be chosen",
          "[merge][answer][again]") {
    Hangar h;
    Journal journal = h.journal;
    const Fact from_ann = h.ann.correct(h.reading, reads(1650));
    const Fact from_ben = h.ben.correct(h.reading, reads(1700));
    support::Pen cay{"cay"};
    const Fact from_cay = cay.correct(h.reading, reads(1620));
    journal.add(from_ann);
    journal.add(from_ben);
    const Fact first = answer_for(h, journal, from_ben, h.id());
    CHECK(total_tenths(journal, h, h.id()) == 11'700);
    journal.add(from_cay);
    CHECK(questions(journal, h, h.id()) == 1);
    const Fact again = answer_for(h, journal, from_cay, h.id());
    CHECK(questions(journal, h, h.id()) == 0);
    CHECK(total_tenths(journal, h, h.id()) == 11'620);
    // It names the answer before it, and leaves dropped what that one had dropped.
    const auto& body = std::get<facts::Answer>(again.body.fields);
    CHECK(timeline::any_names(body.settles, first));
    CHECK(timeline::any_names(body.settles, from_ann));
    CHECK(body.keeps == std::vector<Ref>{{from_cay.id, 0}});
}

TEST_CASE("choosing the same again leaves the answer before it alone", "[merge][answer][again]") {
    Hangar h;
    Journal journal = h.journal;
    const Fact from_ann = h.ann.correct(h.reading, reads(1650));
    const Fact from_ben = h.ben.correct(h.reading, reads(1700));
    support::Pen cay{"cay"};
    journal.add(from_ann);
    journal.add(from_ben);
    const Fact first = answer_for(h, journal, from_ben, h.id());
    journal.add(cay.correct(h.reading, reads(1620)));
    const Fact again = answer_for(h, journal, from_ben, h.id());
    CHECK(questions(journal, h, h.id()) == 0);
    CHECK(total_tenths(journal, h, h.id()) == 11'700);
    CHECK_FALSE(timeline::any_names(std::get<facts::Answer>(again.body.fields).settles, first));
}

TEST_CASE("two answers that contradict each other are settled by a third",
          "[merge][answer][again]") {
    for (const bool for_ann : {true, false}) {
        CAPTURE(for_ann);
        Hangar h;
        Journal journal = h.journal;
        const Fact from_ann = h.ann.correct(h.reading, reads(1650));
        const Fact from_ben = h.ben.correct(h.reading, reads(1700));
        const std::vector<Ref> sides{{from_ann.id, 0}, {from_ben.id, 0}};
        for (const Fact& fact : {from_ann,
                                 from_ben,
                                 h.ann.answer(h.id(), sides, {sides[0]}),
                                 h.ben.answer(h.id(), sides, {sides[1]})})
            journal.add(fact);
        CHECK(questions(journal, h, h.id()) == 1);
        answer_for(h, journal, for_ann ? from_ann : from_ben, h.id());
        CHECK(questions(journal, h, h.id()) == 0);
        CHECK(total_tenths(journal, h, h.id()) == (for_ann ? 11'650 : 11'700));
    }
}

TEST_CASE("a reading that one answer kept can be dropped by the next, about other readings",
          "[merge][answer][again]") {
    Hangar h;
    Journal journal = h.journal;
    const Fact low = h.read(h.ben, "2024-06-20", 1400);
    journal.add(low);
    answer_for(h, journal, h.reading, h.id());
    CHECK(total_tenths(journal, h, h.id()) == 11'600);
    const Fact later = h.read(h.ben, "2024-06-25", 1450);
    journal.add(later);
    answer_for(h, journal, later, h.id());
    // The reading that only the dropped one contradicted is back.
    CHECK(questions(journal, h, h.id()) == 0);
    CHECK(total_tenths(journal, h, h.id()) == 11'450);
    CHECK(timeline::replay(journal, h.id(), h.today).usage.back().fact == later.id);
    CHECK(timeline::replay(journal, h.id(), h.today).usage.size() == 5);
}

TEST_CASE("an answer counts for both aircraft of a dispute that spans them",
          "[merge][answer][moved]") {
    for (const bool keep_moved : {true, false}) {
        CAPTURE(keep_moved);
        Hangar h;
        Journal journal = h.journal;
        const Fact second =
            h.ann.add(day("2024-01-01"), {}, facts::AircraftAdded{"ISLE-2", {}, {}, {}, false});
        const Fact meter = h.ann.add(day("2024-01-01"), {second.id}, facts::MeterFitted{});
        facts::Body moved = h.reading.body;
        moved.about = {second.id, meter.id};
        const Fact to_second = h.ann.correct(h.reading, moved);
        const Fact stays = h.ben.correct(h.reading, reads(1650));
        for (const Fact& fact : {second, meter, to_second, stays})
            journal.add(fact);
        for (const base::Id& id : {h.id(), second.id}) {
            const AircraftState state = timeline::replay(journal, id, h.today);
            REQUIRE(state.questions.size() == 1);
            CHECK(state.questions.front().no_safe_side);
        }
        // Answered where it was first; the other aircraft is named so that it is worked out again.
        const Fact answer = answer_for(h, journal, keep_moved ? to_second : stays, h.id());
        CHECK(answer.body.about == std::vector<base::Id>{h.id(), second.id});
        CHECK(questions(journal, h, h.id()) == 0);
        CHECK(questions(journal, h, second.id) == 0);
        CHECK(total_tenths(journal, h, h.id()) == (keep_moved ? 11'200 : 11'650));
        CHECK(total_tenths(journal, h, second.id) == (keep_moved ? 1600 : 0));
    }
}

TEST_CASE("an older answer about one of two aircraft counts for the other too",
          "[merge][answer][moved]") {
    Hangar h;
    Journal journal = h.journal;
    const Fact second =
        h.ann.add(day("2024-01-01"), {}, facts::AircraftAdded{"ISLE-2", {}, {}, {}, false});
    const Fact meter = h.ann.add(day("2024-01-01"), {second.id}, facts::MeterFitted{});
    facts::Body moved = h.reading.body;
    moved.about = {second.id, meter.id};
    const Fact to_second = h.ann.correct(h.reading, moved);
    const Fact stays = h.ben.correct(h.reading, reads(1650));
    const std::vector<Ref> sides{{to_second.id, 0}, {stays.id, 0}};
    for (const Fact& fact :
         {second, meter, to_second, stays, h.ann.answer(h.id(), sides, {sides[0]})})
        journal.add(fact);
    CHECK(questions(journal, h, second.id) == 0);
    CHECK(total_tenths(journal, h, h.id()) == 11'200);
    CHECK(total_tenths(journal, h, second.id) == 1600);
}

TEST_CASE("a question outlives the journal it came from", "[merge][answer]") {
    Hangar h;
    const Fact correction = h.ann.correct(h.reading, reads(1650));
    const AircraftState state = [&] {
        Journal journal = h.journal;
        journal.add(correction);
        journal.add(h.ben.correct(h.reading, reads(1700)));
        return timeline::replay(journal, h.id(), h.today);
    }();
    REQUIRE(state.questions.size() == 1);
    REQUIRE(state.questions.front().sides.size() == 2);
    std::string told;
    for (const timeline::Side& side : state.questions.front().sides)
        told += side.fact.by + ' ';
    CHECK(told == "Tester ben Tester ann ");
}
