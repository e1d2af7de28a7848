#include "wasm/platform/gestures.hpp"

#include "catch_amalgamated.hpp"

#include <cmath>

using namespace twoclocks::canvas;
using Kind = Gesture::Kind;

namespace {

constexpr PointerPhase down = PointerPhase::down;
constexpr PointerPhase move = PointerPhase::move;
constexpr PointerPhase up = PointerPhase::up;
constexpr PointerKind touch = PointerKind::touch;
constexpr PointerKind mouse = PointerKind::mouse;

/// A finger that goes straight up the page at 1 px a millisecond and lets go.
Gestures flung(double until_ms = 100) {
    Gestures gestures;
    (void)gestures.pointer({down, 1, 100, 500, 0, touch});
    for (double ms = 10; ms <= until_ms; ms += 10) {
        (void)gestures.pointer({move, 1, 100, 500 - static_cast<float>(ms), ms, touch});
    }
    return gestures;
}

}  // namespace

TEST_CASE("a finger that moves no more than the slop taps where it went down",
          "[canvas][gestures]") {
    struct Row {
        float across, along;
        Kind expected;
    };

    for (const Row row : {Row{0, 0, Kind::tap},
                          Row{8, 0, Kind::tap},
                          Row{0, -8, Kind::tap},
                          Row{9, 0, Kind::cancel},
                          Row{6, 6, Kind::cancel}}) {
        Gestures gestures;
        CHECK(gestures.pointer({down, 1, 50, 60, 0, touch}).kind == Kind::press);
        (void)gestures.pointer({move, 1, 50 + row.across, 60 + row.along, 20, touch});
        const Gesture end = gestures.pointer({up, 1, 50 + row.across, 60 + row.along, 40, touch});
        CHECK(end.kind == row.expected);
        CHECK(end.first_x == 50);
        CHECK(end.first_y == 60);
    }
}

TEST_CASE("a slow finger taps too: a long press has no meaning of its own", "[canvas][gestures]") {
    Gestures gestures;
    (void)gestures.pointer({down, 1, 50, 60, 0, touch});
    CHECK(gestures.pointer({up, 1, 51, 60, 2000, touch}).kind == Kind::tap);
}

TEST_CASE("beyond the slop the longer axis is locked", "[canvas][gestures]") {
    Gestures gestures;
    (void)gestures.pointer({down, 1, 100, 100, 0, touch});
    const Gesture first = gestures.pointer({move, 1, 104, 85, 10, touch});
    CHECK(first.kind == Kind::scroll);
    CHECK(first.scroll_y == -15);
    CHECK(first.scroll_x == 0);
    const Gesture aside = gestures.pointer({move, 1, 180, 80, 20, touch});
    CHECK(aside.scroll_y == -5);
    CHECK(aside.scroll_x == 0);

    Gestures across;
    (void)across.pointer({down, 1, 100, 100, 0, touch});
    const Gesture gesture = across.pointer({move, 1, 120, 104, 10, touch});
    CHECK(gesture.scroll_x == 20);
    CHECK(gesture.scroll_y == 0);
}

TEST_CASE("a second finger changes nothing", "[canvas][gestures]") {
    Gestures gestures;
    (void)gestures.pointer({down, 1, 50, 60, 0, touch});
    CHECK(gestures.pointer({down, 2, 200, 300, 5, touch}).kind == Kind::none);
    CHECK(gestures.pointer({move, 2, 200, 400, 10, touch}).kind == Kind::none);
    CHECK(gestures.pointer({up, 2, 200, 400, 15, touch}).kind == Kind::none);
    CHECK(gestures.pointer({up, 1, 50, 60, 20, touch}).kind == Kind::tap);
}

TEST_CASE("speed falls as exp(-ms/325) and the way is its integral", "[canvas][gestures]") {
    // Expected values from the C library's exp, as an implementation other than ours.
    for (const double ms : {0.0, 1.0, 16.7, 100.0, 325.0, 1000.0, 5000.0}) {
        const Glide gone = glide(2.0, ms);
        CHECK(gone.speed_px_per_ms == Catch::Approx(2.0 * std::exp(-ms / 325)).epsilon(1e-12));
        CHECK(gone.distance_px ==
              Catch::Approx(2.0 * 325 * (1 - std::exp(-ms / 325))).epsilon(1e-9).margin(1e-9));
    }
    const Glide one = glide(1.0, 30);
    const Glide half = glide(1.0, 15);
    const Glide other_half = glide(half.speed_px_per_ms, 15);
    CHECK(half.distance_px + other_half.distance_px == Catch::Approx(one.distance_px));
}

TEST_CASE("let go while moving, the page glides on and comes to rest", "[canvas][gestures]") {
    Gestures gestures = flung();
    (void)gestures.pointer({up, 1, 100, 400, 101, touch});
    REQUIRE(gestures.gliding());
    double way = 0;
    double last = 1e9;
    double ms = 101;
    while (gestures.gliding() && ms < 10000) {
        ms += 16;
        const double step = std::fabs(static_cast<double>(gestures.step(ms).scroll_y));
        CHECK(step < last);
        last = step;
        way += step;
    }
    CHECK_FALSE(gestures.gliding());
    CHECK(ms < 2500);
    CHECK(way ==
          Catch::Approx(325).margin(12));  // 1 px a millisecond for 325 ms, to the least speed
    CHECK(gestures.step(ms + 16).kind == Kind::none);
}

