// The answer to "why?": the figure, the records it came from, the sum, the rule and its source.
#pragma once

#include "wasm/widgets/ui.hpp"

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

/// Fills the column. A line that rests on a record is a row that opens it: returns the line tapped,
/// -1 for none.
[[nodiscard]] std::int32_t why_lines(Ui& ui, const views::Why& why);

}  // namespace twoclocks::canvas
