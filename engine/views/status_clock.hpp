// One clock of a limit as the status tells it.
#pragma once

#include "engine/views/assess.hpp"
#include "engine/views/status.hpp"

namespace twoclocks::views {

/// A number of landings, starts or pieces.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message count_figure(std::int64_t number);

/// What stands where a figure is not known.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message unknown_figure();

/// What it is limited to, what is used and left, when it is next, why, and whether an open question
/// touches any of it.
/// Units: as limits::ClockDue. Errors: none. Source: common practice, no source.
[[nodiscard]] StatusClock status_clock(const Assessed& aircraft,
                                       const limits::ItemDue& item,
                                       const limits::ClockDue& clock);

}  // namespace twoclocks::views
