// The records of money, folded.
//
// The hard questions.
//   Which of several records of a line or of the terms holds? The last by day; of one day the one
//   recorded last.
//   What ends with an overhaul? The lines of the days before it: they become those of the last
//   campaign, to be taken over by hand, until the next one. Rates, lists and terms go on.
//   A list that was recorded in pieces is one version where name and day are the same; an article
//   said twice in it has the price said last.
#pragma once

#include "engine/timeline/campaign.hpp"

namespace twoclocks::timeline {

/// Fills what is recorded of the money by today.
/// Units: days, minor units. Errors: none. Source: our choice.
void fold_money(const std::vector<const Record*>& records,
                base::Date today,
                const Overhauls& overhauls,
                AircraftState& state);

/// Takes rows into the version of their list and day, or makes one; the lists stay sorted.
/// Units: minor units. Errors: none. Source: our choice.
void put_list(PriceListState said, std::vector<PriceListState>& lists);

}  // namespace twoclocks::timeline
