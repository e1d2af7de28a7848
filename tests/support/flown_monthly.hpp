// An aircraft that is read on the first of each month.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::support {

/// Read on the first of each month for three years to 1 January 2024: ten hours a month, and what
/// is given for the last twelve.
[[nodiscard]] inline timeline::AircraftState flown_monthly(std::int64_t last_year = 10) {
    timeline::AircraftState state;
    std::int64_t total = 100;
    for (std::int32_t month = 0; month <= 36; ++month) {
        const auto on = base::from_civil({2021 + month / 12, month % 12 + 1, 1});
        state.usage.push_back({on.value(), base::hours(total), {}});
        total += month < 24 ? 10 : last_year;
    }
    state.certain = state.usage;
    return state;
}

}  // namespace twoclocks::support
