#include "wasm/widgets/form_field.hpp"

#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/choice_field.hpp"
#include "wasm/widgets/field_box.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr float mark_size = 22;
constexpr float note_least = 112;
constexpr float note_most = 320;  // more is scrolled in the real input
constexpr float chip_padding = 12;

/// A triangle with a stroke in it: look here. Shape, not colour.
void warning_mark(Pen& pen, Point top_left) {
    const Point top{top_left.x + mark_size / 2, top_left.y + 1};
    const Point right{top_left.x + mark_size, top_left.y + mark_size - 2};
    const Point left{top_left.x, top_left.y + mark_size - 2};
    pen.area({top, right, left}, Tone::ink);
    pen.line({top.x, top.y + 8}, {top.x, top.y + 13.5F}, Tone::paper, 2);
    pen.disc({top.x, top.y + 16.3F}, 1.2F, Tone::paper);
}

/// A leaf of a calendar.
void calendar_mark(Pen& pen, Point middle) {
    const Rect leaf{middle.x - 9, middle.y - 8, middle.x + 9, middle.y + 9};
    pen.outline(leaf, Tone::soft, 2, 2);
    pen.line({leaf.left, leaf.top + 5}, {leaf.right, leaf.top + 5}, Tone::soft, 2);
    pen.line({middle.x - 4, leaf.top - 3}, {middle.x - 4, leaf.top + 1}, Tone::soft, 2);
    pen.line({middle.x + 4, leaf.top - 3}, {middle.x + 4, leaf.top + 1}, Tone::soft, 2);
}

float note_height(Ui& ui, const FieldView& field) {
    const float words = height_of(ui, Type::body, field.text, ui.width() - 2 * space::middle);
    return std::clamp(words + ui.pen().line(Type::body) + 2 * space::middle, note_least, note_most);
}

void note_words(Ui& ui, const FieldView& field, const Rect& inner) {
    ui.push_clip(inner);
    ui.inside({inner.left, inner.top + space::middle, inner.right, 0},
              [&] { quiet_paragraph(ui, Type::body, Tone::ink, field.text); });
    ui.pop_clip();
}

/// A day as people say it, once it is one.
std::string text_in(Ui& ui, const FieldView& field) {
    const std::string said = ui.say(field.understood);
    if (field.kind == FieldKind::secret) return said;
    return field.kind == FieldKind::date && !said.empty() ? said : field.text;
}

/// Says something about a field, drawn and spoken with it.
void about_field(Ui& ui, const FieldView& field, Tone tone, const std::string& text) {
    const float top = ui.y();
    quiet_paragraph(ui, Type::body, tone, text);
    Node node;
    node.name = text;
    node.box = {ui.left(), top, ui.column().right(), ui.y()};
    node.describes = field.id;
    ui.node(std::move(node));
}

/// The hint gives way to how the text was understood, so that nothing moves while one types.
void below_box(Ui& ui, const FieldView& field) {
    const bool says = field.kind == FieldKind::hours || field.kind == FieldKind::money ||
                      field.kind == FieldKind::whole;
    const std::string understood = says ? ui.say(field.understood) : std::string{};
    const std::string text = understood.empty() ? ui.say(field.hint) : understood;
    if (text.empty()) return;
    ui.gap(space::tight);
    const bool hours = field.kind == FieldKind::hours && !understood.empty();
    about_field(ui, field, hours ? Tone::hours : Tone::soft, text);
}

/// What one tap fills the field with.
std::optional<Intent> quick_buttons(Ui& ui, const FieldView& field) {
    if (field.quick.empty()) return std::nullopt;
    std::vector<ButtonSpec> buttons;
    for (std::size_t at = 0; at < field.quick.size(); ++at) {
        const std::string id = "quick-" + field.id + "-" + std::to_string(at);
        buttons.push_back({id, ui.say(field.quick[at].label)});
    }
    ui.gap(target::apart);
    const std::int32_t pressed = button_row(ui, buttons);
    if (pressed < 0) return std::nullopt;
    return intent::FillField{field.id, field.quick[static_cast<std::size_t>(pressed)].text};
}

std::optional<Intent> file_field(Ui& ui, const FieldView& field) {
    const bool empty = field.text.empty();
    if (!empty) {
        const Rect row = ui.take(ui.pen().line(Type::body_strong));
        const std::string name = ui.pen().shorten(Type::body_strong, field.text, row.width());
        ui.pen().text(Type::body_strong, Tone::ink, {row.left, row.top}, name);
    }
    const std::string size = ui.say(empty ? base::Message{Word::file_none, {}} : field.understood);
    const float top = ui.y();
    quiet_paragraph(ui, Type::body, Tone::soft, size);
    Node node;
    node.role = Role::status;
    node.name = empty ? size : field.text + ", " + size;
    node.box = {ui.left(), top, ui.column().right(), ui.y()};
    ui.node(std::move(node));
    ui.gap(space::small);
    std::vector<ButtonSpec> buttons{
        {"file-" + field.id, ui.say(empty ? Word::file_choose : Word::file_change)}};
    if (!empty) buttons.push_back({"drop-" + field.id, ui.say(Word::file_remove)});
    const std::int32_t pressed = button_row(ui, buttons);
    if (pressed == 0) return intent::ChooseFieldFile{field.id};
    if (pressed == 1) return intent::FillField{field.id, {}};
    return std::nullopt;
}

