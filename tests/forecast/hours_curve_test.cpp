#include "engine/forecast/hours_curve.hpp"

#include "catch_amalgamated.hpp"

using namespace twoclocks;
using forecast::HoursCurve;

TEST_CASE("a line of straight pieces is read both ways", "[forecast][curve]") {
    HoursCurve curve;
    curve.add(10, 100);
    curve.add(20, 100);
    curve.add(30, 400);
    curve.add(40, 300);  // never falls
    curve.tail = 5;

    struct Row {
        std::int32_t day;
        double seconds;
    };

    for (const Row& row : {Row{-3, 0},
                           Row{0, 0},
                           Row{5, 50},
                           Row{15, 100},
                           Row{25, 250},
                           Row{35, 400},
                           Row{40, 400},
                           Row{50, 450}}) {
        CAPTURE(row.day);
        CHECK(forecast::flown_by(curve, row.day) == row.seconds);
    }
    CHECK(forecast::day_when(curve, 0, 55) == 5);  // a part of a day is the day before
    CHECK(forecast::day_when(curve, 0, 100) == 10);
    CHECK(forecast::day_when(curve, 0, 101) == 20);
    CHECK(forecast::day_when(curve, 25, 100) == 28);
    CHECK(forecast::day_when(curve, 0, 449) == 49);
    CHECK(forecast::day_when(curve, 60, 50) == 70);
    curve.tail = 0;
    CHECK_FALSE(forecast::day_when(curve, 0, 401));
    curve.tail = 0.001;
    CHECK_FALSE(forecast::day_when(curve, 0, 1000));  // more than 200 years
}
