// Growth by a rate of so much a year, in both directions.
#pragma once

#include <cstdint>

namespace twoclocks::budget {

/// How much one becomes in so many days; days may be negative.
/// Units: none. Range: permille from 0 to 1,000. Errors: none.
/// Source: (1 + rate) to the power of days over 365, with the fixed series of base/real.
[[nodiscard]] double growth(std::int32_t permille, std::int32_t days);

/// What a sum becomes in so many days.
/// Units: minor units, rounded up. Range: permille from 0 to 1,000. Errors: none.
/// Source: as growth.
[[nodiscard]] std::int64_t grown(std::int64_t sum, std::int32_t permille, std::int32_t days);

/// The rate of a month that makes that of a year.
/// Units: of one. Range: permille from 0 to 1,000. Errors: none.
/// Source: (1 + rate) to the power of one twelfth, less one.
[[nodiscard]] double monthly_rate(std::int32_t permille);

}  // namespace twoclocks::budget
