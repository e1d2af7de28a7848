// What happened and is not signed for, as a card: what, when, what to do, who decides.
#pragma once

#include "wasm/widgets/ui.hpp"

#include "engine/views/views.hpp"

namespace twoclocks::canvas {

struct EventPress {
    bool why{false};
    bool sign{false};
};

[[nodiscard]] EventPress event_card(Ui& ui, std::int32_t index, const views::EventView& event);

}  // namespace twoclocks::canvas
