// What a limit may say beside its interval, and the permit to fly past one.
//
// The hard question: which of these moves the limit itself? None. A tolerance, an overfly and a
// permit say how far past it somebody allowed to fly; what is left never counts them. Only the
// first interval, the cap and the carry-over move the point at which a limit is met.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/base/count.hpp"
#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"

namespace twoclocks::facts {

/// Where the next interval counts from after work done within the tolerance.
enum class CarryOver : std::uint8_t { from_due, from_done };

/// Which of an item's clocks stops it.
enum class Combine : std::uint8_t { sooner, later };

/// When a limit counts. In storage: from its first day, and each work after. On return: done once
/// after every spell of storage, before the next flight.
enum class InForce : std::uint8_t { always, in_storage, on_return };

/// How much of each clock; what is missing does not count. Months and days are two ways of writing
/// one calendar: never both.
struct Interval {
    std::optional<base::FlightTime> hours;
    std::optional<std::int32_t> months;
    std::optional<std::int32_t> days;
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
};

/// How far off its due point work may be done, by the document named in `source`. Hours and days
/// each on their own; of an amount and a percentage the lesser.
struct Tolerance {
    std::optional<base::FlightTime> hours;
    std::optional<std::int32_t> days;
    std::optional<std::int32_t> permille;  // of the interval, bounded by the two caps
    std::optional<base::FlightTime> cap_hours;
    std::optional<std::int32_t> cap_days;
    std::optional<CarryOver> carry_over;            // missing: from when the work is done
    std::optional<base::FlightTime> overfly_hours;  // en route to the place of inspection
    std::string source;
};

/// Leave to fly an aircraft past a limit of one item. It renews nothing.
struct Permit {
    std::string issuer;
    std::string reference;
    std::string route;
    std::optional<base::FlightTime> hours;  // past the limit
    std::optional<base::Date> until;        // last day
};

}  // namespace twoclocks::facts
