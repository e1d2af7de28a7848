// Days as people write them, where somebody said in which order.
#pragma once

#include <optional>
#include <string_view>

#include "engine/base/date.hpp"

namespace twoclocks::base {

/// Which number comes first. Never guessed: 3/4/2026 is a day in March or one in April.
enum class DayOrder : std::uint8_t { day_month_year, month_day_year, year_month_day };

/// Reads three numbers with one kind of sign between them: a dot, a dash, a slash or a space. The
/// year has four digits, so what begins with four is the year first whatever was said.
/// Units: days. Range: as parse_date. Errors: nothing where it is no day in that order, or no order
/// was said and one is needed. Source: ISO 8601-1:2019 for the year first; our choice for the rest.
[[nodiscard]] std::optional<Date> read_written_day(std::string_view text,
                                                   std::optional<DayOrder> order);

/// True where the text has the shape of a day that only an order can tell.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool needs_day_order(std::string_view text);

}  // namespace twoclocks::base
