// Three hundred ways in which the hours ahead may go, drawn from how they went before.
//
// On each way a month is what the pattern has for it, times a share that was drawn from the past,
// times the level, which strays a little further every three months. Shares are drawn three months
// in a row, so that a quiet spell stays one.
//
// The same draws serve every aircraft and every question about it, so that a date moves only when
// what it rests on does, and by as little; every second way strays against the one before it. They
// are the same on every build. More ways would move a date by a few days, and take time that a
// phone does not have: three hundred take about as long as the records of the aircraft do.
#pragma once

#include <array>

#include "engine/forecast/days_ahead.hpp"

namespace twoclocks::forecast {

inline constexpr std::int32_t path_count = 300;

/// Of each month ahead, on what is expected: 1 is as expected.
using Factors = std::array<double, months_ahead>;

class FlightPaths {
  public:
    /// Units: none. Errors: a model without shares strays by its level alone. Source: our choice.
    explicit FlightPaths(const FlyingModel& model);

    /// Factors of one way.
    /// Units: none. Range: `path` 0 to path_count - 1. Errors: none. Source: our choice.
    [[nodiscard]] Factors follow(std::int32_t path) const;

  private:
    static constexpr std::size_t steps = 64;  // sizes of a normal step that are told apart

    const FlyingModel& model_;
    std::array<double, steps> step_factors_{};
};

/// Hours on each way by a day, in service as it is known.
/// Units: seconds. Range: `day` counted as in the runs. Errors: none; after the last run nothing is
/// added. Source: our choice.
[[nodiscard]] std::vector<double> flown_on_paths(const FlyingModel& model,
                                                 const std::vector<Run>& runs,
                                                 std::int32_t day);

/// So many tenths of the values are no greater than this one.
/// Units: those of the values. Range: tenths 0 to 10. Errors: 0 of none.
/// Source: order statistics, the lower of two.
[[nodiscard]] double tenth_of(std::vector<double> values, std::size_t tenths);

}  // namespace twoclocks::forecast
