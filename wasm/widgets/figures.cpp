#include "wasm/widgets/figures.hpp"

#include <algorithm>
#include <utility>

#include "engine/base/message_args.hpp"

namespace twoclocks::canvas {
namespace {

constexpr float bar_between = 10;

std::string spoken(Ui& ui, const FigureSpec& figure) {
    const std::string said =
        ui.say({base::Word::spoken_figure,
                {base::text_arg(figure.label), base::text_arg(in_words(ui, figure.said))}});
    if (figure.about.empty()) return said;
    return ui.say({base::Word::spoken_pair, {base::text_arg(figure.about), base::text_arg(said)}});
}

void figure_text(Pen& pen, Type type, const FigureSpec& figure, Point top_left) {
    if (!figure.over) {
        pen.text(type, figure.tone, top_left, figure.said.text);
        return;
    }
    const float width = pen.width(type, figure.said.text);
    pen.fill({top_left.x,
              top_left.y,
              top_left.x + width + 2 * space::small,
              top_left.y + pen.line(type)},
             Tone::ink,
             shape::over_radius);
    pen.text(type, Tone::paper, {top_left.x + space::small, top_left.y}, figure.said.text);
}

/// Label above, figure below, both one tap. Returns true when tapped.
bool figure_block(Ui& ui, const FigureSpec& figure, Type type, const Rect& box) {
    Pen& pen = ui.pen();
    ui.press_mark(figure.id, grown(box, space::tight), shape::tight_radius);
    float y = box.top;
    const bool questioned = figure.said.questioned;
    const auto lines =
        pen.wrap(Type::small, figure.label, box.width() - sign_room(pen, questioned));
    for (std::size_t line = 0; line < lines.size(); ++line) {
        const bool last = line + 1 == lines.size();
        figure_label(pen, Type::small, {box.left, y}, lines[line], questioned && last);
        y += pen.line(Type::small);
    }
    figure_text(pen, type, figure, {box.left, y + space::hair});
    return ui.active(Role::link, figure.id, spoken(ui, figure), box);
}

float label_height(Ui& ui, const FigureSpec& figure, float width) {
    const float room = width - sign_room(ui.pen(), figure.said.questioned);
    return height_of(ui, Type::small, figure.label, room) + space::hair;
}

}  // namespace

Tone tone_of(views::Edge edge) {
    if (edge == views::Edge::hours) return Tone::hours;
    return edge == views::Edge::calendar ? Tone::calendar : Tone::ink;
}

Tone fill_of(views::Edge edge) {
    if (edge == views::Edge::hours) return Tone::hours_fill;
    return edge == views::Edge::calendar ? Tone::calendar_fill : Tone::ink;
}

void figure_label(Pen& pen, Type type, Point top_left, std::string_view label, bool questioned) {
    const float width = pen.width(type, label);
    pen.text(type, Tone::soft, top_left, label);
    underline(pen, type, Tone::line, top_left, width);
    if (questioned)
        question_sign(pen, {top_left.x + width + space::small, top_left.y + pen.line(type) / 2});
}

std::int32_t figure_pair(Ui& ui, const FigureSpec& left, const FigureSpec& right) {
    const float each = (ui.width() - space::base) / 2;
    const float inside = each - (left.over || right.over ? 2 * space::small : 0);
    const Type type = fitting_type(ui.pen(),
                                   {Type::figure, Type::title, Type::name, Type::answer},
                                   {left.said.text, right.said.text},
                                   inside);
    const float labels = std::max(label_height(ui, left, each), label_height(ui, right, each));
    const Rect row = ui.take(std::max(target::least, labels + ui.pen().line(type)));
    std::int32_t tapped = -1;
    if (figure_block(ui, left, type, {row.left, row.top, row.left + each, row.bottom})) tapped = 0;
    if (figure_block(ui, right, type, {row.right - each, row.top, row.right, row.bottom}))
        tapped = 1;
    return tapped;
}

std::int32_t figure_cells(Ui& ui, const std::vector<FigureSpec>& figures) {
    Pen& pen = ui.pen();
    std::int32_t tapped = -1;
    float x = ui.left();
    float y = ui.y();
    float low = y;
    for (std::uint32_t i = 0; i < figures.size(); ++i) {
        const FigureSpec& figure = figures[i];
        const std::string& text = figure.said.text;
        const Type type = fitting_type(pen, {Type::name, Type::body_strong}, {text}, ui.width());
        const float words = pen.width(type, text) + (figure.over ? 2 * space::small : 0);
        const float label =
            pen.width(Type::small, figure.label) + sign_room(pen, figure.said.questioned);
        const float width = std::min(ui.width(), std::max({64.0F, words, label}) + space::tight);
        if (x > ui.left() && x + width > ui.column().right()) {
            x = ui.left();
            y = low + target::apart;
        }
        const float height =
            std::max(target::least, label_height(ui, figure, width) + pen.line(type));
        if (figure_block(ui, figure, type, {x, y, x + width, y + height})) {
            tapped = static_cast<std::int32_t>(i);
        }
        low = std::max(low, y + height);
        x += width + space::wide;
    }
    ui.use({ui.left(), ui.width(), low});
    return tapped;
}

void pair_rows(Ui& ui, const std::vector<PairSpec>& rows) {
    Pen& pen = ui.pen();
    float left = 0;
    for (const PairSpec& row : rows) {
        const float sign = sign_room(pen, row.right.questioned);
        left = std::max(left, pen.width(Type::body_strong, row.left) + sign);
    }
    // A hair more than the longest, which would otherwise wrap by rounding.
    left = std::min(left + space::hair, ui.width() * page::half);
    for (const PairSpec& row : rows) {
        const float room = ui.width() - left - space::base;
        const float words = std::max(height_of(ui, Type::body_strong, row.left, left),
                                     height_of(ui, Type::body, row.right.text, room));
        const Rect box = ui.take(words + 2 * space::small);
        pen.line({box.left, box.bottom}, {box.right, box.bottom}, Tone::line, shape::stroke);
        const float top = box.top + space::small;
        ui.inside({box.left, top, box.left + left, 0},
                  [&] { quiet_paragraph(ui, Type::body_strong, Tone::ink, row.left); });
        ui.inside({box.right - room, top, box.right, 0},
                  [&] { quiet_paragraph(ui, Type::body, Tone::ink, row.right.text); });
        if (row.right.questioned) {
            const float middle = top + pen.line(Type::body_strong) / 2;
            question_sign(pen, {box.left + left - pen.line(Type::small), middle});
        }
        Node node;
        node.name = ui.say({base::Word::spoken_pair,
                            {base::text_arg(row.left), base::text_arg(in_words(ui, row.right))}});
        node.box = box;
        ui.node(std::move(node));
    }
}

void clock_bar(Pen& pen, const Rect& row, const views::ClockView& clock, const BarSpec& spec) {
    const auto [edge, left, words_width] = spec;
    const bool hours = edge == views::Edge::hours;
    const float middle = row.top + row.height() / 2;
    const Rect bar{row.left,
                   middle - shape::bar_height / 2,
                   row.right - words_width - bar_between,
                   middle + shape::bar_height / 2};
    const float y = row.top + (row.height() - pen.line(Type::body_strong)) / 2;
    if (!clock.known) {
        pen.outline(bar, Tone::soft, shape::bar_radius, shape::stroke);
        pen.text_right(Type::body, Tone::soft, {row.right, y}, left);
        return;
    }
    pen.fill(bar, hours ? Tone::hours_track : Tone::calendar_track, shape::bar_radius);
    const float share = static_cast<float>(std::clamp(clock.left_permille, 0, 1000)) / 1000;
    if (share > 0) {
        const float end = bar.left + std::max(shape::bar_height, bar.width() * share);
        pen.fill({bar.left, bar.top, end, bar.bottom}, fill_of(edge), shape::bar_radius);
    }
    if (clock.over) {
        const float width = pen.width(Type::body_strong, left) + 2 * space::tight;
        pen.fill({row.right - width, row.top + 1, row.right, row.bottom - 1},
                 Tone::ink,
                 shape::over_radius);
        pen.text_right(Type::body_strong, Tone::paper, {row.right - space::tight, y}, left);
        return;
    }
    pen.text_right(Type::body_strong, tone_of(edge), {row.right, y}, left);
}

}  // namespace twoclocks::canvas
