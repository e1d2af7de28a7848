#include "engine/forecast/projection.hpp"

#include <algorithm>

#include "engine/forecast/rate.hpp"

namespace twoclocks::forecast {
namespace {

using base::Date;
using facts::Clock;
using limits::ClockDue;
using limits::ItemDue;
using timeline::AircraftState;

[[nodiscard]] std::optional<Date> sooner(const std::optional<Date>& left,
                                         const std::optional<Date>& right) {
    if (!left) return right;
    if (!right) return left;
    return std::min(*left, *right);
}

/// The day that a line from one reading on meets a clock. Where kinds of flying used it faster, all
/// of it goes by so many thousandths.
[[nodiscard]] std::optional<Date> day_from(const timeline::UsagePoint& start,
                                           const HoursCurve& curve,
                                           std::int64_t thousandths,
                                           Date curve_from,
                                           base::FlightTime met,
                                           Date today) {
    const base::FlightTime left = met - start.total;
    if (left.seconds <= 0) return std::min(start.on, today);
    const double seconds =
        static_cast<double>(left.seconds) * 1000.0 / static_cast<double>(thousandths);
    const auto day = day_when(curve, base::days_between(curve_from, start.on), seconds);
    if (!day) return std::nullopt;
    const Date reached = base::add_days(curve_from, *day);
    if (reached > latest_day) return std::nullopt;
    return std::max(reached, today);
}

/// The earliest day over every start the line may have: the last total, and while records disagree
/// each one that an answer might leave as the last.
[[nodiscard]] std::optional<Date> day_at(const HoursCurve& curve,
                                         std::int64_t thousandths,
                                         const ClockDue& clock,
                                         const AircraftState& state,
                                         Date curve_from,
                                         Date today) {
    const base::FlightTime met = met_at(clock, state);
    std::optional<Date> out =
        day_from(state.usage.back(), curve, thousandths, curve_from, met, today);
    for (const timeline::UsagePoint& point : state.usage) {
        if (may_be_last(state, point))
            out = sooner(out, day_from(point, curve, thousandths, curve_from, met, today));
    }
    return out;
}

[[nodiscard]] Projection project_hours(const ClockDue& clock,
                                       const AircraftState& state,
                                       const FlyingAhead& ahead,
                                       Date today) {
    Projection out;
    out.binds = Clock::hours;
    out.known = ahead.basis != RateBasis::unknown || clock.left.seconds <= 0;
    if (!out.known) return out;
    if (state.usage.empty()) {
        // On no aircraft, or on one without a reading: what is used up is used up today.
        out.known = clock.left.seconds <= 0;
        if (out.known) out.early = out.likely = out.late = today;
        return out;
    }
    // The earliest is when all of it is of the kind that used the limit the most.
    constexpr std::int64_t as_flown = 1000;
    const std::int64_t fastest = clock.most_thousandths;
    out.early = day_at(ahead.early, fastest, clock, state, ahead.from, today);
    out.likely = day_at(ahead.likely, as_flown, clock, state, ahead.from, today);
    out.late = day_at(ahead.late, as_flown, clock, state, ahead.from, today);
    return out;
}

void join(Projection& into, const Projection& other) {
    const bool other_first = other.likely && (!into.likely || *other.likely < *into.likely);
    if (other_first || !into.known) into.binds = other.binds;
    into.known = true;
    into.early = sooner(into.early, other.early);
    into.likely = sooner(into.likely, other.likely);
    into.late = sooner(into.late, other.late);
}

[[nodiscard]] std::optional<Date> later(const std::optional<Date>& left,
                                        const std::optional<Date>& right) {
    if (!left || !right) return std::nullopt;
    return std::max(*left, *right);
}

/// The later of two, each of early, likely and late on its own.
void join_later(Projection& into, const Projection& other) {
    if (!into.known) {
        into = other;
        return;
    }
    const bool other_last = into.likely && (!other.likely || *other.likely > *into.likely);
    if (other_last) into.binds = other.binds;
    into.early = later(into.early, other.early);
    into.likely = later(into.likely, other.likely);
    into.late = later(into.late, other.late);
}

[[nodiscard]] bool is_count(Clock clock) {
    return clock == Clock::landings || clock == Clock::starts;
}

}  // namespace

base::FlightTime met_at(const ClockDue& clock, const AircraftState& state) {
    if (clock.hours_in == limits::HoursIn::total_time) return clock.due_total;
    return state.usage.back().total + clock.left;
}

Projection project(const ClockDue& clock,
                   const AircraftState& state,
                   const FlyingAhead& ahead,
                   Date today) {
    Projection out;
    out.binds = clock.clock;
    if (!clock.known || is_count(clock.clock)) return out;
    if (clock.clock == Clock::hours) return project_hours(clock, state, ahead, today);
    out.known = true;
    out.early = out.likely = out.late = clock.due_on;
    return out;
}

Projection project(const ItemDue& item,
                   const AircraftState& state,
                   const FlyingAhead& ahead,
                   Date today) {
    Projection out;
    out.known = item.complied || item.asleep;
    bool all_known = true;
    for (const auto* clocks : {&item.clocks, &item.caps}) {
        const bool is_later = item.combine == facts::Combine::later && clocks == &item.clocks;
        for (const ClockDue& clock : *clocks) {
            if (is_count(clock.clock)) continue;
            const Projection one = project(clock, state, ahead, today);
            all_known = all_known && one.known;
            if (one.known) is_later ? join_later(out, one) : join(out, one);
        }
    }
    // A passed limit is certain whatever the others are; otherwise one unknown clock hides the
    // answer.
    if (!all_known && !item.passed()) out.known = false;
    return out;
}

std::optional<FirstStop> first_stop(const std::vector<ItemDue>& items,
                                    const AircraftState& state,
                                    const FlyingAhead& ahead,
                                    Date today) {
    std::optional<FirstStop> out;
    for (std::size_t place = 0; place < items.size(); ++place) {
        if (!items[place].mandatory() || items[place].is_stored) continue;
        const Projection one = project(items[place], state, ahead, today);
        if (!one.known || !one.likely) continue;
        if (out && *out->projection.likely <= *one.likely) continue;
        out = FirstStop{static_cast<std::int32_t>(place), one};
    }
    return out;
}

TotalsToCome totals_to_come(const AircraftState& state, const FlyingAhead& ahead, Date on) {
    const timeline::UsagePoint& last = state.usage.back();
    const std::int32_t start = base::days_between(ahead.from, last.on);
    const std::int32_t day = std::max(start, base::days_between(ahead.from, on));
    const auto at = [&](const HoursCurve& curve) {
        const double flown = flown_by(curve, day) - flown_by(curve, start);
        return last.total + base::FlightTime{static_cast<std::int64_t>(flown)};
    };
    return {at(ahead.early), at(ahead.likely), at(ahead.late)};
}

base::FlightTime total_then(const AircraftState& state, Date on) {
    return {static_cast<std::int64_t>(total_at(state.usage, on))};
}

std::optional<base::FlightTime> break_even(const ItemDue& item, Date today) {
    const ClockDue* hours = limits::clock_of(item, Clock::hours);
    const ClockDue* calendar = limits::clock_of(item, Clock::calendar);
    if (hours == nullptr || calendar == nullptr || !hours->known || !calendar->known)
        return std::nullopt;
    if (hours->left.seconds <= 0 || calendar->days_left <= 0) return std::nullopt;
    const base::Span span = base::span_between(today, calendar->due_on);
    const double years = span.years + static_cast<double>(span.days) / year_days;
    return base::FlightTime{
        static_cast<std::int64_t>(static_cast<double>(hours->left.seconds) / years)};
}

}  // namespace twoclocks::forecast
