#include "wasm/widgets/part_row.hpp"

#include "wasm/widgets/text.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

using base::Word;

constexpr float part_arrow = space::wide;
constexpr float indent = space::base;  // what an assembly moves its parts to the right
constexpr std::int32_t most_steps = 3;
constexpr float figures_most = 360;  // a figure stays near its label on a wide page

struct Line {
    std::string label;
    std::string figure;
};

struct PartWords {
    std::string name;
    std::string plate;
    std::string position;
    std::vector<Line> lines;
    std::string marks;
};

PartWords words_of(Ui& ui, const views::PartRow& row) {
    PartWords words{ui.say(row.name), ui.say(row.plate), ui.say(row.position), {}, {}};
    words.lines = {{ui.say(Word::label_since_new), ui.say(row.since_new)},
                   {ui.say(Word::label_since_overhaul), ui.say(row.since_overhaul)},
                   {ui.say(Word::field_condition), ui.say(row.condition)}};
    for (const base::Message& mark : row.marks) {
        if (!words.marks.empty()) words.marks += ", ";
        words.marks += ui.say(mark);
    }
    return words;
}

/// Label and figure stand on one line where both fit.
bool fits(Ui& ui, const Line& line, float width) {
    return ui.pen().width(Type::body, line.label) + space::middle +
               ui.pen().width(Type::body_strong, line.figure) <=
           width;
}

float line_height(Ui& ui, const Line& line, float width) {
    if (fits(ui, line, width)) return ui.pen().line(Type::body_strong);
    return height_of(ui, Type::body, line.label, width) +
           height_of(ui, Type::body_strong, line.figure, width);
}

float words_height(Ui& ui, const PartWords& words, float width) {
    float height = height_of(ui, Type::name, words.name, width) +
                   height_of(ui, Type::body, words.plate, width) +
                   height_of(ui, Type::body, words.position, width) + space::small;
    for (const Line& line : words.lines)
        height += line_height(ui, line, width);
    if (!words.marks.empty())
        height += space::tight + height_of(ui, Type::small_strong, words.marks, width);
    return height;
}

void draw_line(Ui& ui, const Line& line, float right) {
    if (!fits(ui, line, ui.width())) {
        quiet_paragraph(ui, Type::body, Tone::soft, line.label);
        quiet_paragraph(ui, Type::body_strong, Tone::ink, line.figure);
        return;
    }
    const Rect row = ui.take(ui.pen().line(Type::body_strong));
    ui.pen().text(Type::body, Tone::soft, {row.left, row.top}, line.label);
    ui.pen().text_right(Type::body_strong, Tone::ink, {right, row.top}, line.figure);
}

/// Figures end at `right`, the same in and out of an assembly.
void draw_words(Ui& ui, const PartWords& words, float right) {
    quiet_paragraph(ui, Type::name, Tone::ink, words.name);
    quiet_paragraph(ui, Type::body, Tone::soft, words.plate);
    quiet_paragraph(ui, Type::body, Tone::soft, words.position);
    ui.gap(space::small);
    for (const Line& line : words.lines)
        draw_line(ui, line, right);
    if (words.marks.empty()) return;
    ui.gap(space::tight);
    quiet_paragraph(ui, Type::small_strong, Tone::ink, words.marks);
}

std::string spoken(Ui& ui, const PartWords& words) {
    std::string out = words.name + ", " + words.plate;
    const auto add = [&](const std::string& text) {
        if (!text.empty()) out += ". " + text;
    };
    add(words.position);
    for (const Line& line : words.lines)
        add(ui.say({Word::spoken_pair, {base::text_arg(line.label), base::text_arg(line.figure)}}));
    add(words.marks);
    return out;
}

float inset_of(const views::PartRow& row) {
    return indent * static_cast<float>(std::min(row.depth, most_steps));
}

float inner_width(const views::PartRow& row, float width) {
    return width - inset_of(row) - 2 * space::base - part_arrow;
}

}  // namespace

float part_row_height(Ui& ui, const views::PartRow& row, float width) {
    const float words = words_height(ui, words_of(ui, row), inner_width(row, width));
    return std::max(target::primary, words + 2 * space::middle);
}

bool part_row(Ui& ui, const views::PartRow& row, const ListItem& item, const Rect& box) {
    Pen& pen = ui.pen();
    const std::string id = "part-" + base::print_id(row.part);
    const Rect card{box.left + inset_of(row), box.top, box.right, box.bottom};
    if (row.depth > 0) {
        // A rail down the side ties a part to the assembly above it.
        const float rail = card.left - indent / 2;
        const Point corner{rail, box.top + space::wide};
        pen.line({rail, box.top - target::apart}, corner, Tone::line, shape::chosen);
        pen.line(corner, {card.left, corner.y}, Tone::line, shape::chosen);
    }
    list_item_ground(ui, item, id, card);
    const float left = card.left + space::base;
    const PartWords words = words_of(ui, row);
    const float end = left + inner_width(row, box.width());
    ui.inside({left, box.top + space::middle, end, 0},
              [&] { draw_words(ui, words, std::min(end, box.left + figures_most)); });
    forward_arrow(pen, {card.right - space::middle, box.top + box.height() / 2});
    return list_item(ui, item, id, spoken(ui, words), card);
}

}  // namespace twoclocks::canvas
