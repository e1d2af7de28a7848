// Laws of what is left, for any journal.
#include "catch_amalgamated.hpp"
#include "tests/support/no_more.hpp"
#include "tests/support/random_journal.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/forecast/projection.hpp"
#include "engine/limits/due.hpp"

using namespace twoclocks;
using base::Date;
using facts::Clock;
using facts::Journal;
using limits::ClockDue;
using limits::ItemDue;
using support::fixed_rate;
using support::not_later;
using support::random_today;
using support::RandomJournal;
using timeline::AircraftState;

namespace {

constexpr std::uint64_t life_cases = 1000;
constexpr base::FlightTime longest_tolerance = base::hours(420);  // 20 % of 2,100 h

}  // namespace

TEST_CASE("what is left and what is used make the limit, exactly", "[properties][limits]") {
    std::int64_t hours_seen = 0;
    std::int64_t counts_seen = 0;
    for (std::uint64_t seed = 1; seed <= life_cases; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed};
        const AircraftState state = timeline::replay(random.all(), random.aircraft(), random_today);
        for (const ItemDue& item : limits::due_items(state, random_today)) {
            for (const ClockDue& clock : item.clocks) {
                if (!clock.known) continue;
                if (clock.clock == Clock::hours) {
                    ++hours_seen;
                    REQUIRE(clock.left + clock.used == clock.limit_hours);
                    // Work done early may count from a due point that is still to come, no
                    // further off than the tolerance.
                    const bool ahead = clock.carried == limits::Carried::due_point;
                    REQUIRE(clock.used.seconds >= (ahead ? -longest_tolerance.seconds : 0));
                    REQUIRE(clock.due_total - clock.left == *limits::total_time(state));
                } else if (clock.clock == Clock::calendar) {
                    REQUIRE(base::add_days(random_today, clock.days_left) == clock.due_on);
                } else {
                    ++counts_seen;
                    REQUIRE(clock.left_count <= clock.limit_count);
                }
            }
        }
    }
    CHECK(hours_seen > 1000);
    CHECK(counts_seen > 100);
}

TEST_CASE("total time never falls, along the life or by one more reading", "[properties][total]") {
    for (std::uint64_t seed = 1; seed <= life_cases; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed};
        Journal journal = random.all();
        const AircraftState before = timeline::replay(journal, random.aircraft(), random_today);
        for (std::size_t i = 1; i < before.usage.size(); ++i) {
            REQUIRE(before.usage[i - 1].on <= before.usage[i].on);
            REQUIRE(before.usage[i - 1].total <= before.usage[i].total);
        }
        support::Random more{seed};
        support::Pen pen{"dee"};
        const Date on =
            base::add_days(random_today, -static_cast<std::int32_t>(more.between(0, 2500)));
        journal.add(pen.write(
            on, {random.aircraft(), random.meter()}, support::reads(more.between(0, 20'000))));
        const AircraftState after = timeline::replay(journal, random.aircraft(), random_today);
        REQUIRE(limits::total_time(after) >= limits::total_time(before));
    }
}

TEST_CASE("more hours flown never give a later date at a fixed rate", "[properties][forecast]") {
    for (std::uint64_t seed = 1; seed <= life_cases; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed};
        AircraftState state = timeline::replay(random.all(), random.aircraft(), random_today);
        if (state.usage.empty()) continue;
        AircraftState more = state;
        support::Random draw{seed};
        more.usage.back().total = more.usage.back().total + base::tenths(draw.between(0, 9000));
        const std::vector<ItemDue> items = limits::due_items(state, random_today);
        const std::vector<ItemDue> worn = limits::due_items(more, random_today);
        for (std::size_t i = 0; i < items.size(); ++i) {
            const auto first = forecast::project(items[i], state, fixed_rate(state), random_today);
            const auto second = forecast::project(worn[i], more, fixed_rate(more), random_today);
            REQUIRE(not_later(second.early, first.early));
            REQUIRE(not_later(second.likely, first.likely));
            REQUIRE(not_later(second.late, first.late));
        }
    }
}

TEST_CASE("early, likely and late come in this order", "[properties][forecast]") {
    std::int64_t seen = 0;
    for (std::uint64_t seed = 1; seed <= life_cases; ++seed) {
        CAPTURE(seed);
        const RandomJournal random{seed};
        const AircraftState state = timeline::replay(random.all(), random.aircraft(), random_today);
        const forecast::FlyingAhead measured = forecast::flying_ahead(state);
        for (std::int32_t day = 0; day < 9000; day += 97) {
            REQUIRE(forecast::flown_by(measured.late, day) <=
                    forecast::flown_by(measured.likely, day) + 1e-6);
            REQUIRE(forecast::flown_by(measured.likely, day) <=
                    forecast::flown_by(measured.early, day) + 1e-6);
        }
        for (const ItemDue& item : limits::due_items(state, random_today)) {
            for (const auto& ahead : {measured, fixed_rate(state)}) {
                const auto one = forecast::project(item, state, ahead, random_today);
                REQUIRE(not_later(one.early, one.likely));
                REQUIRE(not_later(one.likely, one.late));
                seen += one.late ? 1 : 0;
            }
        }
    }
    CHECK(seen > 1000);
}
