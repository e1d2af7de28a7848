#include "wasm/widgets/pen.hpp"

#include "imgui.h"

#include <algorithm>
#include <cmath>

#include "engine/base/digit.hpp"

namespace twoclocks::canvas {
namespace {

ImVec2 vec(Point point) {
    return {point.x, point.y};
}

ImVec2 top_left(const Rect& box) {
    return {box.left, box.top};
}

ImVec2 bottom_right(const Rect& box) {
    return {box.right, box.bottom};
}

std::vector<ImVec2> vecs(const std::vector<Point>& points) {
    std::vector<ImVec2> made;
    made.reserve(points.size());
    for (const Point point : points)
        made.push_back(vec(point));
    return made;
}

bool starts_sign(char sign) {
    return (static_cast<unsigned char>(sign) & 0xC0U) != 0x80U;
}

using base::is_digit;

using Place = std::string_view::size_type;

Place next_word_end(std::string_view text, Place space) {
    return std::min(text.find(' ', space + 1), text.size());
}

/// A unit or a month behind a figure, or a year behind a month: "7 y", "3 May", "May 2026".
bool belongs_to(std::string_view before, std::string_view word) {
    if (before.empty() || word.empty()) return false;
    const bool figure = is_digit(before.back());
    if (figure && !is_digit(word.front())) return word.size() <= 3;
    const bool years = before.size() == 1 && !figure;  // the days behind "7 y"
    if (years && is_digit(word.front())) return true;
    const bool year = word.size() >= 4 && std::all_of(word.begin(), word.begin() + 4, is_digit) &&
                      (word.size() == 4 || !is_digit(word[4]));
    return !figure && before.size() == 3 && year;
}

/// Where the word that starts at `from` ends, with what belongs to it.
Place word_end(std::string_view text, Place from) {
    Place last = from;
    Place end = std::min(text.find(' ', from), text.size());
    while (end < text.size()) {
        const Place next = next_word_end(text, end);
        if (!belongs_to(text.substr(last, end - last), text.substr(end + 1, next - end - 1))) break;
        last = end + 1;
        end = next;
    }
    return end;
}

}  // namespace

Pen::Pen(ImDrawList& list, const Fonts& fonts, Look look, float device_pixel_ratio)
    : list_(&list), fonts_(&fonts), look_(look) {
    // Edges are smoothed over one pixel of the device, not of CSS.
    list_->_FringeScale = 1.0F / std::max(1.0F, device_pixel_ratio);
}

std::uint32_t Pen::paint(Tone tone) const {
    const Colour made = colour(look_, tone);
    return IM_COL32(made.red, made.green, made.blue, made.cover);
}

void Pen::clip(const Rect& to) {
    list_->PushClipRect(top_left(to), bottom_right(to), true);
}

void Pen::unclip() {
    list_->PopClipRect();
}

void Pen::fill(const Rect& box, Tone tone, float radius) {
    if (!muted_) list_->AddRectFilled(top_left(box), bottom_right(box), paint(tone), radius);
}

void Pen::outline(const Rect& box, Tone tone, float radius, float width) {
    if (muted_) return;
    const float half = width / 2;  // the stroke lies inside the box
    list_->AddRect({box.left + half, box.top + half},
                   {box.right - half, box.bottom - half},
                   paint(tone),
                   radius,
                   0,
                   width);
}

void Pen::line(Point from, Point to, Tone tone, float width) {
    if (muted_) return;
    const std::array<ImVec2, 2> ends{vec(from), vec(to)};
    list_->AddPolyline(ends.data(), 2, paint(tone), 0, width);
}

void Pen::path(const std::vector<Point>& points, Tone tone, float width) {
    if (muted_ || points.size() < 2) return;
    const std::vector<ImVec2> made = vecs(points);
    list_->AddPolyline(made.data(), static_cast<int>(made.size()), paint(tone), 0, width);
    disc(points.front(), width / 2, tone);  // round ends
    disc(points.back(), width / 2, tone);
}

void Pen::dashes(Point from, Point to, Tone tone, float width, Dash dash) {
    dashes({from, to}, tone, width, dash);
}

void Pen::dashes(const std::vector<Point>& points, Tone tone, float width, Dash dash) {
    if (muted_) return;
    const float period = dash.on_px + dash.off_px;
    float gone = 0;  // of the period, where a piece begins
    for (std::size_t i = 1; i < points.size(); ++i) {
        const Point from = points[i - 1];
        const float length = std::hypot(points[i].x - from.x, points[i].y - from.y);
        if (length <= 0) continue;
        const Point stride{(points[i].x - from.x) / length, (points[i].y - from.y) / length};
        for (float start = -gone; start < length; start += period) {
            const float begin = std::max(0.0F, start);
            const float end = std::min(length, start + dash.on_px);
            if (end <= begin) continue;
            line({from.x + stride.x * begin, from.y + stride.y * begin},
                 {from.x + stride.x * end, from.y + stride.y * end},
                 tone,
                 width);
        }
        gone = std::fmod(gone + length, period);
    }
}

void Pen::band(const std::vector<Point>& upper, const std::vector<Point>& lower, Tone tone) {
    if (muted_) return;
    // Smoothed, the pieces would show where they meet.
    const ImDrawListFlags flags = list_->Flags;
    list_->Flags = flags & ~ImDrawListFlags_AntiAliasedFill;
    for (std::size_t i = 1; i < std::min(upper.size(), lower.size()); ++i) {
        list_->AddQuadFilled(
            vec(upper[i - 1]), vec(upper[i]), vec(lower[i]), vec(lower[i - 1]), paint(tone));
    }
    list_->Flags = flags;
}

void Pen::area(const std::vector<Point>& points, Tone tone) {
    if (muted_ || points.size() < 3) return;
    const std::vector<ImVec2> made = vecs(points);
    list_->AddConvexPolyFilled(made.data(), static_cast<int>(made.size()), paint(tone));
}

void Pen::disc(Point middle, float radius, Tone tone) {
    if (!muted_) list_->AddCircleFilled(vec(middle), radius, paint(tone));
}

void Pen::ring(Point middle, float radius, Tone tone, float width) {
    if (!muted_) list_->AddCircle(vec(middle), radius, paint(tone), 0, width);
}

float Pen::width(Type type, std::string_view text) const {
    const Face& shown = face(type);
    if (shown.font == nullptr || text.empty()) return 0;
    return shown.font
        ->CalcTextSizeA(shown.draw_px, 1.0e9F, 0, text.data(), text.data() + text.size())
        .x;
}

float Pen::line(Type type) const {
    return face(type).line_px;
}

void Pen::text(Type type, Tone tone, Point top_left, std::string_view text) {
    const Face& shown = face(type);
    if (muted_ || shown.font == nullptr || text.empty()) return;
    const float lead = (shown.line_px - shown.draw_px) / 2;
    const Point at{std::round(top_left.x), std::round(top_left.y + lead)};
    list_->AddText(
        shown.font, shown.draw_px, vec(at), paint(tone), text.data(), text.data() + text.size());
    if (texts_ == nullptr) return;
    const ImVec2 from = list_->GetClipRectMin();
    const ImVec2 to = list_->GetClipRectMax();
    texts_->push_back({std::string{text},
                       {at.x, at.y, at.x + width(type, text), at.y + shown.draw_px},
                       {from.x, from.y, to.x, to.y}});
}

void Pen::text_right(Type type, Tone tone, Point top_right, std::string_view text) {
    this->text(type, tone, {top_right.x - width(type, text), top_right.y}, text);
}

void Pen::text_middle(Type type, Tone tone, const Rect& box, std::string_view text) {
    const float left = box.left + (box.width() - width(type, text)) / 2;
    this->text(type, tone, {left, box.top + (box.height() - line(type)) / 2}, text);
}

std::string_view Pen::first_line(Type type, std::string_view text, float width) const {
    const auto fits = [&](Place end) { return this->width(type, text.substr(0, end)) <= width; };
    Place end = word_end(text, 0);
    if (!fits(end)) end = std::min(text.find(' '), text.size());  // too narrow to keep together
    while (end < text.size()) {
        const Place next = word_end(text, end + 1);
        if (!fits(next)) break;
        end = next;
    }
    while (end > 1 && !fits(end)) {
        do
            --end;  // one long word: cut where it stops fitting
        while (end > 1 && !starts_sign(text[end]));
    }
    return text.substr(0, end);
}

std::vector<std::string_view> Pen::wrap(Type type, std::string_view text, float width) const {
    std::vector<std::string_view> lines;
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty()) {
        lines.push_back(first_line(type, text, width));
        text.remove_prefix(lines.back().size());
        while (!text.empty() && text.front() == ' ')
            text.remove_prefix(1);
    }
    return lines;
}

std::string Pen::shorten(Type type, std::string_view text, float width) const {
    if (this->width(type, text) <= width) return std::string{text};
    constexpr std::string_view dots = "\xE2\x80\xA6";
    auto end = text.size();
    while (end > 0) {
        do
            --end;
        while (end > 0 && !starts_sign(text[end]));
        std::string made = std::string{text.substr(0, end)}.append(dots);
        if (this->width(type, made) <= width) return made;
    }
    return std::string{dots};
}

}  // namespace twoclocks::canvas
