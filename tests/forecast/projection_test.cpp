#include "engine/forecast/projection.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"

#include <string>
#include <vector>

using namespace twoclocks;
using base::Date;
using base::FlightTime;
using facts::Clock;
using facts::ItemRole;
using forecast::Projection;
using support::add_item;
using support::day;
using support::hand_state;
using support::hand_today;
using timeline::AircraftState;

namespace {

std::string shown(const std::optional<Date>& date) {
    return date ? base::print_date(*date) : std::string{"never"};
}

std::string shown(const Projection& one) {
    if (!one.known) return "unknown";
    return shown(one.early) + ' ' + shown(one.likely) + ' ' + shown(one.late);
}

/// Half an hour, one and two hours a day.
struct Rates {
    double least{1800};
    double likely{3600};
    double greatest{7200};
};

forecast::FlyingAhead ahead_of(const AircraftState& state, const Rates& rates) {
    return forecast::even_ahead(state, rates.least, rates.likely, rates.greatest);
}

Projection projected(const AircraftState& state, const Rates& rates = {}) {
    const auto items = limits::due_items(state, hand_today);
    return forecast::project(items.back(), state, ahead_of(state, rates), hand_today);
}

Projection without_rate(const AircraftState& state) {
    return forecast::project(limits::due_items(state, hand_today).back(), state, {}, hand_today);
}

timeline::Spell spell(const char* from, const char* until) {
    timeline::Spell out;
    out.from = day(from);
    if (until != nullptr) out.until = day(until);
    return out;
}

}  // namespace

TEST_CASE("hours are met at their rates, a part of a day is the day before", "[forecast][hours]") {
    struct Row {
        FlightTime left;
        const char* days;
    };

    for (const Row& row : {Row{base::hours(20), "2024-07-11 2024-07-21 2024-08-10"},
                           Row{base::hours(21) - FlightTime{1}, "2024-07-11 2024-07-21 2024-08-11"},
                           Row{base::hours(1), "2024-07-01 2024-07-02 2024-07-03"},
                           Row{{0}, "2024-07-01 2024-07-01 2024-07-01"},
                           Row{{-1}, "2024-07-01 2024-07-01 2024-07-01"}}) {
        CAPTURE(row.left.seconds);
        AircraftState state = hand_state();
        add_item(state, ItemRole::inspection, row.left, {});
        CHECK(shown(projected(state)) == row.days);
    }
}

TEST_CASE("the line starts at the last reading and never ends before today", "[forecast][hours]") {
    AircraftState state = hand_state();
    add_item(state, ItemRole::inspection, base::hours(20), {});
    state.usage.back().on = state.certain.back().on = day("2024-06-21");
    CHECK(shown(projected(state)) == "2024-07-01 2024-07-11 2024-07-31");
    state.usage.back().on = state.certain.back().on = day("2024-05-01");
    CHECK(shown(projected(state)) == "2024-07-01 2024-07-01 2024-07-01");
}

TEST_CASE("while readings disagree the line starts where it ends first", "[forecast][hours]") {
    AircraftState state = hand_state();
    add_item(state, ItemRole::inspection, base::hours(20), {});
    // 30 days ago 995 h were certain; today's 1,000 h are disputed: from there 25 h would be left.
    state.usage.insert(state.usage.begin(), {day("2024-06-21"), base::hours(995), {}});
    state.certain = {state.usage.front()};
    CHECK(shown(projected(state)) == "2024-07-03 2024-07-16 2024-08-10");
}

TEST_CASE("no rate, no date; and a rate of nothing never ends", "[forecast][hours]") {
    AircraftState state = hand_state();
    add_item(state, ItemRole::inspection, base::hours(20), {});
    CHECK(shown(without_rate(state)) == "unknown");
    const Rates still{0, 0, 7200};
    CHECK(shown(projected(state, still)) == "2024-07-11 never never");
    AircraftState passed = hand_state();
    add_item(passed, ItemRole::inspection, FlightTime{-1}, {});
    CHECK(shown(without_rate(passed)) == "2024-07-01 2024-07-01 2024-07-01");
}

TEST_CASE("2199 has a last day and after it is never", "[forecast][hours]") {
    AircraftState state = hand_state();
    state.usage.back().on = state.certain.back().on = day("2024-07-01");
    const std::int32_t days = base::days_between(hand_today, day("2199-12-31"));
    timeline::ItemState& item = add_item(state, ItemRole::inspection, base::hours(0), {});
    item.limit->anchor_total = base::hours(500) + FlightTime{days};
    const Rates slow{1, 1, 1};
    CHECK(shown(projected(state, slow)) == "2199-12-31 2199-12-31 2199-12-31");
    item.limit->anchor_total = base::hours(500) + FlightTime{days + 1};
    CHECK(shown(projected(state, slow)) == "never never never");
}

