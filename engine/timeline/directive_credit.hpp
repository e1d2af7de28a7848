// What counts as compliance with a directive: work on it, and what was done for what it replaces.
//
// The hard question: work that records disagree about. For most limits work that may not have been
// done is safer not done. For a directive it need not be: its first interval counts from the day it
// took effect, which may be later than work before. So every work that may be the last is tried.
#pragma once

#include "engine/timeline/directive_links.hpp"

namespace twoclocks::timeline {

/// Fills in the histories of the directive of an item: one, or in doubt every one that may be.
/// Units: as state.hpp. Errors: none. Source: directives.hpp.
void credit(const Recorded& recorded, const Directives& all, std::size_t place);

}  // namespace twoclocks::timeline
