// Sums one below the other: what each is, when or for what, and the figure at the right.
#pragma once

#include "wasm/widgets/ui.hpp"

#include "engine/views/sums.hpp"

namespace twoclocks::canvas {

/// Takes the height it needs from the column; spoken as one text a row.
void sum_rows(Ui& ui, const std::vector<views::SumsPair>& rows);

}  // namespace twoclocks::canvas
