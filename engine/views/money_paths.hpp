// What each route, and each kind of work, comes to: by itself and up to one day for both.
//
// The hard question: how do calendar work and the full overhaul compare, of which one is cheaper
// and the other lasts longer? Both are followed to the day on which the later one stops. The one
// that stops before takes the overhaul then, at the price of that day, and pays for as much of it
// as is used up by then: days over the days that the overhaul of the other way lasts.
#pragma once

#include "engine/views/assess.hpp"
#include "engine/views/money.hpp"
#include "engine/views/plan_lived.hpp"

namespace twoclocks::views {

/// Each route that is not refused, then calendar work and the overhaul where both can be done.
/// `routes`: the life of each, in the order of the records.
/// Units: minor units, hours. Errors: none; what is not known is left out. Source: our choice.
[[nodiscard]] std::vector<MoneyPath> money_paths(const Assessed& aircraft,
                                                 const Living& planned,
                                                 const std::vector<const Living*>& routes);

}  // namespace twoclocks::views
