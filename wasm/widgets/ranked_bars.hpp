// What counts most, ranked: a name, an amount, and a bar below both.
#pragma once

#include "wasm/widgets/ui.hpp"

#include "engine/views/money.hpp"

namespace twoclocks::canvas {

/// Takes the height it needs from the column; spoken as one text a row.
void ranked_bars(Ui& ui, const std::vector<views::MoverRow>& rows);

}  // namespace twoclocks::canvas
