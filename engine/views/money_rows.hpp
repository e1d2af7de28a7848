// The lines of an estimate in words.
#pragma once

#include "engine/budget/estimate.hpp"
#include "engine/views/money.hpp"

namespace twoclocks::views {

/// One row a line, in the order of the estimate.
/// Units: money. Errors: none. Source: our choice.
[[nodiscard]] std::vector<MoneyRow> money_rows(const budget::Estimate& estimate);

/// What moves the total, the greatest first, six at the most.
/// Units: money. Errors: none. Source: our choice.
[[nodiscard]] std::vector<MoverRow> mover_rows(const budget::Estimate& estimate);

}  // namespace twoclocks::views
