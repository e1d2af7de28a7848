#include "wasm/theme.hpp"

namespace twoclocks::canvas {
namespace {

constexpr Colour rgb(std::uint32_t code) {
    return {static_cast<std::uint8_t>(code >> 16U),
            static_cast<std::uint8_t>(code >> 8U),
            static_cast<std::uint8_t>(code),
            255};
}

constexpr Colour rgba(std::uint32_t code, std::uint8_t cover) {
    Colour made = rgb(code);
    made.cover = cover;
    return made;
}

// In the order of Tone.
constexpr Palette paper{rgb(0xFAF6EC),
                        rgb(0xFFFDF7),
                        rgb(0x16202E),
                        rgb(0x444C5B),
                        rgb(0xD9D1BF),
                        rgb(0x174B9B),
                        rgb(0x2F6FD0),
                        rgb(0xD3DDEC),
                        rgb(0x7A4600),
                        rgb(0xB97A10),
                        rgb(0xE9DDC6),
                        rgba(0x2F6FD0, 38),
                        rgba(0xB97A10, 46),
                        rgb(0xF1EBDC),
                        rgba(0x16202E, 26),
                        rgba(0x16202E, 150)};
constexpr Palette night{rgb(0x0E141C),
                        rgb(0x161E29),
                        rgb(0xF3EFE4),
                        rgb(0xBCC2CC),
                        rgb(0x2F3B4B),
                        rgb(0x9CC3FF),
                        rgb(0x5B97EE),
                        rgb(0x26354C),
                        rgb(0xF2C36B),
                        rgb(0xD79A2B),
                        rgb(0x3B3220),
                        rgba(0x5B97EE, 60),
                        rgba(0xD79A2B, 56),
                        rgb(0x202B3A),
                        rgba(0xF3EFE4, 34),
                        rgba(0x000000, 165)};
constexpr Palette sun{rgb(0xFFFFFF),
                      rgb(0xFFFFFF),
                      rgb(0x000000),
                      rgb(0x000000),
                      rgb(0x000000),
                      rgb(0x002B80),
                      rgb(0x002B80),
                      rgb(0xD3DAEA),
                      rgb(0x4A2A00),
                      rgb(0x7A4600),
                      rgb(0xE6DBCB),
                      rgba(0x002B80, 40),
                      rgba(0x7A4600, 46),
                      rgb(0xF2F2F2),
                      rgba(0x000000, 40),
                      rgba(0x000000, 170)};

}  // namespace

const Palette& palette(Look look) {
    if (look == Look::night) return night;
    return look == Look::sun ? sun : paper;
}

Look look_for(ThemeChoice choice, const Appearance& appearance) {
    switch (choice) {
        case ThemeChoice::paper:
            return Look::paper;
        case ThemeChoice::night:
            return Look::night;
        case ThemeChoice::sun:
            return Look::sun;
        case ThemeChoice::system:
            break;
    }
    if (appearance.more_contrast) return Look::sun;
    return appearance.dark ? Look::night : Look::paper;
}

const std::vector<Pair>& text_pairs() {
    static const std::vector<Pair> pairs{{Tone::ink, Tone::paper},
                                         {Tone::ink, Tone::card},
                                         {Tone::ink, Tone::key},
                                         {Tone::soft, Tone::paper},
                                         {Tone::soft, Tone::card},
                                         {Tone::soft, Tone::key},
                                         {Tone::hours, Tone::paper},
                                         {Tone::hours, Tone::card},
                                         {Tone::calendar, Tone::paper},
                                         {Tone::calendar, Tone::card},
                                         {Tone::paper, Tone::ink}};
    return pairs;
}

const std::vector<Pair>& shape_pairs() {
    static const std::vector<Pair> pairs{{Tone::hours_fill, Tone::card},
                                         {Tone::hours_fill, Tone::hours_track},
                                         {Tone::calendar_fill, Tone::card},
                                         {Tone::calendar_fill, Tone::paper},
                                         {Tone::ink, Tone::card},
                                         {Tone::soft, Tone::key}};
    return pairs;
}

TypeSize size_of(Type type) {
    switch (type) {
        case Type::small:
            return {14, 20, false, false};
        case Type::small_strong:
            return {14, 20, true, false};
        case Type::body:
            return {16, 23, false, false};
        case Type::body_strong:
            return {16, 23, true, false};
        case Type::answer:
            return {18, 25, true, false};
        case Type::name:
            return {20, 27, true, false};
        case Type::title:
            return {28, 36, true, false};
        case Type::figure:
            return {34, 42, true, true};
        case Type::digits:
            return {48, 58, true, true};
        case Type::type_count:
            break;
    }
    return {};
}

std::int32_t page::columns_in(float width) {
    const auto fit =
        static_cast<std::int32_t>((width + space::middle) / (card_least + space::middle));
    return fit < 1 ? 1 : fit > 3 ? 3 : fit;
}

std::string_view theme_name(ThemeChoice theme) {
    switch (theme) {
        case ThemeChoice::system:
            return "system";
        case ThemeChoice::paper:
            return "paper";
        case ThemeChoice::night:
            return "night";
        case ThemeChoice::sun:
            return "sun";
    }
    return "system";
}

}  // namespace twoclocks::canvas
