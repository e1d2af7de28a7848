// The reading pad: digits as typed, checked as they come.
#pragma once

#include "wasm/screen.hpp"

#include "engine/views/assess.hpp"

namespace twoclocks::canvas {

/// What is on the pad.
struct PadDraft {
    base::Id aircraft;
    std::string digits;
    std::string date_text;
};

/// Adds one key: a digit, '.', or '<' to take the last away. What makes no number is not added.
void press(PadDraft& draft, char key);

/// The pad as a page: difference to the last reading, problem, and whether it can be saved.
[[nodiscard]] LogPage::Pad pad_page(const PadDraft& draft, const views::Assessed& aircraft);

/// The reading as a body; nothing while it cannot be saved.
[[nodiscard]] std::optional<facts::Body> pad_body(const PadDraft& draft,
                                                  const views::Assessed& aircraft);

}  // namespace twoclocks::canvas
