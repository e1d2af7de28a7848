// Bytes of spreadsheets as text, and days as people write them.
#include "catch_amalgamated.hpp"

#include <string>

#include "engine/base/csv.hpp"
#include "engine/base/written_day.hpp"

using namespace twoclocks::base;
using namespace std::string_literals;

TEST_CASE("text of a table comes in three encodings, and other bytes are none", "[base][csv]") {
    CHECK(table_text("a;\u00fc") == "a;\u00fc");
    CHECK(table_text("\xEF\xBB\xBF"
                     "a") == "a");
    // Source: RFC 2781 section 2.1: U+1D11E is the pair D834 DD1E.
    CHECK(table_text("\xFF\xFE"
                     "a\0\t\0\xFC\0\x34\xD8\x1E\xDD"s) == "a\t\u00fc\U0001D11E");
    CHECK(table_text("\xFE\xFF\0a\0\t\0\xFC\xD8\x34\xDD\x1E"s) == "a\t\u00fc\U0001D11E");
    CHECK(table_text("\xFF\xFE\xAC\x20"s) == "\u20ac");
    CHECK_FALSE(
        table_text("\xFF\xFE"
                   "a"));                          // half a letter
    CHECK_FALSE(table_text("\xFF\xFE\x1E\xDD"s));  // the second of a pair alone
    CHECK_FALSE(
        table_text("\xFF\xFE\x34\xD8"
                   "a\0"s));                // the first of a pair alone
    CHECK_FALSE(table_text("gr\xFC\xDF"));  // Windows-1252
    CHECK_FALSE(table_text("\xC0\xAF"));    // RFC 3629 section 10: overlong
    for (const char* none :
         {"\xE0\x80\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xF0\x80\x80\x80"})
        CHECK_FALSE(table_text(none));
    CHECK(table_text("\xED\x9F\xBF\xF4\x8F\xBF\xBF"));
    CHECK_FALSE(table_text("\xFF\xFE\0\0"s));    // nothing is no letter
    CHECK_FALSE(table_text("PK\x03\x04\0\0"s));  // a spreadsheet itself
    CHECK(table_text("") == "");
}

TEST_CASE("a return alone ends a row as well", "[base][csv]") {
    using Rows = std::vector<std::vector<std::string>>;
    CHECK(split_csv("a,b\rc,d\r", ',') == Rows{{"a", "b"}, {"c", "d"}});
    CHECK(split_csv("\"a\rb\",c\r\n", ',') == Rows{{"a\rb", "c"}});
}

TEST_CASE("a day is read in the order that was said, or with its year first", "[base][date]") {
    const auto read = [](const char* text, std::optional<DayOrder> order) {
        const auto day = read_written_day(text, order);
        return day ? print_date(*day) : std::string{};
    };
    CHECK(read("2026-04-03", std::nullopt) == "2026-04-03");
    CHECK(read("2026/4/3", DayOrder::day_month_year) == "2026-04-03");
    CHECK(read(" 3.4.2026 ", DayOrder::day_month_year) == "2026-04-03");
    CHECK(read("03/04/2026", DayOrder::day_month_year) == "2026-04-03");
    CHECK(read("03/04/2026", DayOrder::month_day_year) == "2026-03-04");
    CHECK(read("29-02-2024", DayOrder::day_month_year) == "2024-02-29");
    for (const char* none : {"03/04/2026", "3.4.2026"})
        CHECK(read(none, std::nullopt).empty());
    for (const char* none : {"",
                             "3.4.26",
                             "31.2.2026",
                             "29.2.2026",
                             "13/13/2026",
                             "3.4/2026",
                             "3..2026",
                             "2026-04",
                             "2026-04-03T10",
                             "3 Apr 2026",
                             "20260403",
                             "-3-4-2026",
                             "3.4.2026.",
                             "1.1.1899"}) {
        CAPTURE(none);
        CHECK(read(none, DayOrder::day_month_year).empty());
    }
    CHECK(read("3.4.2026", DayOrder::year_month_day).empty());
    CHECK(needs_day_order("3/4/2026"));
    CHECK_FALSE(needs_day_order("2026-04-03"));
    CHECK_FALSE(needs_day_order("Day"));
}
