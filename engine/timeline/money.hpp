// The records of money, folded.
//
// The hard questions.
//   Which of several records of a line or of the terms holds? The last by day; of one day the one
//   recorded last.
//   What ends with an overhaul? The lines of the days before it: they become those of the last
//   campaign, to be taken over by hand. Rates, lists and terms go on.
//   A list that was recorded in pieces is one version where name and day are the same; an article
//   said twice in it has the price said last.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Fills what is recorded of the money by today; `ended` is the day of the last overhaul.
/// Units: days, minor units. Errors: none. Source: our choice.
void fold_money(const std::vector<const Record*>& records,
                base::Date today,
                std::optional<base::Date> ended,
                AircraftState& state);

/// Takes rows into the version of their list and day, or makes one; the lists stay sorted.
/// Units: minor units. Errors: none. Source: our choice.
void put_list(PriceListState said, std::vector<PriceListState>& lists);

}  // namespace twoclocks::timeline
