// The sizes of text that a person can choose.
#pragma once

#include <array>
#include <cstdint>

namespace twoclocks::canvas {

/// Text sizes a person can choose, per cent of the usual, smallest first.
inline constexpr std::array<std::int32_t, 6> text_sizes{100, 115, 130, 150, 175, 200};

/// The size before or after one of them, or the same at the end.
[[nodiscard]] std::int32_t text_size_beside(std::int32_t percent, std::int32_t step);
/// The one of them nearest to a size.
[[nodiscard]] std::int32_t text_size_near(double percent);

}  // namespace twoclocks::canvas