TEST_CASE("likely and late wait for the end of a spell, early does not", "[forecast][spell]") {
    struct Row {
        const char* name;
        std::vector<timeline::Spell> spells;
        const char* days;
    };

    for (const Row& row : {
             Row{"none", {}, "2024-07-11 2024-07-21 2024-08-10"},
             Row{"ten days",
                 {spell("2024-07-10", "2024-07-20")},
                 "2024-07-11 2024-07-31 2024-08-20"},
             Row{"over before the reading",
                 {spell("2024-06-01", "2024-06-20")},
                 "2024-07-11 2024-07-21 2024-08-10"},
             // Back on the 6th: the four days before it are lost.
             Row{"already running",
                 {spell("2024-06-25", "2024-07-06")},
                 "2024-07-11 2024-07-25 2024-08-14"},
             Row{"begins after likely",
                 {spell("2024-07-22", "2024-08-01")},
                 "2024-07-11 2024-07-21 2024-08-20"},
             Row{"two that overlap",
                 {spell("2024-07-15", "2024-07-20"), spell("2024-07-10", "2024-07-18")},
                 "2024-07-11 2024-07-31 2024-08-20"},
             Row{"one leads into the next",
                 {spell("2024-07-10", "2024-07-20"), spell("2024-07-25", "2024-07-26")},
                 "2024-07-11 2024-08-01 2024-08-21"},
             Row{"ends before it begins",
                 {spell("2024-07-10", "2024-07-05")},
                 "2024-07-11 2024-07-21 2024-08-10"},
             Row{"no end known", {spell("2024-07-10", nullptr)}, "2024-07-11 never never"},
             Row{"no end known, but after likely",
                 {spell("2024-07-22", nullptr)},
                 "2024-07-11 2024-07-21 never"},
         }) {
        CAPTURE(row.name);
        AircraftState state = hand_state();
        add_item(state, ItemRole::inspection, base::hours(20), {});
        state.spells = row.spells;
        CHECK(shown(projected(state)) == row.days);
    }
}

TEST_CASE("an item is met at the sooner of its clocks, each day on its own", "[forecast][item]") {
    struct Row {
        std::int64_t hours_left;
        std::int32_t days_left;
        const char* days;
        Clock binds;
    };

    for (const Row& row : {Row{20, 400, "2024-07-11 2024-07-21 2024-08-10", Clock::hours},
                           Row{20, 25, "2024-07-11 2024-07-21 2024-07-26", Clock::hours},
                           Row{20, 20, "2024-07-11 2024-07-21 2024-07-21", Clock::hours},
                           Row{20, 19, "2024-07-11 2024-07-20 2024-07-20", Clock::calendar},
                           Row{20, 5, "2024-07-06 2024-07-06 2024-07-06", Clock::calendar},
                           Row{20, -5, "2024-06-26 2024-06-26 2024-06-26", Clock::calendar}}) {
        CAPTURE(row.hours_left, row.days_left);
        AircraftState state = hand_state();
        add_item(state, ItemRole::inspection, base::hours(row.hours_left), row.days_left);
        const Projection one = projected(state);
        CHECK(shown(one) == row.days);
        CHECK(one.binds == row.binds);
    }
}

TEST_CASE("one unknown clock hides the day, unless another has passed", "[forecast][item]") {
    AircraftState state = hand_state();
    add_item(state, ItemRole::inspection, base::hours(20), 400).limit->anchor_on = std::nullopt;
    CHECK(shown(projected(state)) == "unknown");
    state.usage.back().total = base::hours(1021);
    CHECK(shown(projected(state)) == "2024-07-01 2024-07-01 2024-07-01");
}

TEST_CASE("the first stop is the soonest that stops", "[forecast][first]") {
    AircraftState state = hand_state();
    const auto first = [&] {
        return forecast::first_stop(
            limits::due_items(state, hand_today), state, ahead_of(state, {}), hand_today);
    };
    CHECK_FALSE(first().has_value());
    add_item(state, ItemRole::overhaul, base::hours(100), {});
    CHECK(first()->item == 0);
    add_item(state, ItemRole::inspection, {}, 50);
    CHECK(first()->item == 1);
    add_item(state, ItemRole::inspection, base::hours(50), {});
    CHECK(first()->item == 1);  // the same day: the first recorded
    add_item(state, ItemRole::inspection, {}, 10).limit->limit_class =
        facts::LimitClass::recommended;
    CHECK(first()->item == 1);
    add_item(state, ItemRole::inspection, FlightTime{-1}, {});
    CHECK(first()->item == 4);
    CHECK(shown(first()->projection.likely) == "2024-07-01");
}

TEST_CASE("break-even is hours left over years left", "[forecast][break_even]") {
    const auto rate = [](std::optional<FlightTime> left, std::optional<std::int32_t> days) {
        AircraftState state = hand_state();
        add_item(state, ItemRole::overhaul, left, days);
        const auto out =
            forecast::break_even(limits::due_items(state, hand_today).front(), hand_today);
        return out ? base::print_tenths(*out, base::Round::down) : std::string{"none"};
    };
    CHECK(rate(base::hours(300), 365) == "300.0");
    CHECK(rate(base::hours(300), 730) == "150.0");
    CHECK(rate(base::hours(300), 730 + 73) == "136.3");  // 300 / 2.2
    CHECK(rate(base::hours(300), 0) == "none");
    CHECK(rate(FlightTime{0}, 365) == "none");
    CHECK(rate({}, 365) == "none");
    CHECK(rate(base::hours(300), {}) == "none");
}
