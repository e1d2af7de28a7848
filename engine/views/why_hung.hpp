// Whys of limits that hang on a part: which part, what it has flown and how that is made of its
// papers and its spells, where the limit counts from.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Says which part a limit hangs on; nothing when it hangs on the aircraft.
/// Units: none. Errors: none. Source: our choice.
void explain_part(Why& why, const limits::ItemDue& item);

/// Explains the hours of a limit that hangs on a part, its sum as printed.
/// Units: seconds. Errors: none. Source: bearer.hpp.
void explain_part_hours(Why& why,
                        const Assessed& aircraft,
                        const limits::ItemDue& item,
                        const limits::ClockDue& clock);

/// Explains which day of a part the calendar of its limit counts from.
/// Units: days. Errors: none. Source: bearer.hpp.
void explain_part_day(Why& why, const limits::ItemDue& item, const limits::ClockDue& clock);

}  // namespace twoclocks::views
