// Total time from meters and readings.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Fills meters, usage, counts, and the questions and cautions that readings raise.
/// Units: as fact.hpp. Errors: none. Source: common practice, no source: total = meter + offset.
void fold_usage(const std::vector<Record>& records, base::Date today, AircraftState& state);

}  // namespace twoclocks::timeline
