// A thousand ways in which the hours ahead may go, drawn from how they went before.
//
// Each path begins at the last reading, with what is left of the month it was taken in. A month is
// what the pattern has for it, times a share that was drawn from the past, times the level, which
// strays a little further from month to month. Shares are drawn three months in a row, so that a
// quiet spell stays one. Days out of service that are known take their part of a month. Within a
// month hours grow evenly over the days; a part of a day is the day before.
//
// Drawn in slices, so that a page stays alive; the same seed gives the same paths on every build,
// in whatever slices.
#pragma once

#include <cstdint>
#include <random>
#include <vector>

#include "engine/forecast/flying_model.hpp"

namespace twoclocks::forecast {

inline constexpr std::int32_t path_count = 1000;
inline constexpr std::int32_t path_months = 360;  // thirty years: later is never
inline constexpr std::int32_t never_days = INT32_MAX;

/// What the paths set out from and where to.
struct PathsAsked {
    FlyingModel model;
    base::Date from;                        // day of the last reading
    std::vector<timeline::Spell> spells;    // out of service
    std::vector<base::FlightTime> targets;  // hours after the last reading, any order
    std::uint64_t seed{0};
};

class FlightPaths {
  public:
    /// Units: seconds. Range: targets that are 0 or less are met on the first day.
    /// Errors: a model without a pattern meets no target. Source: our choice.
    explicit FlightPaths(PathsAsked asked);

    /// Draws so many more paths, up to path_count; true when all are drawn.
    /// Units: none. Errors: none. Source: our choice.
    bool draw(std::int32_t count);

    [[nodiscard]] std::int32_t drawn() const { return drawn_; }

    /// Days after the last reading on which a target was met, one a path in the order they were
    /// drawn; never_days where it was not.
    /// Units: days. Errors: none. Source: our choice.
    [[nodiscard]] const std::vector<std::int32_t>& days_to(std::size_t target) const {
        return met_[target];
    }

  private:
    /// Days in service of a month ahead, those of the first one after the last reading.
    struct MonthAhead {
        std::int32_t from_day{0};            // after the last reading
        std::int32_t days{0};                // of the month that are still ahead
        double expected{0};                  // seconds
        std::vector<std::int32_t> served{};  // days of it in service, from its first
    };

    void draw_path();
    void draw_shares();
    [[nodiscard]] double uniform();
    [[nodiscard]] double normal();
    [[nodiscard]] std::vector<MonthAhead> months_ahead() const;

    PathsAsked asked_;
    std::vector<MonthAhead> months_;
    std::vector<std::size_t> by_hours_;  // places of the targets, the nearest first
    std::vector<std::vector<std::int32_t>> met_;
    std::vector<double> shares_;  // of the path that is drawn
    std::mt19937_64 random_;
    std::int32_t drawn_{0};
};

/// The days that a tenth, a half and nine tenths of the paths have met a target by.
struct DaysBy {
    std::int32_t early{never_days};
    std::int32_t likely{never_days};
    std::int32_t late{never_days};
};

/// Units: days. Errors: never_days from no paths. Source: order statistics, the lower of two.
[[nodiscard]] DaysBy days_by(std::vector<std::int32_t> days);

}  // namespace twoclocks::forecast
