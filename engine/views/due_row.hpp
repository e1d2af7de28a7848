// One item as a row: what is left of each clock, when it is likely due, and every why.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// A figure and its explanation, which begins with it.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Figure figure(base::Message text, Why why);

/// The row of an item; `place` is its place in the aircraft's items.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] DueRow make_row(const Assessed& aircraft, std::int32_t place);

/// Places of all items, what has passed first, then by the likely day.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<std::int32_t> soonest_first(const Assessed& aircraft);

/// The whys of one row, as whys_of lists them.
/// Units: none. Errors: none. Source: our choice.
void add_whys(std::vector<Why>& whys, const DueRow& row);

}  // namespace twoclocks::views
