// One frame: the page, what frames it, and what lies over it.
#pragma once

#include "wasm/panels/panels.hpp"
#include "wasm/screen.hpp"
#include "wasm/widgets/ui.hpp"

namespace twoclocks::canvas {

/// Draws the whole screen; gives what the person wants.
[[nodiscard]] Answer draw_screen(Ui& ui, const Screen& screen);

/// Names the page, so that each keeps a scroll position of its own.
[[nodiscard]] std::string page_key(const Screen& screen, const base::Region& region);

}  // namespace twoclocks::canvas
