// What is due of a directive: its clocks, what they count from, and where it stands.
//
// The hard questions.
//   Where does the first interval count from? The day the directive took effect, and the hours on
//   record by then, which are no more than were flown; an anchor of the limit where that is
//   earlier. Landings and starts are not on record by day: from their anchor, or from none.
//   A repeat: from each compliance, never from the point it was due, early or late.
//   Before further flight: until all of it was complied with once, whatever its clocks say; one
//   that is not in effect yet is due, and stops nothing yet.
//   Another approved way: its interval instead of the repeat, its own grace instead of the printed
//   tolerance, told like any and never counted. After its last day the directive counts as printed:
//   where that is passed by then, its last day is the end.
//   Ended, superseded, not here: nothing is due. Superseded comes before ended in what is said.
//   Records that disagree: every version is worked out, and clock by clock the least counts.
#pragma once

#include "engine/limits/due.hpp"

namespace twoclocks::limits {

/// An item by its limit alone.
/// Units: seconds, days, counts. Errors: none; what cannot be known is marked unknown.
/// Source: due.hpp.
[[nodiscard]] ItemDue plain_due(const Bearer& bearer,
                                const timeline::ItemState& item,
                                base::Date today);

/// An item that rests on a directive, or that one names.
/// Units: seconds, days, counts. Errors: none; what cannot be known is marked unknown.
/// Source: 14 CFR 39.7, 39.11, 39.19 and 39.27 from memory; the rest our choice, see above.
[[nodiscard]] ItemDue directive_due(const Bearer& bearer,
                                    const timeline::ItemState& item,
                                    base::Date today);

}  // namespace twoclocks::limits
