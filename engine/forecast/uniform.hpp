// Even chance from a fixed generator, the same on every build.
#pragma once

#include <random>

namespace twoclocks::forecast {

/// A number between 0 and 1, neither of them.
/// Units: none. Errors: none. Source: 53 bits, as many as a double holds.
[[nodiscard]] inline double uniform(std::mt19937_64& random) {
    constexpr double step = 1.0 / 9'007'199'254'740'992.0;  // 2 to the 53
    return (static_cast<double>(random() >> 11U) + 0.5) * step;
}

}  // namespace twoclocks::forecast
