// What a clock has left, in words and as a bar.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// What is left: "1,044.0 h", "7 y 166 d", "12", or unknown.
/// Units: as the clock. Errors: none. Source: our choice, remaining rounds down.
[[nodiscard]] base::Message left_message(const limits::ClockDue& clock, base::Date today);

/// A clock as words and a bar; null is unknown.
/// Units: thousandths of the whole, rounded down. Errors: none. Source: our choice.
[[nodiscard]] ClockView clock_view(const limits::ClockDue* clock, base::Date today);

}  // namespace twoclocks::views
