// Items and their limits in force, whatever they hang on: an aircraft, or a part that is on one.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Records in the order they are true for: day, then first version; without those taken back.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<const Record*> by_day(const std::vector<Record>& records);

/// Fills the items that hang on a bearer and the limit of each: the last one, tightened by those
/// that are disputed and may be later than it. `earliest` is what a calendar without an anchor
/// counts from.
/// Units: as state.hpp. Errors: none. Source: our choice, the safer of two limits.
void fold_items(const std::vector<const Record*>& records,
                base::Id bearer,
                const std::optional<base::Date>& earliest,
                base::Date today,
                std::vector<ItemState>& items);

/// Puts work on the clocks of an item that it names. A figure that the later work lacks stays that
/// of the work before: earlier, so never more life.
/// Units: as state.hpp. Errors: none. Source: our choice.
void renew(ItemState& item, const facts::Renewal& renewal, const Renewed& renewed);

}  // namespace twoclocks::timeline
