// A number pad of our own: large keys, no system keyboard.
#pragma once

#include "wasm/widgets/ui.hpp"

#include <string>

namespace twoclocks::canvas {

/// Four rows of three keys across the column. Gives the key pressed ('0'..'9', '.', '<'), or 0.
[[nodiscard]] char number_pad(Ui& ui);

/// The figure being typed, large, with its unit; spoken as it changes.
void typed_figure(Ui& ui,
                  const std::string& label,
                  const std::string& digits,
                  const std::string& unit);

inline constexpr std::int32_t pad_rows = 4;

[[nodiscard]] constexpr float pad_height() {
    return static_cast<float>(pad_rows) * (target::pad_key + target::apart) - target::apart;
}

}  // namespace twoclocks::canvas
