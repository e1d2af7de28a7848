// Hours flown by calendar month, from readings that are not on month ends.
//
// The hard questions.
//   How are hours between two readings spread? Evenly over the days after the first, up to the
//   second, that it was in service; over all of them where it was out of service on every one and
//   flew all the same. In whole seconds, and none is lost: the months add up to what was flown.
//   Which months count as whole? Those of which readings cover every day.
//   A long gap between readings gives months that are alike: they say how much, not when.
#pragma once

#include <vector>

#include "engine/timeline/state.hpp"

namespace twoclocks::forecast {

/// What was flown in one calendar month.
struct MonthFlown {
    std::int32_t month{0};  // since January 1970, which is 0
    base::FlightTime flown;
    std::int32_t month_days{0};
    std::int32_t covered_days{0};  // between readings
    std::int32_t out_days{0};      // of those, out of service

    [[nodiscard]] bool whole() const { return covered_days == month_days; }
};

/// Month of a day, since January 1970.
/// Units: months. Errors: none. Source: our choice.
[[nodiscard]] std::int32_t month_of(base::Date on);

/// January is 0, December 11.
/// Units: none. Range: 0 to 11, also before 1970. Errors: none. Source: our choice.
[[nodiscard]] std::int32_t season_of(std::int32_t month);

/// Days from this one to the end of its month, both counted.
/// Units: days. Range: 1 to 31. Errors: none. Source: ISO 8601-1:2019.
[[nodiscard]] std::int32_t days_in_month_from(base::Date on);

/// True when it is out of service on a day.
/// Units: none. Errors: none. Source: our choice, the first day back is in service.
[[nodiscard]] bool is_out(const std::vector<timeline::Spell>& spells, base::Date on);

/// Every month from the day after the first reading to the last reading, oldest first. Together
/// they are what was flown after the first day with a reading.
/// Units: seconds, days. Errors: fewer than two days with readings give none.
/// Source: even growth between readings, our choice.
[[nodiscard]] std::vector<MonthFlown> monthly_hours(const timeline::UsageSeries& usage,
                                                    const std::vector<timeline::Spell>& spells);

}  // namespace twoclocks::forecast
