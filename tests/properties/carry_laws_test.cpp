// Laws of carry-over, for chains dense enough that windows are hit and missed.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/random.hpp"

#include <algorithm>
#include <cstdint>
#include <vector>

#include "engine/limits/due.hpp"

using namespace twoclocks;
using base::Date;
using base::FlightTime;
using facts::CarryOver;
using facts::Clock;
using facts::LimitSet;
using support::Random;
using timeline::AircraftState;
using timeline::ItemState;
using timeline::Renewed;

namespace {

constexpr std::uint64_t carry_cases = 4000;

/// Work twice: how many tenths and days after the anchor.
struct Works {
    std::int64_t first{0};
    std::int64_t second{0};
    bool is_first_done{true};
};

LimitSet random_limit(Random& random) {
    LimitSet out;
    out.hours = base::tenths(random.between(80, 120));
    out.days = static_cast<std::int32_t>(random.between(80, 120));
    out.anchor_total = base::hours(100);
    out.anchor_on = support::day("2020-01-01");
    out.tolerance.source = "Programme";
    out.tolerance.hours = base::tenths(random.between(0, 20));
    out.tolerance.days = static_cast<std::int32_t>(random.between(0, 20));
    if (!random.once_in(3)) out.tolerance.carry_over = CarryOver::from_due;
    if (random.once_in(3)) out.tolerance.overfly_hours = base::tenths(random.between(1, 20));
    return out;
}

Renewed renewed(std::int64_t after) {
    return {base::add_days(support::day("2020-01-01"), static_cast<std::int32_t>(after)),
            base::hours(100) + base::tenths(after),
            false,
            {},
            {},
            {}};
}

AircraftState state_told(const LimitSet& limit, const Works& works) {
    AircraftState state = support::hand_state();
    ItemState& item =
        support::add_item(state, facts::ItemRole::inspection, FlightTime{}, std::nullopt);
    item.limit = limit;
    for (const auto place : {Clock::hours, Clock::calendar}) {
        const auto at = static_cast<std::size_t>(place);
        if (works.is_first_done) item.earlier[at].push_back(renewed(works.first));
        item.renewed[at] = renewed(works.second);
    }
    return state;
}

struct From {
    FlightTime hours;
    Date day;
};

From from(const AircraftState& state) {
    return {limits::hours_from(limits::bearer_of(state), state.items.front())->from,
            limits::day_from(limits::bearer_of(state), state.items.front())->from};
}

}  // namespace

TEST_CASE("in doubt an interval counts from no later than under any answer",
          "[properties][carry_over]") {
    std::int32_t hours_earlier = 0;
    std::int32_t days_earlier = 0;
    for (std::uint64_t seed = 1; seed <= carry_cases; ++seed) {
        CAPTURE(seed);
        Random random{seed};
        const LimitSet one = random_limit(random);
        const LimitSet other = random_limit(random);
        const std::int64_t first = random.between(60, 140);
        const std::int64_t second = first + random.between(60, 140);
        const std::int64_t first_stray = random.between(-30, 30);
        const std::int64_t second_stray = random.between(0, 30);
        AircraftState open = state_told(one, {first, second, true});
        open.items.front().disputed = true;
        open.items.front().limit_versions = {one, other};
        const From least = from(open);
        for (const LimitSet& limit : {one, other}) {
            for (const bool is_first_done : {true, false}) {
                for (const std::int64_t stray : {std::int64_t{0}, second_stray}) {
                    const From answer = from(
                        state_told(limit, {first + first_stray, second + stray, is_first_done}));
                    REQUIRE(least.hours <= answer.hours);
                    REQUIRE(least.day <= answer.day);
                    const From settled = from(state_told(limit, {first, second, is_first_done}));
                    hours_earlier += settled.hours < renewed(second).total ? 1 : 0;
                    days_earlier += settled.day < renewed(second).on ? 1 : 0;
                }
            }
        }
    }
    CHECK(hours_earlier > 1000);
    CHECK(days_earlier > 500);
}

TEST_CASE("an interval counts from within the tolerance of its work, or less its excess",
          "[properties][carry_over]") {
    for (std::uint64_t seed = 1; seed <= carry_cases; ++seed) {
        CAPTURE(seed);
        Random random{seed};
        const LimitSet limit = random_limit(random);
        const std::int64_t first = random.between(60, 140);
        const AircraftState state =
            state_told(limit, {first, first + random.between(60, 140), true});
        const ItemState& item = state.items.front();
        const limits::HoursFrom hours = *limits::hours_from(limits::bearer_of(state), item);
        const FlightTime off = hours.from - hours.done;
        const FlightTime most = limits::tolerance_hours(limit, *limit.hours);
        REQUIRE(off <= most);
        REQUIRE(FlightTime{0} - off <= std::max(most, hours.past));
        if (hours.carried == limits::Carried::none) REQUIRE(off == FlightTime{0});
        if (hours.carried == limits::Carried::excess)
            REQUIRE(hours.from + hours.past == hours.done);
        const limits::DayFrom day = *limits::day_from(limits::bearer_of(state), item);
        const std::int32_t days = base::days_between(day.done, day.from);
        REQUIRE(days <= *limit.tolerance.days);
        REQUIRE(-days <= *limit.tolerance.days);
    }
}

TEST_CASE("a tolerance never changes what is left", "[properties][limits]") {
    for (std::uint64_t seed = 1; seed <= carry_cases; ++seed) {
        CAPTURE(seed);
        Random random{seed};
        LimitSet limit = random_limit(random);
        limit.tolerance.carry_over = CarryOver::from_done;
        limit.tolerance.overfly_hours = std::nullopt;
        const std::int64_t first = random.between(60, 140);
        const Works works{first, first + random.between(60, 140), true};
        LimitSet plain = limit;
        plain.tolerance = {};
        const AircraftState with = state_told(limit, works);
        const AircraftState without = state_told(plain, works);
        const auto some = limits::due_items(with, support::hand_today);
        const auto none = limits::due_items(without, support::hand_today);
        REQUIRE(some.front().clocks.size() == none.front().clocks.size());
        for (std::size_t i = 0; i < some.front().clocks.size(); ++i) {
            REQUIRE(some.front().clocks[i].left == none.front().clocks[i].left);
            REQUIRE(some.front().clocks[i].due_on == none.front().clocks[i].due_on);
            REQUIRE(some.front().clocks[i].passed() == none.front().clocks[i].passed());
        }
    }
}
