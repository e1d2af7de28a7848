#include "engine/forecast/chance.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/random_journal.hpp"

#include <vector>

#include "engine/forecast/back_test.hpp"
#include "engine/forecast/projection.hpp"

using namespace twoclocks;
using forecast::ChanceWork;
using forecast::ItemChance;
using limits::ClockDue;
using limits::ItemDue;
using support::day;
using support::random_today;
using support::RandomJournal;
using timeline::AircraftState;

namespace {

/// Read on the first of each month for three years to 1 January 2024: ten hours a month, and what
/// is given for the last twelve.
AircraftState monthly(std::int64_t last_year = 10) {
    AircraftState state;
    std::int64_t total = 100;
    for (std::int32_t month = 0; month <= 36; ++month) {
        const auto on = base::from_civil({2021 + month / 12, month % 12 + 1, 1});
        REQUIRE(on);
        state.usage.push_back({on.value(), base::hours(total), {}});
        total += month < 24 ? 10 : last_year;
    }
    return state;
}

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

ItemChance of(const AircraftState& state, std::vector<ClockDue> clocks, bool later = false) {
    ItemDue item;
    item.clocks = std::move(clocks);
    if (later) item.combine = facts::Combine::later;
    ChanceWork work{state, {item}, day("2024-01-02")};
    while (!work.slice(170)) {
    }
    return work.chances().front();
}

}  // namespace

TEST_CASE("a day of the calendar is sure, and hours alone are what an item waits for",
          "[forecast][chance]") {
    const AircraftState state = monthly();
    const ItemChance calendar = of(state, {calendar_clock("2025-03-01")});
    CHECK(calendar.known);
    CHECK(calendar.early == day("2025-03-01"));
    CHECK(calendar.late == day("2025-03-01"));
    CHECK(calendar.hours_first_permille == 0);
    const ItemChance hours = of(state, {hours_clock(state, 120)});
    CHECK(hours.hours_first_permille == 1000);
    // Ten hours a month: about a year, and nobody is sure of that.
    CHECK(*hours.early < *hours.likely);
    CHECK(*hours.likely < *hours.late);
    CHECK(*hours.likely > day("2024-11-15"));
    CHECK(*hours.likely < day("2025-02-15"));
}

TEST_CASE("with two clocks the chance says which comes first, and the later waits for both",
          "[forecast][chance]") {
    const AircraftState state = monthly();
    const std::vector<ClockDue> clocks{hours_clock(state, 120), calendar_clock("2025-01-01")};
    const ItemChance sooner = of(state, clocks);
    CHECK(sooner.hours_first_permille > 250);
    CHECK(sooner.hours_first_permille < 750);
    CHECK(*sooner.late <= day("2025-01-01"));
    const ItemChance later = of(state, clocks, true);
    CHECK(*later.early >= day("2025-01-01"));
    // Of every path one of the two is the last.
    CHECK(later.hours_first_permille >= 1000 - sooner.hours_first_permille - 20);
    CHECK(of(state, {hours_clock(state, 500), calendar_clock("2024-02-01")}).hours_first_permille ==
          0);
}

TEST_CASE("used up is by the last reading, unknown is unknown, standing still is never",
          "[forecast][chance]") {
    const AircraftState state = monthly();
    const ItemChance passed = of(state, {hours_clock(state, -3)});
    CHECK(passed.known);
    CHECK(passed.late == day("2024-01-01"));
    ClockDue unknown = hours_clock(state, 100);
    unknown.known = false;
    CHECK_FALSE(of(state, {unknown, calendar_clock("2025-01-01")}).known);
    CHECK_FALSE(of(state, {}).known);
    AircraftState parked = monthly(0);
    parked.plan = timeline::StatedPlan{};
    const ItemChance never = of(parked, {hours_clock(parked, 100)});
    CHECK(never.known);
    CHECK_FALSE(never.early);
    AircraftState one_reading;
    one_reading.usage = {state.usage.back()};
    CHECK_FALSE(of(one_reading, {hours_clock(one_reading, 100)}).known);
    one_reading.plan = timeline::StatedPlan{};
    one_reading.plan->month = base::hours(10);
    // A plan and nothing else: the straying is assumed, and the band is wide.
    const ItemChance planned = of(one_reading, {hours_clock(one_reading, 120)});
    CHECK(planned.known);
    CHECK(base::days_between(*planned.early, *planned.late) > 60);
}

TEST_CASE("early takes all flying as the kind that used the limit the most", "[forecast][chance]") {
    const AircraftState state = monthly();
    ClockDue clock = hours_clock(state, 120);
    const ItemChance plain = of(state, {clock});
    clock.most_thousandths = 2000;
    const ItemChance hard = of(state, {clock});
    CHECK(*hard.early < *plain.early);
    CHECK(hard.likely == plain.likely);
    CHECK(hard.late == plain.late);
}

TEST_CASE("early does not wait for a return to service", "[forecast][chance]") {
    AircraftState state = monthly();
    timeline::Spell gone;
    gone.from = day("2024-01-01");
    state.spells = {gone};
    const ItemChance one = of(state, {hours_clock(state, 120)});
    CHECK_FALSE(one.likely);
    REQUIRE(one.early);
    CHECK(*one.early < day("2025-02-15"));
}

TEST_CASE("of random records every chance is in order and no sooner than today",
          "[properties][chance]") {
    std::int32_t known = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const RandomJournal random{seed, {14, true, true, true}};
        const AircraftState state = timeline::replay(random.all(), random.aircraft(), random_today);
        const std::vector<ItemDue> items = limits::due_items(state, random_today);
        ChanceWork work{state, items, random_today};
        (void)work.slice(100);
        const std::vector<ItemChance> chances = work.chances();
        REQUIRE(chances.size() == items.size());
        for (std::size_t place = 0; place < items.size(); ++place) {
            const ItemChance& one = chances[place];
            CAPTURE(seed, place);
            if (!one.known) continue;
            ++known;
            constexpr base::Date never{200'000};
            REQUIRE(one.early.value_or(never) <= one.likely.value_or(never));
            REQUIRE(one.likely.value_or(never) <= one.late.value_or(never));
            if (!items[place].passed()) REQUIRE(one.early.value_or(never) >= random_today);
        }
    }
    CHECK(known > 50);
}

TEST_CASE("a year that went like the ones before is told to the week, a busier one too late",
          "[forecast][back_test]") {
    const auto even = forecast::back_test(monthly());
    REQUIRE(even);
    CHECK(even->asked_on == day("2023-01-01"));
    CHECK(even->came_on == day("2024-01-01"));
    CHECK(even->flown == base::hours(120));
    CHECK(even->inside);
    CHECK(std::abs(even->days_off) < 21);
    const auto busy = forecast::back_test(monthly(30));
    REQUIRE(busy);
    // 360 h at ten a month take three years: told about two years too late.
    CHECK(busy->days_off > 500);
    CHECK_FALSE(busy->inside);
    const auto quiet = forecast::back_test(monthly(5));
    REQUIRE(quiet);
    CHECK(quiet->days_off < -120);
}

TEST_CASE("too little for a look back gives none", "[forecast][back_test]") {
    CHECK_FALSE(forecast::back_test({}));
    AircraftState state;
    state.usage = {{day("2023-06-01"), base::hours(10), {}},
                   {day("2024-01-01"), base::hours(90), {}}};
    CHECK_FALSE(forecast::back_test(state));
    state.usage.front().on = day("2022-06-01");
    CHECK_FALSE(forecast::back_test(state));  // one reading before the year says no rate
    CHECK_FALSE(forecast::back_test(monthly(0)));
}
