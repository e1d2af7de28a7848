// What was measured of an item on condition, as part of a state. See wear.hpp.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/facts/fact.hpp"

namespace twoclocks::timeline {

/// How sure it is that a record of wear holds.
enum class Standing : std::uint8_t {
    settled,
    disputed,   // some version of it holds
    may_not_be  // an answer may leave none, or it is dated after today
};

/// One measurement; every version of a disputed one is one of its own.
struct WearPoint {
    base::Date on;
    std::int32_t value_thousandths{0};
    std::string unit;
    std::optional<base::FlightTime> total;
    base::Id fact;  // the record
    Standing standing{Standing::settled};
};

/// A wear limit that may be in force.
struct WearBound {
    base::Date on;
    facts::WearLimit limit;
    base::Id fact;
    Standing standing{Standing::settled};
};

/// What is known of the wear of an item.
struct WearState {
    std::vector<WearPoint> points;  // by day, then as they were written
    std::vector<WearPoint> last;    // of them, those that may be the last
    std::vector<WearBound> bounds;  // those that may be in force
};

}  // namespace twoclocks::timeline
