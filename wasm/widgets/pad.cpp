#include "wasm/widgets/pad.hpp"

#include "wasm/widgets/buttons.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr std::array<char, 12> keys{'1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0', '<'};

/// An arrow to the left with a cross in it: takes the last digit back.
void erase_mark(Pen& pen, const Rect& box) {
    const Point middle{box.left + box.width() / 2, box.top + box.height() / 2};
    pen.path({{middle.x - 15, middle.y},
              {middle.x - 6, middle.y - 10},
              {middle.x + 14, middle.y - 10},
              {middle.x + 14, middle.y + 10},
              {middle.x - 6, middle.y + 10},
              {middle.x - 15, middle.y}},
             Tone::ink,
             2);
    pen.line({middle.x - 1, middle.y - 4}, {middle.x + 7, middle.y + 4}, Tone::ink, 2);
    pen.line({middle.x - 1, middle.y + 4}, {middle.x + 7, middle.y - 4}, Tone::ink, 2);
}

/// What a key says and how its id ends.
std::string key_end(char key) {
    if (key == '.') return "d";
    if (key == ':') return "m";
    return key == '<' ? "e" : std::string(1, key);
}

bool pad_key(Ui& ui, const PadSpec& spec, char key, const Rect& box) {
    Pen& pen = ui.pen();
    const std::string id = spec.key + "-" + key_end(key);
    pen.fill(box, Tone::key, shape::card_radius);
    ui.press_mark(id, box, shape::card_radius);
    if (pen.look() == Look::sun) pen.outline(box, Tone::line, shape::card_radius, shape::outline);
    std::string name{key};
    if (key == '<') {
        erase_mark(pen, box);
        name = ui.say(Word::erase_digit);
    } else if (key == '.') {
        pen.text_middle(Type::title, Tone::ink, box, ui.region().decimal_sign);
        name = ui.say(Word::decimal_sign);
    } else {
        pen.text_middle(Type::title, Tone::ink, box, name);
        if (key == ':') name = ui.say(Word::minutes_sign);
    }
    return ui.active(Role::button, id, name, box);
}

/// Clears the figure, or brings it back. Takes the right end of the box.
char clear_button(Ui& ui, const TypedFigure& figure, Rect& box) {
    if (!figure.can_clear && !figure.can_undo_clear) return 0;
    const std::string label = ui.say(figure.can_clear ? Word::pad_clear : Word::button_undo);
    const float width =
        std::max(target::button_least, ui.pen().width(Type::body_strong, label) + 2 * space::wide);
    const float top = box.top + (box.height() - target::least) / 2;
    bool pressed = false;
    ui.inside({box.right - width, top, box.right, box.bottom},
              [&] { pressed = quiet_button(ui, "pad-clear", label); });
    box.right -= width + target::apart;
    if (!pressed) return 0;
    return figure.can_clear ? 'c' : 'u';
}

}  // namespace

char number_pad(Ui& ui, const PadSpec& spec) {
    char pressed = 0;
    const float width = (ui.width() - 2 * target::apart) / 3;
    const Rect area = ui.take(pad_height());
    for (std::uint32_t i = 0; i < keys.size(); ++i) {
        const char key = keys[i] == '.' ? spec.sign : keys[i];
        if (key == 0) continue;
        const std::uint32_t across = i % 3;
        const std::uint32_t down = i / 3;
        const float left = area.left + static_cast<float>(across) * (width + target::apart);
        const float top = area.top + static_cast<float>(down) * (target::pad_key + target::apart);
        if (pad_key(ui, spec, key, {left, top, left + width, top + target::pad_key})) pressed = key;
    }
    return pressed;
}

char typed_figure(Ui& ui, const TypedFigure& figure) {
    Pen& pen = ui.pen();
    Rect box = ui.take(pen.line(Type::digits));
    const char pressed = clear_button(ui, figure, box);
    const float words = pen.width(Type::name, figure.unit) + space::small;
    const Type type = fitting_type(
        pen, {Type::digits, Type::figure, Type::title}, {figure.digits}, box.width() - words);
    const float y = box.top + (box.height() - pen.line(type)) / 2;
    const bool empty = figure.digits.empty();
    const std::string shown = empty ? "0" : figure.digits;
    pen.text(type, empty ? Tone::soft : Tone::hours, {box.left, y}, shown);
    const float width = pen.width(type, shown);
    pen.text(Type::name,
             Tone::hours,
             {box.left + width + space::small, y + pen.line(type) - pen.line(Type::name) - 5},
             figure.unit);
    Node node;
    node.role = Role::status;
    node.name = figure.label;
    node.value = figure.digits;
    node.box = box;
    ui.node(std::move(node));
    return pressed;
}

}  // namespace twoclocks::canvas
