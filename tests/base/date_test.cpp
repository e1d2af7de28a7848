#include "engine/base/date.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/adds.hpp"
#include "tests/support/first_trouble.hpp"
#include "tests/support/pen.hpp"

#include <cstdint>
#include <limits>
#include <string>
#include <type_traits>

using namespace twoclocks::base;
using twoclocks::support::adds;
using twoclocks::support::day;
using twoclocks::support::first_trouble;

namespace {

constexpr std::int32_t least_int = std::numeric_limits<std::int32_t>::min();
constexpr std::int32_t most_int = std::numeric_limits<std::int32_t>::max();
constexpr std::int32_t first_day_number = -25567;  // 1900-01-01
constexpr std::int32_t last_day_number = 84005;    // 2199-12-31

std::string plus_months(const char* from, std::int32_t months, CalendarRule rule) {
    return print_date(add_months(day(from), months, rule));
}

// A day is not a number and two days have no sum.
static_assert(!std::is_convertible_v<std::int32_t, Date>);
static_assert(!std::is_convertible_v<Date, std::int32_t>);
static_assert(!adds<Date, Date>);
static_assert(!adds<Date, std::int32_t>);

}  // namespace

TEST_CASE("a date is read from year, month and day and becomes a day number", "[base][date]") {
    struct Row {
        const char* text;
        std::int32_t day_number;
    };

    for (const Row& row : {Row{"1900-01-01", first_day_number},
                           Row{"1969-12-31", -1},
                           Row{"1970-01-01", 0},
                           Row{"2000-02-29", 11016},
                           Row{"2026-05-31", 20604},
                           Row{"2100-03-01", 47541},
                           Row{"2199-12-31", last_day_number}}) {
        CAPTURE(row.text);
        CHECK(day(row.text).day_number == row.day_number);
        CHECK(print_date({row.day_number}) == row.text);
    }
}

TEST_CASE("a date that is not one is refused with what is wrong about it", "[base][date]") {
    struct Row {
        const char* text;
        const char* outcome;
    };

    for (const Row& row : {Row{"", "date_malformed"},
                           Row{"2026-5-31", "date_malformed"},
                           Row{"2026-05-3", "date_malformed"},
                           Row{"2026-05-311", "date_malformed"},
                           Row{"2026/05/31", "date_malformed"},
                           Row{"31.05.2026", "date_malformed"},
                           Row{"20260531", "date_malformed"},
                           Row{" 2026-05-31", "date_malformed"},
                           Row{"2026-05-31 ", "date_malformed"},
                           Row{"2026-05-3x", "date_malformed"},
                           Row{"+026-05-31", "date_malformed"},
                           Row{"2026-05-31T00:00", "date_malformed"},
                           Row{"٢٠٢٦-٠٥", "date_malformed"},
                           Row{"2026-00-10", "date_impossible"},
                           Row{"2026-01-10", "accepted"},
                           Row{"2026-12-10", "accepted"},
                           Row{"2026-13-10", "date_impossible"},
                           Row{"2026-05-00", "date_impossible"},
                           Row{"2026-05-01", "accepted"},
                           Row{"2026-05-31", "accepted"},
                           Row{"2026-05-32", "date_impossible"},
                           Row{"2026-04-30", "accepted"},
                           Row{"2026-04-31", "date_impossible"},
                           Row{"2023-02-28", "accepted"},
                           Row{"2023-02-29", "date_impossible"},
                           Row{"2024-02-29", "accepted"},
                           Row{"2024-02-30", "date_impossible"},
                           Row{"1900-02-29", "date_impossible"},
                           Row{"2000-02-29", "accepted"},
                           Row{"2100-02-29", "date_impossible"},
                           Row{"1899-12-31", "date_out_of_range"},
                           Row{"1900-01-01", "accepted"},
                           Row{"2199-12-31", "accepted"},
                           Row{"2200-01-01", "date_out_of_range"},
                           Row{"9999-99-99", "date_impossible"}}) {
        CAPTURE(row.text);
        CHECK(first_trouble(parse_date(row.text)) == row.outcome);
    }
}

