// What people say of the time ahead: spells out of service and planned flying.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Fills the spells, after the usage. One without an end that was flown in has ended by the day the
/// flying was recorded, and a caution says so; while records disagree, by the earliest such day.
/// Units: days. Errors: none. Source: our choice, what flies is in service.
void fold_spells(const std::vector<const Record*>& records, AircraftState& state);

/// Fills the plan: the last that began on or before today. While records disagree about one that
/// may be in force, the most hours that any of them or the plan before it gives.
/// Units: hours a month. Errors: none. Source: our choice, more flying is less life.
void fold_plan(const std::vector<const Record*>& records, base::Date today, AircraftState& state);

}  // namespace twoclocks::timeline
