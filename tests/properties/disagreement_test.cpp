// An unanswered disagreement never gives more life than any way of answering it.
#include "catch_amalgamated.hpp"
#include "tests/support/no_more.hpp"
#include "tests/support/random_journal.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "engine/facts/print.hpp"
#include "engine/forecast/projection.hpp"
#include "engine/limits/due.hpp"
#include "engine/timeline/question.hpp"

using namespace twoclocks;
using facts::Journal;
using limits::ClockDue;
using limits::ItemDue;
using support::find_item;
using support::fixed_rate;
using support::not_later;
using support::promises_no_more;
using support::random_today;
using support::RandomJournal;
using timeline::AircraftState;
using timeline::Question;

namespace {

constexpr std::uint64_t disputed_cases = 3000;

/// Answers one question after another, keeping a side at random; nothing when answers contradict.
std::optional<AircraftState> state_answered(Journal journal,
                                            base::Id aircraft,
                                            std::uint64_t seed) {
    constexpr std::int32_t most_rounds = 12;
    support::Random random{seed};
    support::Pen judge{"judge", 1'800'000'000'000};
    for (std::int32_t round = 0; round < most_rounds; ++round) {
        AircraftState state = timeline::replay(journal, aircraft, random_today);
        if (state.questions.empty()) return state;
        const Question& question = state.questions.front();
        const auto last = static_cast<std::int64_t>(question.sides.size()) - 1;
        const auto side = static_cast<std::size_t>(random.between(0, last));
        facts::Body body =
            timeline::answer_to(journal, question, side, aircraft, support::day("2025-01-15"));
        journal.add(judge.write(body.on, body.about, body.fields));
    }
    return std::nullopt;
}

void compare(const AircraftState& open, const AircraftState& settled) {
    const std::vector<ItemDue> before = limits::due_items(open, random_today);
    for (const ItemDue& after : limits::due_items(settled, random_today)) {
        const ItemDue* item = find_item(before, after.item);
        REQUIRE(item != nullptr);
        for (const ClockDue& clock : after.clocks) {
            const ClockDue* same = limits::clock_of(*item, clock.clock);
            REQUIRE(same != nullptr);
            CAPTURE(
                base::print_id(after.item), same->anchor_total.seconds, clock.anchor_total.seconds);
            CAPTURE(same->left.seconds, clock.left.seconds, same->days_left, clock.days_left);
            CAPTURE(same->left_count.value, clock.left_count.value);
            REQUIRE(promises_no_more(*same, clock));
        }
        REQUIRE((item->mandatory() || !after.mandatory() || after.clocks.empty()));
        // What an answer says is passed is passed before it; an answer may also drop the reading
        // that a clock needs, and then neither side promises anything.
        const bool comparable = after.all_known() && item->all_known();
        if (comparable && after.passed()) REQUIRE(item->passed());
        const auto open_days = forecast::project(*item, open, fixed_rate(open), random_today);
        const auto days = forecast::project(after, settled, fixed_rate(settled), random_today);
        // A clock that is not known promises nothing, and its days are no part of the others'.
        if (!open_days.known || !days.known || !item->all_known()) continue;
        const auto shown = [](const std::optional<base::Date>& one) {
            return one ? base::print_date(*one) : std::string{"never"};
        };
        CAPTURE(shown(open_days.early), shown(open_days.likely), shown(open_days.late));
        CAPTURE(shown(days.early), shown(days.likely), shown(days.late));
        REQUIRE(not_later(open_days.early, days.early));
        REQUIRE(not_later(open_days.likely, days.likely));
        REQUIRE(not_later(open_days.late, days.late));
    }
}

}  // namespace

TEST_CASE("an unanswered disagreement never gives more life than any answer",
          "[properties][disagreement]") {
    std::int64_t compared = 0;
    for (std::uint64_t seed = 1; seed <= disputed_cases; ++seed) {
        const RandomJournal random{seed, {8, false, false, true}};
        const Journal journal = random.all();
        const AircraftState open = timeline::replay(journal, random.aircraft(), random_today);
        if (open.questions.empty()) continue;
        const bool hidden =
            std::any_of(open.questions.begin(), open.questions.end(), [](const Question& question) {
                return question.no_safe_side;
            });
        if (hidden) continue;
        for (std::uint64_t way = 0; way < 4; ++way) {
            const auto settled = state_answered(journal, random.aircraft(), seed * 100 + way);
            if (!settled) continue;
            CAPTURE(facts::print_journal(journal), seed, way);
            compare(open, *settled);
            ++compared;
        }
    }
    CHECK(compared > 1000);
}
