// Hours by month: two years as flown, one as expected.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Units: thousandths of the greatest month. Range: 36 months at most.
/// Errors: nothing when no month is known.
/// Source: our choice.
[[nodiscard]] std::optional<ChartView> months_chart(const Assessed& aircraft);

}  // namespace twoclocks::views
