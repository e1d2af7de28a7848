// The words of the large life box: its edges, today, and the marks of what comes before its edges.
#pragma once

#include "wasm/widgets/label_placer.hpp"
#include "wasm/widgets/ui.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

/// A life flown past its box is drawn a little beyond it, thousandths.
inline constexpr float past_edge_most = 1040;

/// The inside of the box on the page, and where its points lie.
struct BoxPlot {
    Rect inner;

    [[nodiscard]] Point at(float across_permille, float up_permille) const {
        const float across = std::clamp(across_permille, 0.0F, past_edge_most) / 1000;
        const float up = std::clamp(up_permille, 0.0F, past_edge_most) / 1000;
        return {inner.left + across * inner.width(), inner.bottom - up * inner.height()};
    }

    [[nodiscard]] Point at(views::BoxPoint point) const {
        return at(static_cast<float>(point.across_permille), static_cast<float>(point.up_permille));
    }

    /// The point of the box under a point of the page, within the box.
    [[nodiscard]] views::BoxPoint under(Point point) const {
        const float across = (point.x - inner.left) / inner.width();
        const float up = (inner.bottom - point.y) / inner.height();
        return {static_cast<std::int32_t>(std::clamp(across, 0.0F, 1.0F) * 1000),
                static_cast<std::int32_t>(std::clamp(up, 0.0F, 1.0F) * 1000)};
    }

    [[nodiscard]] Point corner() const { return {inner.right, inner.top}; }
};

inline constexpr float box_words_above = 34;

/// The words of one box. They stand where they cover no line and no other word; a mark whose words
/// find no room keeps its line.
class BoxWords {
  public:
    BoxWords(Ui& ui, const views::LifeBoxView& view, const BoxPlot& plot);
    [[nodiscard]] float height_below() const;
    void draw();

  private:
    struct DayWords {
        Point foot;
        std::string words;
        Rect box;
    };

    void place_day(const views::BoxMark& mark);
    void edge_words();
    void lines();
    void inner_label(const std::string& words, const std::vector<Point>& middles);
    void today();
    void day_mark(const DayWords& day);
    void total_mark(const views::BoxMark& mark);

    Ui& ui_;
    const views::LifeBoxView& view_;
    BoxPlot plot_;
    LabelPlacer placer_;
    LabelPlacer below_;
    std::string start_;
    std::string across_;
    std::vector<DayWords> days_;
    bool second_row_{false};
};

}  // namespace twoclocks::canvas
