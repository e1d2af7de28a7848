#include "engine/forecast/rate.hpp"

#include <algorithm>

namespace twoclocks::forecast {

using base::Date;
using timeline::UsageSeries;

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

base::FlightTime nearest_tenth(double seconds) {
    constexpr double tenth_seconds = 360;
    return base::tenths(static_cast<std::int64_t>(std::max(0.0, seconds) / tenth_seconds + 0.5));
}

base::FlightTime nearest_tenth(base::FlightTime time) {
    return nearest_tenth(static_cast<double>(time.seconds));
}

base::FlightTime a_year(double seconds_a_day) {
    return nearest_tenth(seconds_a_day * days_a_year);
}

}  // namespace twoclocks::forecast
