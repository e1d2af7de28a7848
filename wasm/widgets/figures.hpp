// Figures with their labels, and bars that show what is left.
#pragma once

#include "wasm/widgets/text.hpp"

#include <string>
#include <string_view>
#include <vector>

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

/// A figure that answers "why?" when tapped.
struct FigureSpec {
    std::string id;
    std::string label;
    Said said;
    Tone tone{Tone::ink};
    bool over{false};     // flown past: inverted
    std::string about{};  // spoken first where several say the same; empty where none does
};

/// What a figure is called: underlined, for it answers "why?", and with the sign of a questioned
/// one.
void figure_label(Pen& pen, Type type, Point top_left, std::string_view label, bool questioned);

/// The two clocks, large, side by side. Returns the index tapped, -1 for none.
[[nodiscard]] std::int32_t figure_pair(Ui& ui, const FigureSpec& left, const FigureSpec& right);

/// Smaller figures that share lines as they fit. Returns the index tapped, -1 for none.
[[nodiscard]] std::int32_t figure_cells(Ui& ui, const std::vector<FigureSpec>& figures);

/// One clock: a bar of what is left and the words at its right.
struct BarSpec {
    views::Edge edge{views::Edge::hours};
    std::string_view left;
    float words_width{0};
};

void clock_bar(Pen& pen, const Rect& row, const views::ClockView& clock, const BarSpec& spec);

[[nodiscard]] Tone tone_of(views::Edge edge);
[[nodiscard]] Tone fill_of(views::Edge edge);

/// Two columns of words, lined between: what it is, and what it says. Spoken as one text each.
struct PairSpec {
    std::string left;
    Said right;
};

void pair_rows(Ui& ui, const std::vector<PairSpec>& rows);

}  // namespace twoclocks::canvas
