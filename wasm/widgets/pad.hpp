// A number pad of our own: large keys, no system keyboard.
#pragma once

#include "wasm/widgets/ui.hpp"

#include <string>

namespace twoclocks::canvas {

/// How a pad is laid out: `key` begins the ids of its keys, `sign` stands beside the 0.
struct PadSpec {
    std::string key{"key"};
    char sign{'.'};  // '.', ':' before minutes, or 0 for whole numbers
};

/// Four rows of three keys across the column. Gives the key pressed ('0'..'9', the sign, '<'), or
/// 0.
[[nodiscard]] char number_pad(Ui& ui, const PadSpec& spec = {});

struct TypedFigure {
    std::string label;
    std::string digits;
    std::string unit;
    bool can_clear{false};
    bool can_undo_clear{false};
};

/// The figure being typed, large, with its unit; spoken as it changes. Beside it a button that
/// clears all of it, and then brings it back. Gives 'c', 'u' or 0.
[[nodiscard]] char typed_figure(Ui& ui, const TypedFigure& figure);

inline constexpr std::int32_t pad_rows = 4;

[[nodiscard]] constexpr float pad_height() {
    return static_cast<float>(pad_rows) * (target::pad_key + target::apart) - target::apart;
}

}  // namespace twoclocks::canvas
