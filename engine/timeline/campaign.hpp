// The records of a campaign, folded.
//
// The hard questions.
//   Which of several estimates of one task holds, and which of several terms? The last by day; of
//   one day the one recorded last: they are corrected by saying them anew.
//   Which of several steps? Begun and done on the last day that says so, promised by the last
//   promise; what is done was begun. Records that disagree have done less and promise later.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// The days of the last overhaul and of the one before it.
struct Overhauls {
    std::optional<base::Date> last;
    std::optional<base::Date> before;

    /// What is of this day was for an overhaul that is over.
    [[nodiscard]] bool is_over(base::Date on) const { return last && on < *last; }

    /// And for one that was over before that.
    [[nodiscard]] bool is_long_over(base::Date on) const { return before && on < *before; }
};

/// Both, where there are any.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] Overhauls overhauls_of(const std::vector<const Record*>& records,
                                     base::Date today,
                                     const AircraftState& state);

/// The day on which the last overhaul was recorded: what was done for it is done.
/// Units: days. Errors: nothing where none was. Source: our choice.
[[nodiscard]] std::optional<base::Date> last_overhaul(const AircraftState& state);

/// Fills what is recorded of the campaign by today.
/// Units: days. Errors: none. Source: our choice.
void fold_campaign(const std::vector<const Record*>& records,
                   base::Date today,
                   AircraftState& state);

}  // namespace twoclocks::timeline
