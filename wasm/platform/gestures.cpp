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
    return {kind, first_x_, first_y_, x, y, 0, 0, 1};
}

Gesture Gestures::pointer(const PointerEvent& event) {
    if (event.phase == PointerPhase::down) {
        return phase_ == Phase::idle ? down(event) : other(event);
    }
    if (phase_ == Phase::idle) return {};
    if (event.id != pointer_id_) return other(event);
    if (event.phase == PointerPhase::move) return move(event);
    if (event.phase == PointerPhase::up) return up(event);
    phase_ = Phase::idle;
    return make(Gesture::Kind::cancel, event.x, event.y);
}

Gesture Gestures::other(const PointerEvent& event) {
    if (event.phase == PointerPhase::down) {
        if (phase_ != Phase::pressed || event.kind == PointerKind::mouse) return {};
        const float apart = std::hypot(event.x - here_x_, event.y - here_y_);
        other_ = {true, event.id, event.x, event.y, event.x, event.y, std::max(apart, 2 * slop_px)};
        return {};
    }
    if (!other_.down || event.id != other_.id) return {};
    if (event.phase != PointerPhase::move) {
        other_.down = false;
        return {};
    }
    other_.x = event.x;
    other_.y = event.y;
    return phase_ == Phase::pinching ? spread() : Gesture{};
}

Gesture Gestures::spread() {
    Gesture gesture = make(Gesture::Kind::pinch, here_x_, here_y_);
    gesture.spread = std::hypot(other_.x - here_x_, other_.y - here_y_) / other_.apart;
    return gesture;
}

Gesture Gestures::down(const PointerEvent& event) {
    stopped_glide_ = gliding_;
    gliding_ = false;
    phase_ = Phase::pressed;
    pointer_id_ = event.id;
    other_ = {};
    here_x_ = event.x;
    here_y_ = event.y;
    first_x_ = last_x_ = event.x;
    first_y_ = last_y_ = event.y;
    last_ms_ = event.time_ms;
    speed_px_per_ms_ = 0;
    const Gesture::Kind kind = stopped_glide_ ? Gesture::Kind::none : Gesture::Kind::press;
    return make(kind, event.x, event.y);
}

Gesture Gestures::move(const PointerEvent& event) {
    // A wheel scrolls; a mouse dragged with its button held does not.
    if (event.kind == PointerKind::mouse) return {};
    here_x_ = event.x;
    here_y_ = event.y;
    // Once two fingers have pinched, the one that is left neither scrolls nor taps.
    if (phase_ == Phase::pinching) return other_.down ? spread() : Gesture{};
    const float across = event.x - first_x_;
    const float along = event.y - first_y_;
    bool began = false;
    if (phase_ == Phase::pressed) {
        if (std::hypot(across, along) <= slop_px) return {};
        const float moved = std::hypot(other_.x - other_.first_x, other_.y - other_.first_y);
        if (other_.down && moved > resting_px) {
            phase_ = Phase::pinching;
            return spread();
        }
        vertical_ = std::fabs(along) >= std::fabs(across);
        phase_ = Phase::scrolling;
        began = true;
    }
    const float delta = vertical_ ? event.y - last_y_ : event.x - last_x_;
    const double elapsed_ms = std::max(1.0, event.time_ms - last_ms_);
    const double now = static_cast<double>(delta) / elapsed_ms;
    const bool rested = elapsed_ms > rest_before_lift_ms;
    speed_px_per_ms_ = began || rested ? now : 0.6 * speed_px_per_ms_ + 0.4 * now;
    last_x_ = event.x;
    last_y_ = event.y;
    last_ms_ = event.time_ms;
    Gesture gesture = make(Gesture::Kind::scroll, event.x, event.y);
    (vertical_ ? gesture.scroll_y : gesture.scroll_x) = delta;
    return gesture;
}

Gesture Gestures::up(const PointerEvent& event) {
    const Phase was = phase_;
    phase_ = Phase::idle;
    if (was == Phase::scrolling) {
        const bool rested = event.time_ms - last_ms_ > rest_before_lift_ms;
        gliding_ = !rested && !less_motion_ && std::fabs(speed_px_per_ms_) > glide_least_px_per_ms;
        glide_ms_ = event.time_ms;
        return make(Gesture::Kind::cancel, event.x, event.y);
    }
    if (was == Phase::pinching) return make(Gesture::Kind::cancel, event.x, event.y);
    const bool slipped = std::hypot(event.x - first_x_, event.y - first_y_) > slop_px;
    const bool taps = event.kind == PointerKind::mouse || (!slipped && !stopped_glide_);
    return make(taps ? Gesture::Kind::tap : Gesture::Kind::cancel, event.x, event.y);
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
