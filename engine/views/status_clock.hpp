// One clock of a limit as the status tells it.
#pragma once

#include "engine/views/assess.hpp"
#include "engine/views/status.hpp"

namespace twoclocks::views {

/// What it is limited to, what is used and left, when it is next, why, and whether an open question
/// touches any of it.
/// Units: as limits::ClockDue. Errors: none. Source: common practice, no source.
[[nodiscard]] StatusClock status_clock(const Assessed& aircraft,
                                       const limits::ItemDue& item,
                                       const limits::ClockDue& clock);

}  // namespace twoclocks::views
