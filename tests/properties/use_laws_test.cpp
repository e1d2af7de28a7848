// Laws of storage, hours not counted and kinds of flying: until it is answered a disagreement
// promises no more than any answer, and order changes nothing.
#include "tests/support/random.hpp"
#include "tests/support/random_journal.hpp"
#include "tests/support/stored.hpp"

#include <algorithm>

#include "engine/facts/print.hpp"
#include "engine/limits/hours_factor.hpp"
#include "engine/timeline/question.hpp"
#include "engine/views/assess.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Journal;
using limits::ClockDue;
using limits::ItemDue;
using support::day;
using support::Random;
using support::shuffled;
using timeline::Question;

namespace {

constexpr std::uint64_t use_stories = 600;

/// What three items, a meter and an aircraft have in common, and what two people change of it.
struct UseStory : support::Stored {
    explicit UseStory(std::uint64_t seed) : random(seed) {
        const facts::InForce ways[] = {
            facts::InForce::in_storage, facts::InForce::on_return, facts::InForce::always};
        for (const facts::InForce way : ways)
            items.push_back(item(way, small(5, 60)));
        for (std::int64_t left = random.between(4, 12); left > 0; --left)
            step();
    }

    [[nodiscard]] std::int32_t small(std::int64_t least, std::int64_t most) {
        return static_cast<std::int32_t>(random.between(least, most));
    }

    [[nodiscard]] base::Date any_day() { return base::add_days(day("2024-01-02"), small(0, 180)); }

    [[nodiscard]] facts::Operation any_kind() {
        return static_cast<facts::Operation>(random.between(1, 2));
    }

    [[nodiscard]] facts::OutOfService any_storage(base::Date from) {
        facts::OutOfService out = storage(nullptr);
        out.stored = !random.once_in(5);
        if (random.once_in(2)) out.until = base::add_days(from, small(1, 90));
        return out;
    }

    [[nodiscard]] facts::MeterAdjusted any_adjusted() {
        const bool rolled = random.once_in(4);
        return {rolled ? facts::AdjustReason::rolled_over : facts::AdjustReason::dead,
                rolled ? base::hours(100) : base::tenths(random.between(1, 300)),
                base::tenths(rolled ? random.between(0, 50) : random.between(900, 1600)),
                "Flight log",
                {}};
    }

    [[nodiscard]] facts::HoursFactor any_factor() {
        return {any_kind(), small(1000, 4000), "Letter", {}};
    }

    [[nodiscard]] facts::FlownAs any_flown() {
        return {any_kind(), {}, base::tenths(random.between(1, 300)), {}};
    }

    [[nodiscard]] const Fact& any_item() {
        return items[static_cast<std::size_t>(random.between(0, 2))];
    }

    [[nodiscard]] facts::LimitSet any_limit() {
        facts::LimitSet out =
            counted(static_cast<facts::InForce>(random.between(0, 2)), small(5, 60));
        out.anchor_on = any_day();
        if (random.once_in(3)) out.hours = base::hours(random.between(20, 200));
        return out;
    }

    void step() {
        support::Pen& pen = random.once_in(2) ? ann : ben;
        const base::Date on = any_day();
        switch (random.between(0, 11)) {
            case 0:
                told.push_back(keep(pen.write(on, {id()}, any_storage(on))));
                break;
            case 1:
                told.push_back(keep(pen.write(on, with(meter), any_adjusted())));
                break;
            case 2:
                told.push_back(
                    keep(pen.write(on,
                                   random.once_in(2) ? std::vector<base::Id>{id()} : with(check),
                                   any_factor())));
                break;
            case 3:
                told.push_back(keep(pen.write(on, {id()}, any_flown())));
                break;
            case 4:
                told.push_back(keep(pen.write(on, with(any_item()), any_limit())));
                break;
            case 5:
                told.push_back(keep(pen.write(on, {id()}, any_work())));
                break;
            default:
                change(pen);
        }
    }

    [[nodiscard]] facts::WorkDone any_work() {
        const Fact& of = random.once_in(3) ? check : any_item();
        return support::renews({of.id}, random.once_in(2) ? -1 : random.between(10'000, 11'600));
    }

    [[nodiscard]] facts::Fields varied(const facts::Body& old, base::Date on) {
        if (std::holds_alternative<facts::OutOfService>(old.fields)) return any_storage(on);
        if (std::holds_alternative<facts::MeterAdjusted>(old.fields)) return any_adjusted();
        if (std::holds_alternative<facts::HoursFactor>(old.fields)) return any_factor();
        if (std::holds_alternative<facts::FlownAs>(old.fields)) return any_flown();
        if (std::holds_alternative<facts::LimitSet>(old.fields)) return any_limit();
        return any_work();
    }

    void change(support::Pen& pen) {
        if (told.empty()) return;
        const Fact fact = told[static_cast<std::size_t>(
            random.between(0, static_cast<std::int64_t>(told.size()) - 1))];
        if (random.once_in(4)) {
            keep(pen.withdraw(fact));
            return;
        }
        const base::Date on = random.once_in(2) ? any_day() : fact.body.on;
        keep(pen.correct(fact, support::body(on, fact.body.about, varied(fact.body, on))));
    }

