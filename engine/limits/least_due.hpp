// Of two ways to work an item out, the one that leaves less, clock by clock.
#pragma once

#include "engine/limits/due.hpp"

namespace twoclocks::limits {

/// The lesser of two, where either may hold: every clock of both, the later only where both say so
/// of the same clocks, nothing left to do only where both say so. A clock that one of them does not
/// know stands beside what the other knows, unless that is passed already.
/// Units: seconds, days, counts. Errors: none. Source: our choice.
[[nodiscard]] ItemDue least_due(ItemDue into, const ItemDue& other);

}  // namespace twoclocks::limits
