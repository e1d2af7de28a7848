// Laws of limits that hang on a part.
#include "catch_amalgamated.hpp"
#include "tests/support/hung.hpp"
#include "tests/support/no_more.hpp"
#include "tests/support/random_journal.hpp"
#include "tests/support/told_part.hpp"

#include <string>
#include <vector>

#include "engine/facts/print.hpp"
#include "engine/timeline/question.hpp"
#include "engine/views/part_views.hpp"
#include "engine/views/print_views.hpp"

using namespace twoclocks;
using base::Date;
using base::FlightTime;
using base::Id;
using facts::Clock;
using facts::Fact;
using facts::ItemRole;
using facts::Journal;
using limits::ClockDue;
using limits::ItemDue;
using support::find_item;
using support::Hung;
using support::promises_no_more;
using support::Random;
using support::random_today;
using support::RandomJournal;
using timeline::PartState;

namespace {

constexpr std::uint64_t hung_cases = 500;

/// A part that goes from one aircraft to another with a life and a check, and what it has flown
/// since new and since the check was last done.
struct Travels {
    Hung s;
    Fact life;
    Fact check;
    std::int64_t tsn_tenths{3000};
    std::int64_t since_check_tenths{3000};
    std::int64_t moves{0};

    explicit Travels(std::uint64_t seed) {
        Random random{seed};
        life = s.item(s.gearbox, ItemRole::component, support::life(2000));
        check = s.item(s.gearbox, ItemRole::inspection, support::limit(100, 0));
        std::int64_t total[] = {10'000, 5'000};
        Date on = support::day("2024-01-02");
        for (std::int64_t left = random.between(1, 6); left > 0; --left) {
            const auto plane = static_cast<std::size_t>(random.between(0, 1));
            const Id host = plane == 0 ? s.first : s.second;
            total[plane] += random.between(0, 50);
            s.fit(s.gearbox, host, base::print_date(on).c_str(), total[plane]);
            holds("fit");
            for (std::int64_t flights = random.between(0, 3); flights > 0; --flights) {
                on = base::add_days(on, static_cast<std::int32_t>(random.between(1, 4)));
                fly(random.between(0, 90), total[plane]);
                if (!random.once_in(2)) continue;
                s.work(check,
                       {host, s.gearbox.id, check.id},
                       base::print_date(on).c_str(),
                       total[plane]);
                since_check_tenths = 0;
            }
            on = base::add_days(on, static_cast<std::int32_t>(random.between(1, 9)));
            fly(random.between(0, 200), total[plane]);
            s.remove(s.gearbox, host, base::print_date(on).c_str(), total[plane]);
            holds("removal");
            ++moves;
            on = base::add_days(on, static_cast<std::int32_t>(random.between(1, 5)));
            if (!random.once_in(4)) continue;
            s.work(check, {s.gearbox.id, check.id}, base::print_date(on).c_str(), -1);
            since_check_tenths = 0;
            holds("work on the shelf");
        }
    }

    void fly(std::int64_t tenths, std::int64_t& total) {
        total += tenths;
        tsn_tenths += tenths;
        since_check_tenths += tenths;
    }

