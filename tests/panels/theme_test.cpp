#include "wasm/theme.hpp"

#include "catch_amalgamated.hpp"

#include <algorithm>
#include <cmath>

using namespace twoclocks::canvas;

namespace {

// Relative luminance and contrast ratio: WCAG 2.2, section "relative luminance" and "contrast
// ratio", W3C Recommendation [S].
double linear(std::uint8_t channel) {
    const double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

double luminance(Colour of) {
    return 0.2126 * linear(of.red) + 0.7152 * linear(of.green) + 0.0722 * linear(of.blue);
}

double contrast(Colour one, Colour other) {
    const double first = luminance(one);
    const double second = luminance(other);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

constexpr Look looks[] = {Look::paper, Look::night, Look::sun};

int number(Tone tone) {
    return static_cast<int>(tone);
}

}  // namespace

TEST_CASE("the contrast formula gives the values that WCAG states", "[canvas][theme]") {
    CHECK(contrast({0, 0, 0}, {255, 255, 255}) == Catch::Approx(21.0));
    CHECK(contrast({255, 255, 255}, {255, 255, 255}) == Catch::Approx(1.0));
    // #777777 on white is 4.48:1, the well-known grey just under 4.5 (WCAG technique G18 uses the
    // formula).
    CHECK(contrast({0x77, 0x77, 0x77}, {255, 255, 255}) == Catch::Approx(4.48).margin(0.005));
}

TEST_CASE("every pair of words and ground holds 7:1, and 12:1 in the sun", "[canvas][theme]") {
    for (const Look look : looks) {
        for (const Pair& pair : text_pairs()) {
            CAPTURE(static_cast<int>(look), number(pair.front), number(pair.back));
            const double least = look == Look::sun ? 12.0 : 7.0;
            CHECK(contrast(colour(look, pair.front), colour(look, pair.back)) >= least);
        }
    }
}

TEST_CASE("bars, edges and marks hold 3:1 against what they lie on", "[canvas][theme]") {
    // WCAG 2.2 success criterion 1.4.11, non-text contrast [S].
    for (const Look look : looks) {
        for (const Pair& pair : shape_pairs()) {
            CAPTURE(static_cast<int>(look), number(pair.front), number(pair.back));
            CHECK(contrast(colour(look, pair.front), colour(look, pair.back)) >= 3.0);
        }
    }
}

TEST_CASE("a finger's shade keeps the words under it readable", "[canvas][theme]") {
    // WCAG 2.2 success criterion 1.4.3 [S]; the shade is short-lived, so the common 4.5:1 is held.
    for (const Look look : looks) {
        const Colour shade = colour(look, Tone::pressed);
        const auto mixed = [&](Colour under) {
            const auto mix = [&](std::uint8_t low, std::uint8_t high) {
                return static_cast<std::uint8_t>(low + (high - low) * shade.cover / 255);
            };
            return Colour{mix(under.red, shade.red),
                          mix(under.green, shade.green),
                          mix(under.blue, shade.blue)};
        };
        for (const Tone ground : {Tone::card, Tone::paper, Tone::key}) {
            CAPTURE(static_cast<int>(look), number(ground));
            CHECK(contrast(colour(look, Tone::ink), mixed(colour(look, ground))) >= 4.5);
        }
    }
}

TEST_CASE("hours are blue and the calendar is ochre in every look", "[canvas][theme]") {
    for (const Look look : looks) {
        for (const Tone tone : {Tone::hours, Tone::hours_fill}) {
            const Colour blue = colour(look, tone);
            CHECK(blue.blue > blue.red);
            CHECK(blue.blue > blue.green);
        }
        for (const Tone tone : {Tone::calendar, Tone::calendar_fill}) {
            const Colour ochre = colour(look, tone);
            CHECK(ochre.red > ochre.green);
            CHECK(ochre.green > ochre.blue);
        }
    }
}

TEST_CASE("a person's choice of look beats what the system asks for", "[canvas][theme]") {
    Appearance system;
    CHECK(look_for(ThemeChoice::system, system) == Look::paper);
    system.dark = true;
    CHECK(look_for(ThemeChoice::system, system) == Look::night);
    system.more_contrast = true;
    CHECK(look_for(ThemeChoice::system, system) == Look::sun);
    CHECK(look_for(ThemeChoice::paper, system) == Look::paper);
    CHECK(look_for(ThemeChoice::night, system) == Look::night);
    system = {};
    CHECK(look_for(ThemeChoice::sun, system) == Look::sun);
}

TEST_CASE("targets and type are large enough", "[canvas][theme]") {
    CHECK(target::least >= 48);
    CHECK(target::primary >= 56);
    CHECK(target::pad_key >= 56);
    CHECK(size_of(Type::body).em_px >= 16);
    CHECK(size_of(Type::name).em_px >= 20);
    CHECK(size_of(Type::figure).em_px >= 20);
}
