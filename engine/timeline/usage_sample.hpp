// Totals before the series is made to never fall, and which of them anything contradicts.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// A total that a record names. `uncounted` are hours that no meter counted by then, those of its
/// own day with them and without: they may be added within a day, before it or after.
struct Sample {
    UsagePoint point;
    const Record* record{nullptr};
    bool is_reading{false};
    bool is_certain{true};
    base::FlightTime uncounted{};
    base::FlightTime uncounted_before{};
};

/// Marks every reading that contradicts any other, not only its neighbour, or any version of one
/// that is disputed: whichever of them an answer drops or keeps, the others that it contradicts may
/// be dropped next.
/// Units: none. Errors: none. Source: our choice; 24 hours in a day.
void doubt_contradicted(std::vector<Sample>& samples, std::vector<Sample>& versions);

/// True when more hours than a clock has lie between two totals, but for those that no meter
/// counted.
/// Units: none. Errors: none. Source: 24 hours in a day.
[[nodiscard]] bool too_fast(const Sample& from, const Sample& to);

}  // namespace twoclocks::timeline
