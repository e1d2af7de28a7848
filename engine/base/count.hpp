// Things that are counted: landings, engine starts.
#pragma once

#include <compare>
#include <cstdint>

namespace twoclocks::base {

/// A whole number of events. May be negative: a limit that is passed.
struct Count {
    std::int64_t value{0};
    auto operator<=>(const Count&) const = default;

    constexpr Count operator+(Count other) const { return {value + other.value}; }

    constexpr Count operator-(Count other) const { return {value - other.value}; }
};

inline constexpr std::int64_t most_counts = 10'000'000;

}  // namespace twoclocks::base
