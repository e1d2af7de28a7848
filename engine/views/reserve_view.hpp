// The page "Reserve": what should be set aside by now, what is, and how to close the gap.
#pragma once

#include "engine/views/plan_lived.hpp"
#include "engine/views/sums.hpp"

namespace twoclocks::views {

/// The page; the sum to be reached is recorded, or that of the estimate.
/// Units: minor units. Errors: figures that are not known say so. Source: our choice.
[[nodiscard]] SumsView make_reserve_view(const Assessed& aircraft, const Living& living);

}  // namespace twoclocks::views
