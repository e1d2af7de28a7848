// One item of the list of checks: a bar for each of its clocks, and when it is likely due.
#pragma once

#include "wasm/widgets/due_card.hpp"

namespace twoclocks::canvas {

/// The figures are those of a due card, in the same order.
[[nodiscard]] DuePress check_card(Ui& ui, std::int32_t index, const views::CheckRow& row);

}  // namespace twoclocks::canvas
