// Which state an item and an aircraft are in, a row either side of every boundary.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/assess.hpp"
#include "engine/views/make_views.hpp"

using namespace twoclocks;
using base::FlightTime;
using base::hours;
using facts::ItemRole;
using facts::LimitClass;
using support::add_item;
using support::hand_state;
using support::hand_today;
using support::stood_still;
using timeline::AircraftState;
using views::Assessed;
using views::State;

namespace {

using Left = std::optional<FlightTime>;
using Days = std::optional<std::int32_t>;

struct StateRow {
    const char* name;
    ItemRole role;
    LimitClass limit_class;
    Left left;
    Days days;
    const char* state;
};

std::string word(State state) {
    return base::say(views::state_word(state), {});
}

std::string state_in(const StateRow& row, bool flown_since) {
    AircraftState state = hand_state();
    add_item(state, row.role, row.left, row.days).limit->limit_class = row.limit_class;
    // Nothing flown for a year, or two hours in the last two days.
    const std::int32_t days_ago = flown_since ? 2 : 365;
    const FlightTime then = flown_since ? base::hours(998) : base::hours(1000);
    state.usage.insert(state.usage.begin(), {base::add_days(hand_today, -days_ago), then, {}});
    const Assessed assessed = views::assess(state, hand_today);
    return word(assessed.item_states.front());
}

constexpr FlightTime one_second{1};

}  // namespace

TEST_CASE("an item's state, on both sides of every boundary", "[views][state]") {
    const FlightTime due_ends = support::early_hours(stood_still(), 31);
    const FlightTime lead_begins = support::early_hours(stood_still(), 177);
    constexpr auto inspection = ItemRole::inspection;
    constexpr auto programme = LimitClass::programme;
    constexpr auto recommended = LimitClass::recommended;
    const StateRow rows[] = {
        {"flown past by a second", inspection, programme, FlightTime{-1}, {}, "over"},
        {"flown to the limit", inspection, programme, FlightTime{0}, {}, "due"},
        {"a second before it", inspection, programme, one_second, {}, "due"},
        {"the last due day by hours", inspection, programme, due_ends - one_second, {}, "due"},
        {"31 days by hours", inspection, programme, due_ends, {}, "nothing due"},
        {"its last day", inspection, programme, {}, 0, "due"},
        {"30 days", inspection, programme, {}, 30, "due"},
        {"31 days", inspection, programme, {}, 31, "nothing due"},
        {"hours far, calendar near", inspection, programme, hours(400), 30, "due"},
        {"hours near, calendar far", inspection, programme, hours(30), 400, "due"},
        {"directive past", inspection, LimitClass::directive, FlightTime{-1}, {}, "over"},
        {"overhaul, lead time not begun", ItemRole::overhaul, programme, {}, 177, "nothing due"},
        {"overhaul, lead time begun", ItemRole::overhaul, programme, {}, 176, "act"},
        {"overhaul, lead time by hours",
         ItemRole::overhaul,
         programme,
         lead_begins - one_second,
         {},
         "act"},
        {"overhaul, not yet by hours",
         ItemRole::overhaul,
         programme,
         lead_begins,
         {},
         "nothing due"},
        {"overhaul, 31 days", ItemRole::overhaul, programme, {}, 31, "act"},
        {"overhaul, 30 days", ItemRole::overhaul, programme, {}, 30, "due"},
        {"component, half a year", ItemRole::component, programme, {}, 182, "nothing due"},
        {"recommended and past by hours", inspection, recommended, FlightTime{-1}, {}, "act"},
        {"recommended and past by date", inspection, recommended, {}, -1, "act"},
        {"recommended, 30 days", inspection, recommended, {}, 30, "act"},
        {"recommended, 31 days", inspection, recommended, {}, 31, "nothing due"},
        {"no limit", inspection, programme, {}, {}, "unknown"},
    };
    for (const StateRow& row : rows) {
        CAPTURE(row.name);
        CHECK(state_in(row, false) == row.state);
    }
}

TEST_CASE("a date that passed is over only when it was flown past", "[views][state]") {
    const auto row = [](std::int32_t days_left) {
        return StateRow{"", ItemRole::inspection, LimitClass::programme, {}, days_left, ""};
    };
    CHECK(state_in(row(0), false) == "due");
    CHECK(state_in(row(0), true) == "due");
    CHECK(state_in(row(-1), false) == "before next flight");
    CHECK(state_in(row(-1), true) == "over");
    CHECK(state_in(row(-2), true) == "over");
    CHECK(state_in(row(-400), false) == "over");
}

