#include "wasm/widgets/cash_curve.hpp"

#include "wasm/widgets/text.hpp"

namespace twoclocks::canvas {
namespace {

constexpr float curve_height = 148;
constexpr float curve_whole = 1'000;

[[nodiscard]] float share(std::int32_t permille) {
    return static_cast<float>(permille) / curve_whole;
}

/// Money stays until the next movement, and then moves at once: a line of steps.
[[nodiscard]] std::vector<Point> line_of(const std::vector<views::SumsStep>& steps,
                                         const Rect& plot) {
    std::vector<Point> out;
    for (const views::SumsStep& step : steps) {
        const float across = plot.left + plot.width() * share(step.across);
        const float up = plot.bottom - plot.height() * share(step.up);
        if (!out.empty()) out.push_back({across, out.back().y});
        out.push_back({across, up});
    }
    return out;
}

}  // namespace

void cash_curve(Ui& ui, const views::SumsCurve& curve) {
    Pen& pen = ui.pen();
    const float line = pen.line(Type::small);
    const Rect box = ui.take(line + curve_height + 2 * line + space::tight);
    const Rect plot{box.left, box.top + line, box.right, box.top + line + curve_height};
    pen.text(Type::small, Tone::soft, {box.left, box.top}, ui.say(curve.most));
    const float nothing = plot.bottom - plot.height() * share(curve.nothing);
    pen.line({plot.left, nothing}, {plot.right, nothing}, Tone::line, shape::outline);
    pen.line({plot.left, plot.top}, {plot.left, plot.bottom}, Tone::line, shape::stroke);
    pen.dashes(line_of(curve.early, plot), Tone::soft, shape::stroke, {});
    pen.dashes(line_of(curve.late, plot), Tone::soft, shape::stroke, {});
    pen.path(line_of(curve.likely, plot), Tone::ink, shape::outline);
    pen.text(Type::small, Tone::soft, {box.left, plot.bottom}, ui.say(curve.least));
    const float foot = plot.bottom + line;
    pen.text(Type::small, Tone::soft, {box.left, foot}, ui.say(curve.first));
    pen.text_right(Type::small, Tone::soft, {box.right, foot}, ui.say(curve.last));
    Node node;
    node.role = Role::image;
    node.name = ui.say(curve.spoken);
    node.box = box;
    ui.node(std::move(node));
}

}  // namespace twoclocks::canvas
