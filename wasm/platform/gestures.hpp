// What fingers, a mouse and a wheel mean. Pure: event times come in with the events, nothing is
// read.
//
// The hard question: when is a finger a tap and when a scroll? Nothing happens at touch start.
// Within 8 px of where it began, lifting it is a tap. Beyond, the longer axis is locked and the
// region under the first touch follows the finger; let go while moving, it glides on and slows as
// exp(-ms/325). A second finger matters only when both move before the first has become a scroll:
// then the two pinch. A palm that rests on the page is no pinch. A long press has no meaning of its
// own: a slow, gloved finger that does not move still taps. A touch that only stops a glide taps
// nothing.
#pragma once

#include "wasm/app.hpp"

namespace twoclocks::canvas {

inline constexpr float slop_px = 8;
inline constexpr float resting_px = 3;  // a finger that moved less only rests on the page
inline constexpr double glide_time_ms = 325;
inline constexpr double glide_least_px_per_ms = 0.02;
inline constexpr double rest_before_lift_ms = 60;

/// One event of a finger or a mouse, at its own time.
struct PointerEvent {
    PointerPhase phase{};
    int id{0};
    float x{0};
    float y{0};
    double time_ms{0};
    PointerKind kind{};
};

/// What one pointer event came to.
struct Gesture {
    enum class Kind : std::uint8_t { none, press, tap, scroll, pinch, cancel };
    Kind kind{Kind::none};
    float first_x{0};  // where the finger or button went down
    float first_y{0};
    float x{0};  // where it is now
    float y{0};
    float scroll_x{0};  // how far the content moves with the finger; one of the two is 0
    float scroll_y{0};
    float spread{1};  // of two fingers: how far apart they are, against where they began
};

/// Distance gone and speed kept after gliding for a while.
struct Glide {
    double distance_px{0};
    double speed_px_per_ms{0};
};

/// Glides from a speed for a time.
/// Units: pixels, milliseconds. Range: elapsed 0 and more, less counts as 0. Errors: none.
/// Source: speed falls as exp(-ms/325); the distance is its integral.
[[nodiscard]] Glide glide(double speed_px_per_ms, double elapsed_ms);

class Gestures {
  public:
    [[nodiscard]] Gesture pointer(const PointerEvent& event);
    /// How far the content glides until `time_ms`; 0 when nothing moves.
    [[nodiscard]] Gesture step(double time_ms);

    [[nodiscard]] bool gliding() const { return gliding_; }

    [[nodiscard]] bool held() const { return phase_ != Phase::idle; }

    void stop() { gliding_ = false; }

    void set_less_motion(bool less) { less_motion_ = less; }

  private:
    enum class Phase : std::uint8_t { idle, pressed, scrolling, pinching };

    /// The other finger, while it is down.
    struct Other {
        bool down{false};
        int id{0};
        float first_x{0}, first_y{0}, x{0}, y{0};
        float apart{1};  // from the first finger, when it came down
    };

    Gesture other(const PointerEvent& event);
    Gesture spread();
    Gesture down(const PointerEvent& event);
    Gesture move(const PointerEvent& event);
    Gesture up(const PointerEvent& event);
    [[nodiscard]] Gesture make(Gesture::Kind kind, float x, float y) const;

    Phase phase_{Phase::idle};
    int pointer_id_{0};
    Other other_;
    float here_x_{0}, here_y_{0};
    float first_x_{0}, first_y_{0}, last_x_{0}, last_y_{0};
    double last_ms_{0}, glide_ms_{0};
    double speed_px_per_ms_{0};
    bool vertical_{true};
    bool gliding_{false};
    bool stopped_glide_{false};
    bool less_motion_{false};
};

}  // namespace twoclocks::canvas
