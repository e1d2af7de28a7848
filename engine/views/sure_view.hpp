// How sure the date is: every limit with its days, the months they rest on, a look back, the plan
// against what was flown, and what another rate would change. Nothing that is tried is recorded.
#pragma once

#include "engine/views/assess.hpp"
#include "engine/views/sure.hpp"

namespace twoclocks::views {

/// One aircraft, as recorded or with so many hours a month tried instead of its plan and rate.
/// Units: hours a month. Range: `month` 0 to 744. Errors: figures that are not known say so.
/// Source: our choice.
[[nodiscard]] SureView make_sure_view(const Assessed& aircraft,
                                      std::optional<base::FlightTime> month);

/// Hours a month of a straight line from today's point of the life box through another point, to
/// half an hour.
/// Units: hours a month. Range: 0 to 744. Errors: nothing without a box, or for a point that is not
/// after today. Source: our choice.
[[nodiscard]] std::optional<base::FlightTime> month_through(const Assessed& aircraft,
                                                            BoxPoint point);

/// Every "why?" of the page: answer, range, rate.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Why> whys_of(const SureView& view);

}  // namespace twoclocks::views
