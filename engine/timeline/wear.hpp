// Wear that is measured against a limit, of items on condition.
//
// The hard questions.
//   Which measurement counts? The last, by day and then as they were written. While records
//   disagree, the worst of those that may be the last, against every limit that may be in force.
//   At the limit: sound. Past it: the item is over, whatever its interval says.
//   Another unit than the limit's: nothing is converted, so what is left is not known.
//   No limit: a figure and no judgement. A limit and no measurement: not known.
//   A measurement dated after today: it has not been made, but where it is past the limit it
//   counts, for its day may be the mistake.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

enum class WearVerdict : std::uint8_t { no_limit, sound, unmeasured, other_unit, past };

/// What the wear of an item comes to.
struct WearFinding {
    WearVerdict verdict{WearVerdict::no_limit};
    std::optional<WearBound> bound;  // the limit it was judged by
    std::optional<WearPoint> point;  // the measurement that counts
    bool disputed{false};            // several may be the last, or in force
};

/// Hangs limits and measurements on the items they are about.
/// Units: thousandths of a unit. Errors: none. Source: our choice.
void fold_wear(const std::vector<Record>& records, base::Date today, std::vector<ItemState>& items);

/// Judges the wear of an item.
/// Units: thousandths of a unit. Errors: none. Source: common practice, no source: an item on
/// condition stays in service while its measured wear is within the limit.
[[nodiscard]] WearFinding judge_wear(const WearState& wear);

/// How much may still wear away, below zero past the limit.
/// Units: thousandths of the unit both share. Errors: none. Source: the definition of the senses.
[[nodiscard]] std::int64_t wear_left(const facts::WearLimit& limit, std::int32_t value_thousandths);

}  // namespace twoclocks::timeline
