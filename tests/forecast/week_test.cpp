#include "engine/forecast/week.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/flown_monthly.hpp"
#include "tests/support/pen.hpp"

#include "engine/forecast/flying_ahead.hpp"

using namespace twoclocks;
using forecast::FlyingAhead;
using support::day;
using timeline::AircraftState;

TEST_CASE("days of the week count where it is read on most days", "[forecast][week]") {
    // Read every day for 26 weeks to Sunday 30 June 2024: two hours on each working day.
    AircraftState state;
    std::int64_t total = 0;
    for (std::int32_t back = 182; back >= 0; --back) {
        const base::Date on = base::add_days(day("2024-06-30"), -back);
        if (forecast::weekday_of(on) < 5) total += 2;
        state.usage.push_back({on, base::hours(total), {}});
    }
    state.certain = state.usage;
    CHECK(forecast::weekday_of(day("2024-06-30")) == 6);
    CHECK(forecast::weekday_of(day("1969-12-29")) == 0);
    const auto week = forecast::flying_week(state.usage, {});
    REQUIRE(week);
    CHECK((*week)[0] == Catch::Approx(1.4));
    CHECK((*week)[5] == 0);
    const FlyingAhead ahead = forecast::flying_ahead(state);
    const auto hours_by = [](const forecast::HoursCurve& curve, std::int32_t days) {
        return forecast::flown_by(curve, days) / 3600;
    };
    // Nothing on Saturday 6 and Sunday 7 July.
    CHECK(hours_by(ahead.likely, 5) == hours_by(ahead.likely, 7));
    CHECK(hours_by(ahead.likely, 5) == Catch::Approx(10).margin(0.3));
    // A reading a week says nothing of days.
    CHECK_FALSE(forecast::flying_week(support::flown_monthly().usage, {}));
}
