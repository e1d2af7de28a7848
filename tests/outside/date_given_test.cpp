// Additions of months that another program worked out: see date_additions.test.mjs.
#include "catch_amalgamated.hpp"

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <string>

#include "engine/base/date.hpp"

using namespace twoclocks;

// Hidden: it needs the file that the other program writes.
TEST_CASE("additions that were given land where they were put", "[.][given_dates]") {
    const char* path = std::getenv("TWO_CLOCKS_DATES");
    REQUIRE(path != nullptr);
    std::ifstream file{path};
    std::string from;
    std::int32_t months = 0;
    std::string exact;
    std::string month_end;
    std::int32_t days = 0;
    std::int32_t rows = 0;
    while (file >> from >> months >> exact >> month_end >> days) {
        CAPTURE(from, months);
        const base::Date start = base::parse_date(from).value();
        const base::Date end = base::add_months(start, months, base::CalendarRule::exact);
        REQUIRE(base::print_date(end) == exact);
        REQUIRE(base::print_date(base::add_months(start, months, base::CalendarRule::month_end)) ==
                month_end);
        REQUIRE(base::days_between(start, end) == days);
        ++rows;
    }
    std::cout << rows << " additions agree\n";
}
