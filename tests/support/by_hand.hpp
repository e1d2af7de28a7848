// Aircraft states made by hand, where a table needs one figure and nothing else.
#pragma once

#include "tests/support/pen.hpp"

#include <cmath>
#include <optional>
#include <string>

#include "engine/forecast/flying_ahead.hpp"
#include "engine/timeline/state.hpp"

namespace twoclocks::support {

inline constexpr base::Date hand_today{19'905};  // 2024-07-01

/// Flown one hour a day as planned, 1,000.0 h read today.
[[nodiscard]] inline timeline::AircraftState hand_state() {
    timeline::AircraftState out;
    out.id = id_of(1);
    out.registration = "ISLE-1";
    out.usage = out.certain = {{hand_today, base::hours(1000), id_of(2)}};
    // 30.4375 h a month of 12 in 365.25 days.
    out.plan = timeline::StatedPlan{base::FlightTime{109'575}, {}, hand_today, id_of(3)};
    return out;
}

/// The same hours a year ago: nothing was flown since.
[[nodiscard]] inline timeline::AircraftState stood_still() {
    timeline::AircraftState out = hand_state();
    out.usage.insert(out.usage.begin(),
                     {base::add_days(hand_today, -365), out.usage.back().total, {}});
    return out;
}

/// So many whole euro.
[[nodiscard]] inline base::Money euro(std::int64_t whole) {
    return {whole * 100, {}};
}

/// What is flown by so many days ahead on the early line, the part of a second up: so much left is
/// met that day at the earliest, and a second less by a part of a day before it.
[[nodiscard]] inline base::FlightTime early_hours(const timeline::AircraftState& state,
                                                  std::int32_t days) {
    const double seconds = forecast::flown_by(forecast::flying_ahead(state).early, days);
    return base::FlightTime{static_cast<std::int64_t>(std::ceil(seconds))};
}

/// An item whose hours end when so many seconds are flown and whose calendar ends in so many days.
inline timeline::ItemState& add_item(timeline::AircraftState& state,
                                     facts::ItemRole role,
                                     std::optional<base::FlightTime> left,
                                     std::optional<std::int32_t> days_left) {
    timeline::ItemState item;
    item.id = id_of(100 + state.items.size());
    item.name = "Item " + std::to_string(state.items.size());
    item.role = role;
    item.limit_fact = id_of(200 + state.items.size());
    facts::LimitSet limit;
    limit.source = "Manual";
    if (left) {
        limit.hours = base::hours(500);
        limit.anchor_total = base::hours(1000) + *left - *limit.hours;
    }
    if (days_left) {
        // Two years before its end.
        limit.months = 24;
        limit.anchor_on = base::add_months(
            base::add_days(hand_today, *days_left), -24, base::CalendarRule::exact);
    }
    item.limit = limit;
    state.items.push_back(item);
    return state.items.back();
}

}  // namespace twoclocks::support
