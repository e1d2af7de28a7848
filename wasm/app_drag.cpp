// What is held and moved about.
#include "wasm/app_inside.hpp"

namespace twoclocks::canvas {

/// True when the event belongs to something that is held.
bool App::Inside::drag(const PointerEvent& event) {
    const Point at{event.x / text_scale(), event.y / text_scale()};
    Drag& held = memory_.drag;
    if (event.phase == PointerPhase::down && held.key.empty() && !sheet_open() &&
        !gestures_.held()) {
        for (const DragArea& area : memory_.drag_areas) {
            if (area.box.contains(at.x, at.y)) held = {area.key, event.id, at, false};
        }
        return !held.key.empty();
    }
    if (held.key.empty() || held.pointer != event.id) return false;
    if (event.phase == PointerPhase::move) {
        held.at = at;
        held.moved = true;
    } else {
        held = {};
    }
    return true;
}

}  // namespace twoclocks::canvas
