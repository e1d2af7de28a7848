// Draws shapes and text in tokens. Nothing here knows what it draws.
#pragma once

#include "wasm/fonts.hpp"
#include "wasm/platform/scene.hpp"

#include <string>
#include <string_view>
#include <vector>

struct ImDrawList;

namespace twoclocks::canvas {

struct Point {
    float x{0};
    float y{0};
};

/// How a dashed line is broken, CSS pixels.
struct Dash {
    float on_px{7};
    float off_px{5};
};

/// A piece of text that was drawn: where it stands and what of the page it may show on.
struct DrawnText {
    std::string text;
    Rect box;
    Rect clip;
};

class Pen {
  public:
    Pen(ImDrawList& list, const Fonts& fonts, Look look, float device_pixel_ratio);

    [[nodiscard]] Look look() const { return look_; }

    /// While muted nothing is drawn: for rows that are only spoken.
    void mute(bool muted) { muted_ = muted; }

    /// Keeps a list of every text drawn, so that a test can see whether two overlap.
    void record(std::vector<DrawnText>* texts) { texts_ = texts; }

    void clip(const Rect& to);
    void unclip();

    void fill(const Rect& box, Tone tone, float radius = 0);
    void outline(const Rect& box, Tone tone, float radius, float width);
    void line(Point from, Point to, Tone tone, float width);
    void path(const std::vector<Point>& points, Tone tone, float width);
    void dashes(Point from, Point to, Tone tone, float width, Dash dash);
    /// Along a line of pieces, without beginning anew on each.
    void dashes(const std::vector<Point>& points, Tone tone, float width, Dash dash);
    /// Between two lines of as many points.
    void band(const std::vector<Point>& upper, const std::vector<Point>& lower, Tone tone);
    void area(const std::vector<Point>& points, Tone tone);  // convex
    void disc(Point middle, float radius, Tone tone);
    void ring(Point middle, float radius, Tone tone, float width);

    [[nodiscard]] float width(Type type, std::string_view text) const;
    [[nodiscard]] float line(Type type) const;  // height of a line
    void text(Type type, Tone tone, Point top_left, std::string_view text);
    void text_right(Type type, Tone tone, Point top_right, std::string_view text);
    void text_middle(Type type, Tone tone, const Rect& box, std::string_view text);
    /// Lines no wider than `width`, broken at spaces; a figure keeps its unit or month beside it.
    [[nodiscard]] std::vector<std::string_view> wrap(Type type,
                                                     std::string_view text,
                                                     float width) const;
    /// Cut with an ellipsis where it does not fit. Names only, never figures.
    [[nodiscard]] std::string shorten(Type type, std::string_view text, float width) const;

  private:
    [[nodiscard]] std::string_view first_line(Type type, std::string_view text, float width) const;
    [[nodiscard]] std::uint32_t paint(Tone tone) const;

    [[nodiscard]] const Face& face(Type type) const { return fonts_->face(type, look_); }

    ImDrawList* list_;
    const Fonts* fonts_;
    Look look_;
    std::vector<DrawnText>* texts_{nullptr};
    bool muted_{false};
};

}  // namespace twoclocks::canvas
