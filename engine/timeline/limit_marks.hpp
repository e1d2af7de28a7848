// What is known of an item beside its limit in force: disputes about it, permits to fly past it.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Marks the items whose limit or work records disagree about, hangs permits on their items and
/// mentions settings that do not count. Work on `overhauled`, a part, is work on its overhaul.
/// Units: as state.hpp. Errors: none. Source: our choice.
void fold_limit_marks(const std::vector<Record>& records,
                      base::Id overhauled,
                      base::Date today,
                      std::vector<ItemState>& items,
                      std::vector<Caution>& cautions);

/// True when work that renews something renews this item: it, or the part it is the overhaul of.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_renewed_by(const facts::Renewal& renewal,
                                 const ItemState& item,
                                 base::Id overhauled);

}  // namespace twoclocks::timeline
