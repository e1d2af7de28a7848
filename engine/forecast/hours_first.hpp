// How often the hours of an item come before its calendar.
#pragma once

#include "engine/forecast/projection.hpp"

namespace twoclocks::forecast {

/// Of a thousand ways in which the hours ahead may go, on so many the item waits for its hours:
/// they end before its calendar, or after it where the later counts. Counts are left out.
/// Units: thousandths. Range: 0 to 1000. Errors: nothing when a clock or the hours ahead are not
/// known, or when there is neither hours nor a calendar.
/// Source: our choice, see flight_paths.hpp.
[[nodiscard]] std::optional<std::int32_t> hours_first_permille(const limits::ItemDue& item,
                                                               const timeline::AircraftState& state,
                                                               const FlyingAhead& ahead);

}  // namespace twoclocks::forecast
