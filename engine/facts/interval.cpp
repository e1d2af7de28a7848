#include "engine/facts/interval.hpp"

#include <algorithm>
#include <array>

namespace twoclocks::facts {
namespace {

template <class T>
[[nodiscard]] std::optional<T> least(const std::optional<T>& left, const std::optional<T>& right) {
    if (!left) return right;
    if (!right) return left;
    return std::min(*left, *right);
}

}  // namespace

bool is_empty(const Interval& interval) {
    return !interval.hours && !interval.months && !interval.days && !interval.landings &&
           !interval.starts;
}

Interval part(const Interval& interval, Clock clock) {
    Interval out;
    switch (clock) {
        case Clock::hours:
            out.hours = interval.hours;
            break;
        case Clock::calendar:
            out.months = interval.months;
            out.days = interval.days;
            break;
        case Clock::landings:
            out.landings = interval.landings;
            break;
        case Clock::starts:
            out.starts = interval.starts;
            break;
    }
    return out;
}

Interval lesser(const Interval& left, const Interval& right) {
    return {least(left.hours, right.hours),
            least(left.months, right.months),
            least(left.days, right.days),
            least(left.landings, right.landings),
            least(left.starts, right.starts)};
}

Interval repeat_of(const LimitSet& limit) {
    return {limit.hours, limit.months, limit.days, limit.landings, limit.starts};
}

Interval initial_of(const LimitSet& limit) {
    return is_empty(limit.first) ? repeat_of(limit) : limit.first;
}

bool same_clocks(const Interval& left, const Interval& right) {
    constexpr std::array all{Clock::hours, Clock::calendar, Clock::landings, Clock::starts};
    return std::all_of(all.begin(), all.end(), [&](Clock clock) {
        return is_empty(part(left, clock)) == is_empty(part(right, clock));
    });
}

}  // namespace twoclocks::facts
