// What a record of a core, of a payment or of the reserve says that cannot be.
#pragma once

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// Faults of such a record by itself; none for other kinds.
/// Units: none. Errors: core_currencies, core_credit_high, core_chances, core_grade_missing,
/// core_two_ways, amount_missing. Source: our choice.
[[nodiscard]] base::Problems check_cash(const Body& body);

}  // namespace twoclocks::facts
