// How well the last year would have been told: the same paths, asked a year ago.
//
// Only what was recorded as true for that day or before is used, and no plan; but the end of a stay
// out of service that had begun is taken as known. The question is the one that matters: when will
// the hours be flown that were in fact flown since?
#pragma once

#include <optional>

#include "engine/timeline/state.hpp"

namespace twoclocks::forecast {

/// What would have been said, and what came.
struct BackTest {
    base::Date asked_on;             // the last reading a year before the last of all, or earlier
    base::Date came_on;              // the last reading
    base::FlightTime flown;          // between them
    std::int32_t days_off{0};        // said less came: negative is too early; 0 without a day
    bool inside{false};              // it came within the band of eight tenths
    bool late_held{false};           // it came no later than the late day
    std::optional<base::Date> said;  // none: not within thirty years
};

/// Units: days, seconds. Errors: nothing with under a year between readings, nothing flown, or too
/// little recorded before.
/// Source: our choice.
[[nodiscard]] std::optional<BackTest> back_test(const timeline::AircraftState& state);

}  // namespace twoclocks::forecast
