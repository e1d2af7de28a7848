// How much an aircraft flies in a year, and how that spreads over the months.
//
// The season is the share of the year that each calendar month had in the years before, each year
// counting 0.7 of the one after it, five at most. The level is what the last twelve months came to,
// changed by half of how they differ from the twelve before, and by no more than a quarter. A month
// that it was out of service for part of counts as if it had been there for all of it; where it was
// there on fewer than ten days the month says nothing, and the others of its year stand for it.
// One year says little of a season: half of it counts, half is spread evenly.
#pragma once

#include <array>
#include <optional>

#include "engine/forecast/months.hpp"

namespace twoclocks::forecast {

enum class PatternBasis : std::uint8_t {
    none,   // too little is recorded
    level,  // under twelve whole months: the same every month
    season  // a level and a season
};

/// What a year and its months are expected to take, always in service.
struct FlyingPattern {
    PatternBasis basis{PatternBasis::none};
    double year_seconds{0};
    std::array<double, 12> share{};  // of the year, January first; together 1
    std::int32_t years{0};           // that the season was taken from
    double last_year{0};             // seconds of the last twelve whole months, 0 without them
    double year_before{0};           // of the twelve before, 0 without them
    double flown{0};                 // seconds between readings,
    std::int32_t served_days{0};     // on so many days in service
};

/// The pattern of what was flown.
/// Units: seconds a year. Errors: basis none under 28 days in service between readings.
/// Source: our choice; held against the same month of the year before on two published series, see
/// tests/outside/flying_series_test.cpp.
[[nodiscard]] FlyingPattern flying_pattern(const std::vector<MonthFlown>& months);

/// What a month is expected to take.
/// Units: seconds. Range: `month` since January 1970. Errors: 0 without a pattern.
/// Source: our choice.
[[nodiscard]] double expected_in(const FlyingPattern& pattern, std::int32_t month);

}  // namespace twoclocks::forecast
