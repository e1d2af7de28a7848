// A calendar day, without a clock, a zone or a locale.
//
// The hard question: what is 31 August plus six months? Three answers are in use.
//   overflow   2 March      (what JavaScript's Date and SQLite do): a limit must never move later
//                           by itself, and never into a month that nobody named
//   clamp      29 February  (the last day the month has): ours, called `exact`
//   month end  29 February, and 6 June plus 12 months is 30 June: ours, called `month_end`, for
//              rules that let a calendar month run to its last day
// And adding one month twice is not adding two months once: always add the whole interval to the
// anchor.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "engine/base/problem.hpp"

namespace twoclocks::base {

/// A day as a count of days since 1970-01-01 in the proleptic Gregorian calendar.
struct Date {
    std::int32_t day_number{0};
    auto operator<=>(const Date&) const = default;
};

/// How a calendar interval lands on the last month.
enum class CalendarRule : std::uint8_t { exact, month_end };

/// A span of whole calendar years and the days that are left over, as people say it: 7 y 166 d.
struct Span {
    std::int32_t years{0};
    std::int32_t days{0};
    bool negative{false};
    auto operator<=>(const Span&) const = default;
};

/// Year, month 1 to 12, day 1 to 31.
struct CivilDay {
    std::int32_t year{1970};
    std::int32_t month{1};
    std::int32_t day{1};
};

inline constexpr std::int32_t earliest_year = 1900;
inline constexpr std::int32_t latest_year = 2199;

/// Reads `YYYY-MM-DD`, nothing else.
/// Units: days. Range: 1900-01-01 to 2199-12-31.
/// Errors: date_malformed, date_impossible, date_out_of_range.
/// Source: ISO 8601-1:2019 calendar date, extended format.
[[nodiscard]] Result<Date> parse_date(std::string_view text);

/// Prints `YYYY-MM-DD`.
/// Units: days. Range: years 0 to 9999, clamped. Errors: none.
/// Source: ISO 8601-1:2019 calendar date, extended format.
[[nodiscard]] std::string print_date(Date date);

/// Year, month and day of a date.
/// Units: years, months, days. Range: years 0 to 9999, clamped. Errors: none.
/// Source: proleptic Gregorian calendar, on the date library.
[[nodiscard]] CivilDay civil(Date date);

/// The date of a year, month and day that exist.
/// Units: days. Range: as parse_date. Errors: date_impossible, date_out_of_range.
/// Source: proleptic Gregorian calendar, on the date library.
[[nodiscard]] Result<Date> from_civil(CivilDay day);

/// Adds days.
/// Units: days. Range: stays within the int32 day number. Errors: none, it saturates.
/// Source: our choice, because a limit is never later than it could be.
[[nodiscard]] Date add_days(Date date, std::int32_t days);

/// Adds calendar months to an anchor, by the rule at the head of this file.
/// Units: months, may be negative. Range: result is clamped to 1900-01-01 to 2199-12-31.
/// Errors: none. Source: our choice, because clamping never moves a limit later.
[[nodiscard]] Date add_months(Date anchor, std::int32_t months, CalendarRule rule);

/// Days from one date to another, negative when `to` is earlier.
/// Units: days. Errors: none. Source: proleptic Gregorian calendar.
[[nodiscard]] std::int32_t days_between(Date from, Date to);

/// Whole years (by anniversary of `from`, exact rule) and days left over.
/// Units: years and days. Range: both are clamped to 1900-01-01 to 2199-12-31. Errors: none.
/// An earlier `to` gives the span the other way, marked negative.
/// Source: our choice, because whole years and days is how the trade says it.
[[nodiscard]] Span span_between(Date from, Date to);

}  // namespace twoclocks::base
