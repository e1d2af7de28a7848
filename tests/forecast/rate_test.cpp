#include "engine/forecast/rate.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <vector>

using namespace twoclocks;
using forecast::RateBasis;
using forecast::UsageRate;
using support::hand_today;
using timeline::AircraftState;
using timeline::UsageSeries;

namespace {

/// Readings so many days before today, in whole hours, oldest first.
struct Point {
    std::int32_t days_ago;
    std::int64_t hours;
};

UsageRate rate_of(const std::vector<Point>& points) {
    AircraftState state;
    for (const Point& point : points) {
        state.usage.push_back(
            {base::add_days(hand_today, -point.days_ago), base::hours(point.hours), {}});
    }
    return forecast::measure(state);
}

}  // namespace

TEST_CASE("28 days of readings say a rate and 27 do not", "[forecast][rate]") {
    CHECK(rate_of({}).basis == RateBasis::unknown);
    CHECK(rate_of({{0, 100}}).basis == RateBasis::unknown);
    CHECK(rate_of({{27, 0}, {0, 27}}).basis == RateBasis::unknown);
    const UsageRate rate = rate_of({{28, 0}, {0, 28}});
    CHECK(rate.basis == RateBasis::measured);
    CHECK(rate.least == 3600);
    CHECK(rate.likely == 3600);
    CHECK(rate.greatest == 3600);
}

TEST_CASE("windows grow with the history", "[forecast][rate]") {
    struct Row {
        std::int32_t span_days;
        std::int32_t window_days;
        std::int32_t windows;
    };

    // Windows step back 30 days as long as they fit: (span - window) / 30 + 1.
    for (const Row& row : {Row{28, 28, 1},
                           Row{119, 119, 1},
                           Row{120, 60, 3},
                           Row{544, 272, 10},
                           Row{545, 365, 7},
                           Row{1825, 365, 49},
                           Row{3000, 365, 49}}) {
        CAPTURE(row.span_days);
        const UsageRate rate = rate_of({{row.span_days, 0}, {0, row.span_days}});
        CHECK(rate.window_days == row.window_days);
        CHECK(rate.windows == row.windows);
        CHECK(rate.to == hand_today);
        CHECK(base::days_between(rate.from, rate.to) == std::min(row.span_days, 1825));
        // Flown evenly at one hour a day, every window says so.
        CHECK(rate.least == Catch::Approx(3600).epsilon(1e-12));
        CHECK(rate.greatest == Catch::Approx(3600).epsilon(1e-12));
    }
}

TEST_CASE("least, mean and greatest are those of the windows", "[forecast][rate]") {
    // 120 days: 60 h in the first 60, 180 h in the last. Windows of 60 days that end 0, 30 and 60
    // days ago hold 180, 30 + 90 and 60 hours: 3, 2 and 1 h a day.
    const UsageRate rate = rate_of({{120, 0}, {60, 60}, {0, 240}});
    CHECK(rate.windows == 3);
    CHECK(rate.least == 3600);
    CHECK(rate.likely == 7200);
    CHECK(rate.greatest == 10'800);
}

TEST_CASE("a rate is never below nothing or above 24 hours a day", "[forecast][rate]") {
    CHECK(rate_of({{28, 5}, {0, 5}}).likely == 0);
    CHECK(rate_of({{28, 0}, {0, 5000}}).likely == 86'400);
}

TEST_CASE("a stated plan is the likely rate and widens the fan", "[forecast][plan]") {
    AircraftState state = support::hand_state();
    CHECK(forecast::measure(state).basis == RateBasis::stated);
    CHECK(forecast::measure(state).least == 3600);
    CHECK(forecast::measure(state).likely == 3600);
    CHECK(forecast::measure(state).greatest == 3600);
    CHECK(forecast::measure(state).windows == 0);

    struct Row {
        std::int64_t flown_hours;  // in the 30 days before today
        double least;
        double greatest;
    };

    for (const Row& row : {Row{15, 1800, 3600}, Row{30, 3600, 3600}, Row{60, 3600, 7200}}) {
        CAPTURE(row.flown_hours);
        AircraftState flown = support::hand_state();
        flown.usage.insert(
            flown.usage.begin(),
            {base::add_days(hand_today, -30), base::hours(1000 - row.flown_hours), {}});
        const UsageRate rate = forecast::measure(flown);
        CHECK(rate.basis == RateBasis::stated_and_measured);
        CHECK(rate.least == row.least);
        CHECK(rate.likely == 3600);
        CHECK(rate.greatest == row.greatest);
    }
    state.plan->month = base::hours(1000);
    CHECK(forecast::measure(state).likely == 86'400);
}

TEST_CASE("total time between readings grows evenly", "[forecast][total]") {
    const UsageSeries usage{{{10}, base::hours(100), {}},
                            {{20}, base::hours(110), {}},
                            {{20}, base::hours(112), {}},
                            {{24}, base::hours(120), {}}};

    struct Row {
        std::int32_t day_number;
        std::int64_t hours;
    };

    for (const Row& row : {Row{9, 100},
                           Row{10, 100},
                           Row{15, 105},
                           Row{19, 109},
                           Row{20, 112},
                           Row{21, 114},
                           Row{24, 120},
                           Row{25, 120}}) {
        CAPTURE(row.day_number);
        CHECK(forecast::total_at(usage, {row.day_number}) ==
              Catch::Approx(static_cast<double>(row.hours) * 3600).epsilon(1e-12));
    }
    CHECK(forecast::total_at({}, {10}) == 0);
}

TEST_CASE("a year's hours are shown to the nearest tenth", "[forecast][rate]") {
    CHECK(forecast::a_year(0) == base::tenths(0));
    CHECK(forecast::a_year(3600) == base::tenths(3653));  // 365.25 h
    CHECK(forecast::a_year(1800) == base::tenths(1826));  // 182.625 h
    CHECK(forecast::a_year(86'400) == base::tenths(87'660));
}
