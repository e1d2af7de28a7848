// Moments of the plan and the days they lie in.
#pragma once

#include <cstdint>

namespace twoclocks::plan {

/// Two passes over the same days differ by less.
inline constexpr double hair = 1e-6;

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

/// The whole number at or after any other, for sums of money.
/// Units: those of the value. Range: within 63 bits. Errors: none. Source: ceiling.
[[nodiscard]] constexpr std::int64_t whole_from(double value) {
    constexpr double most = 9e18;  // beyond it no amount is one
    if (value >= most) return static_cast<std::int64_t>(most);
    if (value <= -most) return -static_cast<std::int64_t>(most);
    const auto cut = static_cast<std::int64_t>(value);
    return static_cast<double>(cut) < value ? cut + 1 : cut;
}

}  // namespace twoclocks::plan
