// A page whose campaigns are still being lived through: how far they are, and nothing to press.
#include "wasm/panels/panels.hpp"
#include "wasm/widgets/body.hpp"
#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {

Answer working_panel(Ui& ui, const Rect& area, const WorkingPage& page) {
    page_body(ui, area, {"working"}, [&] {
        paragraph(ui, Type::body, Tone::soft, ui.say(page.told));
        caution_line(ui);
    });
    return std::nullopt;
}

}  // namespace twoclocks::canvas
