#include "engine/forecast/rate.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <vector>

using namespace twoclocks;
using timeline::UsageSeries;

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
