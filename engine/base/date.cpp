#include "engine/base/date.hpp"

#include <algorithm>
#include <date/date.h>
#include <limits>

#include "engine/base/digit.hpp"
#include "engine/base/message_args.hpp"

namespace twoclocks::base {
namespace {

constexpr std::int32_t months_a_year = 12;
constexpr std::int32_t most_days_a_month = 31;

constexpr Date own_day(date::year_month_day day) {
    return {static_cast<std::int32_t>(date::sys_days{day}.time_since_epoch().count())};
}

// Years of four digits: what ISO 8601 prints without an agreement, well inside the library's range.
constexpr Date first_of_four_digits = own_day(date::year{0} / 1 / 1);
constexpr Date last_of_four_digits = own_day(date::year{9999} / 12 / 31);
constexpr Date earliest_day = own_day(date::year{earliest_year} / 1 / 1);
constexpr Date latest_day = own_day(date::year{latest_year} / 12 / 31);

[[nodiscard]] std::int32_t saturated(std::int64_t day_number) {
    constexpr std::int64_t least = std::numeric_limits<std::int32_t>::min();
    constexpr std::int64_t most = std::numeric_limits<std::int32_t>::max();
    return static_cast<std::int32_t>(std::clamp(day_number, least, most));
}

[[nodiscard]] bool is_digits(std::string_view text) {
    return std::all_of(text.begin(), text.end(), is_digit);
}

/// Of digits only, and few of them.
[[nodiscard]] std::int32_t number(std::string_view digits) {
    std::int32_t out = 0;
    for (const char digit : digits)
        out = out * 10 + (digit - '0');
    return out;
}

[[nodiscard]] std::string padded(std::int64_t figure, std::size_t width) {
    const std::string digits = std::to_string(figure < 0 ? -figure : figure);
    const std::string zeros(width - std::min(width, digits.size()), '0');
    return (figure < 0 ? "-" : "") + zeros + digits;
}

[[nodiscard]] std::string print_civil(CivilDay day) {
    return padded(day.year, 4) + '-' + padded(day.month, 2) + '-' + padded(day.day, 2);
}

[[nodiscard]] date::year_month month_of(std::int64_t months_since_year_0) {
    return date::year{static_cast<int>(months_since_year_0 / months_a_year)} /
           date::month{static_cast<unsigned>(months_since_year_0 % months_a_year) + 1U};
}

}  // namespace

Result<Date> parse_date(std::string_view text) {
    const bool shaped = text.size() == 10 && text[4] == '-' && text[7] == '-' &&
                        is_digits(text.substr(0, 4)) && is_digits(text.substr(5, 2)) &&
                        is_digits(text.substr(8, 2));
    if (!shaped) return trouble(Trouble::date_malformed, {excerpt_arg(text)});
    return from_civil(
        {number(text.substr(0, 4)), number(text.substr(5, 2)), number(text.substr(8, 2))});
}

std::string print_date(Date date) {
    return print_civil(civil(date));
}

CivilDay civil(Date date) {
    const Date held = std::clamp(date, first_of_four_digits, last_of_four_digits);
    const date::year_month_day day{date::sys_days{date::days{held.day_number}}};
    return {static_cast<std::int32_t>(int{day.year()}),
            static_cast<std::int32_t>(unsigned{day.month()}),
            static_cast<std::int32_t>(unsigned{day.day()})};
}

Result<Date> from_civil(CivilDay day) {
    const auto refuse = [&](Trouble code) { return trouble(code, {text_arg(print_civil(day))}); };
    const bool plausible = day.month >= 1 && day.month <= months_a_year && day.day >= 1 &&
                           day.day <= most_days_a_month;
    if (!plausible) return refuse(Trouble::date_impossible);
    if (day.year < earliest_year || day.year > latest_year) {
        return refuse(Trouble::date_out_of_range);
    }
    const date::year_month_day held = date::year{day.year} /
                                      date::month{static_cast<unsigned>(day.month)} /
                                      date::day{static_cast<unsigned>(day.day)};
    if (!held.ok()) return refuse(Trouble::date_impossible);
    return own_day(held);
}

Date add_days(Date date, std::int32_t days) {
    return {saturated(std::int64_t{date.day_number} + days)};
}

Date add_months(Date anchor, std::int32_t months, CalendarRule rule) {
    const CivilDay from = civil(std::clamp(anchor, earliest_day, latest_day));
    const std::int64_t landing = std::int64_t{from.year} * months_a_year + from.month - 1 + months;
    if (landing < std::int64_t{earliest_year} * months_a_year) return earliest_day;
    if (landing >= (std::int64_t{latest_year} + 1) * months_a_year) return latest_day;
    const date::year_month month = month_of(landing);
    const date::year_month_day month_end{month / date::last};
    // 31 February is cut to its last day; it never becomes a day of March.
    const auto day = std::min(date::day{static_cast<unsigned>(from.day)}, month_end.day());
    return own_day(rule == CalendarRule::month_end ? month_end : month / day);
}

std::int32_t days_between(Date from, Date to) {
    return saturated(std::int64_t{to.day_number} - from.day_number);
}

Span span_between(Date from, Date to) {
    from = std::clamp(from, earliest_day, latest_day);
    to = std::clamp(to, earliest_day, latest_day);
    const bool negative = to < from;
    if (negative) std::swap(from, to);
    std::int32_t years = civil(to).year - civil(from).year;
    const auto anniversary = [&] {
        return add_months(from, years * months_a_year, CalendarRule::exact);
    };
    if (anniversary() > to) --years;
    return {years, days_between(anniversary(), to), negative};
}

}  // namespace twoclocks::base
