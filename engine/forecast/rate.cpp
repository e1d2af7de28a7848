#include "engine/forecast/rate.hpp"

#include <algorithm>

namespace twoclocks::forecast {
namespace {

using base::Date;
using timeline::UsageSeries;

constexpr double most_seconds_a_day = 86'400;
constexpr double months_a_year = 12;

/// How long the trailing windows are for a history of this length.
[[nodiscard]] std::int32_t window_for(std::int32_t span_days) {
    constexpr std::int32_t enough_for_years = year_days + 6 * step_days;
    constexpr std::int32_t enough_for_halves = 4 * step_days;
    if (span_days >= enough_for_years) return year_days;
    return span_days >= enough_for_halves ? span_days / 2 : span_days;
}

[[nodiscard]] double mean_rate(const UsageSeries& usage, Date from, Date to) {
    const double flown = total_at(usage, to) - total_at(usage, from);
    return std::clamp(flown / base::days_between(from, to), 0.0, most_seconds_a_day);
}

void measure_windows(const UsageSeries& usage, UsageRate& rate) {
    rate.to = usage.back().on;
    rate.from = std::max(usage.front().on, base::add_days(rate.to, -history_days));
    const std::int32_t span_days = base::days_between(rate.from, rate.to);
    if (span_days < fewest_days) return;
    rate.basis = RateBasis::measured;
    rate.window_days = window_for(span_days);
    double sum = 0;
    for (std::int32_t back = 0; back + rate.window_days <= span_days; back += step_days) {
        const Date end = base::add_days(rate.to, -back);
        const double one = mean_rate(usage, base::add_days(end, -rate.window_days), end);
        rate.least = rate.windows == 0 ? one : std::min(rate.least, one);
        rate.greatest = rate.windows == 0 ? one : std::max(rate.greatest, one);
        sum += one;
        ++rate.windows;
    }
    rate.likely = std::clamp(sum / rate.windows, rate.least, rate.greatest);
}

void apply_plan(const timeline::StatedPlan& plan, UsageRate& rate) {
    const double stated =
        std::clamp(static_cast<double>(plan.month.seconds) * months_a_year / days_a_year,
                   0.0,
                   most_seconds_a_day);
    const bool measured = rate.basis == RateBasis::measured;
    rate.basis = measured ? RateBasis::stated_and_measured : RateBasis::stated;
    if (measured && plan.disputed) {
        // The plan may yet be withdrawn: no answer flies more than the most of both.
        rate.plan_gives_way = rate.likely > stated;
        rate.likely = std::max(rate.likely, stated);
        rate.greatest = std::max(rate.greatest, stated);
        return;
    }
    rate.likely = stated;
    rate.least = measured ? std::min(rate.least, stated) : stated;
    rate.greatest = measured ? std::max(rate.greatest, stated) : stated;
}

}  // namespace

double total_at(const UsageSeries& usage, Date on) {
    if (usage.empty()) return 0;
    const auto after =
        std::find_if(usage.begin(), usage.end(), [&](const auto& point) { return point.on > on; });
    if (after == usage.begin()) return static_cast<double>(usage.front().total.seconds);
    const timeline::UsagePoint& before = *(after - 1);
    const auto before_seconds = static_cast<double>(before.total.seconds);
    if (after == usage.end()) return before_seconds;
    const double flown = static_cast<double>(after->total.seconds) - before_seconds;
    return before_seconds +
           flown * base::days_between(before.on, on) / base::days_between(before.on, after->on);
}

UsageRate measure(const timeline::AircraftState& state) {
    UsageRate rate;
    if (!state.usage.empty()) measure_windows(state.usage, rate);
    if (state.plan) apply_plan(*state.plan, rate);
    return rate;
}

base::FlightTime a_year(double seconds_a_day) {
    constexpr double tenth_seconds = 360;
    const double tenths = seconds_a_day * days_a_year / tenth_seconds;
    return base::tenths(static_cast<std::int64_t>(tenths + 0.5));
}

}  // namespace twoclocks::forecast
