// The last years of whole months, as if always in service.
#pragma once

#include <array>

#include "engine/forecast/months.hpp"

namespace twoclocks::forecast {

inline constexpr std::size_t months_a_year = 12;
inline constexpr std::size_t most_years = 5;
inline constexpr std::int32_t fewest_service_days = 10;  // of a month that says something

/// Twelve months in a row, the first of any season.
struct Year {
    std::int32_t first_month{0};
    std::array<double, months_a_year> seconds{};
    double all{0};
};

/// The last years, the latest first; of fewer than twelve whole months none. A month out of service
/// for part of it counts as if it had been there for all of it; one that says nothing is the mean
/// of the others of its year.
/// Units: seconds. Range: five at most. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Year> last_years(const std::vector<MonthFlown>& months);

}  // namespace twoclocks::forecast
