#include "wasm/widgets/body.hpp"

#include <algorithm>

namespace twoclocks::canvas {
Rect column_in(const Ui& ui, const Rect& area) {
    const float room = area.width() - 2 * space::base;
    const float width = std::min(room, ui.page_width());
    const float left = area.left + space::base + (room - width) * ui.page_lean();
    return {left, area.top, left + width, area.bottom};
}

void page_body(Ui& ui,
               const Rect& area,
               const BodySpec& spec,
               base::FunctionRef<void()> draw,
               base::FunctionRef<void()> foot) {
    const bool fixed = spec.foot_height > 0 && !ui.frame().low();
    const float foot_space = fixed ? spec.foot_height + 2 * space::middle : 0;
    const Rect scrolled{area.left, area.top, area.right, area.bottom - foot_space};
    const Rect column = column_in(ui, area);
    ui.scroll(spec.key, scrolled, [&] {
        const Column whole = ui.column();
        ui.use({column.left, column.width(), whole.y + space::tight});
        draw();
        if (!fixed && spec.foot_height > 0) {
            ui.gap(space::base);
            foot();
        }
        ui.gap(space::base);
        ui.use({whole.left, whole.width, ui.y()});
    });
    if (!fixed) return;
    // On a wide page a button across everything would look like a wall.
    const float right = std::min(column.right, column.left + page::foot_most);
    ui.inside({column.left, scrolled.bottom + space::middle, right, area.bottom}, foot);
}

void page_body(Ui& ui, const Rect& area, const BodySpec& spec, base::FunctionRef<void()> draw) {
    page_body(ui, area, spec, draw, [] {});
}

}  // namespace twoclocks::canvas
