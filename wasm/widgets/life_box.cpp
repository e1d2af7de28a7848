#include "wasm/widgets/life_box.hpp"

#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/life_box_words.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace twoclocks::canvas {
namespace {

using views::BoxPoint;
using views::Edge;
using views::LifeBoxView;

/// Strokes of the two sizes, CSS pixels.
struct Weights {
    float life{0};
    float likely{0};
    float edge{0};
    float dot{0};
    float ring{0};
    float ring_width{0};
    float even{0};
    Dash likely_dash;
    Dash even_dash;
};

constexpr Weights large_weights{3.2F, 2, 5, 6, 8, 4, 1.6F, {7, 5}, {2, 5}};
constexpr Weights small_weights{2.2F, 1.5F, 3.5F, 3.4F, 4.5F, 2.6F, 1.1F, {4, 3}, {1.5F, 4}};
constexpr float mark_height = 190;
constexpr float closest_px = 0.8F;  // points nearer than this are one

void fan(Pen& pen, const LifeBoxView& view, const BoxPlot& plot) {
    std::vector<Point> early;
    std::vector<Point> late;
    for (const views::BoxSpread& one : view.fan) {
        early.push_back(plot.at({one.across_permille, one.early_permille}));
        late.push_back(plot.at({one.across_permille, one.late_permille}));
    }
    pen.band(early, late, view.meets == Edge::calendar ? Tone::calendar_fan : Tone::hours_fan);
}

/// From today to where the line expected meets an edge.
[[nodiscard]] std::vector<Point> likely_line(const LifeBoxView& view, const BoxPlot& plot) {
    std::vector<Point> out;
    for (const views::BoxSpread& one : view.fan) {
        if (one.across_permille < view.likely.across_permille)
            out.push_back(plot.at({one.across_permille, one.likely_permille}));
    }
    out.push_back(plot.at(view.likely));
    return out;
}

void edges(Pen& pen, const BoxPlot& plot, const Weights& weights) {
    const Rect& in = plot.inner;
    pen.line({in.left, in.top}, {in.left, in.bottom}, Tone::line, 1.2F);
    pen.line({in.left, in.bottom}, {in.right, in.bottom}, Tone::line, 1.2F);
    const float half = weights.edge / 2;
    pen.fill({in.left, in.top - half, in.right + half, in.top + half}, Tone::hours_fill);
    pen.fill({in.right - half, in.top + half, in.right + half, in.bottom}, Tone::calendar_fill);
}

void life(Pen& pen, const LifeBoxView& view, const BoxPlot& plot, const Weights& weights) {
    if (view.line.empty()) return;
    std::vector<Point> points;
    points.reserve(view.line.size());
    const Point today = plot.at(view.line.back());
    for (const BoxPoint point : view.line) {
        const Point at = plot.at(point);
        const bool apart = points.empty() || std::fabs(at.x - points.back().x) > closest_px ||
                           std::fabs(at.y - points.back().y) > closest_px;
        if (apart) points.push_back(at);
    }
    points.push_back(today);
    const bool inside =
        view.line.back().across_permille < 1000 && view.line.back().up_permille < 1000;
    if (inside) {
        pen.dashes(today, plot.corner(), Tone::soft, weights.even, weights.even_dash);
    }
    if (view.fan_known && inside) {
        pen.dashes(likely_line(view, plot), Tone::ink, weights.likely, weights.likely_dash);
    }
    pen.path(points, Tone::ink, weights.life);
}

void ends(Pen& pen, const LifeBoxView& view, const BoxPlot& plot, const Weights& weights) {
    if (view.line.empty()) return;
    pen.disc(plot.at(view.line.back()), weights.dot, Tone::ink);
    if (!view.fan_known) return;
    const Point meets = plot.at(view.likely);
    pen.disc(meets, weights.ring + weights.ring_width / 2, Tone::paper);
    pen.ring(meets, weights.ring, fill_of(view.meets), weights.ring_width);
}

/// What a finger takes hold of: a wider ring.
void grip(Pen& pen, Point middle) {
    constexpr float radius = 17;
    pen.disc(middle, radius, Tone::paper);
    pen.ring(middle, radius, Tone::ink, shape::outline);
}

void ticks(Pen& pen, const LifeBoxView& view, const BoxPlot& plot) {
    const Rect& in = plot.inner;
    for (std::int32_t i = 1; i < view.hour_ticks; ++i) {
        const float y =
            in.bottom - in.height() * static_cast<float>(i) / static_cast<float>(view.hour_ticks);
        const float long_px = i % 5 == 0 ? 10.0F : 5.0F;
        pen.line({in.left, y}, {in.left + long_px, y}, Tone::hours_fill, 1.2F);
    }
    for (std::int32_t i = 1; i < view.year_ticks; ++i) {
        const float x =
            in.left + in.width() * static_cast<float>(i) / static_cast<float>(view.year_ticks);
        const float long_px = i % 4 == 0 ? 10.0F : 5.0F;
        pen.line({x, in.bottom}, {x, in.bottom - long_px}, Tone::calendar_fill, 1.2F);
    }
}

void draw_plot(Pen& pen, const LifeBoxView& view, const BoxPlot& plot, const Weights& weights) {
    pen.fill(plot.inner, Tone::card);
    const bool drawn = view.fan_known && !view.line.empty();
    if (drawn) fan(pen, view, plot);
    edges(pen, plot, weights);
    life(pen, view, plot, weights);
}

void draw_missing(Ui& ui, const LifeBoxView& view, const Rect& box) {
    Pen& pen = ui.pen();
    pen.fill(box, Tone::card, shape::tight_radius);
    pen.outline(box, Tone::line, shape::tight_radius, shape::outline);
    const std::string words = ui.say(view.missing);
    const float width = std::min(box.width() - 2 * space::base, 360.0F);
    const float height = height_of(ui, Type::body, words, width);
    const float left = box.left + (box.width() - width) / 2;
    const float top = box.top + (box.height() - height) / 2;
    ui.inside({left, top, left + width, top},
              [&] { quiet_paragraph(ui, Type::body, Tone::soft, words); });
}

}  // namespace

