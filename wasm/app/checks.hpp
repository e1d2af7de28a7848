// The list of checks: what was asked for, and what answers.
#pragma once

#include "wasm/app/form.hpp"

#include "engine/views/checks_view.hpp"

namespace twoclocks::canvas {

/// Nothing searched, soonest first, no day and no hours.
[[nodiscard]] Form make_checks_form();

/// What the fields ask for; a field that cannot be read gets its problem and asks for nothing.
[[nodiscard]] ChecksPage checks_page(Form& form, const views::Assessed& aircraft);

}  // namespace twoclocks::canvas
