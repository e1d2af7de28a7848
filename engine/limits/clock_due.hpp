// One clock of one item: where it counts from, how far it has run, what is left.
#pragma once

#include "engine/limits/due.hpp"

namespace twoclocks::limits {

/// The last renewal of a clock, null when there is none.
/// Units: as state.hpp. Errors: none. Source: our choice.
[[nodiscard]] const timeline::Renewed* renewal(const timeline::ItemState& item, facts::Clock clock);

/// Hours.
/// Units: seconds. Errors: not known without the bearer's hours. Source: due.hpp, bearer.hpp.
[[nodiscard]] ClockDue hours_clock(const Bearer& bearer,
                                   const timeline::ItemState& item,
                                   base::FlightTime interval);

/// Calendar.
/// Units: days. Errors: not known without a day to count from. Source: as above.
[[nodiscard]] ClockDue calendar_clock(const Bearer& bearer,
                                      const timeline::ItemState& item,
                                      const facts::Interval& interval,
                                      base::Date today);

/// Landings.
/// Units: counts. Errors: not known without a count. Source: as above.
[[nodiscard]] ClockDue landings_clock(const Bearer& bearer,
                                      const timeline::ItemState& item,
                                      base::Count interval);

/// Engine starts.
/// Units: counts. Errors: as landings. Source: as above.
[[nodiscard]] ClockDue starts_clock(const Bearer& bearer,
                                    const timeline::ItemState& item,
                                    base::Count interval);

}  // namespace twoclocks::limits
