// The body of a page: a column that scrolls, of a width that reads well, and what is fixed below
// it.
#pragma once

#include "wasm/widgets/ui.hpp"

#include <string>

#include "engine/base/function_ref.hpp"

namespace twoclocks::canvas {

/// The part of `area` that words stand in.
[[nodiscard]] Rect column_in(const Ui& ui, const Rect& area);

struct BodySpec {
    std::string key;       // its scroll position is kept under this name
    float foot_height{0};  // 0: nothing fixed
};

/// `draw` fills the column; `foot` fills what is fixed below, or stands at the end on a low page.
void page_body(Ui& ui,
               const Rect& area,
               const BodySpec& spec,
               base::FunctionRef<void()> draw,
               base::FunctionRef<void()> foot);

/// The same without anything fixed below.
void page_body(Ui& ui, const Rect& area, const BodySpec& spec, base::FunctionRef<void()> draw);

}  // namespace twoclocks::canvas
