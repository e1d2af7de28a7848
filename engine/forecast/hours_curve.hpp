// Hours flown after a day, as a line of straight pieces that never falls.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace twoclocks::forecast {

/// Begins at day 0 with nothing flown; after its last point it goes on evenly.
struct HoursCurve {
    struct Point {
        std::int32_t day{0};
        double seconds{0};
    };

    std::vector<Point> points;  // both grow; the first is not day 0
    double tail{0};             // seconds a day after the last point

    /// Adds a point; one that is lower than the last is raised to it.
    /// Units: days, seconds. Errors: none. Source: our choice.
    void add(std::int32_t day, double seconds);
};

/// Hours flown by the end of a day; nothing by a day before the first.
/// Units: seconds. Errors: none. Source: linear interpolation.
[[nodiscard]] double flown_by(const HoursCurve& curve, std::int32_t day);

/// The day on which so much more is flown than by a day; a part of a day is the day before.
/// Units: days, seconds. Range: `seconds` above 0. Errors: nothing when it takes more than 200
/// years. Source: linear interpolation.
[[nodiscard]] std::optional<std::int32_t> day_when(const HoursCurve& curve,
                                                   std::int32_t from_day,
                                                   double seconds);

}  // namespace twoclocks::forecast
