#include "engine/forecast/week.hpp"

#include "engine/forecast/months.hpp"

namespace twoclocks::forecast {

std::int32_t weekday_of(base::Date on) {
    constexpr std::int32_t of_day_0 = 3;  // 1 January 1970 was a Thursday
    return (on.day_number % 7 + 7 + of_day_0) % 7;
}

std::optional<Week> flying_week(const timeline::UsageSeries& usage,
                                const std::vector<timeline::Spell>& spells) {
    if (usage.empty()) return std::nullopt;
    const base::Date since = base::add_days(usage.back().on, -week_looks_back_days);
    Week flown{};
    std::array<std::int32_t, 7> seen{};
    std::int32_t days = 0;
    double all = 0;
    for (std::size_t place = 1; place < usage.size(); ++place) {
        const timeline::UsagePoint& before = usage[place - 1];
        const timeline::UsagePoint& here = usage[place];
        const std::int32_t between = base::days_between(before.on, here.on);
        if (before.on < since || between > 1 || is_out(spells, here.on)) continue;
        const auto weekday = static_cast<std::size_t>(weekday_of(here.on));
        const auto seconds = static_cast<double>((here.total - before.total).seconds);
        flown[weekday] += seconds;
        all += seconds;
        // A second reading of one day adds hours, no day.
        seen[weekday] += between;
        days += between;
    }
    if (days < fewest_week_days || all <= 0) return std::nullopt;
    double sum = 0;
    for (std::size_t weekday = 0; weekday < flown.size(); ++weekday) {
        if (seen[weekday] < fewest_of_a_weekday) return std::nullopt;
        flown[weekday] /= seen[weekday];
        sum += flown[weekday];
    }
    for (double& share : flown)
        share *= static_cast<double>(flown.size()) / sum;
    return flown;
}

}  // namespace twoclocks::forecast
