// The life box to scale: thousandths of its sides, by hand.
#include "engine/views/life_box.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <string>

#include "engine/base/region.hpp"

using namespace twoclocks;
using base::FlightTime;
using facts::ItemRole;
using support::add_item;
using support::hand_state;
using support::hand_today;
using timeline::AircraftState;
using views::BoxPoint;
using views::Edge;
using views::LifeBoxView;

namespace {

LifeBoxView box_of(const AircraftState& state) {
    return views::life_box(views::assess(state, hand_today));
}

std::string corner(const BoxPoint& point) {
    return std::to_string(point.across_permille) + ',' + std::to_string(point.up_permille);
}

/// Halfway through 24 months, with so many of 500 h left at one hour a day.
AircraftState halfway(std::int64_t hours_left) {
    AircraftState state = hand_state();
    add_item(state, ItemRole::overhaul, base::hours(hours_left), 365);
    return state;
}

}  // namespace

TEST_CASE("the box needs both limits, a reading and an anchor", "[views][box]") {
    struct Row {
        const char* name;
        AircraftState state;
        const char* missing;
    };

    AircraftState only_hours = hand_state();
    add_item(only_hours, ItemRole::overhaul, base::hours(100), {});
    AircraftState only_days = hand_state();
    add_item(only_days, ItemRole::overhaul, {}, 100);
    AircraftState unread = halfway(100);
    unread.usage.clear();
    AircraftState unanchored = halfway(100);
    unanchored.items.front().limit->anchor_on = std::nullopt;
    const char* limits = "The picture needs both overhaul limits: hours and calendar.";
    for (const Row& row : {
             Row{"no item", hand_state(), limits},
             Row{"hours alone", only_hours, limits},
             Row{"calendar alone", only_days, limits},
             Row{"no reading", unread, "The picture starts with the first reading."},
             Row{"no anchor", unanchored, "The picture needs the day the calendar counts from."},
         }) {
        CAPTURE(row.name);
        const LifeBoxView box = box_of(row.state);
        CHECK_FALSE(box.known);
        CHECK(base::say(box.missing, {}) == row.missing);
        CHECK(box.line.empty());
    }
    CHECK(box_of(halfway(100)).known);
}

TEST_CASE("today's point is hours used up and calendar used across", "[views][box]") {
    // 2023-07-02 + 24 months: 731 days, 366 of them gone: 500.6 permille, cut.
    struct Row {
        std::int64_t hours_left;
        const char* point;
    };

    for (const Row& row : {Row{500, "500,0"},
                           Row{499, "500,2"},
                           Row{250, "500,500"},
                           Row{0, "500,1000"},
                           Row{-50, "500,1100"}}) {
        CAPTURE(row.hours_left);
        CHECK(corner(box_of(halfway(row.hours_left)).line.back()) == row.point);
    }
}

TEST_CASE("the line runs from its corner through the readings to today", "[views][box]") {
    AircraftState state = halfway(250);
    const auto read = [&](std::int32_t days_ago, std::int64_t hours) {
        return timeline::UsagePoint{base::add_days(hand_today, -days_ago), base::hours(hours), {}};
    };
    // 183 days ago 125 h of the 500 were used; a reading from before the anchor is no part of it.
    state.usage = {read(900, 700), read(183, 875), read(0, 1000)};
    state.certain = state.usage;
    const LifeBoxView box = box_of(state);
    REQUIRE(box.line.size() >= 3);
    CHECK(box.line.front().across_permille == 0);
    CHECK(corner(box.line[1]) == "250,250");
    CHECK(corner(box.line.back()) == "500,500");
    for (std::size_t i = 1; i < box.line.size(); ++i) {
        CHECK(box.line[i - 1].across_permille <= box.line[i].across_permille);
        CHECK(box.line[i - 1].up_permille <= box.line[i].up_permille);
    }
}

