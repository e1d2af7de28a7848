#include "engine/forecast/hours_curve.hpp"

#include <algorithm>

namespace twoclocks::forecast {
namespace {

constexpr double most_days = 200.0 * 365.25;

/// First point after a day.
[[nodiscard]] std::vector<HoursCurve::Point>::const_iterator after(const HoursCurve& curve,
                                                                   std::int32_t day) {
    return std::upper_bound(
        curve.points.begin(),
        curve.points.end(),
        day,
        [](std::int32_t one, const HoursCurve::Point& point) { return one < point.day; });
}

}  // namespace

void HoursCurve::add(std::int32_t day, double seconds) {
    const double before = points.empty() ? 0 : points.back().seconds;
    points.push_back({day, std::max(before, seconds)});
}

double flown_by(const HoursCurve& curve, std::int32_t day) {
    if (day <= 0) return 0;
    const auto next = after(curve, day);
    const HoursCurve::Point from = next == curve.points.begin() ? HoursCurve::Point{} : *(next - 1);
    const double days = day - from.day;
    if (next == curve.points.end()) return from.seconds + days * curve.tail;
    return from.seconds + (next->seconds - from.seconds) * days / (next->day - from.day);
}

std::optional<std::int32_t> day_when(const HoursCurve& curve,
                                     std::int32_t from_day,
                                     double seconds) {
    HoursCurve::Point here{std::max(0, from_day), 0};
    double left = seconds;
    double flown = flown_by(curve, here.day);
    for (auto next = after(curve, here.day); next != curve.points.end(); ++next) {
        const double piece = next->seconds - flown;
        const std::int32_t days = next->day - here.day;
        if (piece > 0 && left <= piece)
            return here.day + static_cast<std::int32_t>(left * days / piece);
        left -= piece;
        flown = next->seconds;
        here.day = next->day;
    }
    if (curve.tail <= 0) return std::nullopt;
    const double days = left / curve.tail;
    if (days > most_days) return std::nullopt;
    return here.day + static_cast<std::int32_t>(days);
}

}  // namespace twoclocks::forecast
