#include "wasm/widgets/form_field.hpp"

#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr float mark_size = 22;
constexpr float note_height = 112;

/// A triangle with a stroke in it: look here. Shape, not colour.
void warning_mark(Pen& pen, Point top_left) {
    const Point top{top_left.x + mark_size / 2, top_left.y + 1};
    const Point right{top_left.x + mark_size, top_left.y + mark_size - 2};
    const Point left{top_left.x, top_left.y + mark_size - 2};
    pen.area({top, right, left}, Tone::ink);
    pen.line({top.x, top.y + 8}, {top.x, top.y + 13.5F}, Tone::paper, 2);
    pen.disc({top.x, top.y + 16.3F}, 1.2F, Tone::paper);
}

std::string label_of(Ui& ui, const FieldView& field) {
    std::string label = ui.say(field.label);
    if (!field.optional) return label;
    return ui.say({Word::optional_label, {base::text_arg(label)}});
}

std::int32_t options(Ui& ui, const FieldView& field) {
    std::vector<ChoiceSpec> choices;
    for (std::uint32_t i = 0; i < field.options.size(); ++i) {
        choices.push_back({"option-" + field.id + "-" + std::to_string(i),
                           ui.say(field.options[i]),
                           static_cast<std::int32_t>(i) == field.chosen});
    }
    return choice_list(ui, choices);
}

void frame_of(Ui& ui, const FieldView& field, const Rect& box, bool wrong) {
    const bool strong = wrong || ui.memory().editing == field.id;
    ui.pen().fill(box, Tone::card, shape::field_radius);
    ui.press_mark(field.id, box, shape::field_radius);
    ui.pen().outline(
        box, strong ? Tone::ink : Tone::soft, shape::field_radius, strong ? 2.5F : shape::stroke);
}

/// Speaks the field, and leaves word where it lies when it is edited. True when tapped.
bool field_node(Ui& ui, const FieldView& field, const Rect& box, const std::string& value) {
    Node node;
    node.role = Role::field;
    node.id = field.id;
    node.name = label_of(ui, field);
    node.value = value;
    node.box = box;
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

/// What is in a field: the start of a note, the end of a long line.
void field_words(Ui& ui, const FieldView& field, const Rect& inner) {
    Pen& pen = ui.pen();
    ui.push_clip(inner);
    if (field.kind == FieldKind::note) {
        ui.inside({inner.left, inner.top + space::middle, inner.right, 0},
                  [&] { quiet_paragraph(ui, Type::body, Tone::ink, field.text); });
    } else {
        const float y = inner.top + (inner.height() - pen.line(Type::body_strong)) / 2;
        const float over = std::max(0.0F, pen.width(Type::body_strong, field.text) - inner.width());
        pen.text(Type::body_strong, Tone::ink, {inner.left - over, y}, field.text);
    }
    ui.pop_clip();
}

}  // namespace

bool text_box(Ui& ui, const FieldView& field, bool wrong) {
    const bool note = field.kind == FieldKind::note;
    const Rect box = ui.take(note ? note_height : target::primary);
    frame_of(ui, field, box, wrong);
    const Rect inner{box.left + space::middle, box.top, box.right - space::middle, box.bottom};
    if (ui.memory().editing != field.id) field_words(ui, field, inner);
    return field_node(ui, field, box, field.text);
}

bool date_row(Ui& ui, const FieldView& field, const std::string& said) {
    Pen& pen = ui.pen();
    const std::string label = ui.say(field.label);
    const float labels = pen.width(Type::body, label) + space::base;
    const Rect row = ui.take(target::least);
    const float y = row.top + (row.height() - pen.line(Type::body)) / 2;
    pen.text(Type::body, Tone::soft, {row.left, y}, label);
    const Rect box{row.left + labels, row.top, row.right, row.bottom};
    frame_of(ui, field, box, false);
    if (ui.memory().editing != field.id) {
        pen.text(Type::body_strong, Tone::ink, {box.left + space::middle, y}, said);
    }
    return field_node(ui, field, box, said);
}

void problem_note(Ui& ui, const base::Problem& problem) {
    const float top = ui.y();
    const float inset = mark_size + space::small;
    std::string spoken;
    const float bottom = ui.inside({ui.left() + inset, top, ui.column().right(), 0}, [&] {
        if (problem.line > 0) {
            const std::string line = ui.say({Word::at_line, {base::whole_arg(problem.line)}});
            quiet_paragraph(ui, Type::small, Tone::soft, line);
            spoken = line + ". ";
        }
        const std::string what = base::say_what(problem, ui.region());
        const std::string remedy = base::say_remedy(problem, ui.region());
        quiet_paragraph(ui, Type::body_strong, Tone::ink, what);
        quiet_paragraph(ui, Type::body, Tone::ink, remedy);
        spoken += what + " " + remedy;
    });
    warning_mark(ui.pen(), {ui.left(), top});
    Node node;
    node.role = Role::alert;
    node.name = spoken;
    node.box = {ui.left(), top, ui.column().right(), bottom};
    ui.node(std::move(node));
    ui.use({ui.left(), ui.width(), bottom});
}

void caution_note(Ui& ui, const base::Message& caution) {
    const float top = ui.y();
    warning_mark(ui.pen(), {ui.left(), top});
    const float bottom =
        ui.inside({ui.left() + mark_size + space::small, top, ui.column().right(), 0},
                  [&] { paragraph(ui, Type::body, Tone::ink, ui.say(caution)); });
    ui.use({ui.left(), ui.width(), std::max(bottom, top + mark_size)});
}

FieldPress form_field(Ui& ui, const FieldView& field) {
    FieldPress press;
    quiet_paragraph(ui, Type::body_strong, Tone::ink, label_of(ui, field));
    const std::string hint = ui.say(field.hint);
    if (!hint.empty()) {
        paragraph(ui, Type::small, Tone::soft, hint);
    }
    ui.gap(space::tight);
    if (field.options.empty()) {
        press.edit = text_box(ui, field, field.problem.has_value());
    } else {
        press.option = options(ui, field);
    }
    if (field.problem) {
        ui.gap(space::small);
        problem_note(ui, *field.problem);
    }
    return press;
}

}  // namespace twoclocks::canvas
