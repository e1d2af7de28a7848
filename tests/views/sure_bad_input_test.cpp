// What people may have recorded of flying that says little, or cannot be: a plain answer each.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/make_views.hpp"
#include "engine/views/sure_view.hpp"

using namespace twoclocks;
using facts::ItemRole;
using support::add_item;
using support::hand_today;
using timeline::AircraftState;

namespace {

/// Readings so many days before today, in whole hours.
struct ReadPoint {
    std::int32_t days_ago;
    std::int64_t hours;
};

struct ReadingsRow {
    const char* name;
    std::vector<ReadPoint> points;
    std::int64_t plan;  // hours a month; below 0 is none
    const char* answer;
    const char* range;
    const char* why;  // a line of the rate
};

AircraftState state_read(const ReadingsRow& row) {
    AircraftState state;
    state.id = support::id_of(1);
    state.registration = "ISLE-1";
    for (const ReadPoint& point : row.points) {
        state.usage.push_back(
            {base::add_days(hand_today, -point.days_ago), base::hours(point.hours), {}});
    }
    state.certain = state.usage;
    if (row.plan >= 0) {
        state.plan.emplace();
        state.plan->month = base::hours(row.plan);
        state.plan->on = hand_today;
    }
    // 500 h from a total of 700 on: its hours end at 1,200; its calendar in 3,000 days.
    add_item(state, ItemRole::overhaul, base::hours(200), 3000);
    return state;
}

std::string whole(const views::Why& why) {
    std::string out;
    for (const views::WhyLine& line : why.lines)
        out += base::say(line.text, {}) + '\n';
    return out;
}

}  // namespace

TEST_CASE("what says little of flying gets a plain answer", "[views][sure][bad]") {
    for (const ReadingsRow& row : {
             ReadingsRow{"one reading",
                         {{0, 1000}},
                         -1,
                         "Unknown: readings cover less than 28 days, and no flying is planned.",
                         "No range yet.",
                         "Readings cover less than 28 days, so they say nothing of a rate."},
             ReadingsRow{"all zero",
                         {{900, 1000}, {500, 1000}, {100, 1000}, {0, 1000}},
                         -1,
                         "The calendar stops it first, on 17 Sep 2032.",
                         "No range: the calendar day is fixed.",
                         "The last twelve whole months took 0.0 h."},
             ReadingsRow{"a gap of two years",
                         {{900, 880}, {800, 900}, {70, 980}, {0, 1000}},
                         -1,
                         "Hours stop it first, about",
                         "in eight of ten ways it may be flown.",
                         "nothing was read: those hours are spread evenly."},
             ReadingsRow{"500 h in a day",
                         {{400, 400}, {200, 450}, {1, 500}, {0, 1000}},
                         -1,
                         "Hours stop it first, about",
                         "in eight of ten ways it may be flown.",
                         "One year says little of a season"},
             ReadingsRow{"a plan that never gets there",
                         {{0, 1000}},
                         0,
                         "The calendar stops it first, on 17 Sep 2032.",
                         "No range: the calendar day is fixed.",
                         "The plan of 0.0 h a month is what is expected."},
             ReadingsRow{"three readings",
                         {{90, 950}, {40, 980}, {0, 1000}},
                         -1,
                         "Hours stop it first, about",
                         "in eight of ten ways it may be flown.",
                         "It rests on 3 readings only."},
         }) {
        CAPTURE(row.name);
        const views::SureView view =
            views::make_sure_view(views::assess(state_read(row), hand_today), {});
        const std::string answer = base::say(view.answer.text, {});
        const std::string range = base::say(view.range.text, {});
        const std::string why = whole(view.rate.why);
        CAPTURE(answer, range, why);
        CHECK(answer.find(row.answer) != std::string::npos);
        CHECK(range.find(row.range) != std::string::npos);
        CHECK(why.find(row.why) != std::string::npos);
    }
}

TEST_CASE("hours alone that are never flown never end", "[views][sure][bad]") {
    AircraftState state = state_read({"", {{0, 1000}}, 0, "", "", ""});
    state.items.clear();
    add_item(state, ItemRole::overhaul, base::hours(200), {});
    const views::SureView view = views::make_sure_view(views::assess(state, hand_today), {});
    REQUIRE(view.rows.size() == 1);
    CHECK(base::say(view.rows[0].likely, {}) == "not at this rate");
    CHECK(view.rows[0].range.word == base::Word::blank);
}
