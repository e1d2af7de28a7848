#include "engine/forecast/wear_trend.hpp"

#include <algorithm>

#include "engine/forecast/projection.hpp"

namespace twoclocks::forecast {
namespace {

using base::Date;
using base::FlightTime;
using timeline::WearPoint;

/// What is left of the limit over how fast it goes, in the unit of `between`, cut.
[[nodiscard]] std::int64_t until_limit(std::int64_t left, std::int64_t worn, std::int64_t between) {
    return left * between / worn;
}

[[nodiscard]] std::optional<Date> day_by_hours(FlightTime due,
                                               const timeline::AircraftState& state,
                                               const FlyingAhead& ahead,
                                               Date today) {
    limits::ClockDue clock;
    clock.clock = facts::Clock::hours;
    clock.known = true;
    clock.due_total = due;
    clock.left = due - state.usage.back().total;
    const Projection projection = project(clock, state, ahead, today);
    if (!projection.likely) return std::nullopt;
    return std::max(*projection.likely, today);
}

/// The straight line from one measurement to the last, followed to the limit.
[[nodiscard]] WearTrend along(const WearPoint& from,
                              const WearPoint& to,
                              const facts::WearLimit& limit,
                              const timeline::AircraftState& state,
                              const FlyingAhead& ahead,
                              Date today) {
    WearTrend out;
    out.from = from;
    out.to = to;
    const std::int64_t left = timeline::wear_left(limit, to.value_thousandths);
    const std::int64_t worn = timeline::wear_left(limit, from.value_thousandths) - left;
    out.kind = TrendKind::flat;
    if (worn <= 0) return out;
    out.by_hours = from.total && to.total && *from.total < *to.total && !state.usage.empty();
    if (out.by_hours) {
        out.hours_between = *to.total - *from.total;
        out.hours_left = {until_limit(left, worn, out.hours_between.seconds)};
        out.likely = day_by_hours(*to.total + out.hours_left, state, ahead, today);
        const bool no_rate = ahead.basis == RateBasis::unknown && !out.likely;
        out.kind = no_rate ? TrendKind::no_rate : TrendKind::far;
    } else {
        // Two measurements of one day are one day apart at most.
        out.days_between = std::max(1, base::days_between(from.on, to.on));
        const std::int64_t days = until_limit(left, worn, out.days_between);
        const std::int64_t most = base::days_between(to.on, latest_day);
        out.days_left = static_cast<std::int32_t>(std::min(days, most + 1));
        if (days <= most) out.likely = std::max(base::add_days(to.on, out.days_left), today);
        out.kind = TrendKind::far;
    }
    if (out.likely) out.kind = TrendKind::on_a_day;
    return out;
}

/// True when the first trend comes before the other; a day comes before none, none before flat.
[[nodiscard]] bool steeper(const WearTrend& left, const WearTrend& right) {
    if (left.kind != right.kind) return left.kind > right.kind;
    return left.likely && *left.likely < *right.likely;
}

}  // namespace

WearTrend wear_trend(const timeline::WearState& wear,
                     const timeline::AircraftState& state,
                     const FlyingAhead& ahead,
                     Date today) {
    const timeline::WearFinding finding = timeline::judge_wear(wear);
    if (finding.verdict != timeline::WearVerdict::sound) return {};
    const WearPoint& last = *finding.point;
    const facts::WearLimit& limit = finding.bound->limit;
    std::vector<const WearPoint*> before;
    for (const WearPoint& point : wear.points) {
        if (point.fact == last.fact) break;
        const bool counts =
            point.standing == timeline::Standing::settled && point.unit == limit.unit;
        if (counts) before.push_back(&point);
    }
    WearTrend out;
    out.kind = TrendKind::one;
    out.to = last;
    if (before.empty()) return out;
    out = along(*before.back(), last, limit, state, ahead, today);
    if (before.size() == 1) return out;
    const WearTrend whole = along(*before.front(), last, limit, state, ahead, today);
    return steeper(whole, out) ? whole : out;
}

}  // namespace twoclocks::forecast
