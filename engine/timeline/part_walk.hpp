// A part's life, walked from event to event.
#pragma once

#include "engine/base/function_ref.hpp"
#include "engine/timeline/part_events.hpp"
#include "engine/timeline/part_host.hpp"

namespace twoclocks::timeline {

/// The line of a host: none when the host is not recorded, or when the part is in it and it is in
/// the part.
struct HostFound {
    const HostLine* line{nullptr};
    bool in_itself{false};
};

/// Work on a part or on what hangs on it, and what the part had by then.
struct PartWork {
    const Record* record{nullptr};
    Renewed renewed;         // its total is the part's time since new
    base::FlightTime count;  // the part's own count
    std::int32_t gaps{0};    // stretches of hours that nobody knows, before it
    std::int32_t tells{0};   // how often papers or a card told the time since new before it
    bool in_doubt{false};    // records of what it was in disagree
};

/// Work since the maker's last rebuild, in order, and the gaps and tells of the whole life.
struct PartWorks {
    std::vector<PartWork> done;
    std::int32_t gaps{0};
    std::int32_t tells{0};
};

/// Fills hours, counts, spells and where the part is from its events in order.
/// Units: as fact.hpp. Errors: none, what does not add up is a problem. Source: parts.hpp.
[[nodiscard]] PartWorks walk_part(const std::vector<PartEvent>& events,
                                  base::FunctionRef<HostFound(base::Id)> host_of,
                                  base::Date today,
                                  PartState& part);

}  // namespace twoclocks::timeline