TEST_CASE("a refused date is told as it was written", "[base][date]") {
    CHECK(parse_date("31.05.2026").problems().front().args.front().text == "31.05.2026");
    CHECK(parse_date("2023-02-29").problems().front().args.front().text == "2023-02-29");
    CHECK(from_civil({-5, 1, 1}).problems().front().args.front().text == "-0005-01-01");
}

TEST_CASE("every day of three centuries prints and reads back the same", "[base][date]") {
    std::int32_t wrong = 0;
    std::int32_t days = 0;
    for (std::int32_t number = first_day_number; number <= last_day_number; ++number, ++days) {
        const Result<Date> back = parse_date(print_date({number}));
        const Result<Date> civil_back = from_civil(civil({number}));
        if (!back.ok() || back.value().day_number != number) ++wrong;
        if (!civil_back.ok() || civil_back.value().day_number != number) ++wrong;
    }
    CHECK(wrong == 0);
    CHECK(days == 300 * 365 + 73);  // 73 leap days: 1900 and 2100 have none
}

TEST_CASE("a civil day out of bounds is refused whatever its figures", "[base][date]") {
    for (const std::int32_t wild : {least_int, -1, 0, most_int}) {
        CAPTURE(wild);
        CHECK(first_trouble(from_civil({wild, 1, 1})) == "date_out_of_range");
        CHECK(first_trouble(from_civil({2026, wild, 1})) == "date_impossible");
        CHECK(first_trouble(from_civil({2026, 1, wild})) == "date_impossible");
    }
}

TEST_CASE("a day number far outside still prints as four digits of a year", "[base][date]") {
    CHECK(print_date({least_int}) == "0000-01-01");
    CHECK(print_date({most_int}) == "9999-12-31");
}

TEST_CASE("days are added and subtracted and never wrap round", "[base][date]") {
    CHECK(print_date(add_days(day("2024-02-28"), 1)) == "2024-02-29");
    CHECK(print_date(add_days(day("2024-03-01"), -1)) == "2024-02-29");
    CHECK(add_days({most_int - 1}, 1).day_number == most_int);
    CHECK(add_days({most_int}, 1).day_number == most_int);
    CHECK(add_days({least_int}, -1).day_number == least_int);
    CHECK(add_days({most_int}, least_int).day_number == -1);
    CHECK(days_between(day("2024-02-28"), day("2024-03-01")) == 2);
    CHECK(days_between(day("2024-03-01"), day("2024-02-28")) == -2);
    CHECK(days_between({least_int}, {most_int}) == most_int);
    CHECK(days_between({most_int}, {least_int}) == least_int);
}

TEST_CASE("months are added to the anchor and land on a day that exists", "[base][date]") {
    struct Row {
        const char* from;
        std::int32_t months;
        const char* exact;
        const char* month_end;
    };

    for (const Row& row : {Row{"2024-01-30", 1, "2024-02-29", "2024-02-29"},
                           Row{"2024-01-29", 1, "2024-02-29", "2024-02-29"},
                           Row{"2024-01-28", 1, "2024-02-28", "2024-02-29"},
                           Row{"2023-01-29", 1, "2023-02-28", "2023-02-28"},
                           Row{"2024-02-29", -12, "2023-02-28", "2023-02-28"},
                           Row{"2024-02-29", 48, "2028-02-29", "2028-02-29"},
                           Row{"2026-06-06", 0, "2026-06-06", "2026-06-30"},
                           Row{"2026-12-15", 1, "2027-01-15", "2027-01-31"},
                           Row{"2026-01-15", -1, "2025-12-15", "2025-12-31"},
                           Row{"2026-03-31", -13, "2025-02-28", "2025-02-28"}}) {
        CAPTURE(row.from, row.months);
        CHECK(plus_months(row.from, row.months, CalendarRule::exact) == row.exact);
        CHECK(plus_months(row.from, row.months, CalendarRule::month_end) == row.month_end);
    }
}

