#include "wasm/widgets/chart.hpp"

#include "wasm/widgets/figures.hpp"
#include "wasm/widgets/text.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::canvas {
namespace {

constexpr float plot_height = 132;
constexpr float bar_share = 0.72F;  // of the room each has
constexpr float bar_most = 36;
constexpr float bar_least = 2;

/// Labels stand under their bars, as many as fit.
void labels(Ui& ui, const views::ChartView& chart, const Rect& plot, float each) {
    Pen& pen = ui.pen();
    float taken = plot.left - space::small;
    for (std::uint32_t i = 0; i < chart.bars.size(); ++i) {
        const std::string label = ui.say(chart.bars[i].label);
        if (label.empty()) continue;
        const float width = pen.width(Type::small, label);
        const float middle = plot.left + each * (static_cast<float>(i) + page::half);
        const float left = middle - width / 2;
        if (left < taken + space::small || left + width > plot.right) continue;
        pen.text(Type::small, Tone::soft, {left, plot.bottom + space::tight}, label);
        taken = left + width;
    }
}

void bars(Ui& ui, const views::ChartView& chart, const Rect& plot, float each) {
    const bool hours = chart.edge != views::Edge::calendar;
    for (std::uint32_t i = 0; i < chart.bars.size(); ++i) {
        const views::ChartBar& bar = chart.bars[i];
        const float share = static_cast<float>(std::clamp(bar.permille, 0, 1000)) / 1000;
        if (share <= 0) continue;
        const float width = std::clamp(each * bar_share, bar_least, bar_most);
        const float middle = plot.left + each * (static_cast<float>(i) + page::half);
        const Rect box{middle - width / 2,
                       plot.bottom - std::max(bar_least, plot.height() * share),
                       middle + width / 2,
                       plot.bottom};
        if (bar.planned) {
            ui.pen().fill(box, hours ? Tone::hours_track : Tone::calendar_track);
            ui.pen().outline(box, fill_of(chart.edge), 0, shape::stroke);
        } else {
            ui.pen().fill(box, fill_of(chart.edge));
        }
    }
}

/// Through the tops of what would be bars; half of the whole is marked.
void curve(Ui& ui, const views::ChartView& chart, const Rect& plot, float each) {
    const bool hours = chart.edge != views::Edge::calendar;
    std::vector<Point> upper;
    std::vector<Point> lower;
    for (std::uint32_t i = 0; i < chart.bars.size(); ++i) {
        const float share = static_cast<float>(std::clamp(chart.bars[i].permille, 0, 1000)) / 1000;
        const float across = plot.left + each * (static_cast<float>(i) + page::half);
        upper.push_back({across, plot.bottom - plot.height() * share});
        lower.push_back({across, plot.bottom});
    }
    const float middle = plot.bottom - plot.height() * page::half;
    ui.pen().band(upper, lower, hours ? Tone::hours_track : Tone::calendar_track);
    ui.pen().dashes({plot.left, middle}, {plot.right, middle}, Tone::line, shape::stroke, {});
    ui.pen().path(upper, fill_of(chart.edge), shape::outline);
}

}  // namespace

void bar_chart(Ui& ui, const views::ChartView& chart) {
    Pen& pen = ui.pen();
    quiet_paragraph(ui, Type::body_strong, Tone::ink, ui.say(chart.title));
    const float line = pen.line(Type::small);
    const Rect box = ui.take(line + plot_height + space::tight + line);
    const Rect plot{box.left, box.top + line, box.right, box.top + line + plot_height};
    pen.text(Type::small, tone_of(chart.edge), {box.left, box.top}, ui.say(chart.greatest));
    pen.line({plot.left, plot.top}, {plot.right, plot.top}, Tone::line, shape::stroke);
    const auto count = static_cast<float>(std::max<std::size_t>(1, chart.bars.size()));
    if (chart.is_curve)
        curve(ui, chart, plot, plot.width() / count);
    else
        bars(ui, chart, plot, plot.width() / count);
    pen.line({plot.left, plot.bottom}, {plot.right, plot.bottom}, Tone::ink, shape::outline);
    labels(ui, chart, plot, plot.width() / count);
    Node node;
    node.role = Role::image;
    node.name = ui.say(chart.spoken);
    node.box = box;
    ui.node(std::move(node));
}

}  // namespace twoclocks::canvas
