// How likely it is that the aircraft is back by a day.
#pragma once

#include <optional>

#include "engine/base/date.hpp"
#include "engine/plan/campaign.hpp"
#include "engine/views/views.hpp"

namespace twoclocks::views {

/// A curve over the days in which it may end: of a hundred ways, how many are over by then.
/// Units: days, thousandths. Errors: none. Source: our choice.
[[nodiscard]] ChartView plan_chart(const plan::Outcome& outcome, base::Date today);

}  // namespace twoclocks::views