TEST_CASE("months stop at the ends of the calendar that the tool knows", "[base][date]") {
    for (const CalendarRule rule : {CalendarRule::exact, CalendarRule::month_end}) {
        CHECK(plus_months("2199-11-30", 2, rule) == "2199-12-31");
        CHECK(plus_months("1900-02-15", -2, rule) == "1900-01-01");
        CHECK(plus_months("2026-05-31", most_int, rule) == "2199-12-31");
        CHECK(plus_months("2026-05-31", least_int, rule) == "1900-01-01");
        CHECK(print_date(add_months({most_int}, 0, rule)) == "2199-12-31");
        CHECK(print_date(add_months({least_int}, -1, rule)) == "1900-01-01");
    }
    CHECK(plus_months("2199-11-30", 1, CalendarRule::exact) == "2199-12-30");
    CHECK(plus_months("1900-02-15", -1, CalendarRule::exact) == "1900-01-15");
}

TEST_CASE("no rule ever lands in a month that nobody named", "[base][date]") {
    std::int32_t wrong = 0;
    for (std::int32_t number = day("2023-01-01").day_number; number < day("2027-01-01").day_number;
         ++number) {
        for (std::int32_t months = -40; months <= 200; ++months) {
            const CivilDay from = civil({number});
            const CivilDay exact = civil(add_months({number}, months, CalendarRule::exact));
            const Date month_end = add_months({number}, months, CalendarRule::month_end);
            const std::int32_t named = from.year * 12 + from.month + months;
            if (exact.year * 12 + exact.month != named || exact.day > from.day) ++wrong;
            if (civil(month_end).year * 12 + civil(month_end).month != named) ++wrong;
            if (civil(add_days(month_end, 1)).day != 1) ++wrong;
        }
    }
    CHECK(wrong == 0);
}

TEST_CASE("a later anchor never comes due sooner", "[base][date]") {
    std::int32_t wrong = 0;
    for (std::int32_t number = day("2023-01-01").day_number; number < day("2027-01-01").day_number;
         ++number) {
        for (const std::int32_t months : {1, 6, 12, 25, 144}) {
            for (const CalendarRule rule : {CalendarRule::exact, CalendarRule::month_end}) {
                if (add_months({number}, months, rule) > add_months({number + 1}, months, rule)) {
                    ++wrong;
                }
            }
        }
    }
    CHECK(wrong == 0);
}

TEST_CASE("a span is whole years by anniversary and the days left over", "[base][date]") {
    struct Row {
        const char* from;
        const char* to;
        Span span;
    };

    for (const Row& row : {Row{"2026-05-31", "2026-05-31", {0, 0, false}},
                           Row{"2026-05-31", "2026-06-01", {0, 1, false}},
                           Row{"2026-05-31", "2027-05-30", {0, 364, false}},
                           Row{"2026-05-31", "2027-05-31", {1, 0, false}},
                           Row{"2026-05-31", "2027-06-01", {1, 1, false}},
                           Row{"2024-02-29", "2025-02-27", {0, 364, false}},
                           Row{"2024-02-29", "2025-02-28", {1, 0, false}},
                           Row{"2024-02-29", "2025-03-01", {1, 1, false}},
                           Row{"2022-04-08", "2029-09-21", {7, 166, false}},
                           Row{"2026-05-31", "2026-05-28", {0, 3, true}},
                           Row{"2029-09-21", "2022-04-08", {7, 166, true}}}) {
        CAPTURE(row.from, row.to);
        CHECK((span_between(day(row.from), day(row.to)) == row.span));
    }
}

TEST_CASE("a span is defined for any two day numbers", "[base][date]") {
    CHECK((span_between({least_int}, {most_int}) == Span{299, 364, false}));
    CHECK((span_between({most_int}, {least_int}) == Span{299, 364, true}));
    CHECK((span_between({most_int}, {most_int}) == Span{0, 0, false}));
}
