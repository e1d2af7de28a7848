// The pages of cores, cash, the reserve and of a sale.
#pragma once

#include "wasm/app/inside.hpp"

namespace twoclocks::canvas {

/// Whether a page has days of the plan on it: then the campaign is lived through for it.
[[nodiscard]] bool rests_on_plan(views::SumsOf of);

/// The page; those that rest on the plan are worked out once, not at every look at them.
[[nodiscard]] SumsPage sums_page(AppState::Inside& in,
                                 views::SumsOf of,
                                 const views::Assessed& aircraft);
void open_page(AppState::Inside& in, const intent::OpenSums& intent);

}  // namespace twoclocks::canvas
