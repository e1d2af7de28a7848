#include "wasm/widgets/life_box_words.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::canvas {
namespace {

using views::BoxMark;
using views::Edge;
using views::LifeBoxView;

constexpr float row_gap = 7;
constexpr float row_height = 20;

void diamond(Pen& pen, Point middle) {
    pen.area({{middle.x, middle.y - 6},
              {middle.x + 6, middle.y},
              {middle.x, middle.y + 6},
              {middle.x - 6, middle.y}},
             Tone::ink);
}

Rect rows_below(const BoxPlot& plot) {
    const Rect& in = plot.inner;
    return {in.left, in.bottom, in.right, in.bottom + row_gap + 2 * row_height};
}

}  // namespace

BoxWords::BoxWords(Ui& ui, const LifeBoxView& view, const BoxPlot& plot)
    : ui_(ui), view_(view), plot_(plot), placer_(plot.inner), below_(rows_below(plot)) {
    const Pen& pen = ui_.pen();
    const Rect& in = plot_.inner;
    start_ = ui_.say(view_.start);
    across_ = ui_.say(view_.width);
    const float y = in.bottom + row_gap;
    const float across = pen.width(Type::small_strong, across_);
    below_.add_box({in.left, y, in.left + pen.width(Type::small, start_) + 8, y + row_height});
    below_.add_box({in.right - across - 8, y, in.right, y + row_height});
    for (const BoxMark& mark : view_.marks) {
        if (mark.edge == Edge::calendar) place_day(mark);
    }
}

void BoxWords::place_day(const BoxMark& mark) {
    const Rect& in = plot_.inner;
    const Point foot = plot_.at(static_cast<float>(mark.at_permille), 0);
    DayWords day{foot, ui_.say(mark.label), {}};
    const float width = ui_.pen().width(Type::small_strong, day.words);
    const float most_left = std::max(in.left, in.right - width);
    const float left = std::clamp(foot.x - width / 2, in.left, most_left);
    std::vector<Rect> places;
    for (const float y : {in.bottom + row_gap, in.bottom + row_gap + row_height}) {
        places.push_back({left, y, left + width, y + row_height});
    }
    day.box = below_.place(places);
    second_row_ = second_row_ || day.box.top > in.bottom + row_gap + 1;
    days_.push_back(std::move(day));
}

float BoxWords::height_below() const {
    return row_gap + row_height * (second_row_ ? 2.0F : 1.0F);
}

void BoxWords::draw() {
    edge_words();
    lines();
    today();
    for (const DayWords& day : days_)
        day_mark(day);
    for (const BoxMark& mark : view_.marks) {
        if (mark.edge != Edge::calendar) total_mark(mark);
    }
}

void BoxWords::edge_words() {
    Pen& pen = ui_.pen();
    const Rect& in = plot_.inner;
    const float above = in.top - box_words_above + 3;
    pen.text(Type::body_strong, Tone::hours, {in.left, above}, ui_.say(view_.hours_edge));
    pen.text_right(
        Type::body_strong, Tone::calendar, {in.right, above}, ui_.say(view_.calendar_edge));
    pen.text(Type::small, Tone::soft, {in.left, in.bottom + row_gap}, start_);
    pen.text_right(Type::small_strong, Tone::calendar, {in.right, in.bottom + row_gap}, across_);
}

void BoxWords::lines() {
    if (view_.line.empty()) return;
    for (std::uint32_t i = 1; i < view_.line.size(); ++i) {
        placer_.add_line(plot_.at(view_.line[i - 1]), plot_.at(view_.line[i]));
    }
    const Point today = plot_.at(view_.line.back());
    placer_.add_box({today.x - 8, today.y - 8, today.x + 8, today.y + 8});
    placer_.add_line(today, plot_.corner());
    for (std::size_t i = 1; view_.fan_known && i < view_.fan.size(); ++i) {
        const auto at = [&](const views::BoxSpread& one) {
            return plot_.at({one.across_permille, one.likely_permille});
        };
        if (view_.fan[i - 1].across_permille < view_.likely.across_permille)
            placer_.add_line(at(view_.fan[i - 1]), at(view_.fan[i]));
    }
    const Rect& in = plot_.inner;
    for (const BoxMark& mark : view_.marks) {
        const auto at = static_cast<float>(mark.at_permille);
        const Point foot = mark.edge == Edge::calendar ? plot_.at(at, 0) : plot_.at(0, at);
        const Point end =
            mark.edge == Edge::calendar ? Point{foot.x, in.top} : Point{in.right, foot.y};
        placer_.add_line(foot, end);
    }
}

void BoxWords::inner_label(const std::string& words, const std::vector<Point>& middles) {
    const float width = ui_.pen().width(Type::small_strong, words);
    std::vector<Rect> places;
    places.reserve(middles.size());
    for (const Point middle : middles) {
        places.push_back(
            {middle.x - width / 2, middle.y - 10, middle.x + width / 2, middle.y + 10});
    }
    const Rect box = placer_.place(places);
    if (box.width() <= 0) return;
    ui_.pen().text(Type::small_strong, Tone::ink, {box.left, box.top}, words);
}

void BoxWords::today() {
    if (view_.line.empty()) return;
    const Point at = plot_.at(view_.line.back());
    const std::string words = ui_.say(base::Word::box_today);
    const float half = ui_.pen().width(Type::small_strong, words) / 2;
    inner_label(words,
                {{at.x - half - 10, at.y - 16},
                 {at.x - half - 12, at.y},
                 {at.x + half + 10, at.y + 16},
                 {at.x + half + 12, at.y},
                 {at.x, at.y + 22},
                 {at.x, at.y - 22},
                 {at.x - half - 10, at.y + 18}});
}

void BoxWords::day_mark(const DayWords& day) {
    Pen& pen = ui_.pen();
    const Rect& in = plot_.inner;
    pen.dashes({day.foot.x, in.bottom}, {day.foot.x, in.top + 3}, Tone::ink, 1.5F, {1.5F, 4});
    diamond(pen, day.foot);
    if (day.box.width() <= 0) return;
    pen.text(Type::small_strong, Tone::ink, {day.box.left, day.box.top}, day.words);
}

void BoxWords::total_mark(const BoxMark& mark) {
    Pen& pen = ui_.pen();
    const Rect& in = plot_.inner;
    const Point foot = plot_.at(0, static_cast<float>(mark.at_permille));
    pen.dashes(foot, {in.right - 3, foot.y}, Tone::ink, 1.5F, {1.5F, 4});
    diamond(pen, foot);
    const std::string words = ui_.say(mark.label);
    const float half = pen.width(Type::small_strong, words) / 2;
    inner_label(words,
                {{in.left + 14 + half, foot.y - 12},
                 {in.left + 14 + half, foot.y + 12},
                 {in.right - 10 - half, foot.y - 12},
                 {in.right - 10 - half, foot.y + 12}});
}

}  // namespace twoclocks::canvas
