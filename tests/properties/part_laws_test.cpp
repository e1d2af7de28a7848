// Laws of what a part has flown.
#include "catch_amalgamated.hpp"
#include "tests/support/random_journal.hpp"
#include "tests/support/stores.hpp"
#include "tests/support/told_part.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/facts/print.hpp"
#include "engine/timeline/question.hpp"

using namespace twoclocks;
using base::Date;
using base::FlightTime;
using facts::Fact;
using facts::Journal;
using support::Random;
using support::random_today;
using support::RandomJournal;
using support::shuffled;
using support::Stores;
using support::told;
using timeline::PartState;

namespace {

constexpr std::uint64_t part_cases = 500;

/// A part that goes from one aircraft to another, and what it must have flown.
struct Life {
    Stores stores;
    std::int64_t flown_tenths{0};
    std::vector<std::int64_t> gained_tenths;
    std::size_t spells{0};

    explicit Life(std::uint64_t seed) {
        Random random{seed};
        std::int64_t total[] = {10'000, 5'000};
        Date on = support::day("2024-01-02");
        for (std::int64_t left = random.between(1, 6); left > 0; --left) {
            const auto plane = static_cast<std::size_t>(random.between(0, 1));
            const base::Id host = plane == 0 ? stores.first : stores.second;
            total[plane] += random.between(0, 50);
            const std::string from = base::print_date(on);
            stores.fit(stores.gearbox, host, from.c_str(), total[plane]);
            // Some come off and go on again on one day.
            on = base::add_days(on, static_cast<std::int32_t>(random.between(1, 10)));
            const std::int64_t gain = random.between(0, 200);
            total[plane] += gain;
            const std::string until = base::print_date(on);
            stores.remove(stores.gearbox, host, until.c_str(), total[plane]);
            on = base::add_days(on, static_cast<std::int32_t>(random.between(0, 5)));
            gained_tenths.push_back(gain);
            flown_tenths += gain;
        }
        spells = gained_tenths.size();
    }
};

}  // namespace

TEST_CASE("total time of a part is the sum over its spells", "[properties][parts]") {
    for (std::uint64_t seed = 1; seed <= part_cases; ++seed) {
        CAPTURE(seed);
        const Life life{seed};
        const PartState part = life.stores.state(life.stores.gearbox);
        REQUIRE(part.problems.empty());
        REQUIRE(part.spells.size() == life.spells);
        for (std::size_t at = 0; at < life.spells; ++at)
            REQUIRE(part.spells[at].gained == base::tenths(life.gained_tenths[at]));
        REQUIRE(part.tsn == base::hours(300) + base::tenths(life.flown_tenths));
        REQUIRE(part.tso == base::hours(100) + base::tenths(life.flown_tenths));
        REQUIRE(part.flown.back().total == base::tenths(life.flown_tenths));
    }
}

TEST_CASE("the sum holds in any journal in which the hours are known", "[properties][parts]") {
    std::int64_t seen = 0;
    for (std::uint64_t seed = 1; seed <= part_cases; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed, {30, true, true, true}};
        for (const PartState& part : timeline::replay_parts(random.all(), random_today)) {
            if (!part.tsn) continue;
            FlightTime gained;
            for (const timeline::PartSpell& spell : part.spells) {
                gained = gained + spell.gained.value_or(FlightTime{0});
                REQUIRE(spell.gained.value_or(FlightTime{0}).seconds >= 0);
            }
            REQUIRE(*part.tsn == part.by_papers + gained);
            REQUIRE(std::is_sorted(
                part.flown.begin(), part.flown.end(), [](const auto& left, const auto& right) {
                    return left.total < right.total;
                }));
            seen += part.spells.empty() ? 0 : 1;
        }
    }
    CHECK(seen > 100);
}

TEST_CASE("off and on again without flying changes nothing but the calendar",
          "[properties][parts]") {
    for (std::uint64_t seed = 1; seed <= part_cases; ++seed) {
        CAPTURE(seed);
        Random random{seed};
        Stores stores;
        stores.fit(stores.gearbox, stores.first, "2024-01-02", 10'000);
        const PartState before = stores.state(stores.gearbox);
        const Date off = base::add_days(support::day("2024-01-10"),
                                        static_cast<std::int32_t>(random.between(0, 40)));
        const Date again = base::add_days(off, static_cast<std::int32_t>(random.between(0, 9)));
        const std::int64_t total = random.between(10'000, 11'000);
        stores.remove(stores.gearbox, stores.first, base::print_date(off).c_str(), total, true);
        stores.fit(stores.gearbox, stores.first, base::print_date(again).c_str(), total);
        const PartState after = stores.state(stores.gearbox);
        REQUIRE(after.problems.empty());
        REQUIRE(after.tsn == before.tsn);
        REQUIRE(after.tso == before.tso);
        REQUIRE(after.flown.back().total == before.flown.back().total);
        REQUIRE(after.aircraft == before.aircraft);
        REQUIRE(after.first_fitted == before.first_fitted);
        REQUIRE(after.spells.back().keeps_status);
    }
}

TEST_CASE("the order in which facts of parts came in does not matter", "[properties][parts]") {
    for (std::uint64_t seed = 1; seed <= part_cases; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed, {30, true, true, true}};
        const Journal all = random.all();
        const Journal mixed = shuffled(all, seed);
        const auto states = timeline::replay_parts(all, random_today);
        const auto others = timeline::replay_parts(mixed, random_today);
        REQUIRE(states.size() == others.size());
        for (std::size_t at = 0; at < states.size(); ++at)
            REQUIRE(told(states[at]) == told(others[at]));
        // One part alone comes out as among all: no state depends on which was asked for first.
        for (const PartState& state : states)
            REQUIRE(told(timeline::replay_part(all, state.id, random_today)) == told(state));
    }
}

TEST_CASE("an unanswered disagreement never gives a part fewer hours than any answer",
          "[properties][parts][disagreement]") {
    std::int64_t compared = 0;
    for (std::uint64_t seed = 1; seed <= 12 * part_cases; ++seed) {
        const RandomJournal random{seed, {12, false, false, false}};
        const Journal journal = random.all();
        for (const base::Id& id : random.parts()) {
            const PartState open = timeline::replay_part(journal, id, random_today);
            for (const timeline::Question& question : open.questions) {
                if (question.no_safe_side) continue;
                for (std::size_t side = 0; side < question.sides.size(); ++side) {
                    support::Pen judge{"judge", 1'800'000'000'000};
                    const facts::Body body = timeline::answer_to(
                        journal, question, side, id, support::day("2025-01-15"));
                    Journal answered = journal;
                    answered.add(judge.write(body.on, body.about, body.fields));
                    const PartState settled = timeline::replay_part(answered, id, random_today);
                    CAPTURE(facts::print_journal(journal), seed, side, told(open), told(settled));
                    if (open.scrapped_on) continue;  // promises nothing
                    if (open.tsn && settled.tsn) REQUIRE(*open.tsn >= *settled.tsn);
                    if (open.tso && settled.tso) REQUIRE(*open.tso >= *settled.tso);
                    compared += open.tsn && settled.tsn && !open.spells.empty() ? 1 : 0;
                }
            }
        }
    }
    CHECK(compared > 300);
}
