// One limited item as an authority asks for it, clock by clock.
#pragma once

#include "wasm/widgets/ui.hpp"

#include "engine/views/status.hpp"

namespace twoclocks::canvas {

/// Draws the item; returns the clock that was asked "why?", -1 for none.
[[nodiscard]] std::int32_t status_card(Ui& ui, std::int32_t index, const views::StatusRow& row);

/// Draws a part with its hours and papers.
void status_part_card(Ui& ui, const views::StatusPart& part);

}  // namespace twoclocks::canvas
