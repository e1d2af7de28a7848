// What a record of money must be on its own.
#pragma once

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// Prices of one currency in order, quantities in order, codes and rates that can be read, a list
/// with rows that can be.
/// Units: none. Errors: line_currencies, line_out_of_order, line_points_missing, rate_malformed,
/// rate_same_currency, money_currency, list_row_wrong, list_empty. Source: our choice.
[[nodiscard]] base::Problems check_cost(const Body& body);

}  // namespace twoclocks::facts
