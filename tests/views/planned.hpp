// The page of the plan of an aircraft made by hand.
#pragma once

#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/said.hpp"

#include <string>
#include <vector>

#include "engine/views/plan_view.hpp"

namespace twoclocks::support {

inline views::PlanView planned(const timeline::AircraftState& state) {
    return views::make_plan_view(views::assess(state, hand_today));
}

/// Nothing flown for a year, so that the calendar alone ends it: in so many days.
inline timeline::AircraftState ends_in(std::int32_t days) {
    timeline::AircraftState state = hand_state();
    add_item(state, facts::ItemRole::overhaul, {}, days);
    return state;
}

inline void promise(timeline::AircraftState& state, const char* task, const char* until) {
    state.campaign.steps.push_back({task, hand_today, day(until), {}, {}});
}

inline bool any_line(const std::vector<base::Message>& lines, const std::string& text) {
    for (const base::Message& line : lines)
        if (said(line) == text) return true;
    return false;
}

inline std::string moved(const views::PlanView& view, const std::string& name) {
    for (const views::SlipRow& row : view.slip)
        if (said(row.name) == name) return said(row.moved);
    return {};
}

}  // namespace twoclocks::support