TEST_CASE("a long life is thinned and still ends today", "[views][box]") {
    AircraftState state = halfway(250);
    state.usage.clear();
    for (std::int32_t days_ago = 366; days_ago >= 0; --days_ago) {
        for (std::int32_t tenths = 0; tenths < 3; ++tenths) {
            state.usage.push_back({base::add_days(hand_today, -days_ago),
                                   base::tenths(10'000 - 6 * days_ago + tenths),
                                   {}});
        }
    }
    state.certain = state.usage;
    const LifeBoxView box = box_of(state);
    CHECK(box.line.size() <= 242);
    CHECK(box.line.size() > 120);
    CHECK(box.line.back().across_permille == 500);
}

TEST_CASE("the fan ends on the edge each rate meets", "[views][box]") {
    struct Row {
        std::int64_t hours_left;
        const char* likely;
        Edge meets;
    };

    // 30.4375 h a month: 200 h end 201 days and a part on, in January, across (366 + 201) / 731.
    // 366 h end with a part of the last day, so on the day itself. 400 h outlast the calendar,
    // which ends with 365.25 of them flown: (100 + 365.25) / 500.
    for (const Row& row : {Row{200, "775,1000", Edge::hours},
                           Row{366, "1000,1000", Edge::hours},
                           Row{400, "1000,930", Edge::calendar}}) {
        CAPTURE(row.hours_left);
        const LifeBoxView box = box_of(halfway(row.hours_left));
        REQUIRE(box.fan_known);
        CHECK(corner(box.likely) == row.likely);
        // Nobody measured how it strays: what was assumed opens the fan to both sides.
        const auto along = [](const views::BoxPoint& point) {
            return point.across_permille - point.up_permille;
        };
        CHECK(along(box.early) < along(box.likely));
        CHECK(along(box.late) > along(box.likely));
        CHECK(box.meets == row.meets);
    }
}

TEST_CASE("there is no fan where an edge was passed or no rate is known", "[views][box]") {
    CHECK_FALSE(box_of(halfway(0)).fan_known);
    CHECK_FALSE(box_of(halfway(-1)).fan_known);
    AircraftState no_rate = halfway(100);
    no_rate.plan.reset();
    CHECK_FALSE(box_of(no_rate).fan_known);
    CHECK(box_of(no_rate).meets == Edge::none);
}

TEST_CASE("other mandatory limits before the edges are marked", "[views][box]") {
    AircraftState state = halfway(250);
    add_item(state, ItemRole::inspection, base::hours(50), 73);
    add_item(state, ItemRole::inspection, base::hours(250), 365);
    add_item(state, ItemRole::inspection, FlightTime{-1}, -1);
    add_item(state, ItemRole::inspection, base::hours(50), {}).limit->limit_class =
        facts::LimitClass::recommended;
    const LifeBoxView box = box_of(state);
    REQUIRE(box.marks.size() == 2);
    CHECK(box.marks[0].edge == Edge::hours);
    CHECK(box.marks[0].at_permille == 600);  // 250 + 50 of 500 h
    CHECK(box.marks[1].edge == Edge::calendar);
    CHECK(box.marks[1].at_permille == 600);  // 366 + 73 of 731 days, cut
    CHECK(base::say(box.marks[0].label, {}) == "Item 1");
}

TEST_CASE("the sides carry their limits in words", "[views][box]") {
    AircraftState state = halfway(200);
    const LifeBoxView box = box_of(state);
    CHECK(base::say(box.hours_edge, {}) == "500 h");
    CHECK(base::say(box.calendar_edge, {}) == "Jul 2025");
    CHECK(base::say(box.start, {}) == "Jul 2023");
    CHECK(base::say(box.width, {}) == "2 years");
    CHECK(box.hour_ticks == 2);
    CHECK(box.year_ticks == 2);
    CHECK(base::say(box.spoken, {}) ==
          "Life box: 300.0 h used of 500 h. The hours edge is met first, about 18 Jan 2025.");
    state.items.front().limit->months = 25;
    CHECK(base::say(box_of(state).width, {}) == "25 months");
}
