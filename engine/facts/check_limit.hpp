// What a limit or a permit cannot be, whatever else is recorded.
#pragma once

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// What is wrong with a limit: nothing limited, zeros, two calendars, and tolerances that have no
/// source or no place in its class.
/// Units: none. Errors: none; an empty list is sound. Source: airworthiness limitations get no
/// tolerance (authority leaflets and AMC M.A.302 say so); overfly, 14 CFR 91.409(b).
[[nodiscard]] base::Problems check_limit(const LimitSet& limit);

/// What is wrong with a permit: that it allows nothing.
/// Units: none. Errors: none; an empty list is sound. Source: our choice.
[[nodiscard]] base::Problems check_permit(const Permit& permit);

/// Adds what is wrong with an interval and no other check refuses; `prefix` is that of its keys:
/// "", "first_" or "cap_".
/// Units: none. Errors: none. Source: our choice.
void check_interval(const Interval& interval, const std::string& prefix, base::Problems& out);

}  // namespace twoclocks::facts
