#include "wasm/fonts.hpp"

#include "imgui.h"

#include <algorithm>
#include <cmath>

namespace twoclocks::canvas {
namespace {

constexpr float ratio_most = 3;  // sharper than any eye at arm's length, and the atlas stays small

// Basic Latin, Latin-1, dashes and quotes, arrows, currency, minus; then the same with Latin
// Extended-A.
constexpr std::array<ImWchar, 13> common_signs{
    0x20, 0x7E, 0xA0, 0xFF, 0x2013, 0x2026, 0x20A0, 0x20BF, 0x2190, 0x2193, 0x2212, 0x2212, 0};
constexpr std::array<ImWchar, 13> all_signs{
    0x20, 0x7E, 0xA0, 0x17F, 0x2013, 0x2026, 0x20A0, 0x20BF, 0x2190, 0x2193, 0x2212, 0x2212, 0};
constexpr std::array<ImWchar, 7> figure_signs{0x20, 0x7E, 0xA0, 0xA0, 0x2212, 0x2212, 0};

std::uint32_t word_at(std::string_view bytes, std::uint32_t at, std::uint32_t width) {
    std::uint32_t value = 0;
    for (std::uint32_t i = 0; i < width && at + i < bytes.size(); ++i) {
        value = (value << 8U) | static_cast<unsigned char>(bytes[at + i]);
    }
    return value;
}

std::uint32_t table_at(std::string_view bytes, std::string_view tag) {
    const std::uint32_t tables = word_at(bytes, 4, 2);
    for (std::uint32_t i = 0; i < tables; ++i) {
        const std::uint32_t entry = 12 + 16 * i;
        if (bytes.size() < entry + 16) return 0;
        if (bytes.substr(entry, 4) == tag) return word_at(bytes, entry + 8, 4);
    }
    return 0;
}

bool is_font(std::string_view bytes) {
    if (bytes.size() < 64) return false;
    const std::uint32_t kind = word_at(bytes, 0, 4);
    const bool known = kind == 0x00010000U || bytes.substr(0, 4) == "OTTO";
    return known && table_at(bytes, "head") != 0 && table_at(bytes, "hhea") != 0;
}

/// Dear ImGui sizes type by ascent less descent; a designer by the em. This is their ratio.
float height_of_em(std::string_view bytes) {
    if (bytes.empty()) return 1;
    const std::uint32_t head = table_at(bytes, "head");
    const std::uint32_t hhea = table_at(bytes, "hhea");
    const auto units = static_cast<float>(word_at(bytes, head + 18, 2));
    const auto ascent = static_cast<float>(static_cast<std::int16_t>(word_at(bytes, hhea + 4, 2)));
    const auto descent = static_cast<float>(static_cast<std::int16_t>(word_at(bytes, hhea + 6, 2)));
    return units > 0 ? (ascent - descent) / units : 1;
}

/// How one size is baked.
struct Baking {
    float draw_px{16};
    float ratio{1};
    const ImWchar* signs{nullptr};
};

ImFont* bake(const std::string& bytes, const TypeSize& size, const Baking& baking) {
    const float ratio = baking.ratio;
    const bool fine = ratio >= 2;
    ImFontConfig how;
    how.OversampleH = fine ? 1 : 3;
    how.OversampleV = 1;
    how.PixelSnapH = fine;  // a third of a CSS pixel at most: crisp, and half the atlas
    how.RasterizerMultiply = 1.0F;
    how.FontDataOwnedByAtlas = false;
    how.SizePixels = baking.draw_px * ratio;
    how.GlyphRanges = size.figures_only ? figure_signs.data() : baking.signs;
    if (size.em_px >= 28) how.GlyphExtraSpacing.x = -0.016F * size.em_px * ratio;
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    if (bytes.empty()) {
        how.GlyphRanges = nullptr;
        return atlas.AddFontDefault(&how);
    }
    std::string copy = bytes;  // the call takes a pointer to what it may change, and copies it
    return atlas.AddFontFromMemoryTTF(
        copy.data(), static_cast<int>(copy.size()), how.SizePixels, &how);
}

}  // namespace

bool Fonts::set(int weight, std::string_view bytes) {
    if (!is_font(bytes)) return false;
    (weight >= 600 ? strong_ : regular_) = std::string{bytes};
    changed_ = true;
    return true;
}

void Fonts::read(std::string_view text) {
    if (extended_) return;
    // U+0100 to U+017F are the two bytes C4 80 to C5 BF in UTF-8.
    extended_ = text.find_first_of("\xC4\xC5") != std::string_view::npos;
    changed_ = changed_ || extended_;
}

bool Fonts::stale(float device_pixel_ratio) const {
    return changed_ || std::fabs(device_pixel_ratio - baked_ratio_) > 0.001F;
}

const std::string& Fonts::bytes_of(bool strong) const {
    if (strong) return strong_.empty() ? regular_ : strong_;
    return regular_.empty() ? strong_ : regular_;
}

void Fonts::build(float device_pixel_ratio) {
    const float ratio = std::clamp(device_pixel_ratio, 1.0F, ratio_most);
    ImGuiIO& io = ImGui::GetIO();
    io.Fonts->Clear();
    io.Fonts->Flags |= ImFontAtlasFlags_NoMouseCursors | ImFontAtlasFlags_NoPowerOfTwoHeight;
    const ImWchar* signs = extended_ ? all_signs.data() : common_signs.data();
    for (std::uint32_t i = 0; i < faces_.size(); ++i) {
        const TypeSize size = size_of(static_cast<Type>(i));
        const std::string& bytes = bytes_of(size.strong);
        const float draw_px = size.em_px * height_of_em(bytes);
        faces_[i] = {bake(bytes, size, {draw_px, ratio, signs}), draw_px, size.line_px};
    }
    io.Fonts->Build();
    io.FontDefault = faces_[static_cast<std::uint32_t>(Type::body)].font;
    io.FontGlobalScale = 1.0F / ratio;
    baked_ratio_ = device_pixel_ratio;
    changed_ = false;
}

const Face& Fonts::face(Type type, Look look) const {
    Type shown = type;
    if (look == Look::sun && type == Type::small) shown = Type::small_strong;
    if (look == Look::sun && type == Type::body) shown = Type::body_strong;
    return faces_[static_cast<std::uint32_t>(shown)];
}

}  // namespace twoclocks::canvas
