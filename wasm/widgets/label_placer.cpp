#include "wasm/widgets/label_placer.hpp"

#include <algorithm>

namespace twoclocks::canvas {
namespace {

constexpr float label_apart = 10;

bool overlap(const Rect& one, const Rect& other) {
    return one.left < other.right && other.left < one.right && one.top < other.bottom &&
           other.top < one.bottom;
}

/// Narrows the part of a line, 0 to 1, that lies between two sides. False when nothing is left.
bool narrow(float start, float length, float low, float high, Point& part) {
    if (length == 0) return start >= low && start <= high;
    const float one = (low - start) / length;
    const float other = (high - start) / length;
    part.x = std::max(part.x, std::min(one, other));
    part.y = std::min(part.y, std::max(one, other));
    return part.x <= part.y;
}

}  // namespace

bool crosses(Point from, Point to, const Rect& box) {
    Point part{0, 1};
    return narrow(from.x, to.x - from.x, box.left, box.right, part) &&
           narrow(from.y, to.y - from.y, box.top, box.bottom, part);
}

bool LabelPlacer::is_free(const Rect& box) const {
    if (box.left < bounds_.left || box.right > bounds_.right || box.top < bounds_.top ||
        box.bottom > bounds_.bottom) {
        return false;
    }
    const bool covered = std::any_of(
        boxes_.begin(), boxes_.end(), [&](const Rect& other) { return overlap(box, other); });
    return !covered && std::none_of(lines_.begin(), lines_.end(), [&](const Line& line) {
        return crosses(line.from, line.to, box);
    });
}

Rect LabelPlacer::place(const std::vector<Rect>& places) {
    for (const Rect& box : places) {
        if (!is_free(box)) continue;
        boxes_.push_back({box.left - label_apart, box.top, box.right + label_apart, box.bottom});
        return box;
    }
    return {};
}

}  // namespace twoclocks::canvas
