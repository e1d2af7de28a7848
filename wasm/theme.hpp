// Every colour, size and space of the canvas. Widgets take tokens from here and hold none of their
// own.
#pragma once

#include "wasm/app.hpp"
#include "wasm/intent.hpp"

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

namespace twoclocks::canvas {

enum class Look : std::uint8_t { paper, night, sun };

/// What a colour is for. Hours are blue and the calendar is ochre, everywhere.
enum class Tone : std::uint8_t {
    paper,        // behind everything
    card,         // cards, bars of tabs, the inside of the life box
    ink,          // words and figures
    soft,         // words that stand back
    line,         // borders and dividers
    hours,        // words and figures of hours
    hours_fill,   // bars and edges of hours
    hours_track,  // what of an hours bar is used up
    calendar,     // words and figures of the calendar
    calendar_fill,
    calendar_track,
    hours_fan,  // how sure the forecast is, over the card
    calendar_fan,
    key,      // keys of the number pad and fields
    pressed,  // under a finger
    scrim,    // over the page, under a sheet
    tone_count
};

/// Red, green, blue and cover, 0 to 255.
struct Colour {
    std::uint8_t red{0};
    std::uint8_t green{0};
    std::uint8_t blue{0};
    std::uint8_t cover{255};

    bool operator==(const Colour& other) const {
        return red == other.red && green == other.green && blue == other.blue &&
               cover == other.cover;
    }
};

using Palette = std::array<Colour, static_cast<std::uint32_t>(Tone::tone_count)>;

[[nodiscard]] const Palette& palette(Look look);

[[nodiscard]] inline Colour colour(Look look, Tone tone) {
    return palette(look)[static_cast<std::uint32_t>(tone)];
}

/// The look for what a person chose and what the system asks for. A choice beats the system.
[[nodiscard]] Look look_for(ThemeChoice choice, const Appearance& appearance);

/// The word by which a choice is kept.
[[nodiscard]] std::string_view theme_name(ThemeChoice theme);

/// Two colours that are drawn on each other, for the contrast test.
struct Pair {
    Tone front{};
    Tone back{};
};

[[nodiscard]] const std::vector<Pair>& text_pairs();
[[nodiscard]] const std::vector<Pair>& shape_pairs();

/// Kinds of type. Sizes are CSS pixels of the em.
enum class Type : std::uint8_t {
    small,
    small_strong,
    body,
    body_strong,
    answer,
    name,
    title,
    figure,
    digits,
    type_count
};

struct TypeSize {
    float em_px{16};
    float line_px{22};
    bool strong{false};
    bool figures_only{false};  // baked with Basic Latin alone
};

[[nodiscard]] TypeSize size_of(Type type);

/// Spaces between things, CSS pixels.
namespace space {
inline constexpr float hair = 2;
inline constexpr float tight = 4;
inline constexpr float small = 8;
inline constexpr float middle = 12;
inline constexpr float base = 16;
inline constexpr float wide = 20;
inline constexpr float block = 28;
}  // namespace space

/// Corners and strokes, CSS pixels.
namespace shape {
inline constexpr float card_radius = 14;
inline constexpr float chip_radius = 13;
inline constexpr float over_radius = 4;
inline constexpr float tight_radius = 6;
inline constexpr float field_radius = 10;
inline constexpr float sheet_radius = 20;
inline constexpr float bar_radius = 4;
inline constexpr float bar_height = 8;
inline constexpr float stroke = 1;
inline constexpr float outline = 1.5F;
inline constexpr float chosen = 2;
inline constexpr float focus = 3;
}  // namespace shape

/// Sizes a finger needs, CSS pixels.
namespace target {
inline constexpr float least = 48;
inline constexpr float primary = 56;
inline constexpr float button_least = 88;  // wide
inline constexpr float pad_key = 56;
inline constexpr float tab_bar = 64;
inline constexpr float header = 60;
inline constexpr float apart = 8;
}  // namespace target

/// How the page is divided, CSS pixels.
namespace page {
inline constexpr float layout_least = 240;  // with the largest text on a narrow page
inline constexpr float wide_from = 900;     // a rail at the left in place of the bar of tabs
inline constexpr float rail = 176;
inline constexpr float rail_tight = 148;  // under this width of the page
inline constexpr float rail_tight_below = 1180;
inline constexpr float rail_low = 112;      // on a phone that lies on its side
inline constexpr float list_share = 0.36F;  // of what the rail leaves, between the next two
inline constexpr float list_least = 320;
inline constexpr float list_most = 420;
inline constexpr float side_sheet = 460;
inline constexpr float sheet_most = 0.85F;  // of the page's height
inline constexpr float sheet_least = 200;
inline constexpr float column_most = 680;   // a column of words and a picture
inline constexpr float reading_most = 520;  // a column of words alone, forms
inline constexpr float lean_middle = 0.5F;  // a column in its pane
inline constexpr float lean_left = 0.12F;
inline constexpr float half = 0.5F;  // shares of two columns
inline constexpr float figures_share = 0.42F;
inline constexpr float foot_most = 520;     // what is fixed at the bottom
inline constexpr float pad_most = 840;      // the reading and its pad side by side
inline constexpr float spread_most = 1160;  // two columns of cards and pictures
inline constexpr float card_least = 340;    // two cards stand side by side when each has this much
inline constexpr float two_columns_from = 640;
inline constexpr float pad_needs = 680;  // less height than this: the pad goes without tabs
inline constexpr float low_below = 520;  // too low for what is fixed at the bottom
/// How many cards stand side by side.
[[nodiscard]] std::int32_t columns_in(float width);
}  // namespace page

}  // namespace twoclocks::canvas
