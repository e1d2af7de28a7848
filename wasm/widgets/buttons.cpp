#include "wasm/widgets/buttons.hpp"

#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

constexpr float label_padding = 18;
constexpr float mark_radius = 10;

std::string spoken_of(Ui& ui, const std::string& label, const std::string& about) {
    if (about.empty()) return label;
    return ui.say({base::Word::spoken_pair, {base::text_arg(label), base::text_arg(about)}});
}

bool press(Ui& ui, Role role, const ButtonSpec& button, const Rect& box) {
    Node node;
    node.role = role;
    node.id = button.id;
    node.name = spoken_of(ui, button.label, button.about);
    node.box = box;
    node.enabled = button.enabled;
    return ui.active(std::move(node));
}

void label_lines(Ui& ui, Type type, Tone tone, const Rect& box, const std::string& label) {
    const auto lines = ui.pen().wrap(type, label, box.width() - 2 * space::small);
    const float line = ui.pen().line(type);
    float y = box.top + (box.height() - line * static_cast<float>(lines.size())) / 2;
    for (const std::string_view text : lines) {
        ui.pen().text_middle(type, tone, {box.left, y, box.right, y + line}, text);
        y += line;
    }
}

float height_for(Ui& ui, Type type, const std::string& label, float least) {
    const float words = height_of(ui, type, label, ui.width() - 2 * space::small);
    return std::max(least, words + 2 * space::middle);
}

bool outlined(Ui& ui, const ButtonSpec& button, const Rect& box) {
    ui.pen().fill(box, Tone::card, shape::card_radius);
    ui.press_mark(button.id, box, shape::card_radius);
    ui.pen().outline(
        box, button.enabled ? Tone::ink : Tone::line, shape::card_radius, shape::outline);
    label_lines(ui, Type::body_strong, button.enabled ? Tone::ink : Tone::soft, box, button.label);
    return press(ui, Role::button, button, box);
}

/// What its figure leaves of a row for the title.
float title_width(Ui& ui, const RowSpec& row, float width) {
    if (row.figure.empty()) return width;
    return width - ui.pen().width(Type::body_strong, row.figure) - space::middle;
}

float row_words(Ui& ui, const RowSpec& row, float width) {
    float height = height_of(ui, Type::name, row.title, title_width(ui, row, width));
    for (const std::string& detail : row.details)
        height += height_of(ui, Type::body, detail, width);
    return height;
}

bool choice_row(Ui& ui, const ChoiceSpec& choice) {
    Pen& pen = ui.pen();
    const float inset = space::middle + 2 * mark_radius + space::middle;
    const Type type = choice.chosen ? Type::body_strong : Type::body;
    const float words = height_of(ui, type, choice.label, ui.width() - inset - space::small);
    const Rect box = ui.take(std::max(target::least, words + 2 * space::middle));
    pen.fill(box, Tone::card, shape::field_radius);
    ui.press_mark(choice.id, box, shape::field_radius);
    const float width = choice.chosen ? shape::chosen : shape::stroke;
    pen.outline(box, choice.chosen ? Tone::ink : Tone::line, shape::field_radius, width);
    const Point mark{box.left + space::middle + mark_radius, box.top + box.height() / 2};
    pen.ring(mark, mark_radius - 1, choice.chosen ? Tone::ink : Tone::soft, shape::chosen);
    if (choice.chosen) pen.disc(mark, mark_radius / 2, Tone::ink);
    const float top = box.top + (box.height() - words) / 2;
    ui.inside({box.left + inset, top, box.right - space::small, top},
              [&] { quiet_paragraph(ui, type, Tone::ink, choice.label); });
    Node node;
    node.role = Role::choice;
    node.id = choice.id;
    node.name = spoken(ui, choice);
    node.value = choice.chosen ? "on" : "";
    node.box = box;
    return ui.active(std::move(node));
}

}  // namespace

