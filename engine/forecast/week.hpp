// Which days of the week a busy aircraft flies on.
#pragma once

#include <array>
#include <optional>

#include "engine/timeline/state.hpp"

namespace twoclocks::forecast {

/// What a day of the week flies, as a share of the mean day; Monday first.
using Week = std::array<double, 7>;

inline constexpr std::int32_t week_looks_back_days = 120;
inline constexpr std::int32_t week_counts_days = 92;  // ahead: later it hardly moves a date
inline constexpr std::int32_t fewest_week_days = 60;  // of which the hours are known by the day
inline constexpr std::int32_t fewest_of_a_weekday = 5;

/// Monday is 0, Sunday 6.
/// Units: none. Errors: none. Source: ISO 8601-1:2019 (Monday begins the week).
[[nodiscard]] std::int32_t weekday_of(base::Date on);

/// The week of an aircraft that is read on most days: of the last 120 days before its last reading
/// at least 60 have their own hours, every day of the week five times.
/// Units: shares, mean 1. Errors: nothing for others, or when nothing was flown.
/// Source: our choice.
[[nodiscard]] std::optional<Week> flying_week(const timeline::UsageSeries& usage,
                                              const std::vector<timeline::Spell>& spells);

}  // namespace twoclocks::forecast
