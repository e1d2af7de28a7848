// What records that are still in dispute promise, beside the same records after an answer.
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "engine/forecast/flying_ahead.hpp"
#include "engine/limits/due.hpp"

namespace twoclocks::support {

[[nodiscard]] inline const limits::ItemDue* find_item(const std::vector<limits::ItemDue>& items,
                                                      base::Id id) {
    const auto found = std::find_if(
        items.begin(), items.end(), [&](const limits::ItemDue& item) { return item.item == id; });
    return found == items.end() ? nullptr : &*found;
}

/// True when `open` promises no more than `settled`; an unknown clock promises nothing.
[[nodiscard]] inline bool promises_no_more(const limits::ClockDue& open,
                                           const limits::ClockDue& settled) {
    if (!open.known || !settled.known) return true;
    return open.left <= settled.left && open.days_left <= settled.days_left &&
           open.left_count <= settled.left_count;
}

/// No day at all is later than every day.
[[nodiscard]] inline bool not_later(const std::optional<base::Date>& left,
                                    const std::optional<base::Date>& right) {
    return !right || (left && *left <= *right);
}

/// 0.2, 0.5 and 1 h a day: always the same, so that only hours and days move the dates.
[[nodiscard]] inline forecast::FlyingAhead fixed_rate(const timeline::AircraftState& state) {
    return forecast::even_ahead(state, 720, 1800, 3600);
}

}  // namespace twoclocks::support
