// Every item of an aircraft to look through: searched, sorted, and what falls due before a day or
// within some hours.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

enum class CheckOrder : std::uint8_t {
    soonest,     // by the likely day, what has passed first
    least_left,  // by what is left of the clock that binds, as a share of its limit
    chapter      // by chapter, the soonest first in each
};

/// What a person asked to see.
struct ChecksAsked {
    std::string search;  // of name, chapter or source; empty for all
    CheckOrder order{CheckOrder::soonest};
    std::optional<base::Date> until;         // what falls due by this day
    std::optional<base::FlightTime> within;  // or within these hours from the last reading
};

/// The items that answer. With a day or hours, an item whose day is not known stays in: it may be
/// due.
/// Units: days, seconds. Errors: none. Source: the early day decides, so that nothing is missed.
[[nodiscard]] ChecksView make_checks_view(const Assessed& aircraft, const ChecksAsked& asked);

/// Every "why?" of the rows, in their order: what is left by hours, calendar and count, and likely.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Why> whys_of(const ChecksView& view);

}  // namespace twoclocks::views
