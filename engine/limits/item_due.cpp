#include <algorithm>

#include "engine/limits/due.hpp"

namespace twoclocks::limits {
namespace {

using base::FlightTime;
using facts::Clock;

/// What is left and the whole of it, in the unit of the clock.
struct Share {
    std::int64_t left;
    std::int64_t whole;
};

[[nodiscard]] Share share_of(const ClockDue& clock) {
    switch (clock.clock) {
        case Clock::hours:
            return {clock.left.seconds, clock.limit_hours.seconds};
        case Clock::calendar:
            return {clock.days_left, base::days_between(clock.anchor_on, clock.due_on)};
        case Clock::landings:
        case Clock::starts:
            return {clock.left_count.value, clock.limit_count.value};
    }
    return {0, 1};
}

[[nodiscard]] bool has_less(const ClockDue& left, const ClockDue& right) {
    const Share one = share_of(left);
    const Share other = share_of(right);
    return one.left * std::max<std::int64_t>(1, other.whole) <
           other.left * std::max<std::int64_t>(1, one.whole);
}

}  // namespace

bool ClockDue::passed() const {
    if (!known) return false;
    switch (clock) {
        case Clock::hours:
            return left.seconds < 0;
        case Clock::calendar:
            return days_left < 0;
        case Clock::landings:
        case Clock::starts:
            return left_count.value < 0;
    }
    return false;
}

bool ItemDue::passed() const {
    const auto over = [](const ClockDue& clock) { return clock.passed(); };
    if (std::any_of(caps.begin(), caps.end(), over)) return true;
    if (combine == facts::Combine::sooner) return std::any_of(clocks.begin(), clocks.end(), over);
    bool any = false;
    for (const ClockDue& clock : clocks) {
        if (clock.known && !clock.passed()) return false;
        any = any || clock.passed();
    }
    return any;
}

bool ItemDue::all_known() const {
    const auto known = [](const ClockDue& clock) { return clock.known; };
    return std::all_of(clocks.begin(), clocks.end(), known) &&
           std::all_of(caps.begin(), caps.end(), known);
}

const ClockDue* ItemDue::binding() const {
    const ClockDue* out = nullptr;
    for (const ClockDue& clock : clocks) {
        if (!clock.known) continue;
        const bool takes_over =
            out == nullptr ||
            (combine == facts::Combine::later ? has_less(*out, clock) : has_less(clock, *out));
        if (takes_over) out = &clock;
    }
    for (const ClockDue& cap : caps) {
        if (cap.known && (out == nullptr || has_less(cap, *out))) out = &cap;
    }
    return out;
}

bool ItemDue::mandatory() const {
    return limit_class != facts::LimitClass::recommended;
}

bool overflown(const ClockDue& clock) {
    if (!clock.known || clock.overfly.seconds == 0) return false;
    return clock.past_at_work > clock.overfly || FlightTime{0} - clock.left > clock.overfly;
}

const ClockDue* clock_of(const ItemDue& item, Clock clock) {
    for (const ClockDue& due : item.clocks) {
        if (due.clock == clock) return &due;
    }
    return nullptr;
}

}  // namespace twoclocks::limits
