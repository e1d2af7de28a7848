// How much of one currency one of another is, as people write it.
#pragma once

#include <string_view>

#include "engine/base/problem.hpp"

namespace twoclocks::base {

/// A rate as a decimal: 10845 with 4 decimals is 1.0845.
struct RateFigure {
    std::int64_t digits{0};
    std::int32_t decimals{0};
};

/// Reads a rate: digits with at most one decimal sign among them, above zero.
/// Units: none. Range: nine digits that count, twelve decimals. Errors: rate_malformed.
/// Source: our choice; published rates have six figures that count.
[[nodiscard]] Result<RateFigure> parse_rate(std::string_view text);

}  // namespace twoclocks::base
