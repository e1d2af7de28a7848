// The days ahead as a pattern has them: months, cut where a spell out of service begins or ends,
// and by the day where the days of the week differ.
#pragma once

#include <vector>

#include "engine/forecast/flying_model.hpp"

namespace twoclocks::forecast {

inline constexpr std::int32_t months_ahead = 180;  // after fifteen years it goes on evenly

/// Days in a row that are alike.
struct Run {
    std::int32_t to_day{0};  // the last of them, counted from the day before the first run
    std::int32_t days{0};
    double day_seconds{0};  // expected on each, in service
    bool out{false};        // of service
    std::int32_t month{0};  // 0 is the first month
};

/// What is expected from the day after `from` on.
/// Units: days, seconds. Range: months_ahead months, the first may be cut. Errors: a model without
/// a pattern expects nothing. Source: our choice.
[[nodiscard]] std::vector<Run> days_ahead(const FlyingModel& model,
                                          base::Date from,
                                          const std::vector<timeline::Spell>& spells);

}  // namespace twoclocks::forecast
