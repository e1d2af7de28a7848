#include "engine/forecast/pattern.hpp"

#include <algorithm>

#include "engine/forecast/rate.hpp"
#include "engine/forecast/whole_years.hpp"

namespace twoclocks::forecast {
namespace {

constexpr double year_before_counts = 0.7;
constexpr double change_counts = 0.5;
constexpr double most_change = 0.5;  // of which half counts
constexpr double even_share = 1.0 / months_a_year;

void take_season(const std::vector<Year>& years, FlyingPattern& pattern) {
    const bool one = years.size() == 1;
    pattern.share.fill(one ? even_share : 0);
    double all = one ? 1 : 0;
    double counts = 1;
    for (const Year& year : years) {
        if (year.all > 0) {
            for (std::size_t place = 0; place < months_a_year; ++place) {
                const auto season = static_cast<std::size_t>(
                    season_of(year.first_month + static_cast<std::int32_t>(place)));
                pattern.share[season] += counts * year.seconds[place] / year.all;
            }
            all += counts;
        }
        counts *= year_before_counts;
    }
    if (all <= 0) {
        pattern.share.fill(even_share);
        return;
    }
    for (double& share : pattern.share)
        share /= all;
}

[[nodiscard]] double level_of(const std::vector<Year>& years) {
    const double last = years.front().all;
    if (years.size() < 2 || years[1].all <= 0) return last;
    const double change = std::clamp(last / years[1].all - 1, -most_change, most_change);
    return last * (1 + change_counts * change);
}

/// Under twelve whole months: by the days that it was in service.
[[nodiscard]] FlyingPattern level_alone(const std::vector<MonthFlown>& months) {
    FlyingPattern out;
    double flown = 0;
    std::int32_t served = 0;
    for (const MonthFlown& month : months) {
        flown += static_cast<double>(month.flown.seconds);
        served += month.covered_days - month.out_days;
    }
    out.flown = flown;
    out.served_days = served;
    if (served < fewest_days) return out;
    out.basis = PatternBasis::level;
    out.year_seconds = flown / served * days_a_year;
    out.share.fill(even_share);
    return out;
}

}  // namespace

FlyingPattern flying_pattern(const std::vector<MonthFlown>& months) {
    const std::vector<Year> years = last_years(months);
    FlyingPattern out = level_alone(months);
    if (years.empty()) return out;
    out.basis = PatternBasis::season;
    out.years = static_cast<std::int32_t>(years.size());
    take_season(years, out);
    out.year_seconds = level_of(years);
    out.last_year = years.front().all;
    if (years.size() > 1) out.year_before = years[1].all;
    return out;
}

double expected_in(const FlyingPattern& pattern, std::int32_t month) {
    return pattern.year_seconds * pattern.share[static_cast<std::size_t>(season_of(month))];
}

}  // namespace twoclocks::forecast
