// The intervals of a limit, taken apart by clock.
#pragma once

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// True when an interval counts nothing.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool is_empty(const Interval& interval);

/// What one clock has of an interval, and nothing else.
/// Units: as limit_fact.hpp. Errors: none. Source: our choice.
[[nodiscard]] Interval part(const Interval& interval, Clock clock);

/// The lesser of two intervals, clock by clock; what one lacks the other sets.
/// Units: as limit_fact.hpp. Errors: none. Source: our choice, the safer of two limits.
[[nodiscard]] Interval lesser(const Interval& left, const Interval& right);

/// What counts after each compliance.
/// Units: as limit_fact.hpp. Errors: none. Source: our choice.
[[nodiscard]] Interval repeat_of(const LimitSet& limit);

/// What counts until the first compliance: the first interval, or the repeat where there is none.
/// Units: as limit_fact.hpp. Errors: none. Source: our choice.
[[nodiscard]] Interval initial_of(const LimitSet& limit);

/// True when two intervals count the same clocks.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool same_clocks(const Interval& left, const Interval& right);

}  // namespace twoclocks::facts
