// Keys that mean something outside a field. Their list, in words, is the sheet behind "?".
#pragma once

#include "wasm/screen.hpp"

#include <optional>

namespace twoclocks::canvas {

/// One shortcut as the sheet says it.
struct Shortcut {
    base::Word key{};   // "1 to 4"
    base::Word what{};  // "the pages, in their order"
};

[[nodiscard]] const std::vector<Shortcut>& shortcuts();

/// What a typed character asks for on this screen, nothing for most.
[[nodiscard]] std::optional<Intent> shortcut(char sign, const Screen& screen);

/// Digits, the decimal sign and erase: keys of the number pad.
[[nodiscard]] bool is_pad_key(char sign);

}  // namespace twoclocks::canvas