std::string spoken(Ui& ui, const ChoiceSpec& choice) {
    return spoken_of(ui, choice.label, choice.about);
}

bool primary_button(Ui& ui, const std::string& id, const std::string& label, bool enabled) {
    const Rect box = ui.take(height_for(ui, Type::answer, label, target::primary));
    if (enabled) {
        ui.pen().fill(box, Tone::ink, shape::card_radius);
    } else {
        ui.pen().fill(box, Tone::key, shape::card_radius);
    }
    label_lines(ui, Type::answer, enabled ? Tone::paper : Tone::soft, box, label);
    if (enabled) ui.press_mark(id, box, shape::card_radius);
    return press(ui, Role::button, {id, label, enabled, {}}, box);
}

bool quiet_button(Ui& ui, const std::string& id, const std::string& label, bool enabled) {
    return quiet_button(ui, {id, label, enabled, {}});
}

bool quiet_button(Ui& ui, const ButtonSpec& button) {
    const Rect box = ui.take(height_for(ui, Type::body_strong, button.label, target::least));
    return outlined(ui, button, box);
}

std::int32_t button_row(Ui& ui, const std::vector<ButtonSpec>& buttons) {
    std::int32_t pressed = -1;
    float x = ui.left();
    float y = ui.y();
    for (std::uint32_t i = 0; i < buttons.size(); ++i) {
        const float words = ui.pen().width(Type::body_strong, buttons[i].label);
        const float width = std::min(ui.width(), std::max(96.0F, words + 2 * label_padding));
        if (x > ui.left() && x + width > ui.column().right()) {
            x = ui.left();
            y += target::least + target::apart;
        }
        if (outlined(ui, buttons[i], {x, y, x + width, y + target::least})) {
            pressed = static_cast<std::int32_t>(i);
        }
        x += width + target::apart;
    }
    ui.use({ui.left(), ui.width(), buttons.empty() ? y : y + target::least});
    return pressed;
}

std::int32_t choice_list(Ui& ui, const std::vector<ChoiceSpec>& choices) {
    std::int32_t chosen = -1;
    for (std::uint32_t i = 0; i < choices.size(); ++i) {
        if (i > 0) ui.gap(target::apart);
        if (choice_row(ui, choices[i])) chosen = static_cast<std::int32_t>(i);
    }
    return chosen;
}

float open_row_height(Ui& ui, const RowSpec& row, float width) {
    const float inner = width - 2 * space::base - space::wide;
    return std::max(target::primary, row_words(ui, row, inner) + 2 * space::middle);
}

bool open_row(Ui& ui, const RowSpec& row, const Rect& box) {
    Pen& pen = ui.pen();
    const float inner = box.width() - 2 * space::base - space::wide;
    list_item_ground(ui, row.item, row.id, box);
    const float top = box.top + (box.height() - row_words(ui, row, inner)) / 2;
    std::string spoken = row.title;
    const float left = box.left + space::base;
    if (!row.figure.empty()) {
        // On the line of the title, by the feet of the letters.
        const float lower = (pen.line(Type::name) - pen.line(Type::body_strong)) / 2;
        pen.text_right(Type::body_strong, Tone::ink, {left + inner, top + lower}, row.figure);
        spoken += ". " + row.figure;
    }
    ui.inside({left, top, left + title_width(ui, row, inner), top},
              [&] { quiet_paragraph(ui, Type::name, Tone::ink, row.title); });
    const float below = top + height_of(ui, Type::name, row.title, title_width(ui, row, inner));
    ui.inside({left, below, left + inner, below}, [&] {
        for (const std::string& detail : row.details) {
            quiet_paragraph(ui, Type::body, Tone::soft, detail);
            if (!detail.empty()) spoken += ". " + detail;
        }
    });
    forward_arrow(pen, {box.right - space::base, box.top + box.height() / 2});
    return list_item(ui, row.item, row.id, spoken, box);
}

}  // namespace twoclocks::canvas