    /// Off the aircraft, or on it with nothing flown since: the same hours left, to the second.
    void holds(const char* when) {
        CAPTURE(when);
        Hung now = s;
        // What the readings of the aircraft say beyond the last record is no part of this.
        now.today = s.journal.in_order().back()->body.on;
        const PartState part = now.state(s.gearbox);
        if (part.whereabouts == timeline::Whereabouts::fitted) return;
        const ClockDue end = now.hours(s.gearbox, life);
        REQUIRE(end.left == base::tenths(20'000 - tsn_tenths));
        REQUIRE(end.left + end.used == end.limit_hours);
        const ClockDue next = now.hours(s.gearbox, check);
        REQUIRE(next.left == base::tenths(1'000 - since_check_tenths));
        REQUIRE(next.left + next.used == next.limit_hours);
        REQUIRE_FALSE(next.estimated);
    }
};

/// Compares what an open part promises with what an answer leaves; how many clocks were compared.
std::int64_t compare(const PartState& open, const PartState& settled) {
    std::int64_t compared = 0;
    const std::vector<ItemDue> before = limits::due_items(open, random_today);
    for (const ItemDue& after : limits::due_items(settled, random_today)) {
        const ItemDue* item = find_item(before, after.item);
        REQUIRE(item != nullptr);
        for (const ClockDue& clock : after.clocks) {
            const ClockDue* same = limits::clock_of(*item, clock.clock);
            REQUIRE(same != nullptr);
            CAPTURE(base::print_id(after.item), static_cast<int>(clock.clock));
            CAPTURE(same->left.seconds, clock.left.seconds, same->days_left, clock.days_left);
            CAPTURE(same->anchor_total.seconds, clock.anchor_total.seconds);
            CAPTURE(same->left_count.value, clock.left_count.value, clock.no_life_left);
            REQUIRE(promises_no_more(*same, clock));
            compared += same->known && clock.known ? 1 : 0;
        }
    }
    return compared;
}

/// All that is shown of the limits of the parts, aboard and not.
std::string shown(const Journal& journal, const RandomJournal& random) {
    const views::Assessed aircraft =
        views::assess(timeline::replay(journal, random.aircraft(), random_today),
                      random_today,
                      timeline::parts_of(journal, random.aircraft(), random_today));
    std::string out;
    facts::print_json(views::to_json(views::make_aircraft_view(aircraft), {}), out);
    for (const Id& id : random.parts()) {
        for (const views::DueRow& row : views::part_history(journal, id, random_today).due) {
            out += '\n' + row.name + ' ' + base::say(row.state_word, {});
            for (const auto* left : {&row.hours_left, &row.calendar_left, &row.count_left})
                out += ' ' + (*left ? base::say((*left)->text, {}) : std::string{"-"});
        }
    }
    return out;
}

}  // namespace

TEST_CASE("a part keeps its hours left from aircraft to aircraft, exactly", "[properties][hung]") {
    std::int64_t moves = 0;
    for (std::uint64_t seed = 1; seed <= hung_cases; ++seed) {
        CAPTURE(seed);
        moves += Travels{seed}.moves;
    }
    CHECK(moves > 1000);
}

TEST_CASE("off and on again without flying changes nothing but the calendar",
          "[properties][hung]") {
    for (std::uint64_t seed = 1; seed <= hung_cases; ++seed) {
        CAPTURE(seed);
        Random random{seed};
        Hung s;
        const Fact item = s.item(s.gearbox, ItemRole::inspection, support::limit(100, 12));
        s.fit(s.gearbox, s.first, "2024-01-02", 10'000);
        s.work(
            item, {s.first, s.gearbox.id, item.id}, "2024-01-05", random.between(10'000, 10'100));
        const ClockDue before = s.hours(s.gearbox, item);
        const Date due_on = s.calendar(s.gearbox, item).due_on;
        const Date off = base::add_days(support::day("2024-01-10"),
                                        static_cast<std::int32_t>(random.between(0, 40)));
        const Date again = base::add_days(off, static_cast<std::int32_t>(random.between(0, 9)));
        const std::int64_t total = random.between(10'100, 11'000);
        s.remove(s.gearbox, s.first, base::print_date(off).c_str(), total, true);
        s.fit(s.gearbox, s.first, base::print_date(again).c_str(), total);
        const ClockDue after = s.hours(s.gearbox, item);
        REQUIRE(after.left == before.left);
        REQUIRE(after.used == before.used);
        REQUIRE(after.anchor_total == before.anchor_total);
        REQUIRE(s.calendar(s.gearbox, item).due_on == due_on);
    }
}

TEST_CASE("what is left and what is used make a hung limit, exactly", "[properties][hung]") {
    std::int64_t seen = 0;
    for (std::uint64_t seed = 1; seed <= 2 * hung_cases; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed, {30, true, true, true, true, true}};
        for (const PartState& part : timeline::replay_parts(random.all(), random_today)) {
            for (const ItemDue& item : limits::due_items(part, random_today)) {
                REQUIRE(item.part.id == part.id);
                for (const ClockDue& clock : item.clocks) {
                    if (!clock.known) continue;
                    if (clock.clock == Clock::hours) {
                        ++seen;
                        REQUIRE(clock.left + clock.used == clock.limit_hours);
                        REQUIRE(clock.due_total == clock.anchor_total + clock.limit_hours);
                        if (clock.no_life_left) REQUIRE(clock.left.seconds <= 0);
                    } else if (clock.clock == Clock::calendar) {
                        REQUIRE(base::add_days(random_today, clock.days_left) == clock.due_on);
                    } else {
                        REQUIRE(clock.left_count <= clock.limit_count);
                    }
                }
            }
        }
    }
    CHECK(seen > 1000);
}

TEST_CASE("hung limits do not depend on the order facts came in", "[properties][hung]") {
    for (std::uint64_t seed = 1; seed <= hung_cases / 2; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed, {30, true, true, true, true, true}};
        const Journal all = random.all();
        REQUIRE(shown(support::shuffled(all, seed), random) == shown(all, random));
    }
}

TEST_CASE("an unanswered disagreement never gives a hung limit more life than any answer",
          "[properties][hung][disagreement]") {
    std::int64_t compared = 0;
    for (std::uint64_t seed = 1; seed <= 20 * hung_cases; ++seed) {
        const std::int32_t steps = seed % 2 == 0 ? 12 : 30;
        const RandomJournal random{seed, {steps, false, false, false, true, true}};
        const Journal journal = random.all();
        for (const Id& id : random.parts()) {
            const PartState open = timeline::replay_part(journal, id, random_today);
            if (open.scrapped_on) continue;  // promises nothing
            for (const timeline::Question& question : open.questions) {
                if (question.no_safe_side) continue;
                for (std::size_t side = 0; side < question.sides.size(); ++side) {
                    support::Pen judge{"judge", 1'800'000'000'000};
                    const facts::Body body = timeline::answer_to(
                        journal, question, side, id, support::day("2025-01-15"));
                    Journal answered = journal;
                    answered.add(judge.write(body.on, body.about, body.fields));
                    const PartState settled = timeline::replay_part(answered, id, random_today);
                    if (settled.withdrawn) continue;  // there is no such part
                    CAPTURE(facts::print_journal(journal), seed, side);
                    CAPTURE(support::told(open), support::told(settled));
                    compared += compare(open, settled);
                }
            }
        }
    }
    CHECK(compared > 3000);
}
