// What happened to a part, one after the other.
#pragma once

#include "engine/timeline/parts.hpp"

namespace twoclocks::timeline {

/// A record about a part that has happened by today.
struct PartEvent {
    const Record* record{nullptr};
    base::Date on;
    base::Id host;  // of a fit and a removal; of work, the aircraft whose total it names
    std::optional<base::FlightTime> total;
};

/// The events of a part in order: by day; within a day by the total of their host, then as they
/// were written, and what can have happened before what cannot yet. Fills who the part is, its
/// questions and the problems of single records. `items` hang on the part: work on them happens to
/// it too.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<PartEvent> part_events(const std::vector<Record>& records,
                                                 const std::vector<base::Id>& items,
                                                 base::Date today,
                                                 PartState& part);

/// True when one version of a record lacks something that `has` looks for in its fields.
/// Units: none. Errors: none. Source: our choice.
template <class Kind, class Has>
[[nodiscard]] bool one_lacks(const Record& record, Has has) {
    for (const Head& head : record.heads) {
        const auto* fields = head.body == nullptr ? nullptr : std::get_if<Kind>(&head.body->fields);
        if (fields != nullptr && !has(*fields)) return true;
    }
    return false;
}

}  // namespace twoclocks::timeline
