// What the frame around a page has to know of it: its title, how wide it runs, whether a tab leads
// to it.
#pragma once

#include "wasm/panels/panels.hpp"
#include "wasm/screen.hpp"

#include <string>

namespace twoclocks::canvas {

[[nodiscard]] base::Message title_of(const Page& page);

/// Widest column of a page, when it has the room of `whole` pixels.
[[nodiscard]] float width_of(const Page& page, float whole);

/// Pages a tab leads to straight: the tabs are their way out.
[[nodiscard]] bool is_root(const Page& page);

[[nodiscard]] Answer draw_page(Ui& ui, const Rect& area, const Page& page, ListPane pane);

}  // namespace twoclocks::canvas
