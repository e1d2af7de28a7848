#include "wasm/widgets/why_lines.hpp"

#include "wasm/widgets/text.hpp"

#include <algorithm>

namespace twoclocks::canvas {
namespace {

constexpr float arrow_room = 28;

/// A line that rests on a record: a row with an arrow. True when tapped.
bool record_row(Ui& ui, std::uint32_t index, const std::string& words) {
    Pen& pen = ui.pen();
    const float room = ui.width() - arrow_room;
    const float height = height_of(ui, Type::body, words, room);
    const Rect box = ui.take(std::max(target::least, height + 2 * space::middle));
    const std::string id = "why-line-" + std::to_string(index);
    ui.press_mark(id, box, shape::tight_radius);
    pen.line({box.left, box.bottom}, {box.right, box.bottom}, Tone::line, shape::stroke);
    const float top = box.top + (box.height() - height) / 2;
    ui.inside({box.left, top, box.left + room, 0},
              [&] { quiet_paragraph(ui, Type::body, Tone::ink, words); });
    forward_arrow(pen, {box.right, box.top + box.height() / 2});
    return ui.active(Role::link, id, words, box);
}

}  // namespace

std::int32_t why_lines(Ui& ui, const views::Why& why) {
    std::int32_t tapped = -1;
    paragraph(ui, Type::title, Tone::ink, ui.say(why.figure));
    ui.gap(space::small);
    bool after_row = false;
    for (std::uint32_t i = 0; i < why.lines.size(); ++i) {
        const views::WhyLine& line = why.lines[i];
        const std::string words = ui.say(line.text);
        if (line.fact) {
            if (record_row(ui, i, words)) tapped = static_cast<std::int32_t>(i);
        } else {
            ui.gap(after_row ? space::middle : space::tight);
            paragraph(ui, line.is_sum ? Type::body_strong : Type::body, Tone::ink, words);
            ui.gap(space::tight);
        }
        after_row = line.fact.has_value();
    }
    return tapped;
}

}  // namespace twoclocks::canvas
