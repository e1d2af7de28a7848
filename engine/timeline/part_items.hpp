// Limits that hang on a part, and the work that renewed them.
#pragma once

#include "engine/timeline/part_walk.hpp"

namespace twoclocks::timeline {

/// Ids of the items that hang on a part, as far as any version says.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Id> hung_on(const std::vector<Record>& records, base::Id part);

/// Fills the items of a part, with their limits in force, their last work and what they count in.
/// An overhaul of the part is work on its items of role overhaul; the maker's rebuild is the start
/// of a new life. Work on a day that records of the part disagree about counts from nothing.
/// Units: as state.hpp. Errors: none. Source: parts.hpp.
void fold_part_items(const std::vector<Record>& records,
                     const PartWorks& works,
                     base::Date today,
                     PartState& part);

}  // namespace twoclocks::timeline
