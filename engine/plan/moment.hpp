// Moments of the plan and the days they lie in.
#pragma once

#include <cstdint>

namespace twoclocks::plan {

/// The whole day at or before a moment: the day in which something begins then.
/// Units: days of the plan. Range: within 32 bits. Errors: none. Source: floor.
[[nodiscard]] constexpr std::int32_t day_at(double moment) {
    const auto cut = static_cast<std::int32_t>(moment);
    return static_cast<double>(cut) > moment ? cut - 1 : cut;
}

/// The whole day at or after a moment.
/// Units: days of the plan. Range: within 32 bits. Errors: none. Source: ceiling.
[[nodiscard]] constexpr std::int32_t day_from(double moment) {
    return -day_at(-moment);
}

}  // namespace twoclocks::plan
