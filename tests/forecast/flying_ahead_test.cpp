#include "engine/forecast/flying_ahead.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/flown_monthly.hpp"

#include <vector>

#include "engine/forecast/rate.hpp"

using namespace twoclocks;
using forecast::FlyingAhead;
using forecast::HoursCurve;
using forecast::RateBasis;
using support::day;
using support::hand_today;
using timeline::AircraftState;

namespace {

/// Readings so many days before today, in whole hours, oldest first.
struct FlownPoint {
    std::int32_t days_ago;
    std::int64_t hours;
};

AircraftState read_on(const std::vector<FlownPoint>& points) {
    AircraftState state;
    for (const FlownPoint& point : points) {
        state.usage.push_back(
            {base::add_days(hand_today, -point.days_ago), base::hours(point.hours), {}});
    }
    state.certain = state.usage;
    return state;
}

double hours_by(const HoursCurve& curve, std::int32_t days) {
    return forecast::flown_by(curve, days) / 3600;
}

timeline::StatedPlan plan_of(std::int64_t hours_a_month) {
    timeline::StatedPlan out;
    out.month = base::hours(hours_a_month);
    return out;
}

}  // namespace

TEST_CASE("28 days of readings say a rate and 27 do not", "[forecast][ahead]") {
    const auto basis_of = [](const std::vector<FlownPoint>& points) {
        return forecast::flying_ahead(read_on(points)).basis;
    };
    CHECK(basis_of({}) == RateBasis::unknown);
    CHECK(basis_of({{0, 100}}) == RateBasis::unknown);
    CHECK(basis_of({{27, 0}, {0, 27}}) == RateBasis::unknown);
    CHECK(basis_of({{28, 0}, {0, 28}}) == RateBasis::measured);
    // An hour a day, 365.25 h a year, every month alike: 366 days ahead have 12 of its months.
    const FlyingAhead even = forecast::flying_ahead(read_on({{28, 0}, {0, 28}}));
    CHECK(even.model.assumed);
    CHECK(forecast::a_year(even) == base::tenths(3653));
    CHECK(hours_by(even.likely, 365) == Catch::Approx(365.25).epsilon(1e-9));
    CHECK(hours_by(even.early, 365) > 400);
    CHECK(hours_by(even.late, 365) < 330);
}

TEST_CASE("nothing flown is never, and no day has more than 24 hours", "[forecast][ahead]") {
    const FlyingAhead still = forecast::flying_ahead(read_on({{400, 50}, {200, 50}, {0, 50}}));
    CHECK(still.basis == RateBasis::measured);
    CHECK(forecast::flown_by(still.early, 9000) == 0);
    CHECK_FALSE(forecast::day_when(still.early, 0, 1));
    const FlyingAhead mad = forecast::flying_ahead(read_on({{28, 0}, {0, 5000}}));
    CHECK(hours_by(mad.likely, 100) == Catch::Approx(2400));
}

TEST_CASE("likely is what the months of the pattern add up to", "[forecast][ahead]") {
    // Ten hours a month: 120 h a year, and half of no change goes on.
    const AircraftState state = support::flown_monthly();
    const FlyingAhead ahead = forecast::flying_ahead(state);
    CHECK(ahead.from == day("2024-01-01"));
    CHECK(ahead.model.pattern.year_seconds == Catch::Approx(120 * 3600));
    CHECK(hours_by(ahead.likely, 366) == Catch::Approx(120).margin(0.7));
    // Twice as much in the last year: a quarter more than that is expected.
    const FlyingAhead busier = forecast::flying_ahead(support::flown_monthly(20));
    CHECK(busier.model.pattern.year_seconds == Catch::Approx(300 * 3600).epsilon(0.01));
}

TEST_CASE("a spell holds likely and late still, early does not count on it", "[forecast][ahead]") {
    AircraftState state = support::flown_monthly();
    const FlyingAhead free = forecast::flying_ahead(state);
    timeline::Spell spell;
    spell.from = day("2024-02-01");
    spell.until = day("2024-04-01");
    state.spells = {spell};
    const FlyingAhead waits = forecast::flying_ahead(state);
    CHECK(hours_by(waits.likely, 31) == hours_by(waits.likely, 90));  // 31 Jan to 31 Mar
    CHECK(hours_by(waits.likely, 92) > hours_by(waits.likely, 90));
    CHECK(hours_by(waits.late, 31) == hours_by(waits.late, 90));
    CHECK(hours_by(waits.early, 90) == Catch::Approx(hours_by(free.early, 90)));
    state.spells.front().until.reset();
    const FlyingAhead gone = forecast::flying_ahead(state);
    CHECK_FALSE(forecast::day_when(gone.likely, 0, 120 * 3600));
    CHECK(forecast::day_when(gone.early, 0, 120 * 3600));
}

TEST_CASE("a plan is expected, and the band holds what was measured too", "[forecast][plan]") {
    AircraftState state = support::flown_monthly();
    const FlyingAhead measured = forecast::flying_ahead(state);
    state.plan = plan_of(2);
    const FlyingAhead slow = forecast::flying_ahead(state);
    CHECK(slow.basis == RateBasis::stated_and_measured);
    CHECK(hours_by(slow.likely, 366) == Catch::Approx(24).margin(0.2));
    CHECK(hours_by(slow.early, 366) >= hours_by(measured.likely, 366) - 1e-6);
    state.plan = plan_of(50);
    const FlyingAhead fast = forecast::flying_ahead(state);
    CHECK(hours_by(fast.likely, 366) == Catch::Approx(600).margin(4));
    CHECK(hours_by(fast.late, 366) <= hours_by(measured.likely, 366) + 1e-6);
    // One reading and a plan: how months stray is assumed, and the band is wide.
    AircraftState one = read_on({{0, 100}});
    one.plan = plan_of(10);
    const FlyingAhead planned = forecast::flying_ahead(one);
    CHECK(planned.basis == RateBasis::stated);
    CHECK(planned.model.assumed);
    CHECK(hours_by(planned.early, 365) > 1.15 * hours_by(planned.likely, 365));
    // A plan of nothing: never, but for what was measured.
    state.plan = plan_of(0);
    const FlyingAhead stopped = forecast::flying_ahead(state);
    CHECK_FALSE(forecast::day_when(stopped.likely, 0, 3600));
    CHECK(forecast::day_when(stopped.early, 0, 3600));
}

TEST_CASE("a plan by month is expected month by month", "[forecast][plan]") {
    AircraftState state = support::flown_monthly();
    timeline::MonthlyHours months{};
    months[6] = base::hours(60);  // July
    state.plan = plan_of(5);
    state.plan->by_month = months;
    const FlyingAhead ahead = forecast::flying_ahead(state);
    const auto by = [&](const char* on) {
        return hours_by(ahead.likely, base::days_between(ahead.from, day(on)));
    };
    CHECK(by("2024-06-30") == 0);
    CHECK(by("2024-07-31") == Catch::Approx(60));
    CHECK(by("2025-06-30") == Catch::Approx(60));
    CHECK(forecast::a_year(ahead) == base::hours(60));
}