void small_life_box(Pen& pen, const LifeBoxView& view, const Rect& box) {
    const BoxPlot plot{{box.left + 1, box.top + 2, box.right - 3, box.bottom - 1}};
    if (!view.known) {
        pen.outline(box, Tone::line, shape::over_radius, shape::outline);
        return;
    }
    draw_plot(pen, view, plot, small_weights);
    ends(pen, view, plot, small_weights);
}

void large_life_box(Ui& ui, const LifeBoxView& view) {
    (void)life_box_with_handle(ui, view, {});
}

std::optional<views::BoxPoint> life_box_with_handle(Ui& ui,
                                                    const LifeBoxView& view,
                                                    const std::string& handle) {
    const float height = std::clamp(ui.width() * 0.74F, 190.0F, 440.0F);
    Node node;
    node.role = Role::image;
    if (!view.known) {
        const Rect box = ui.take(std::min(height, 160.0F));
        draw_missing(ui, view, box);
        node.name = ui.say(view.missing);
        node.box = box;
        ui.node(std::move(node));
        return std::nullopt;
    }
    const float top = ui.y() + box_words_above;
    const BoxPlot plot{{ui.left() + 2, top, ui.column().right() - 4, top + height}};
    BoxWords words{ui, view, plot};
    const Rect box = ui.take(box_words_above + height + words.height_below());
    if (ui.in_sight(box)) {
        draw_plot(ui.pen(), view, plot, large_weights);
        ticks(ui.pen(), view, plot);
        words.draw();
        if (!handle.empty() && view.fan_known) grip(ui.pen(), plot.at(view.likely));
        ends(ui.pen(), view, plot, large_weights);
    }
    node.name = ui.say(view.spoken);
    node.box = box;
    ui.node(std::move(node));
    if (handle.empty() || !view.fan_known) return std::nullopt;
    const Point meets = plot.at(view.likely);
    const float half = target::least / 2;
    const Rect hold{meets.x - half, meets.y - half, meets.x + half, meets.y + half};
    Node end;
    end.role = Role::image;
    end.name = ui.say(base::Word::sure_handle);
    end.box = hold;
    ui.node(std::move(end));
    const auto point = ui.dragged(handle, hold);
    if (!point) return std::nullopt;
    return plot.under(*point);
}

void two_clocks_mark(Ui& ui) {
    LifeBoxView idea;
    idea.known = true;
    idea.fan_known = true;
    idea.meets = Edge::hours;
    idea.line = {{0, 0}, {90, 110}, {180, 250}, {260, 380}, {350, 500}, {400, 565}};
    idea.early = {560, 1000};
    idea.likely = {690, 1000};
    idea.late = {840, 1000};
    idea.fan = {{400, 565, 565, 565},
                {560, 1000, 806, 723},
                {690, 1000, 1000, 852},
                {840, 1000, 1000, 1000}};
    Pen& pen = ui.pen();
    const Rect box = ui.take(mark_height + pen.line(Type::body_strong));
    const float top = box.top + pen.line(Type::body_strong) + space::small;
    const BoxPlot plot{{box.left + 2, top, box.right - 4, box.bottom}};
    pen.text(Type::body_strong, Tone::hours, {box.left, box.top}, ui.say(base::Word::mark_hours));
    pen.text_right(
        Type::body_strong, Tone::calendar, {box.right, box.top}, ui.say(base::Word::mark_calendar));
    draw_plot(pen, idea, plot, large_weights);
    ends(pen, idea, plot, large_weights);
}

}  // namespace twoclocks::canvas
