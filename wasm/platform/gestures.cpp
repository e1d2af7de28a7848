#include "wasm/platform/gestures.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/real.hpp"

namespace twoclocks::canvas {

Glide glide(double speed_px_per_ms, double elapsed_ms) {
    const double kept = base::exp_fixed(-std::max(0.0, elapsed_ms) / glide_time_ms);
    return {speed_px_per_ms * glide_time_ms * (1.0 - kept), speed_px_per_ms * kept};
}

Gesture Gestures::make(Gesture::Kind kind, float x, float y) const {
    return {kind, first_x_, first_y_, x, y, 0, 0};
}

Gesture Gestures::pointer(
    PointerPhase phase, int pointer_id, float x, float y, double time_ms, PointerKind kind) {
    if (phase == PointerPhase::down) {
        return phase_ == Phase::idle ? down(pointer_id, x, y, time_ms) : Gesture{};
    }
    if (phase_ == Phase::idle || pointer_id != pointer_id_) return {};
    if (phase == PointerPhase::move) return move(x, y, time_ms, kind);
    if (phase == PointerPhase::up) return up(x, y, time_ms, kind);
    phase_ = Phase::idle;
    return make(Gesture::Kind::cancel, x, y);
}

Gesture Gestures::down(int pointer_id, float x, float y, double time_ms) {
    stopped_glide_ = gliding_;
    gliding_ = false;
    phase_ = Phase::pressed;
    pointer_id_ = pointer_id;
    first_x_ = last_x_ = x;
    first_y_ = last_y_ = y;
    last_ms_ = time_ms;
    speed_px_per_ms_ = 0;
    return make(stopped_glide_ ? Gesture::Kind::none : Gesture::Kind::press, x, y);
}

Gesture Gestures::move(float x, float y, double time_ms, PointerKind kind) {
    if (kind == PointerKind::mouse)
        return {};  // a wheel scrolls; a drag with the button held does not
    const float across = x - first_x_;
    const float along = y - first_y_;
    bool began = false;
    if (phase_ == Phase::pressed) {
        if (std::hypot(across, along) <= slop_px) return {};
        vertical_ = std::fabs(along) >= std::fabs(across);
        phase_ = Phase::scrolling;
        began = true;
    }
    const float delta = vertical_ ? y - last_y_ : x - last_x_;
    const double elapsed_ms = std::max(1.0, time_ms - last_ms_);
    const double now = static_cast<double>(delta) / elapsed_ms;
    speed_px_per_ms_ = began ? now : 0.6 * speed_px_per_ms_ + 0.4 * now;
    last_x_ = x;
    last_y_ = y;
    last_ms_ = time_ms;
    Gesture gesture = make(Gesture::Kind::scroll, x, y);
    (vertical_ ? gesture.scroll_y : gesture.scroll_x) = delta;
    return gesture;
}

Gesture Gestures::up(float x, float y, double time_ms, PointerKind kind) {
    const Phase was = phase_;
    phase_ = Phase::idle;
    if (was == Phase::scrolling) {
        const bool rested = time_ms - last_ms_ > rest_before_lift_ms;
        gliding_ = !rested && !less_motion_ && std::fabs(speed_px_per_ms_) > glide_least_px_per_ms;
        glide_ms_ = time_ms;
        return make(Gesture::Kind::cancel, x, y);
    }
    const bool slipped = std::hypot(x - first_x_, y - first_y_) > slop_px;
    if (kind == PointerKind::touch && (slipped || stopped_glide_)) {
        return make(Gesture::Kind::cancel, x, y);
    }
    return make(Gesture::Kind::tap, x, y);
}

Gesture Gestures::step(double time_ms) {
    if (!gliding_) return {};
    const Glide gone = glide(speed_px_per_ms_, time_ms - glide_ms_);
    glide_ms_ = std::max(glide_ms_, time_ms);
    speed_px_per_ms_ = gone.speed_px_per_ms;
    gliding_ = std::fabs(speed_px_per_ms_) > glide_least_px_per_ms;
    Gesture gesture = make(Gesture::Kind::scroll, last_x_, last_y_);
    (vertical_ ? gesture.scroll_y : gesture.scroll_x) = static_cast<float>(gone.distance_px);
    return gesture;
}

}  // namespace twoclocks::canvas
