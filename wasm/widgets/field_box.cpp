#include "wasm/widgets/field_box.hpp"

#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr float strong_frame = 2.5F;

}  // namespace

std::string label_of(Ui& ui, const FieldView& field) {
    std::string label = ui.say(field.label);
    // All that stands under "More settings" is optional: there the word would only be noise.
    if (!field.optional || field.more) return label;
    return ui.say({Word::optional_label, {base::text_arg(label)}});
}

void field_frame(Ui& ui, const std::string& id, const Rect& box, bool wrong) {
    const bool strong = wrong || ui.memory().editing == id;
    ui.pen().fill(box, Tone::card, shape::field_radius);
    ui.press_mark(id, box, shape::field_radius);
    ui.pen().outline(box,
                     strong ? Tone::ink : Tone::soft,
                     shape::field_radius,
                     strong ? strong_frame : shape::stroke);
}

bool field_node(Ui& ui, const FieldView& field, const Rect& box, const std::string& value) {
    Node node;
    node.role = Role::field;
    node.id = field.id;
    node.name = label_of(ui, field);
    node.value = value;
    node.box = box;
    node.wrong = field.problem.has_value();
    const bool tapped = ui.active(std::move(node));
    ui.memory().boxes[field.id] = {field.id,
                                   label_of(ui, field),
                                   field.text,
                                   field.kind,
                                   box.left,
                                   box.top,
                                   box.width(),
                                   box.height()};
    return tapped;
}

void line_in_box(Ui& ui, Type type, Tone tone, const Rect& inner, const std::string& text) {
    Pen& pen = ui.pen();
    const float y = inner.top + (inner.height() - pen.line(type)) / 2;
    pen.text(type, tone, {inner.left, y}, pen.shorten(type, text, inner.width()));
}

Rect inner_of(const Rect& box) {
    return {box.left + space::middle, box.top, box.right - space::middle, box.bottom};
}

}  // namespace twoclocks::canvas
