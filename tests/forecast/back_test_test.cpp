#include "engine/forecast/back_test.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/flown_monthly.hpp"
#include "tests/support/pen.hpp"

#include <cstdlib>

using namespace twoclocks;
using support::day;
using timeline::AircraftState;

TEST_CASE("a year that went like the ones before is told to the week, a busier one too late",
          "[forecast][back_test]") {
    const auto even = forecast::back_test(support::flown_monthly());
    REQUIRE(even);
    CHECK(even->asked_on == day("2023-01-01"));
    CHECK(even->came_on == day("2024-01-01"));
    CHECK(even->flown == base::hours(120));
    CHECK(even->inside);
    CHECK(std::abs(even->days_off) < 7);
    const auto busy = forecast::back_test(support::flown_monthly(30));
    REQUIRE(busy);
    // 360 h at ten a month take three years: told about two years too late.
    CHECK(busy->days_off > 700);
    CHECK_FALSE(busy->inside);
    const auto quiet = forecast::back_test(support::flown_monthly(5));
    REQUIRE(quiet);
    CHECK(quiet->days_off < -170);
}

TEST_CASE("too little for a look back gives none", "[forecast][back_test]") {
    CHECK_FALSE(forecast::back_test({}));
    AircraftState state;
    state.usage = {{day("2023-06-01"), base::hours(10), {}},
                   {day("2024-01-01"), base::hours(90), {}}};
    CHECK_FALSE(forecast::back_test(state));
    state.usage.front().on = day("2022-06-01");
    CHECK_FALSE(forecast::back_test(state));  // one reading before the year says no rate
    CHECK_FALSE(forecast::back_test(support::flown_monthly(0)));
}
