#include "engine/forecast/flying_model.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "engine/base/real.hpp"
#include "engine/forecast/rate.hpp"
#include "engine/forecast/whole_years.hpp"

namespace twoclocks::forecast {
namespace {

/// Shares that nobody measured, mean 1: from a month on the ground to one of nearly twice as much.
constexpr std::array assumed_ratios{0.0, 0.4, 0.7, 0.9, 1.0, 1.1, 1.3, 1.7, 1.9};

[[nodiscard]] std::vector<double> with_mean_one(std::vector<double> ratios) {
    double sum = 0;
    for (const double ratio : ratios)
        sum += ratio;
    if (sum <= 0) return {};
    for (double& ratio : ratios)
        ratio = ratio * static_cast<double>(ratios.size()) / sum;
    return ratios;
}

/// Each month of the years as a share of what the season had for it, oldest first.
[[nodiscard]] std::vector<double> ratios_of(const std::vector<Year>& years,
                                            const FlyingPattern& pattern) {
    std::vector<double> out;
    for (auto year = years.rbegin(); year != years.rend(); ++year) {
        for (std::size_t place = 0; place < months_a_year; ++place) {
            const std::int32_t month = year->first_month + static_cast<std::int32_t>(place);
            const double expected =
                year->all * pattern.share[static_cast<std::size_t>(season_of(month))];
            if (expected > 0) out.push_back(year->seconds[place] / expected);
        }
    }
    return with_mean_one(std::move(out));
}

/// Under a year: each whole month in service as a share of the level.
[[nodiscard]] std::vector<double> ratios_of(const std::vector<MonthFlown>& months,
                                            const FlyingPattern& pattern) {
    std::vector<double> out;
    for (const MonthFlown& month : months) {
        if (month.whole() && month.out_days == 0 && pattern.year_seconds > 0)
            out.push_back(static_cast<double>(month.flown.seconds) /
                          expected_in(pattern, month.month));
    }
    return with_mean_one(std::move(out));
}

[[nodiscard]] double spread_of(const std::vector<Year>& years) {
    double squares = assumed_year_spread * assumed_year_spread;
    std::int32_t count = 1;
    for (std::size_t place = 1; place < years.size(); ++place) {
        if (years[place - 1].all <= 0 || years[place].all <= 0) continue;
        const double change = base::log_fixed(years[place - 1].all / years[place].all);
        squares += change * change;
        ++count;
    }
    return std::sqrt(squares / count);
}

/// Of the level now, from the months that it was taken from.
[[nodiscard]] double level_spread_of(const std::vector<double>& ratios, double year_spread) {
    double squares = 0;
    for (const double ratio : ratios)
        squares += (ratio - 1) * (ratio - 1);
    const double months = static_cast<double>(std::min(ratios.size(), months_a_year));
    const double of_months = squares / static_cast<double>(ratios.size()) / months;
    return std::sqrt(of_months + year_spread * year_spread / 3);
}

/// The readings that the last years rest on: the one before them, and all since.
[[nodiscard]] timeline::UsageSeries last_readings(const timeline::UsageSeries& usage) {
    constexpr std::int32_t enough_days = (static_cast<std::int32_t>(most_years) + 1) * year_days;
    if (usage.empty()) return {};
    const base::Date since = base::add_days(usage.back().on, -enough_days);
    auto first = std::find_if(
        usage.begin(), usage.end(), [&](const auto& point) { return point.on > since; });
    if (first != usage.begin()) --first;
    return {first, usage.end()};
}

/// What each month is expected to take, January first.
using YearMonths = std::array<double, months_a_year>;

[[nodiscard]] YearMonths months_of(const FlyingPattern& pattern) {
    YearMonths out{};
    for (std::size_t month = 0; month < out.size(); ++month)
        out[month] = pattern.year_seconds * pattern.share[month];
    return out;
}

/// A month as planned, of a year in which the shares are known.
[[nodiscard]] YearMonths months_of(const timeline::StatedPlan& plan, const FlyingPattern& pattern) {
    const double year = static_cast<double>(plan.month.seconds) * months_a_year;
    YearMonths out{};
    for (std::size_t month = 0; month < out.size(); ++month) {
        out[month] = year * pattern.share[month];
        if (!plan.by_month) continue;
        const auto stated = static_cast<double>((*plan.by_month)[month].seconds);
        out[month] = plan.disputed ? std::max(out[month], stated) : stated;
    }
    return out;
}

}  // namespace

FlyingModel flying_model(const std::vector<MonthFlown>& months) {
    FlyingModel out;
    out.pattern = flying_pattern(months);
    const std::vector<Year> years = last_years(months);
    out.year_spread = spread_of(years);
    out.ratios = years.empty() ? ratios_of(months, out.pattern) : ratios_of(years, out.pattern);
    if (out.ratios.size() < fewest_ratios) {
        out.assumed = true;
        out.ratios.assign(assumed_ratios.begin(), assumed_ratios.end());
    }
    out.level_spread = level_spread_of(out.ratios, out.year_spread);
    return out;
}

FlyingModel measured_model(const timeline::AircraftState& state) {
    FlyingModel out = flying_model(monthly_hours(last_readings(state.usage), state.spells));
    out.week = flying_week(state.usage, state.spells);
    return out;
}

FlyingModel planned_model(FlyingModel measured, const std::optional<timeline::StatedPlan>& plan) {
    if (!plan) return measured;
    FlyingPattern& pattern = measured.pattern;
    const bool unknown = pattern.basis == PatternBasis::none;
    if (unknown) pattern.share.fill(1.0 / months_a_year);
    YearMonths months = months_of(*plan, pattern);
    if (plan->disputed && !unknown) {
        const YearMonths flown = months_of(pattern);
        for (std::size_t month = 0; month < months.size(); ++month)
            months[month] = std::max(months[month], flown[month]);
    }
    if (unknown) pattern.basis = PatternBasis::level;
    pattern.year_seconds = std::accumulate(months.begin(), months.end(), 0.0);
    for (std::size_t month = 0; month < months.size() && pattern.year_seconds > 0; ++month)
        pattern.share[month] = months[month] / pattern.year_seconds;
    return measured;
}

}  // namespace twoclocks::forecast
