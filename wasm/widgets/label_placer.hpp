// Finds room for a label where it covers no line and no other label.
#pragma once

#include "wasm/widgets/pen.hpp"

#include <vector>

namespace twoclocks::canvas {

class LabelPlacer {
  public:
    explicit LabelPlacer(const Rect& bounds) : bounds_(bounds) {}

    void add_line(Point from, Point to) { lines_.push_back({from, to}); }

    void add_box(const Rect& box) { boxes_.push_back(box); }

    [[nodiscard]] bool is_free(const Rect& box) const;
    /// The first of the places that is free, which is then taken; an empty box when none is.
    [[nodiscard]] Rect place(const std::vector<Rect>& places);

  private:
    struct Line {
        Point from;
        Point to;
    };

    Rect bounds_;
    std::vector<Line> lines_;
    std::vector<Rect> boxes_;
};

/// True when a line runs through a box.
[[nodiscard]] bool crosses(Point from, Point to, const Rect& box);

}  // namespace twoclocks::canvas
