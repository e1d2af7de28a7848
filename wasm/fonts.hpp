// Two weights of one typeface, baked for the screen they are shown on.
#pragma once

#include "wasm/theme.hpp"

#include <array>
#include <string>
#include <string_view>

struct ImFont;

namespace twoclocks::canvas {

/// A baked size of type: what to draw it with, CSS pixels.
struct Face {
    ImFont* font{nullptr};
    float draw_px{16};  // the size Dear ImGui takes: ascent to descent, not the em
    float line_px{22};
};

class Fonts {
  public:
    /// Keeps a copy; weight 400 or 600. False: bytes that are no font are not taken.
    bool set(int weight, std::string_view bytes);
    /// Looks at words that are shown: letters beyond Latin-1 are baked when somebody uses one.
    void read(std::string_view text);
    /// True once after the fonts or the ratio changed and nothing was baked since.
    [[nodiscard]] bool stale(float device_pixel_ratio) const;
    /// Bakes every size into Dear ImGui's atlas.
    void build(float device_pixel_ratio);
    [[nodiscard]] const Face& face(Type type, Look look) const;

  private:
    [[nodiscard]] const std::string& bytes_of(bool strong) const;

    std::string regular_;
    std::string strong_;
    std::array<Face, static_cast<std::uint32_t>(Type::type_count)> faces_{};
    float baked_ratio_{0};
    bool changed_{true};
    bool extended_{false};
};

}  // namespace twoclocks::canvas
