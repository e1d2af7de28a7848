// Records of a device whose clock is far ahead are told, whatever their kind.
#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <string>
#include <vector>

#include "engine/timeline/state.hpp"

using namespace twoclocks;
using facts::Fact;
using support::day;
using support::Hangar;

namespace {

constexpr std::int64_t ms_per_day = 24LL * 60 * 60 * 1000;

/// Wall time at the start of the day after tomorrow: the last that counts as near.
std::int64_t far_ms(const Hangar& h) {
    return (static_cast<std::int64_t>(h.today.day_number) + 2) * ms_per_day;
}

/// Facts that are told to be far ahead, in order.
std::vector<base::Id> cautioned_facts(const Hangar& h, const std::vector<Fact>& more) {
    facts::Journal journal = h.journal;
    for (const Fact& fact : more)
        journal.add(fact);
    std::vector<base::Id> out;
    for (const auto& caution : timeline::replay(journal, h.id(), h.today).cautions) {
        if (caution.code == base::Trouble::stamp_far_ahead) out.push_back(caution.fact);
    }
    return out;
}

}  // namespace

TEST_CASE("a stamp far ahead is told of every kind of record", "[timeline][stamp]") {
    Hangar h;
    support::Pen ahead{"ahead", far_ms(h)};
    const Fact note = ahead.write(day("2024-06-01"), {h.id()}, facts::Note{"Washed"});
    const Fact correction = ahead.correct(h.reading, support::reads(1650));
    const Fact withdrawal = ahead.withdraw(h.first_reading);
    const Fact near = h.ben.correct(h.reading, support::reads(1700));
    const Fact answer =
        ahead.answer(h.id(), {{correction.id, 0}, {near.id, 0}}, {{correction.id, 0}});
    CHECK(cautioned_facts(h, {}).empty());
    for (const Fact& fact : {note, correction, withdrawal})
        CHECK(cautioned_facts(h, {fact}) == std::vector<base::Id>{fact.id});
    CHECK(cautioned_facts(h, {correction, near, answer}) ==
          std::vector<base::Id>{correction.id, answer.id});
    // A version that was corrected since was still written there.
    const Fact over = h.ben.correct(correction, h.reading.body);
    CHECK(cautioned_facts(h, {correction, over}) == std::vector<base::Id>{correction.id});
}

TEST_CASE("two days ahead is near, a millisecond more is far", "[timeline][stamp]") {
    Hangar h;
    for (const std::int64_t over_ms : {0, 1}) {
        Fact correction = h.ann.correct(h.reading, support::reads(1650));
        correction.stamp.wall_ms = far_ms(h) + over_ms;
        CHECK(cautioned_facts(h, {correction}).size() == static_cast<std::size_t>(over_ms));
    }
}
