// What is known of an item beside its limit in force: disputes about it, permits to fly past it.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Marks the items whose limit or work records disagree about, hangs permits on their items and
/// mentions settings that do not count.
/// Units: as state.hpp. Errors: none. Source: our choice.
void fold_limit_marks(const std::vector<Record>& records, base::Date today, AircraftState& state);

}  // namespace twoclocks::timeline