std::optional<Intent> typed_field(Ui& ui, const FieldView& field) {
    std::optional<Intent> answer;
    if (text_box(ui, field)) answer = intent::EditField{field.id};
    return answer;
}

std::optional<Intent> field_body(Ui& ui, const FieldView& field) {
    switch (field.kind) {
        case FieldKind::choice:
            return choice_field(ui, field);
        case FieldKind::search:
            return search_field(ui, field);
        case FieldKind::money:
            return money_field(ui, field);
        case FieldKind::file:
            return file_field(ui, field);
        case FieldKind::text:
        case FieldKind::note:
        case FieldKind::decimal:
        case FieldKind::whole:
        case FieldKind::date:
        case FieldKind::hours:
        case FieldKind::code:
        case FieldKind::secret:
            break;
    }
    return field.options.empty() ? typed_field(ui, field) : choice_field(ui, field);
}

}  // namespace

bool text_box(Ui& ui, const FieldView& field) {
    const bool note = field.kind == FieldKind::note;
    const Rect box = ui.take(note ? note_height(ui, field) : field_height);
    field_frame(ui, field.id, box, field.problem.has_value());
    Rect inner = inner_of(box);
    if (field.kind == FieldKind::date) {
        calendar_mark(ui.pen(), {inner.right - 9, box.top + box.height() / 2});
        inner.right -= 2 * space::middle;
    }
    const std::string text = text_in(ui, field);
    const bool edited = ui.memory().editing == field.id;
    if (!edited && note) note_words(ui, field, inner);
    if (!edited && !note) line_in_box(ui, Type::body_strong, Tone::ink, inner, text);
    return field_node(ui, field, box, text);
}

std::optional<Intent> date_row(Ui& ui, const FieldView& field, const std::string& said) {
    Pen& pen = ui.pen();
    const std::string label = ui.say(field.label);
    const float labels = pen.width(Type::body, label) + space::middle;
    const Rect row = ui.take(target::least);
    const float y = row.top + (row.height() - pen.line(Type::body)) / 2;
    pen.text(Type::body, Tone::soft, {row.left, y}, label);
    const std::string quick = field.quick.empty() ? std::string{} : ui.say(field.quick[0].label);
    const float chip =
        quick.empty() ? 0 : pen.width(Type::body_strong, quick) + 2 * chip_padding + target::apart;
    const float words = pen.width(Type::body_strong, said) + 2 * space::middle;
    const bool beside = row.width() - labels - chip >= words;
    const Rect box{row.left + labels, row.top, row.right - (beside ? chip : 0), row.bottom};
    field_frame(ui, field.id, box, false);
    if (ui.memory().editing != field.id)
        line_in_box(ui, Type::body_strong, Tone::ink, inner_of(box), said);
    std::optional<Intent> answer;
    if (field_node(ui, field, box, said)) answer = intent::EditField{field.id};
    if (quick.empty()) return answer;
    const auto button = [&] {
        if (quiet_button(ui, "quick-" + field.id, quick))
            answer = intent::FillField{field.id, field.quick[0].text};
    };
    if (beside) {
        (void)ui.inside({box.right + target::apart, row.top, row.right, row.bottom}, button);
    } else {
        ui.gap(target::apart);
        button();
    }
    return answer;
}

void problem_note(Ui& ui, const base::Problem& problem, const std::string& field) {
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
    node.describes = field;
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

std::optional<Intent> draft_note(Ui& ui, const base::Message& note) {
    const std::string text = ui.say(note);
    if (text.empty()) return std::nullopt;
    std::optional<Intent> answer;
    card(ui, [&] {
        const float top = ui.y();
        quiet_paragraph(ui, Type::body, Tone::ink, text);
        Node node;
        node.role = Role::status;
        node.name = text;
        node.box = {ui.left(), top, ui.column().right(), ui.y()};
        ui.node(std::move(node));
        ui.gap(space::small);
        const std::int32_t pressed =
            button_row(ui, {{"discard-draft", ui.say(Word::draft_discard)}});
        if (pressed == 0) answer = intent::ClearEntry{};
    });
    ui.gap(space::base);
    return answer;
}

std::optional<Intent> form_field(Ui& ui, const FieldView& field) {
    quiet_paragraph(ui, Type::body_strong, Tone::ink, label_of(ui, field));
    ui.gap(space::tight);
    for (const base::Message& line : field.told) {
        about_field(ui, field, Tone::ink, ui.say(line));
        ui.gap(space::tight);
    }
    std::optional<Intent> answer = field_body(ui, field);
    below_box(ui, field);
    const std::optional<Intent> quick = quick_buttons(ui, field);
    if (quick) answer = quick;
    if (field.problem) {
        ui.gap(space::small);
        problem_note(ui, *field.problem, field.id);
    }
    const std::optional<Intent> listed = open_list(ui, field);
    if (listed) answer = listed;
    return answer;
}

}  // namespace twoclocks::canvas
