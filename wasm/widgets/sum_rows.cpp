#include "wasm/widgets/sum_rows.hpp"

#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

void sum_row(Ui& ui, const views::SumsPair& told) {
    Pen& pen = ui.pen();
    const std::string figure = ui.say(told.figure);
    const std::string name = ui.say(told.name);
    const std::string below =
        told.below.word == base::Word::blank ? std::string{} : ui.say(told.below);
    const float room = ui.width() - pen.width(Type::body_strong, figure) - space::base;
    const float first = height_of(ui, Type::body, name, room);
    const float words = first + (below.empty() ? 0 : height_of(ui, Type::small, below, ui.width()));
    const Rect box = ui.take(words + 2 * space::small);
    const float top = box.top + space::small;
    pen.line({box.left, box.bottom}, {box.right, box.bottom}, Tone::line, shape::stroke);
    ui.inside({box.left, top, box.left + room, 0},
              [&] { quiet_paragraph(ui, Type::body, Tone::ink, name); });
    pen.text_right(Type::body_strong, Tone::ink, {box.right, top}, figure);
    if (!below.empty())
        ui.inside({box.left, top + first, box.right, 0},
                  [&] { quiet_paragraph(ui, Type::small, Tone::soft, below); });
    Node node;
    node.role = Role::text;
    node.name = name + ": " + figure + (below.empty() ? "" : ". " + below);
    node.box = box;
    ui.node(std::move(node));
}

}  // namespace

void sum_rows(Ui& ui, const std::vector<views::SumsPair>& rows) {
    for (const views::SumsPair& told : rows)
        sum_row(ui, told);
    if (!rows.empty()) ui.gap(space::small);
}

}  // namespace twoclocks::canvas
