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
    std::string cleared;  // digits that were cleared and can be brought back
};

/// What stands between the whole hours and the rest.
enum class PadSign : std::uint8_t { none, decimal, minutes };

/// Adds one key to a figure: a digit, '.' or ':' as the sign is, or '<' to take the last away.
/// What makes no number is not added. For every page that has a pad.
void press_key(std::string& digits, char key, PadSign sign);

/// The same on the pad of readings; 'c' clears all digits, 'u' brings them back.
void press(PadDraft& draft, char key);

/// The pad as a page: difference to the last reading, problem, and whether it can be saved.
[[nodiscard]] LogPage::Pad pad_page(const PadDraft& draft, const views::Assessed& aircraft);

/// The reading as a body; nothing while it cannot be saved.
[[nodiscard]] std::optional<facts::Body> pad_body(const PadDraft& draft,
                                                  const views::Assessed& aircraft);

}  // namespace twoclocks::canvas
