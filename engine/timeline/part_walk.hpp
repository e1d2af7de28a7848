// A part's life, walked from event to event.
#pragma once

#include <functional>

#include "engine/timeline/part_events.hpp"
#include "engine/timeline/part_host.hpp"

namespace twoclocks::timeline {

/// The line of a host: none when the host is not recorded, or when the part is in it and it is in
/// the part.
struct HostFound {
    const HostLine* line{nullptr};
    bool in_itself{false};
};

/// Fills hours, counts, spells and where the part is from its events in order.
/// Units: as fact.hpp. Errors: none, what does not add up is a problem. Source: parts.hpp.
void walk_part(const std::vector<PartEvent>& events,
               const std::function<HostFound(base::Id)>& host_of,
               base::Date today,
               PartState& part);

}  // namespace twoclocks::timeline
