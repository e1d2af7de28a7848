// Money in hand over time, as a picture.
#pragma once

#include <array>
#include <optional>

#include "engine/budget/cash.hpp"
#include "engine/views/sums.hpp"

namespace twoclocks::views {

/// The three paces in one picture; nothing where no money moves.
/// Units: thousandths of the picture. Errors: none. Source: our choice.
[[nodiscard]] std::optional<SumsCurve> cash_curve(const std::array<budget::CashCourse, 3>& courses,
                                                  std::int64_t in_hand,
                                                  base::Date today,
                                                  base::Currency home);

}  // namespace twoclocks::views
