// The answer to "why?" for every figure: what it was worked out from, the rule, its source.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Why one clock of an item has what it has left.
/// Units: as limits/due.hpp. Errors: none. Source: our choice.
[[nodiscard]] Why why_clock(const Assessed& aircraft,
                            const limits::ItemDue& item,
                            const limits::ClockDue& clock,
                            base::Message title);

/// Why an item is likely due when it is.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] Why why_date(const Assessed& aircraft, std::int32_t item, base::Message title);

/// Why the total time is what it is.
/// Units: hours. Errors: none. Source: our choice.
[[nodiscard]] Why why_total(const Assessed& aircraft);

/// Why this rate meets both clocks at once.
/// Units: hours a year. Errors: none. Source: common practice, no source.
[[nodiscard]] Why why_break_even(const Assessed& aircraft);

/// "Maintenance manual, rev 5" or "source not given".
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message source_of(const limits::ItemDue& item);

}  // namespace twoclocks::views
