// Where measured wear leads: the steeper of two straight lines, rounded to come earlier.
#include "engine/forecast/wear_trend.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <string>
#include <vector>

using namespace twoclocks;
using facts::WearSense;
using forecast::TrendKind;
using forecast::WearTrend;
using support::hand_state;
using support::hand_today;
using timeline::Standing;
using timeline::WearPoint;
using timeline::WearState;

namespace {

/// A measurement so many days ago, at a total in hours; below zero is not given.
struct Measured {
    std::int32_t days_ago;
    std::int32_t thousandths;
    std::int64_t total_hours;
};

struct TrendRow {
    const char* name;
    WearSense sense;
    std::int32_t limit;
    std::vector<Measured> points;
    TrendKind kind;
    std::int32_t days;  // from today
};

WearState wear_measured(const TrendRow& row) {
    WearState out;
    std::uint64_t number = 500;
    for (const Measured& one : row.points) {
        WearPoint point{base::add_days(hand_today, -one.days_ago),
                        one.thousandths,
                        "mm",
                        std::nullopt,
                        support::id_of(number++),
                        Standing::settled};
        if (one.total_hours >= 0) point.total = base::hours(one.total_hours);
        out.points.push_back(point);
    }
    if (!out.points.empty()) out.last = {out.points.back()};
    out.bounds = {{base::add_days(hand_today, -900),
                   {row.limit, "mm", row.sense, "Manual", {}},
                   support::id_of(499),
                   Standing::settled}};
    return out;
}

/// Flown one hour a day.
WearTrend trend_of(const WearState& wear) {
    const timeline::AircraftState state = hand_state();
    return forecast::wear_trend(wear, state, forecast::flying_ahead(state), hand_today);
}

constexpr auto at_most = WearSense::at_most;
constexpr auto at_least = WearSense::at_least;

const std::vector<TrendRow> trend_rows{
    {"nothing measured", at_most, 4'000, {}, TrendKind::none, 0},
    {"one measurement", at_most, 4'000, {{0, 3'000, -1}}, TrendKind::one, 0},
    {"getting better", at_most, 4'000, {{100, 3'000, -1}, {0, 2'900, -1}}, TrendKind::flat, 0},
    {"the same", at_most, 4'000, {{100, 3'000, -1}, {0, 3'000, -1}}, TrendKind::flat, 0},
    {"by days", at_most, 4'000, {{100, 2'000, -1}, {0, 3'000, -1}}, TrendKind::on_a_day, 100},
    {"by days, from the last measurement on",
     at_most,
     4'000,
     {{110, 2'000, -1}, {10, 3'000, -1}},
     TrendKind::on_a_day,
     90},
    {"a part of a day is the day before",
     at_most,
     3'999,
     {{100, 2'000, -1}, {0, 3'000, -1}},
     TrendKind::on_a_day,
     99},
    {"downwards", at_least, 2'000, {{100, 4'000, -1}, {0, 3'000, -1}}, TrendKind::on_a_day, 100},
    {"downwards, getting thicker is no wear",
     at_least,
     2'000,
     {{100, 3'000, -1}, {0, 4'000, -1}},
     TrendKind::flat,
     0},
    {"by hours: 100 h to go at one a day",
     at_most,
     4'000,
     {{400, 2'000, 900}, {0, 3'000, 1000}},
     TrendKind::on_a_day,
     100},
    {"by hours, from its total on: 20 of 100 h are flown",
     at_most,
     4'000,
     {{400, 2'000, 880}, {30, 3'000, 980}},
     TrendKind::on_a_day,
     80},
    {"a total on one side only: by days",
     at_most,
     4'000,
     {{200, 2'000, -1}, {0, 3'000, 1000}},
     TrendKind::on_a_day,
     200},
    {"a total that falls: by days",
     at_most,
     4'000,
     {{200, 2'000, 1100}, {0, 3'000, 1000}},
     TrendKind::on_a_day,
     200},
    {"the last two are steeper",
     at_most,
     4'000,
     {{200, 1'000, -1}, {50, 2'000, -1}, {0, 3'000, -1}},
     TrendKind::on_a_day,
     50},
    {"all from first to last are steeper",
     at_most,
     4'000,
     {{200, 1'000, -1}, {100, 2'900, -1}, {0, 3'000, -1}},
     TrendKind::on_a_day,
     100},
    {"the last two got better: all of them count",
     at_most,
     4'000,
     {{200, 1'000, -1}, {100, 3'100, -1}, {0, 3'000, -1}},
     TrendKind::on_a_day,
     100},
    {"at the limit it is today",
     at_most,
     3'000,
     {{100, 2'000, -1}, {0, 3'000, -1}},
     TrendKind::on_a_day,
     0},
    {"past the limit there is no trend",
     at_most,
     2'999,
     {{100, 2'000, -1}, {0, 3'000, -1}},
     TrendKind::none,
     0},
    {"a day that went by is today",
     at_most,
     4'000,
     {{500, 2'000, -1}, {300, 3'000, -1}},
     TrendKind::on_a_day,
     0},
    {"hours that went by are today",
     at_most,
     4'000,
     {{500, 2'000, 700}, {300, 3'000, 800}},
     TrendKind::on_a_day,
     0},
    {"twice on one day counts as one day",
     at_most,
     4'000,
     {{0, 3'000, -1}, {0, 3'100, -1}},
     TrendKind::on_a_day,
     9},
    {"so slow that it is not met",
     at_most,
     2'000'000'000,
     {{100, 2'000, -1}, {0, 2'001, -1}},
     TrendKind::far,
     0},
    {"so slow by hours that it is not met",
     at_most,
     2'000'000'000,
     {{100, 2'000, 900}, {0, 2'001, 1000}},
     TrendKind::far,
     0},
};

}  // namespace

TEST_CASE("the trend of measured wear, row by row", "[forecast][wear]") {
    for (const TrendRow& row : trend_rows) {
        CAPTURE(row.name);
        const WearTrend trend = trend_of(wear_measured(row));
        CHECK(trend.kind == row.kind);
        REQUIRE(trend.likely.has_value() == (row.kind == TrendKind::on_a_day));
        if (trend.likely) CHECK(base::days_between(hand_today, *trend.likely) == row.days);
    }
}

TEST_CASE("hours of wear without a rate of flying have no day", "[forecast][wear]") {
    timeline::AircraftState state = hand_state();
    state.plan.reset();
    const TrendRow row{
        "", at_most, 4'000, {{400, 2'000, 900}, {0, 3'000, 1000}}, TrendKind::no_rate, 0};
    const WearTrend trend =
        forecast::wear_trend(wear_measured(row), state, forecast::flying_ahead(state), hand_today);
    CHECK(trend.kind == TrendKind::no_rate);
    CHECK(trend.hours_left == base::hours(100));
}

TEST_CASE("a measurement in dispute draws no line but counts itself", "[forecast][wear]") {
    TrendRow row{"",
                 at_most,
                 4'000,
                 {{200, 1'000, -1}, {100, 2'999, -1}, {0, 3'000, -1}},
                 TrendKind::on_a_day,
                 0};
    WearState wear = wear_measured(row);
    wear.points[1].standing = Standing::disputed;
    const WearTrend trend = trend_of(wear);
    CHECK(trend.from.value_thousandths == 1'000);
    CHECK(base::days_between(hand_today, *trend.likely) == 100);
}
