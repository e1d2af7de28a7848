// What a limit says beside its interval, in words: first and last, later, caps, tolerance, overfly,
// permits.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Adds what the limit of a clock says beside its interval.
/// Units: as limits/due.hpp. Errors: none. Source: our choice.
void explain_settings(Why& why,
                      const Assessed& aircraft,
                      const limits::ItemDue& item,
                      const limits::ClockDue& clock);

/// Adds which of several clocks counts, and the caps on them.
/// Units: as limits/due.hpp. Errors: none. Source: our choice.
void explain_combination(Why& why, const limits::ItemDue& item);

/// Adds where hours that do not count from completion count from; false when they do.
/// Units: seconds. Errors: none. Source: limits/carry.hpp.
[[nodiscard]] bool explain_carried_hours(Why& why,
                                         const limits::ClockDue& clock,
                                         base::HoursForm form);

/// Adds the day a calendar counts from that does not count from completion; false when it does.
/// Units: days. Errors: none. Source: limits/carry.hpp.
[[nodiscard]] bool explain_carried_day(Why& why, const limits::ClockDue& clock);

/// What to look at: permits that no longer cover, inspections flown past what their rule allows.
/// Units: none. Errors: none. Source: our choice; 14 CFR 91.409(b).
[[nodiscard]] std::vector<base::Message> limit_cautions(const Assessed& aircraft);

}  // namespace twoclocks::views
