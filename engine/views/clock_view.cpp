#include "engine/views/clock_view.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::views {
namespace {

using base::Word;
using facts::Clock;

[[nodiscard]] std::int32_t permille(std::int64_t left, std::int64_t whole) {
    constexpr std::int64_t full = 1000;
    if (left <= 0 || whole <= 0) return 0;
    return static_cast<std::int32_t>(std::min(left * full / whole, full));
}

[[nodiscard]] std::int32_t left_permille(const limits::ClockDue& clock) {
    switch (clock.clock) {
        case Clock::hours:
            return permille(clock.left.seconds, clock.limit_hours.seconds);
        case Clock::calendar:
            return permille(clock.days_left, base::days_between(clock.anchor_on, clock.due_on));
        case Clock::landings:
        case Clock::starts:
            return permille(clock.left_count.value, clock.limit_count.value);
    }
    return 0;
}

}  // namespace

base::Message left_message(const limits::ClockDue& clock, base::Date today) {
    if (!clock.known) return {Word::unknown_figure, {}};
    switch (clock.clock) {
        case Clock::hours:
            return {Word::hours_figure, {base::hours_left_arg(clock.left)}};
        case Clock::calendar:
            return {Word::span_figure, {base::span_arg(base::span_between(today, clock.due_on))}};
        case Clock::landings:
        case Clock::starts:
            return {Word::count_figure, {base::whole_arg(clock.left_count.value)}};
    }
    return {Word::unknown_figure, {}};
}

ClockView clock_view(const limits::ClockDue* clock, base::Date today) {
    ClockView view;
    view.left = {Word::unknown_figure, {}};
    if (clock == nullptr || !clock->known) return view;
    view.known = true;
    view.left = left_message(*clock, today);
    view.left_permille = left_permille(*clock);
    view.over = clock->passed();
    return view;
}

}  // namespace twoclocks::views
