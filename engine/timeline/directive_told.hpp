// Every version of the records about one directive that may hold on a day.
#pragma once

#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

/// One version of a kind that may hold.
template <class Kind>
struct Told {
    Kind fields;
    base::Date on;
    base::Id fact;
};

/// Versions that may hold, and whether none may.
template <class Kind>
struct AllTold {
    std::vector<Told<Kind>> versions;
    bool may_be_none{true};
    bool disputed{false};
};

/// The hours that were surely flown by a day: of several that day the first.
/// Units: hours. Errors: nothing when none are on record by then. Source: our choice, an interval
/// that counts from fewer hours ends earlier.
[[nodiscard]] std::optional<base::FlightTime> hours_by(const UsageSeries& series, base::Date on);

/// The directive of an item: the last, and whatever is disputed and may be later.
/// Units: none. Errors: none. Source: our choice, as for limits.
[[nodiscard]] AllTold<facts::Directive> told_directive(const std::vector<Record>& records,
                                                       base::Id bearer,
                                                       base::Id item,
                                                       base::Date today);

/// The other way to comply that is in use, or every one that may be; and the last that ended.
/// Units: none. Errors: none. Source: our choice.
void tell_means(const std::vector<Record>& records,
                base::Id bearer,
                base::Id item,
                base::Date today,
                DirectiveState& directive);

}  // namespace twoclocks::timeline
