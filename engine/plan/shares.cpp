#include "engine/plan/shares.hpp"

#include <algorithm>

#include "engine/plan/moment.hpp"

namespace twoclocks::plan {
namespace {

constexpr double tenth = 0.1;

}  // namespace

double at_share(Values& values, double share, bool higher) {
    const auto count = static_cast<double>(values.size());
    const std::int32_t wanted =
        higher ? day_from(share * count) : std::max(day_at(share * count) - 1, 0);
    const auto last = static_cast<std::int32_t>(values.size()) - 1;
    const auto nth = values.begin() + std::clamp(wanted, 0, last);
    std::nth_element(values.begin(), nth, values.end());
    return static_cast<double>(*nth);
}

std::int32_t day_down(double moment) {
    return day_at(moment + hair);
}

std::int32_t day_up(double moment) {
    return day_from(moment - hair);
}

std::int32_t day_at_share(Values values, std::int32_t percent) {
    constexpr double hundred = 100;
    return day_up(at_share(values, percent / hundred, true));
}

std::int32_t last_day_of(double moment) {
    return day_up(moment) - 1;
}

DayRange range_of_ends(Values& values) {
    return {last_day_of(at_share(values, tenth, false)),
            last_day_of(at_share(values, 1.0 / 2, true)),
            last_day_of(at_share(values, 1 - tenth, true))};
}

DayRange range_of_starts(Values& values) {
    return {day_down(at_share(values, tenth, false)),
            day_down(at_share(values, 1.0 / 2, false)),
            day_down(at_share(values, 1 - tenth, false))};
}

std::int32_t share_permille(std::int64_t some, std::int64_t all) {
    constexpr std::int64_t permille = 1'000;
    return static_cast<std::int32_t>((some * permille + all - 1) / all);
}

}  // namespace twoclocks::plan
