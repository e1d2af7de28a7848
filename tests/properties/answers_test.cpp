// What a person chooses is so: an answer closes its question, whatever was answered before.
#include "catch_amalgamated.hpp"
#include "tests/support/random_journal.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/facts/print.hpp"
#include "engine/timeline/question.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Journal;
using support::random_today;
using support::RandomJournal;
using timeline::AircraftState;
using timeline::Question;

namespace {

constexpr std::uint64_t answered_cases = 600;

std::vector<std::string> lines_of(const timeline::Side& side) {
    std::vector<std::string> out{facts::print_fact(side.fact)};
    for (const Fact& fact : side.same)
        out.push_back(facts::print_fact(fact));
    return out;
}

bool is_side(const AircraftState& state, const std::string& line) {
    for (const Question& question : state.questions) {
        for (const timeline::Side& side : question.sides) {
            const std::vector<std::string> lines = lines_of(side);
            if (std::find(lines.begin(), lines.end(), line) != lines.end()) return true;
        }
    }
    return false;
}

void answer(Journal& journal,
            const Question& question,
            std::size_t side,
            base::Id aircraft,
            support::Pen& judge) {
    const facts::Body body =
        timeline::answer_to(journal, question, side, aircraft, support::day("2025-01-15"));
    journal.add(judge.write(body.on, body.about, body.fields));
}

}  // namespace

TEST_CASE("an answer closes its question: what it drops is no side of any",
          "[properties][answer]") {
    std::int32_t given = 0;
    for (std::uint64_t seed = 1; seed <= answered_cases; ++seed) {
        const RandomJournal random{seed, {16, seed % 2 == 0, true, true, false}};
        Journal journal = random.all();
        support::Random choice{seed};
        support::Pen judge{"judge", 1'800'000'000'000};
        for (std::int32_t round = 0; round < 8; ++round) {
            const AircraftState state = timeline::replay(journal, random.aircraft(), random_today);
            if (state.questions.empty()) break;
            const Question& question = state.questions.front();
            const auto last = static_cast<std::int64_t>(question.sides.size()) - 1;
            const auto side = static_cast<std::size_t>(choice.between(0, last));
            answer(journal, question, side, random.aircraft(), judge);
            ++given;
            const AircraftState after = timeline::replay(journal, random.aircraft(), random_today);
            for (std::size_t place = 0; place < question.sides.size(); ++place) {
                if (place == side) continue;
                for (const std::string& line : lines_of(question.sides[place])) {
                    CAPTURE(seed, round, line);
                    REQUIRE_FALSE(is_side(after, line));
                }
            }
        }
    }
    CHECK(given > 500);
}

TEST_CASE("whoever answers by one rule comes to an end", "[properties][answer]") {
    constexpr std::int32_t most_rounds = 60;
    std::int32_t closed = 0;
    for (std::uint64_t seed = 1; seed <= answered_cases; ++seed) {
        const RandomJournal random{seed, {16, seed % 2 == 0, true, true, false}};
        Journal journal = random.all();
        support::Pen judge{"judge", 1'800'000'000'000};
        std::int32_t round = 0;
        for (;; ++round) {
            CAPTURE(seed);
            REQUIRE(round < most_rounds);
            const AircraftState state = timeline::replay(journal, random.aircraft(), random_today);
            if (state.questions.empty()) break;
            const Question& question = state.questions.front();
            std::size_t first = 0;
            for (std::size_t place = 1; place < question.sides.size(); ++place) {
                const bool before = facts::print_fact(question.sides[place].fact) <
                                    facts::print_fact(question.sides[first].fact);
                if (before) first = place;
            }
            answer(journal, question, first, random.aircraft(), judge);
        }
        if (round > 0) ++closed;
    }
    CHECK(closed > 300);
}

TEST_CASE("what two devices wrote alike is one record, in any order and any batch",
          "[properties][agree]") {
    std::int32_t compared = 0;
    for (std::uint64_t seed = 1; seed <= answered_cases; ++seed) {
        const RandomJournal random{seed, {8, false, false, false, false}};
        const Journal all = random.all();
        const AircraftState state = timeline::replay(all, random.aircraft(), random_today);
        // Every correction and withdrawal in force, written once more on a fourth device.
        support::Pen dora{"dora"};
        Journal copies;
        for (const Fact* fact : all.in_order()) {
            const bool corrects = std::holds_alternative<facts::Correction>(fact->body.fields);
            const bool takes_back = std::holds_alternative<facts::Withdrawal>(fact->body.fields);
            if (corrects || takes_back)
                copies.add(dora.write(fact->body.on, fact->body.about, fact->body.fields));
        }
        if (copies.facts().empty()) continue;
        const Journal joined = merge(copies, all);
        REQUIRE(print_journal(joined) == print_journal(merge(all, copies)));
        const AircraftState again = timeline::replay(joined, random.aircraft(), random_today);
        CAPTURE(seed, print_journal(joined));
        REQUIRE(again.questions.size() == state.questions.size());
        REQUIRE(again.usage.size() == state.usage.size());
        for (std::size_t place = 0; place < state.usage.size(); ++place) {
            REQUIRE(again.usage[place].on == state.usage[place].on);
            REQUIRE(again.usage[place].total == state.usage[place].total);
        }
        ++compared;
    }
    CHECK(compared > 200);
}
