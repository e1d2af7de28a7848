// Shares are told in thousandths.
#pragma once

#include <cstdint>

namespace twoclocks::base {

/// A whole, in thousandths.
inline constexpr std::int32_t whole_permille = 1'000;

}  // namespace twoclocks::base
