// Calendar arithmetic against sources outside this project, each beside its row.
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"

#include <cstdint>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "engine/base/date.hpp"

using namespace twoclocks::base;
using twoclocks::support::day;

namespace {

std::string exactly(const std::string& from, std::int32_t months) {
    return print_date(add_months(day(from), months, CalendarRule::exact));
}

std::string to_month_end(const std::string& from, std::int32_t months) {
    return print_date(add_months(day(from), months, CalendarRule::month_end));
}

/// What JavaScript's Date and SQLite make of it: a 31st of February is the 2nd or 3rd of March.
std::string overflowing(const std::string& from, std::int32_t months) {
    const CivilDay start = civil(day(from));
    const std::int32_t month_number = start.year * 12 + start.month - 1 + months;
    const Date first = from_civil({month_number / 12, month_number % 12 + 1, 1}).value();
    return print_date(add_days(first, start.day - 1));
}

struct Addition {
    std::string from;
    std::int32_t months{0};
    std::string exact;
    std::string month_end;
    std::int32_t days{0};
};

std::vector<Addition> read_additions() {
    std::ifstream file{HOUSE_ROOT "/tests/outside/date_additions.csv"};
    std::vector<Addition> out;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') continue;
        for (char& sign : line) {
            if (sign == ',') sign = ' ';
        }
        Addition row;
        std::istringstream cells{line};
        cells >> row.from >> row.months >> row.exact >> row.month_end >> row.days;
        REQUIRE_FALSE(cells.fail());
        out.push_back(row);
    }
    return out;
}

}  // namespace

TEST_CASE("months land where five date libraries put them", "[outside][date]") {
    // Computed with date-fns 4, luxon 3, dayjs 1, moment 2 and Temporal polyfill 0.5, which agree.
    // [L]
    CHECK(exactly("2024-02-29", 12 * 12) == "2036-02-29");
    CHECK(exactly("2024-02-29", 12) == "2025-02-28");
    CHECK(exactly("2023-08-31", 6) == "2024-02-29");
    CHECK(exactly("2024-08-31", 6) == "2025-02-28");
    CHECK(exactly("2024-01-31", 1) == "2024-02-29");
    CHECK(exactly("2024-01-31", 2) == "2024-03-31");
}

TEST_CASE("adding a month twice is not adding two months", "[outside][date]") {
    // Computed with the same five libraries. [L] So an interval is always added to its anchor,
    // whole: a chain of months would creep to the shortest month it ever met.
    CHECK(exactly(exactly("2024-01-31", 1), 1) == "2024-03-29");
    CHECK(exactly("2024-01-31", 2) == "2024-03-31");
}

TEST_CASE("twelve years are the days that five date libraries count", "[outside][date]") {
    // Computed with the same five libraries. [L]
    CHECK(days_between(day("2014-06-15"),
                       add_months(day("2014-06-15"), 144, CalendarRule::exact)) == 4383);
}

TEST_CASE("a month that is too short does not overflow into the next", "[outside][date]") {
    // JavaScript's Date and sqlite give 2024-03-02. [L] We do not, for three reasons. A limit of
    // six months from August ends in February: March is a month that no document named. The
    // overflow puts the limit two days later, and an error in a limit may only ever make it
    // earlier. And it puts the 29th, 30th and 31st of August on 29 February, 1 March and 2 March,
    // where a person who was told "six months" looks for the end of February.
    CHECK(overflowing("2023-08-31", 6) == "2024-03-02");
    CHECK(exactly("2023-08-31", 6) == "2024-02-29");
    for (const Addition& row : read_additions()) {
        CAPTURE(row.from, row.months);
        CHECK(day(exactly(row.from, row.months)) <= day(overflowing(row.from, row.months)));
    }
}

TEST_CASE("calendar months run to the end of the last month", "[outside][date]") {
    // Source: readings of the rule in forums of pilots, not law. [S]
    CHECK(to_month_end("2014-06-06", 12) == "2015-06-30");
    CHECK(to_month_end("2017-05-29", 12) == "2018-05-31");
    CHECK(to_month_end("2020-07-22", 24) == "2022-07-31");
}

TEST_CASE("days are counted as a manual of maintenance intervals counts them", "[outside][date]") {
    // Source: US Army TM 1-1500-328-23. [S] 14 days from 1997-05-22 are 1997-06-05, whose window of
    // a day is 4 to 6 June; 12 months due 1999-02-06 with 30 days are 7 January to 8 March 1999.
    CHECK(print_date(add_days(day("1997-05-22"), 14)) == "1997-06-05");
    CHECK(print_date(add_days(day("1997-06-05"), -1)) == "1997-06-04");
    CHECK(print_date(add_days(day("1997-06-05"), 1)) == "1997-06-06");
    CHECK(exactly("1998-02-06", 12) == "1999-02-06");
    CHECK(print_date(add_days(day("1999-02-06"), -30)) == "1999-01-07");
    CHECK(print_date(add_days(day("1999-02-06"), 30)) == "1999-03-08");
}

TEST_CASE("weeks of lead time count back to the day to order", "[outside][date]") {
    // Common practice, no source. [T] 24 weeks and 2 weeks' margin before 2027-06-30.
    CHECK(print_date(add_days(day("2027-06-30"), -(24 + 2) * 7)) == "2026-12-30");
}

TEST_CASE("four hundred drawn additions are what two libraries make of them", "[outside][date]") {
    // Source and seed: at the head of the table. [L]
    const std::vector<Addition> rows = read_additions();
    REQUIRE(rows.size() == 400);
    for (const Addition& row : rows) {
        CAPTURE(row.from, row.months);
        CHECK(exactly(row.from, row.months) == row.exact);
        CHECK(to_month_end(row.from, row.months) == row.month_end);
        CHECK(days_between(day(row.from), day(row.exact)) == row.days);
    }
}
