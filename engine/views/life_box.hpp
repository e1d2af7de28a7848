// The life box: the overhaul's two limits as the sides of a rectangle, drawn to scale.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// The box of an aircraft's overhaul.
/// Units: thousandths of its sides. Errors: known is false and `missing` says what is.
/// Source: our choice.
[[nodiscard]] LifeBoxView life_box(const Assessed& aircraft);

}  // namespace twoclocks::views
