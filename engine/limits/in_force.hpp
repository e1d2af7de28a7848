// When a limit counts: always, while stored, or once on return from storage.
//
// The hard questions.
//   A limit that holds in storage: its calendar starts with each storage, from its first day, and
//   then from the work done in it. Outside storage it asks for nothing. Hours and counts stand
//   still in storage and count from where they always do.
//   One to be met on return: once after each storage, before the next flight. Work counts that was
//   done within the interval before the first day back, or later. Until the aircraft is back, it
//   is due before the next flight all the time, unless its first day back is known.
//   Every other limit: its calendar never pauses. What falls due while stored is due before the
//   next flight (views/assess decides that by what was flown since).
//   Records that disagree about storage, or about when the limit counts: it counts always, from
//   the earliest it could by any of them.
//   A limit on a part counts always: what it is on may go into storage, the part may come off.
#pragma once

#include <optional>

#include "engine/limits/bearer.hpp"

namespace twoclocks::limits {

/// Why the calendar of a limit counts from where it does.
enum class ByStorage : std::uint8_t {
    none,    // storage has nothing to do with it
    began,   // storage began
    stored,  // to be done on return, and it is not back yet
    back,    // to be done on return, and it is back
    doubt    // records disagree: the earliest it could
};

/// What of an item counts on a day.
struct CountedItem {
    bool asleep{false};                          // it asks for nothing now
    std::optional<timeline::ItemState> changed;  // takes the place of the item; none: as it is
    ByStorage by_storage{ByStorage::none};
    base::Id fact;                     // the storage it counts by
    base::Date began;                  // its first day
    std::optional<base::Date> due_on;  // to be done by this day, whatever the interval says
    bool may_be_stored{false};         // it is, or may be, a check in storage
    bool is_stored{false};             // nobody disputes that it is one
};

/// What counts of an item that has a limit.
/// Units: days. Errors: none. Source: our choice; for checks in storage
/// common practice, no source.
[[nodiscard]] CountedItem counted_item(const Bearer& bearer,
                                       const timeline::ItemState& item,
                                       base::Date today);

}  // namespace twoclocks::limits