TEST_CASE("counts have a state of their own", "[views][state]") {
    struct Count {
        const char* name;
        std::optional<base::Count> now;
        const char* state;
    };

    for (const Count& row : {Count{"one left", base::Count{999}, "nothing due"},
                             Count{"none left", base::Count{1000}, "due"},
                             Count{"one past", base::Count{1001}, "over"},
                             Count{"not known", std::nullopt, "unknown"}}) {
        CAPTURE(row.name);
        for (const bool landings : {true, false}) {
            AircraftState state = hand_state();
            timeline::ItemState& item = add_item(state, ItemRole::component, {}, {});
            (landings ? item.limit->landings : item.limit->starts) = base::Count{1000};
            (landings ? state.landings : state.starts) = row.now;
            CHECK(word(views::assess(state, hand_today).item_states.front()) == row.state);
        }
    }
}

TEST_CASE("an aircraft is what its most urgent item is", "[views][state]") {
    AircraftState state = stood_still();
    add_item(state, ItemRole::overhaul, base::hours(400), 400);
    CHECK(word(views::assess(state, hand_today).overall) == "nothing due");
    add_item(state, ItemRole::inspection, {}, 31).limit->limit_class = LimitClass::recommended;
    CHECK(word(views::assess(state, hand_today).overall) == "nothing due");
    add_item(state, ItemRole::inspection, {}, -1).limit->limit_class = LimitClass::recommended;
    CHECK(word(views::assess(state, hand_today).overall) == "act");
    add_item(state, ItemRole::component, {}, {});
    CHECK(word(views::assess(state, hand_today).overall) == "unknown");
    add_item(state, ItemRole::inspection, {}, 1);
    CHECK(word(views::assess(state, hand_today).overall) == "due");
    add_item(state, ItemRole::inspection, {}, -1);
    CHECK(word(views::assess(state, hand_today).overall) == "before next flight");
    add_item(state, ItemRole::inspection, FlightTime{-1}, {});
    CHECK(word(views::assess(state, hand_today).overall) == "over");
}

TEST_CASE("what is missing is unknown and hides nothing that is worse", "[views][state]") {
    AircraftState whole = hand_state();
    add_item(whole, ItemRole::overhaul, base::hours(400), 400);
    REQUIRE(word(views::assess(whole, hand_today).overall) == "nothing due");

    AircraftState no_overhaul = hand_state();
    add_item(no_overhaul, ItemRole::inspection, {}, 400);
    AircraftState no_reading = whole;
    no_reading.usage.clear();
    AircraftState newer = whole;
    newer.unknown_records = 1;
    AircraftState disputed = whole;
    disputed.questions.push_back({timeline::QuestionKind::versions, {}, {}, {}, true});
    AircraftState safe = whole;
    safe.questions.push_back({timeline::QuestionKind::versions, {}, {}, {}, false});
    AircraftState newer_and_over = newer;
    add_item(newer_and_over, ItemRole::inspection, FlightTime{-1}, {});

    CHECK(word(views::assess(no_overhaul, hand_today).overall) == "unknown");
    CHECK(word(views::assess(no_reading, hand_today).overall) == "unknown");
    CHECK(word(views::assess(newer, hand_today).overall) == "unknown");
    CHECK(word(views::assess(disputed, hand_today).overall) == "unknown");
    CHECK(word(views::assess(safe, hand_today).overall) == "nothing due");
    CHECK(word(views::assess(newer_and_over, hand_today).overall) == "over");
}

TEST_CASE("the fleet stands by urgency, then day, then registration", "[views][fleet]") {
    std::vector<Assessed> fleet;
    const auto add = [&](const char* registration, Left left, Days days) {
        AircraftState state = stood_still();
        state.registration = registration;
        if (left || days) add_item(state, ItemRole::overhaul, left, days);
        fleet.push_back(views::assess(state, hand_today));
    };
    add("F", base::hours(400), {});
    add("E", base::hours(300), {});
    add("B", base::hours(300), {});
    add("U", {}, {});
    add("A", {}, 100);
    add("D", {}, 3);
    add("P", {}, -1);
    add("O", FlightTime{-1}, {});
    std::string order;
    for (const views::AircraftCard& card : views::make_fleet_view(fleet).cards) {
        order += card.registration;
    }
    CHECK(order == "OPDUABEF");
}
