// Of many values, the one that a share of them does not exceed.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/plan/campaign.hpp"

namespace twoclocks::plan {

/// Moments and lengths: days and parts of a day, for which 24 bits are plenty.
using Values = std::vector<float>;

/// A share of the values is no greater than this one: the lower of two, or the higher.
/// Units: those of the values. Range: share 0 to 1, one value or more; their order changes.
/// Errors: none. Source: order statistics.
[[nodiscard]] double at_share(Values& values, double share, bool higher);

/// The whole day by which so many of a hundred are over.
/// Units: days. Range: one value or more, 1 to 99. Errors: none. Source: as above, rounded up.
[[nodiscard]] std::int32_t day_at_share(Values values, std::int32_t percent);

/// The whole day at or before a moment, and at or after it; a hair of a day is none.
/// Units: days. Errors: none. Source: our choice, two passes over the same days differ by less.
[[nodiscard]] std::int32_t day_down(double moment);
[[nodiscard]] std::int32_t day_up(double moment);

/// The last day of what is over at a moment.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] std::int32_t last_day_of(double moment);

/// The range of ends, as their last days, and of starts.
/// Units: days. Range: one value or more. Errors: none. Source: our choice, a tenth on each side.
[[nodiscard]] DayRange range_of_ends(Values& values);
[[nodiscard]] DayRange range_of_starts(Values& values);

/// Some of all, rounded up.
/// Units: thousandths. Range: all above 0. Errors: none. Source: our choice.
[[nodiscard]] std::int32_t share_permille(std::int64_t some, std::int64_t all);

}  // namespace twoclocks::plan
