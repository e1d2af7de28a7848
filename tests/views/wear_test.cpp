// Measured wear as rows say it: the state, the figure, the trend and why.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/hung.hpp"
#include "tests/support/said.hpp"
#include "tests/support/worn.hpp"

#include <string>
#include <vector>

#include "engine/views/due_row.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/sentence.hpp"
#include "engine/views/wear_view.hpp"

using namespace twoclocks;
using facts::WearSense;
using support::add_item;
using support::day;
using support::hand_state;
using support::hand_today;
using support::said;
using support::Worn;
using views::State;
using Lines = std::vector<std::string>;

namespace {

/// Two measurements, the first 100 days ago, against at most 4 mm; below zero is none.
struct WearRow {
    const char* name;
    std::optional<base::FlightTime> hours_left;  // of the interval
    std::int32_t first;
    std::int32_t last;
    const char* unit;
    State state;
    const char* wear;
    const char* likely;
};

timeline::AircraftState worn_state(const WearRow& row) {
    timeline::AircraftState state = hand_state();
    timeline::ItemState& item =
        add_item(state, facts::ItemRole::component, row.hours_left, std::nullopt);
    if (!row.hours_left) item.limit.reset();
    timeline::WearState wear;
    std::uint64_t number = 500;
    for (const auto& [days_ago, value] : {std::pair{100, row.first}, std::pair{0, row.last}}) {
        if (value < 0) continue;
        wear.points.push_back({base::add_days(hand_today, -days_ago),
                               value,
                               row.unit,
                               std::nullopt,
                               support::id_of(number++),
                               timeline::Standing::settled});
    }
    if (!wear.points.empty()) wear.last = {wear.points.back()};
    wear.bounds = {{hand_today,
                    {4'000, "mm", WearSense::at_most, "Manual", {}},
                    support::id_of(400),
                    timeline::Standing::settled}};
    item.wear = wear;
    return state;
}

constexpr base::FlightTime far_off{500 * 3600};
constexpr base::FlightTime near_by{20 * 3600};

const WearRow wear_rows[] = {
    {"sound, no trend",
     {},
     -1,
     3'000,
     "mm",
     State::nothing_due,
     "3 mm, at most 4 mm",
     "no trend from one measurement"},
    {"at the limit",
     {},
     -1,
     4'000,
     "mm",
     State::nothing_due,
     "4 mm, at most 4 mm",
     "no trend from one measurement"},
    {"past it", {}, -1, 4'001, "mm", State::over, "4.001 mm, at most 4 mm", "1 Jul 2024"},
    {"past it, with an interval that is far",
     far_off,
     -1,
     4'001,
     "mm",
     State::over,
     "4.001 mm, at most 4 mm",
     "1 Jul 2024"},
    {"not measured", {}, -1, -1, "mm", State::unknown, "not measured yet", "unknown"},
    {"not measured, with an interval",
     far_off,
     -1,
     -1,
     "mm",
     State::unknown,
     "not measured yet",
     "about 13 Nov 2025"},
    {"not measured, with an interval that is due",
     near_by,
     -1,
     -1,
     "mm",
     State::due,
     "not measured yet",
     "about 21 Jul 2024"},
    {"another unit", {}, -1, 3'000, "in", State::unknown, "3 in, limit in mm: unknown", "unknown"},
    {"not getting worse",
     {},
     3'000,
     3'000,
     "mm",
     State::nothing_due,
     "3 mm, at most 4 mm",
     "no trend: not getting worse"},
    {"a trend of 31 days",
     {},
     0,
     3'053,
     "mm",
     State::nothing_due,
     "3.053 mm, at most 4 mm",
     "1 Aug 2024 by trend"},
    {"a trend of 30 days warns",
     {},
     0,
     3'070,
     "mm",
     State::act,
     "3.07 mm, at most 4 mm",
     "31 Jul 2024 by trend"},
    {"a trend before the interval",
     far_off,
     2'000,
     3'000,
     "mm",
     State::nothing_due,
     "3 mm, at most 4 mm",
     "9 Oct 2024 by trend"},
    {"a trend after the interval extends nothing",
     near_by,
     2'000,
     3'000,
     "mm",
     State::due,
     "3 mm, at most 4 mm",
     "about 21 Jul 2024"},
};

const views::DueRow& row_with(const views::AircraftView& view, base::Id item) {
    for (const views::DueRow& row : view.due) {
        if (row.item == item) return row;
    }
    FAIL("the item is not there");
    return view.due.front();
}

}  // namespace

TEST_CASE("what wear makes of a row, on both sides of every boundary", "[views][wear]") {
    for (const WearRow& row : wear_rows) {
        CAPTURE(row.name);
        const views::Assessed assessed = views::assess(worn_state(row), hand_today);
        CHECK(assessed.item_states.front() == row.state);
        const views::DueRow shown = views::make_row(assessed, 0);
        REQUIRE(shown.wear.has_value());
        CHECK(said(shown.wear->text) == row.wear);
        CHECK(said(shown.likely.text) == row.likely);
    }
}

TEST_CASE("an item without a wear limit says so and keeps its state", "[views][wear]") {
    timeline::AircraftState state = worn_state(wear_rows[0]);
    state.items.front().wear->bounds.clear();
    const views::Assessed assessed = views::assess(state, hand_today);
    CHECK(assessed.item_states.front() == State::unknown);  // nothing is known of its limits
    const views::DueRow shown = views::make_row(assessed, 0);
    CHECK(said(shown.wear->text) == "3 mm, no limit recorded");
    CHECK(said(shown.wear->why).front() == "No wear limit is recorded.");
}

TEST_CASE("worn past its limit is said in the sentences", "[views][wear]") {
    timeline::AircraftState state = worn_state(wear_rows[2]);
    add_item(state, facts::ItemRole::overhaul, base::hours(900), 900);
    const views::Assessed assessed = views::assess(state, hand_today);
    CHECK(assessed.overall == State::over);
    CHECK(said(views::card_sentence(assessed)) == "Item 0 worn past its limit");
    CHECK(said(views::answer_sentence(assessed)) == "Over: Item 0 is worn past its limit.");
}

TEST_CASE("another unit is cautioned of", "[views][wear]") {
    const views::Assessed assessed = views::assess(worn_state(wear_rows[7]), hand_today);
    const Lines cautions = [&] {
        Lines out;
        for (const base::Message& caution : views::wear_cautions(assessed))
            out.push_back(said(caution));
        return out;
    }();
    CHECK(cautions ==
          Lines{"Item 0: measured in in, the limit is in mm. What is left is unknown."});
}

TEST_CASE("the why of wear lists every measurement, the limit, its source and the trend",
          "[views][wear]") {
    Worn worn;
    const facts::Fact limit = worn.limited(4'000);
    const facts::Fact first = worn.measured("2024-03-01", 2'000, "mm", 11'000);
    worn.measured("2024-05-01", 2'500);
    const facts::Fact last = worn.measured("2024-06-01", 3'000, "mm", 11'600);
    const auto state = timeline::replay(worn.journal, worn.id(), worn.today);
    const views::AircraftView view = views::make_aircraft_view(views::assess(state, worn.today));
    const views::DueRow& row = row_with(view, worn.check.id);
    const views::Why& why = row.wear->why;
    CHECK(said(why) ==
          Lines{"Wear limit: at most 4 mm.",
                "Source: Manual, revision not given.",
                "1 Mar 2024: 2 mm at 1,100.0 h total.",
                "1 May 2024: 2.5 mm, total time not given.",
                "1 Jun 2024: 3 mm at 1,160.0 h total.",
                "The last measurement counts: 3 mm.",
                "From 2 mm to 3 mm in 60.0 h of flying. At this pace the limit comes after 60.0 h "
                "more.",
                "The steeper of the last two measurements and of all from first to last is taken.",
                "At the likely rate of flying that is about 28 Jul 2024.",
                "A trend, not a limit. It extends no interval; the earlier day is shown.",
                "A planning aid. Limits come from the approved maintenance data; a licensed person "
                "decides."});
    CHECK(why.lines[0].fact == limit.id);
    CHECK(why.lines[2].fact == first.id);
    CHECK(why.lines[4].fact == last.id);
    CHECK(said(why.title) == "Why Check is worn as it is");
    const std::vector<views::Why> whys = views::whys_of(view);
    CHECK(whys.size() == 7 + 3 + 4);  // the page; overhaul; check with its wear
}

TEST_CASE("a part worn past its limit stops the aircraft it is on", "[views][wear]") {
    support::Hung s;
    const facts::Fact item = s.item(s.gearbox, facts::ItemRole::component, support::limit(1000, 0));
    const std::vector<base::Id> about{s.gearbox.id, item.id};
    s.keep(s.ann.write(
        day("2024-02-01"), about, facts::WearLimit{4'000, "mm", WearSense::at_most, {}, {}}));
    s.keep(s.ann.write(day("2024-05-01"), about, facts::Wear{4'001, "mm", {}, {}, {}}));
    const auto state = [&](base::Id aircraft) {
        return views::assess(timeline::replay(s.journal, aircraft, s.today),
                             s.today,
                             timeline::parts_of(s.journal, aircraft, s.today))
            .overall;
    };
    CHECK(state(s.first) == State::unknown);  // no limits of its own, and the part on the shelf
    s.fit(s.gearbox, s.first, "2024-05-02", 11'500);
    CHECK(state(s.first) == State::over);
    CHECK(state(s.second) == State::unknown);
}
