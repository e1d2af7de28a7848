// One aircraft of the fleet as a card: its small life box, its state, the answer, what is left of
// both.
#pragma once

#include "wasm/widgets/list.hpp"
#include "wasm/widgets/ui.hpp"

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

[[nodiscard]] float fleet_card_height(Ui& ui, const views::AircraftCard& card, float width);
/// True when tapped.
[[nodiscard]] bool fleet_card(Ui& ui,
                              const views::AircraftCard& card,
                              const ListItem& item,
                              const Rect& box);

}  // namespace twoclocks::canvas
