#include "wasm/widgets/pad.hpp"

#include "wasm/widgets/text.hpp"

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

bool pad_key(Ui& ui, char key, const Rect& box) {
    Pen& pen = ui.pen();
    const std::string id = std::string{"key-"} + (key == '.' ? 'd' : key == '<' ? 'e' : key);
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
    }
    return ui.active(Role::button, id, name, box);
}

}  // namespace

char number_pad(Ui& ui) {
    char pressed = 0;
    const float width = (ui.width() - 2 * target::apart) / 3;
    const Rect area = ui.take(pad_height());
    for (std::uint32_t i = 0; i < keys.size(); ++i) {
        const std::uint32_t across = i % 3;
        const std::uint32_t down = i / 3;
        const float left = area.left + static_cast<float>(across) * (width + target::apart);
        const float top = area.top + static_cast<float>(down) * (target::pad_key + target::apart);
        if (pad_key(ui, keys[i], {left, top, left + width, top + target::pad_key}))
            pressed = keys[i];
    }
    return pressed;
}

void typed_figure(Ui& ui,
                  const std::string& label,
                  const std::string& digits,
                  const std::string& unit) {
    Pen& pen = ui.pen();
    const Type type = fitting_type(pen,
                                   {Type::digits, Type::figure, Type::title},
                                   {digits},
                                   ui.width() - pen.width(Type::name, unit) - space::small);
    const Rect box = ui.take(pen.line(Type::digits));
    const float y = box.top + (box.height() - pen.line(type)) / 2;
    const std::string shown = digits.empty() ? "0" : digits;
    pen.text(type, digits.empty() ? Tone::soft : Tone::hours, {box.left, y}, shown);
    const float width = pen.width(type, shown);
    pen.text(Type::name,
             Tone::hours,
             {box.left + width + space::small, y + pen.line(type) - pen.line(Type::name) - 5},
             unit);
    Node node;
    node.role = Role::status;
    node.name = label;
    node.value = digits;
    node.box = box;
    ui.node(std::move(node));
}

}  // namespace twoclocks::canvas
