#include "engine/plan/work_days.hpp"

#include <algorithm>

#include "engine/plan/moment.hpp"

namespace twoclocks::plan {
namespace {

constexpr std::int32_t days_back = 3 * 366;
constexpr std::int32_t days_ahead = 12 * 366;
constexpr std::int32_t days = days_back + days_ahead;

/// 1970-01-01 was a Thursday.
[[nodiscard]] bool is_weekend(std::int32_t day_number) {
    constexpr std::int32_t week = 7;
    constexpr std::int32_t saturday = 5;
    const std::int32_t from_monday = ((day_number + 3) % week + week) % week;
    return from_monday >= saturday;
}

}  // namespace

WorkDays::WorkDays(base::Date today, const std::vector<Closure>& closures) {
    const std::int32_t first = today.day_number - days_back;
    std::vector<bool> closed(static_cast<std::size_t>(days), false);
    for (const Closure& closure : closures) {
        const std::int32_t from = std::max(closure.from.day_number - first, 0);
        const std::int32_t last = std::min(closure.last.day_number - first, days - 1);
        for (std::int32_t day = from; day <= last; ++day)
            closed[static_cast<std::size_t>(day)] = true;
    }
    double done = 0;
    for (std::int32_t day = 0; day < days; ++day) {
        done_.push_back(done);
        if (closed[static_cast<std::size_t>(day)] || is_weekend(first + day)) continue;
        nth_day_.push_back(static_cast<double>(day - days_back));
        done += 1;
    }
}

double WorkDays::work_by(double time) const {
    const std::int32_t day = day_at(time);
    const std::int32_t place = day + days_back;
    if (place < 0) return time + days_back;
    if (place >= days) return static_cast<double>(nth_day_.size()) + time - days_ahead;
    const auto at = static_cast<std::size_t>(place);
    const double until =
        at + 1 < done_.size() ? done_[at + 1] : static_cast<double>(nth_day_.size());
    return done_[at] + (until - done_[at]) * (time - static_cast<double>(day));
}

double WorkDays::after(double time, double work) const {
    if (work <= 0) return time;
    const double wanted = work_by(time) + work;
    const std::int32_t whole = day_at(wanted);
    const double part = wanted - static_cast<double>(whole);
    // Over at the end of a day, not on the morning of the next one that is worked on.
    const std::int32_t nth = part > 0 ? whole : whole - 1;
    if (nth < 0) return wanted - days_back;
    if (nth >= static_cast<std::int32_t>(nth_day_.size()))
        return wanted - static_cast<double>(nth_day_.size()) + days_ahead;
    return nth_day_[static_cast<std::size_t>(nth)] + (part > 0 ? part : 1);
}

double WorkDays::before(double time, double work) const {
    if (work <= 0) return time;
    const double wanted = work_by(time) - work;
    const std::int32_t nth = day_at(wanted);
    if (nth < 0) return wanted - days_back;
    if (nth >= static_cast<std::int32_t>(nth_day_.size()))
        return wanted - static_cast<double>(nth_day_.size()) + days_ahead;
    return nth_day_[static_cast<std::size_t>(nth)] + (wanted - static_cast<double>(nth));
}

}  // namespace twoclocks::plan