    Random random;
    std::vector<Fact> items;
    std::vector<Fact> told;
};

/// Answers one question after another at random; nothing when that comes to no end.
std::optional<Journal> journal_answered(Journal journal, base::Id aircraft, std::uint64_t seed) {
    constexpr std::int32_t most_rounds = 16;
    Random random{seed};
    support::Pen judge{"judge", 1'800'000'000'000};
    for (std::int32_t round = 0; round < most_rounds; ++round) {
        const auto state = timeline::replay(journal, aircraft, day("2024-07-01"));
        if (state.questions.empty()) return journal;
        const Question& question = state.questions.front();
        const auto last = static_cast<std::int64_t>(question.sides.size()) - 1;
        const auto side = static_cast<std::size_t>(random.between(0, last));
        const facts::Body body =
            timeline::answer_to(journal, question, side, aircraft, day("2024-07-01"));
        journal.add(judge.write(body.on, body.about, body.fields));
    }
    return std::nullopt;
}

bool no_more(const ClockDue& open, const ClockDue& settled) {
    if (!open.known || !settled.known) return !open.known || !settled.known;
    return open.left <= settled.left && open.days_left <= settled.days_left;
}

void compare_use(const timeline::AircraftState& open, const timeline::AircraftState& settled) {
    const views::Assessed before = views::assess(open, day("2024-07-01"));
    const views::Assessed after = views::assess(settled, day("2024-07-01"));
    REQUIRE(before.items.size() == after.items.size());
    for (std::size_t place = 0; place < after.items.size(); ++place) {
        const ItemDue& was = before.items[place];
        CAPTURE(place, was.asleep, after.items[place].asleep);
        for (const ClockDue& clock : after.items[place].clocks) {
            const ClockDue* same = limits::clock_of(was, clock.clock);
            REQUIRE(same != nullptr);
            CAPTURE(same->left.seconds, clock.left.seconds, same->days_left, clock.days_left);
            REQUIRE(no_more(*same, clock));
        }
        const bool comparable = was.all_known() && after.items[place].all_known();
        const bool passed = after.item_states[place] >= views::State::before_next_flight;
        if (comparable && passed)
            REQUIRE(before.item_states[place] >= views::State::before_next_flight);
    }
}

}  // namespace

TEST_CASE("storage, added hours and factors in dispute promise no more than any answer",
          "[properties][use]") {
    std::int32_t compared = 0;
    for (std::uint64_t seed = 1; seed <= use_stories; ++seed) {
        const UseStory story{seed};
        const auto open = timeline::replay(story.journal, story.id(), story.today);
        const bool hidden = std::any_of(open.questions.begin(),
                                        open.questions.end(),
                                        [](const Question& one) { return one.no_safe_side; });
        if (open.questions.empty() || hidden) continue;
        for (std::uint64_t way = 0; way < 4; ++way) {
            const auto journal = journal_answered(story.journal, story.id(), seed * 100 + way);
            if (!journal) continue;
            CAPTURE(seed, way, facts::print_journal(*journal));
            compare_use(open, timeline::replay(*journal, story.id(), story.today));
            ++compared;
        }
    }
    CHECK(compared > 400);
}

TEST_CASE("in any order of the records the same is left, exactly", "[properties][use]") {
    std::int32_t seen = 0;
    for (std::uint64_t seed = 1; seed <= use_stories; ++seed) {
        CAPTURE(seed);
        const UseStory story{seed};
        const auto state = story.state();
        const auto other = timeline::replay(shuffled(story.journal, seed), story.id(), story.today);
        const auto items = limits::due_items(state, story.today);
        const auto again = limits::due_items(other, story.today);
        REQUIRE(items.size() == again.size());
        for (std::size_t place = 0; place < items.size(); ++place) {
            REQUIRE(items[place].asleep == again[place].asleep);
            REQUIRE(items[place].clocks.size() == again[place].clocks.size());
            for (std::size_t at = 0; at < items[place].clocks.size(); ++at) {
                const ClockDue& clock = items[place].clocks[at];
                REQUIRE(clock.left == again[place].clocks[at].left);
                REQUIRE(clock.due_on == again[place].clocks[at].due_on);
                if (clock.clock != facts::Clock::hours || !clock.known) continue;
                REQUIRE(clock.left + clock.used == clock.limit_hours);
                REQUIRE(clock.extra.seconds >= 0);
                REQUIRE(clock.due_total - clock.left == *limits::total_time(state));
                seen += clock.extra.seconds > 0 ? 1 : 0;
            }
        }
    }
    CHECK(seen > 20);
}

TEST_CASE("one more record of hours not counted or of a kind never gives life",
          "[properties][use]") {
    for (std::uint64_t seed = 1; seed <= use_stories; ++seed) {
        CAPTURE(seed);
        UseStory story{seed};
        const auto before = limits::due_items(story.state(), story.today);
        if (seed % 2 == 0) {
            facts::MeterAdjusted more = story.any_adjusted();
            more.reason = facts::AdjustReason::dead;
            story.keep(story.ann.write(story.any_day(), story.with(story.meter), more));
        } else {
            story.keep(story.ann.write(story.any_day(), {story.id()}, story.any_flown()));
        }
        const auto after = limits::due_items(story.state(), story.today);
        for (std::size_t place = 0; place < before.size(); ++place) {
            const ClockDue* was = limits::clock_of(before[place], facts::Clock::hours);
            const ClockDue* now = limits::clock_of(after[place], facts::Clock::hours);
            const bool by_work = was != nullptr && was->counts_from == limits::CountsFrom::work;
            // Work without its total is estimated from readings, and those hold the hours now.
            if (was == nullptr || now == nullptr || (by_work && was->estimated)) continue;
            REQUIRE(now->left <= was->left);
        }
    }
}
