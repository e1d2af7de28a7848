// Bars over time: how much, month by month. One colour a chart, the clock's own; what is planned
// and not flown yet is only outlined. A curve, where the bars would grow to a whole.
#pragma once

#include "wasm/widgets/ui.hpp"

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

/// Takes the height it needs from the column; spoken as one picture.
void bar_chart(Ui& ui, const views::ChartView& chart);

}  // namespace twoclocks::canvas
