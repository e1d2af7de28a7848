// The type scale and the colours, shown as they are. For the specimen page.
#pragma once

#include "wasm/widgets/ui.hpp"

namespace twoclocks::canvas {

/// Each kind of type once, on a line of its own.
void type_swatches(Ui& ui);

/// Each pair of colours that words are drawn in.
void pair_swatches(Ui& ui);

}  // namespace twoclocks::canvas
