// Which work renews what, as documents on record have it.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// Fills the work rules: those true by today, by day, of one name the last. While records disagree
/// a rule renews what all of its versions renew, and nothing when one takes it back. Work done
/// copies its rule, so a rule never changes what was renewed.
/// Units: none. Errors: none. Source: our choice, what is offered is never more than any one
/// answer.
void fold_work_rules(const std::vector<const Record*>& records,
                     base::Date today,
                     AircraftState& state);

}  // namespace twoclocks::timeline
