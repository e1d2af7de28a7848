// An amount times one whole number over another, exactly, with one rounding at the end.
#pragma once

#include <optional>

#include "engine/base/money.hpp"

namespace twoclocks::base {

/// An amount times `times` over `over`, cut once as `round` says: half_up takes the greater when it
/// lies in the middle. Nothing where the result would be beyond most_minor_units either side.
/// Units: minor units. Range: `times` from 0, `over` from 1. Errors: none. Source: our choice.
[[nodiscard]] std::optional<Money> scaled(Money amount,
                                          std::int64_t times,
                                          std::int64_t over,
                                          MoneyRound round);

/// The sum of two amounts of one currency. Nothing where it would be beyond most_minor_units.
/// Units: minor units. Errors: none. Source: our choice.
[[nodiscard]] std::optional<Money> plus(Money left, Money right);

/// Ten to the power of `exponent`.
/// Units: none. Range: 0 to 18. Errors: none. Source: none needed.
[[nodiscard]] std::int64_t power_of_ten(std::int32_t exponent);

}  // namespace twoclocks::base
