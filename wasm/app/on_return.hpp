// "On return": what is due before the next flight, and the day that was asked about.
#pragma once

#include "wasm/app/form.hpp"

namespace twoclocks::canvas {

/// The one field of the page, with the day to start from.
[[nodiscard]] Form make_return_day(const views::Assessed& aircraft);

/// The page for the day that stands in the field.
[[nodiscard]] ReturnPage return_page(Form& form, const views::Assessed& aircraft);

}  // namespace twoclocks::canvas
