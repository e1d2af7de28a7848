// One renewal of a clock, as part of a state.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "engine/base/count.hpp"
#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/id.hpp"

namespace twoclocks::timeline {

/// When a clock of an item was last renewed.
struct Renewed {
    base::Date on;
    std::optional<base::FlightTime> total;
    bool total_estimated{false};
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
    base::Id fact;
};

inline constexpr std::size_t clock_count = 4;

/// Every renewal of each clock (index: facts::Clock), oldest first.
using Works = std::array<std::vector<Renewed>, clock_count>;

}  // namespace twoclocks::timeline
