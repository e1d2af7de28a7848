// What is open, handed over as a paper, a table or days for a calendar.
#pragma once

#include "wasm/app/inside.hpp"

namespace twoclocks::canvas {

/// Hands it over; pages that are none say nothing.
void open_page(AppState::Inside& in, const intent::HandOver& intent);

}  // namespace twoclocks::canvas
