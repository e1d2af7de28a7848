#include "wasm/widgets/ranked_bars.hpp"

#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

constexpr float whole_permille = 1'000;

void row(Ui& ui, const views::MoverRow& told) {
    Pen& pen = ui.pen();
    const std::string amount = ui.say(told.swing);
    const float amount_width = pen.width(Type::body_strong, amount);
    const float line = pen.line(Type::body);
    const Rect box = ui.take(line + space::tight + shape::bar_height + space::small);
    const float name_width = box.width() - amount_width - space::base;
    const std::string name = ui.say(told.name);
    pen.text(Type::body, Tone::ink, {box.left, box.top}, pen.shorten(Type::body, name, name_width));
    pen.text_right(Type::body_strong, Tone::ink, {box.right, box.top}, amount);
    const float top = box.top + line + space::tight;
    const float share = static_cast<float>(told.permille) / whole_permille;
    // Outlined: in the sun a line is as black as what is filled.
    pen.outline({box.left, top, box.right, top + shape::bar_height}, Tone::line, 0, shape::stroke);
    pen.fill({box.left, top, box.left + box.width() * share, top + shape::bar_height}, Tone::ink);
    Node node;
    node.role = Role::text;
    node.name = name + ": " + amount;
    node.box = box;
    ui.node(std::move(node));
}

}  // namespace

void ranked_bars(Ui& ui, const std::vector<views::MoverRow>& rows) {
    for (const views::MoverRow& told : rows)
        row(ui, told);
}

}  // namespace twoclocks::canvas
