// Permits to fly past a limit, held against what was flown.
#pragma once

#include <vector>

#include "engine/limits/due.hpp"

namespace twoclocks::limits {

/// A permit and whether it still covers an item. It never changes what is left.
struct PermitUse {
    facts::Permit permit;
    base::Id fact;
    base::FlightTime past;  // hours flown past the limit; zero when none were
    bool expired{false};    // the item is past its limit, and the last day has gone by
    bool exceeded{false};   // more hours were flown past the limit than it allows
};

/// Every permit of an item, oldest first.
/// Units: seconds, days. Errors: none. Source: our choice; a permit runs through its last day.
[[nodiscard]] std::vector<PermitUse> permit_uses(const timeline::ItemState& item,
                                                 const ItemDue& due,
                                                 base::Date today);

}  // namespace twoclocks::limits
