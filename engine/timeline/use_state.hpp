// Hours that a meter did not count, kinds of flying, and how fast they use limits.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/facts/fact.hpp"

namespace twoclocks::timeline {

/// Hours that a meter did not count, from a day on.
struct MeterAdjustment {
    base::Date on;
    base::FlightTime hours;
    base::FlightTime reads;  // what the meter shows from then on
    facts::AdjustReason reason{facts::AdjustReason::other};
    std::string source;
    base::Id fact;
    bool disputed{false};  // then the most that any version adds, from the first day of any
};

/// Hours of a kind of flying, flown by the day `on`. While records disagree they are of any of the
/// kinds, the most hours, by the last day.
struct FlownState {
    std::vector<facts::Operation> kinds;
    base::FlightTime hours;
    base::Date on;
    base::Id fact;
};

/// How fast a kind of flying uses limits in hours: of everything, or of one item.
struct FactorState {
    facts::Operation kind{facts::Operation::other};
    base::Id item;  // empty: all
    std::int32_t thousandths{1000};
    std::string source;
    base::Id fact;
};

/// Kinds of flying on record, and what documents say of them.
struct UseState {
    std::vector<FlownState> flown{};
    std::vector<FactorState> factors{};
    bool disputed{false};
};

}  // namespace twoclocks::timeline
