#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

constexpr float chip_height = 26;
constexpr float chip_padding = 10;

void draw_lines(
    Pen& pen, Type type, Tone tone, const Rect& box, const std::vector<std::string_view>& lines) {
    float y = box.top;
    for (const std::string_view line : lines) {
        pen.text(type, tone, {box.left, y}, line);
        y += pen.line(type);
    }
}

float height_of_lines(Pen& pen, Type type, const std::vector<std::string_view>& lines) {
    return pen.line(type) * static_cast<float>(lines.size());
}

}  // namespace

float height_of(Ui& ui, Type type, std::string_view text, float width) {
    return height_of_lines(ui.pen(), type, ui.pen().wrap(type, text, width));
}

void quiet_paragraph(Ui& ui, Type type, Tone tone, std::string_view text) {
    const auto lines = ui.pen().wrap(type, text, ui.width());
    const Rect box = ui.take(height_of_lines(ui.pen(), type, lines));
    if (ui.in_sight(box)) draw_lines(ui.pen(), type, tone, box, lines);
}

void paragraph(Ui& ui, Type type, Tone tone, std::string_view text) {
    if (text.empty()) return;
    const float top = ui.y();
    quiet_paragraph(ui, type, tone, text);
    Node node;
    node.name = std::string{text};
    node.box = {ui.left(), top, ui.column().right(), ui.y()};
    ui.node(std::move(node));
}

void heading(Ui& ui, std::int32_t level, std::string_view text) {
    const float top = ui.y();
    quiet_paragraph(ui, level <= 1 ? Type::title : Type::name, Tone::ink, text);
    Node node;
    node.role = Role::heading;
    node.level = level;
    node.name = std::string{text};
    node.box = {ui.left(), top, ui.column().right(), ui.y()};
    ui.node(std::move(node));
}

void underline(Pen& pen, Type type, Tone tone, Point top_left, float width) {
    const float y = top_left.y + pen.line(type) - 2;
    pen.line({top_left.x, y}, {top_left.x + width, y}, tone, shape::outline);
}

Said said(Ui& ui, const views::Figure& figure) {
    return {ui.say(figure.text), figure.questioned};
}

Said said(Ui& ui, const views::Told& told) {
    return {ui.say(told.text), told.questioned};
}

std::string in_words(Ui& ui, const Said& said) {
    if (!said.questioned) return said.text;
    return ui.say({base::Word::spoken_questioned, {base::text_arg(said.text)}});
}

float sign_room(Pen& pen, bool questioned) {
    return questioned ? pen.line(Type::small) + space::small : 0;
}

void question_sign(Pen& pen, Point left) {
    const float across = pen.line(Type::small);
    const Point middle{left.x + across / 2, left.y};
    pen.ring(middle, across / 2 - 1, Tone::ink, shape::outline);
    pen.text_middle(Type::small_strong,
                    Tone::ink,
                    {left.x, left.y - across / 2, left.x + across, left.y + across / 2},
                    "?");
}

bool answer_link(Ui& ui, const std::string& id, Type type, Tone tone, const Said& said) {
    Pen& pen = ui.pen();
    const std::string why = ui.say(base::Word::why_link);
    const float sign = sign_room(pen, said.questioned);
    auto lines = pen.wrap(type, said.text, ui.width() - sign);
    const Type tail = Type::body;
    const float end = lines.empty() ? 0 : pen.width(type, lines.back());
    const float last = end + sign + space::small;
    const float tail_width = pen.width(tail, why);
    const bool own_line = last + tail_width > ui.width();
    const float words = height_of_lines(pen, type, lines) + (own_line ? pen.line(tail) : 0);
    const Rect box = ui.take(std::max(target::least, words));
    const float top = box.top + (box.height() - words) / 2;
    ui.press_mark(id, grown(box, space::tight), shape::tight_radius);
    draw_lines(pen, type, tone, {box.left, top, box.right, box.bottom}, lines);
    if (said.questioned) {
        const float middle = top + (static_cast<float>(lines.size()) - 0.5F) * pen.line(type);
        question_sign(pen, {box.left + end + space::small, middle});
    }
    const Point at{
        own_line ? box.left : box.left + last,
        top + words - pen.line(tail) - (own_line ? 0 : (pen.line(type) - pen.line(tail)) / 2)};
    pen.text(tail, Tone::soft, at, why);
    underline(pen, tail, Tone::soft, at, tail_width);
    return ui.active(Role::link, id, in_words(ui, said) + " " + why, box);
}

bool line_link(Ui& ui, const std::string& id, Type type, Tone tone, const Said& said) {
    Pen& pen = ui.pen();
    const auto lines = pen.wrap(type, said.text, ui.width() - sign_room(pen, said.questioned));
    const float words = height_of_lines(pen, type, lines);
    const Rect box = ui.take(std::max(target::least, words));
    float y = box.top + (box.height() - words) / 2;
    ui.press_mark(id, grown(box, space::tight), shape::tight_radius);
    for (const std::string_view line : lines) {
        pen.text(type, tone, {box.left, y}, line);
        underline(pen, type, tone, {box.left, y}, pen.width(type, line));
        y += pen.line(type);
    }
    if (said.questioned && !lines.empty()) {
        const float end = box.left + pen.width(type, lines.back()) + space::small;
        question_sign(pen, {end, y - pen.line(type) / 2});
    }
    return ui.active(Role::link, id, in_words(ui, said), box);
}

float state_chip_width(Pen& pen, std::string_view word) {
    return pen.width(Type::small_strong, word) + 2 * chip_padding;
}

Rect state_chip(Pen& pen, views::State state, std::string_view word, Point top_right) {
    const bool stops = state == views::State::over || state == views::State::before_next_flight;
    const bool asks = state == views::State::act || state == views::State::due;
    const float width = state_chip_width(pen, word);
    const Rect box{top_right.x - width, top_right.y, top_right.x, top_right.y + chip_height};
    if (stops) {
        pen.fill(box, Tone::ink, shape::over_radius);
        pen.text_middle(Type::small_strong, Tone::paper, box, word);
    } else if (asks) {
        pen.outline(box, Tone::ink, shape::chip_radius, shape::outline);
        pen.text_middle(Type::small_strong, Tone::ink, box, word);
    } else if (state == views::State::unknown) {
        pen.outline(box, Tone::soft, shape::over_radius, shape::stroke);
        pen.text_middle(Type::small_strong, Tone::soft, box, word);
    } else {
        const float y = top_right.y + (chip_height - pen.line(Type::small)) / 2;
        pen.text_right(Type::small, Tone::soft, {top_right.x, y}, word);
    }
    return box;
}

Type fitting_type(Pen& pen,
                  std::initializer_list<Type> types,
                  std::initializer_list<std::string_view> texts,
                  float width) {
    Type last = Type::body_strong;
    for (const Type type : types) {
        last = type;
        const bool fits = std::all_of(texts.begin(), texts.end(), [&](std::string_view text) {
            return pen.width(type, text) <= width;
        });
        if (fits) return type;
    }
    return last;
}

void forward_arrow(Pen& pen, Point tip) {
    pen.path({{tip.x - 6, tip.y - 6}, tip, {tip.x - 6, tip.y + 6}}, Tone::soft, 2);
}

void caution_line(Ui& ui) {
    ui.gap(space::base);
    paragraph(ui, Type::small, Tone::soft, ui.say(base::Word::caution_short));
    ui.gap(space::base);
}

}  // namespace twoclocks::canvas
