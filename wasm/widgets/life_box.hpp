// The life box, drawn to scale: calendar across, hours up, the life so far as a line, the fan of
// what may come, and the edge it meets first.
#pragma once

#include "wasm/widgets/ui.hpp"

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

inline constexpr float small_box_width = 84;
inline constexpr float small_box_height = 104;

/// The small box of a card: no words.
void small_life_box(Pen& pen, const views::LifeBoxView& view, const Rect& box);

/// The large box with its words; takes what height it needs from the column.
void large_life_box(Ui& ui, const views::LifeBoxView& view);

/// The same, with a handle where the line expected meets its edge: the point it is dragged to.
[[nodiscard]] std::optional<views::BoxPoint> life_box_with_handle(Ui& ui,
                                                                  const views::LifeBoxView& view,
                                                                  const std::string& handle);

/// The picture of the idea, for the first start: not of any aircraft.
void two_clocks_mark(Ui& ui);

}  // namespace twoclocks::canvas
