#include "engine/forecast/hours_first.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/flown_monthly.hpp"
#include "tests/support/pen.hpp"

#include <optional>
#include <vector>

using namespace twoclocks;
using limits::ClockDue;
using limits::ItemDue;
using support::day;
using timeline::AircraftState;

namespace {

ClockDue hours_clock(const AircraftState& state, std::int64_t left) {
    ClockDue clock;
    clock.clock = facts::Clock::hours;
    clock.known = true;
    clock.left = base::hours(left);
    clock.due_total = state.usage.back().total + clock.left;
    return clock;
}

ClockDue calendar_clock(const char* on) {
    ClockDue clock;
    clock.clock = facts::Clock::calendar;
    clock.known = true;
    clock.due_on = day(on);
    return clock;
}

ItemDue item_of(std::vector<ClockDue> clocks, bool later = false) {
    ItemDue item;
    item.clocks = std::move(clocks);
    if (later) item.combine = facts::Combine::later;
    return item;
}

std::optional<std::int32_t> hours_first(const AircraftState& state, const ItemDue& item) {
    return forecast::hours_first_permille(item, state, forecast::flying_ahead(state));
}

}  // namespace

TEST_CASE("with two clocks the chance says which comes first", "[forecast][chance]") {
    const AircraftState state = support::flown_monthly();
    CHECK(hours_first(state, item_of({hours_clock(state, 120)})) == 1000);
    CHECK(hours_first(state, item_of({calendar_clock("2025-01-01")})) == 0);
    const std::vector<ClockDue> even{hours_clock(state, 120), calendar_clock("2025-01-01")};
    const auto sooner = hours_first(state, item_of(even));
    REQUIRE(sooner);
    CHECK(*sooner > 250);
    CHECK(*sooner < 750);
    // Of every way one of the two is the last.
    const auto later = hours_first(state, item_of(even, true));
    REQUIRE(later);
    CHECK(*later + *sooner == 1000);
    CHECK(hours_first(state, item_of({hours_clock(state, 500), calendar_clock("2024-02-01")})) ==
          0);
    CHECK(hours_first(state, item_of({hours_clock(state, -1), calendar_clock("2030-02-01")})) ==
          1000);
    ClockDue unknown = hours_clock(state, 100);
    unknown.known = false;
    CHECK_FALSE(hours_first(state, item_of({unknown, calendar_clock("2025-01-01")})));
    AircraftState one_reading = state;
    one_reading.usage = one_reading.certain = {state.usage.back()};
    CHECK_FALSE(hours_first(one_reading, item_of(even)));
}