TEST_CASE("a touch stops a glide and taps nothing", "[canvas][gestures]") {
    Gestures gestures = flung();
    (void)gestures.pointer({up, 1, 100, 400, 101, touch});
    REQUIRE(gestures.gliding());
    CHECK(gestures.pointer({down, 1, 100, 300, 150, touch}).kind == Kind::none);
    CHECK_FALSE(gestures.gliding());
    CHECK(gestures.pointer({up, 1, 100, 300, 200, touch}).kind == Kind::cancel);
    (void)gestures.pointer({down, 1, 100, 300, 300, touch});
    CHECK(gestures.pointer({up, 1, 100, 300, 350, touch}).kind == Kind::tap);
}

TEST_CASE("a finger that rests before it lifts leaves the page still", "[canvas][gestures]") {
    for (const double rest_ms : {59.0, 61.0}) {
        Gestures gestures = flung();
        (void)gestures.pointer({up, 1, 100, 400, 100 + rest_ms, touch});
        CHECK(gestures.gliding() == (rest_ms < 60));
    }
}

TEST_CASE("a finger that rests and then stirs lets go at the speed it stirs with",
          "[canvas][gestures]") {
    Gestures gestures = flung();
    (void)gestures.pointer({move, 1, 100, 400.5F, 200, touch});
    (void)gestures.pointer({up, 1, 100, 400.5F, 210, touch});
    CHECK_FALSE(gestures.gliding());  // half a pixel in 100 ms is below the least speed of a glide
}

TEST_CASE("with less motion nothing glides", "[canvas][gestures]") {
    Gestures gestures = flung();
    gestures.set_less_motion(true);
    (void)gestures.pointer({up, 1, 100, 400, 101, touch});
    CHECK_FALSE(gestures.gliding());
}

TEST_CASE("a mouse taps where its button goes up and never scrolls by dragging",
          "[canvas][gestures]") {
    Gestures gestures;
    (void)gestures.pointer({down, 0, 50, 60, 0, mouse});
    CHECK(gestures.pointer({move, 0, 50, 200, 10, mouse}).kind == Kind::none);
    const Gesture end = gestures.pointer({up, 0, 50, 200, 20, mouse});
    CHECK(end.kind == Kind::tap);
    CHECK(end.first_y == 60);
    CHECK(end.y == 200);
}

TEST_CASE("a pointer the system takes away taps nothing", "[canvas][gestures]") {
    Gestures gestures;
    (void)gestures.pointer({down, 1, 50, 60, 0, touch});
    CHECK(gestures.pointer({PointerPhase::cancel, 1, 50, 60, 10, touch}).kind == Kind::cancel);
    CHECK(gestures.pointer({up, 1, 50, 60, 20, touch}).kind == Kind::none);
}

TEST_CASE("two fingers that both move pinch; a palm that rests does not", "[canvas][gestures]") {
    Gestures gestures;
    (void)gestures.pointer({down, 1, 100, 300, 0, touch});
    CHECK(gestures.pointer({down, 2, 200, 300, 5, touch}).kind == Kind::none);
    CHECK(gestures.pointer({move, 2, 210, 300, 10, touch}).kind == Kind::none);
    const Gesture begun = gestures.pointer({move, 1, 90, 300, 12, touch});
    CHECK(begun.kind == Kind::pinch);
    CHECK(begun.spread == Catch::Approx(1.2));
    const Gesture wider = gestures.pointer({move, 2, 240, 300, 20, touch});
    CHECK(wider.kind == Kind::pinch);
    CHECK(wider.spread == Catch::Approx(1.5));
    // What is left of it neither scrolls nor taps.
    (void)gestures.pointer({up, 2, 240, 300, 30, touch});
    CHECK(gestures.pointer({move, 1, 90, 200, 40, touch}).kind == Kind::none);
    CHECK(gestures.pointer({up, 1, 90, 200, 50, touch}).kind == Kind::cancel);

    Gestures palm;
    (void)palm.pointer({down, 1, 100, 300, 0, touch});
    (void)palm.pointer({down, 2, 250, 700, 5, touch});
    (void)palm.pointer({move, 2, 252, 701, 8, touch});
    CHECK(palm.pointer({move, 1, 100, 280, 12, touch}).kind == Kind::scroll);
}

TEST_CASE("a second finger beside a tap or a scroll changes neither", "[canvas][gestures]") {
    Gestures gestures;
    (void)gestures.pointer({down, 1, 100, 300, 0, touch});
    (void)gestures.pointer({down, 2, 200, 300, 5, touch});
    CHECK(gestures.pointer({up, 1, 100, 300, 50, touch}).kind == Kind::tap);

    Gestures scrolling;
    (void)scrolling.pointer({down, 1, 100, 300, 0, touch});
    (void)scrolling.pointer({move, 1, 100, 260, 10, touch});
    (void)scrolling.pointer({down, 2, 200, 300, 15, touch});
    (void)scrolling.pointer({move, 2, 260, 300, 20, touch});
    CHECK(scrolling.pointer({move, 1, 100, 240, 25, touch}).kind == Kind::scroll);
}
