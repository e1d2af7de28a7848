// What happened and calls for an inspection before the next flight.
//
// The hard questions.
//   What signs an event? Work that renews it, dated on the day it happened or after, for each of
//   the subjects that the work is about: for the aircraft where it names the aircraft, for a part
//   where it names the part. Until every subject is signed for, the event is open.
//   Whom does it stop? The aircraft while it is not signed for itself, and whatever aircraft a part
//   that is not signed for is on, also by way of an assembly and after it moved.
//   Records that disagree: the event is open while any version of it leaves it open, and work in
//   dispute signs nothing. A part whose fit, removal or end is in dispute counts as being on every
//   aircraft that a version leaves it on.
//   An event dated after today: it counts, and a caution says so. Work dated after today: it has
//   not been done.
#pragma once

#include <set>

#include "engine/timeline/parts.hpp"

namespace twoclocks::timeline {

/// Events that stop an aircraft, oldest first; `records` are those about it.
/// Units: none. Errors: none. Source: common practice, no source: a conditional inspection before
/// the next flight; a part carries what happened to it.
[[nodiscard]] std::vector<EventState> events_stopping(const facts::Journal& journal,
                                                      const std::vector<Record>& records,
                                                      base::Id aircraft,
                                                      base::Date today);

/// Events that a part is not signed for, wherever it is, oldest first.
/// Units: none. Errors: none. Source: as above.
[[nodiscard]] std::vector<EventState> events_of_part(const facts::Journal& journal,
                                                     base::Id part,
                                                     base::Date today);

/// One event by its id, open or not; nothing when no version of the record is one. Nothing is
/// `here`.
/// Units: none. Errors: none. Source: as above.
[[nodiscard]] std::optional<EventState> find_event(const facts::Journal& journal,
                                                   base::Id event,
                                                   base::Date today);

/// Every aircraft that a part is on by some version, also by way of an assembly. Sorted.
/// Units: none. Errors: none. Source: our choice, see the head of this file.
[[nodiscard]] std::vector<base::Id> may_be_aboard(const facts::Journal& journal,
                                                  base::Id part,
                                                  base::Date today);

/// Parts that were ever on a host, as far as any version says, by way of any others.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::set<base::Id> ever_aboard(const facts::Journal& journal, base::Id host);

/// Hangs the events that stop an aircraft on its state, and mentions those dated ahead.
/// Units: none. Errors: none. Source: as above.
void fold_events(const facts::Journal& journal,
                 const std::vector<Record>& records,
                 base::Date today,
                 AircraftState& state);

}  // namespace twoclocks::timeline
