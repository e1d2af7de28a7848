// A page that is made from campaigns that are still being lived through.
#pragma once

#include "wasm/app/inside.hpp"

namespace twoclocks::canvas {

/// Nothing where all that the page here is made from is there; else how far it is.
[[nodiscard]] std::optional<WorkingPage> working_page(AppState::Inside& in);

}  // namespace twoclocks::canvas
