// Money in hand over time: one line as expected, and thin ones where all goes fast or slowly.
#pragma once

#include "wasm/widgets/ui.hpp"

#include "engine/views/sums.hpp"

namespace twoclocks::canvas {

/// Takes the height it needs from the column; spoken as one picture.
void cash_curve(Ui& ui, const views::SumsCurve& curve);

}  // namespace twoclocks::canvas
