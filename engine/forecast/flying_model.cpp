#include "engine/forecast/flying_model.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/real.hpp"
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

}  // namespace

FlyingModel flying_model(const std::vector<MonthFlown>& months,
                         const std::optional<timeline::StatedPlan>& plan) {
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
    if (!plan) return out;
    out.stated = true;
    out.pattern.year_seconds = static_cast<double>(plan->month.seconds) * months_a_year;
    if (out.pattern.basis != PatternBasis::none) return out;
    out.pattern.basis = PatternBasis::level;
    out.pattern.share.fill(1.0 / months_a_year);
    return out;
}

}  // namespace twoclocks::forecast
