// A table that another program wrote. Source: tables.test.mjs, which writes tables.csv with npm
// papaparse and reads it with that and npm csv-parse.
#include "catch_amalgamated.hpp"

#include <fstream>
#include <iterator>
#include <string>

#include "engine/base/csv.hpp"

using namespace twoclocks;

TEST_CASE("cells of a table are those that other programs find in it", "[outside][csv]") {
    std::ifstream file{std::string{HOUSE_ROOT} + "/tests/outside/tables.csv", std::ios::binary};
    REQUIRE(file);
    const std::string text{std::istreambuf_iterator<char>{file}, {}};
    const std::vector<std::vector<std::string>> cells{
        {"plain", "two words", "\u00fc\u20ac\U0001F600", ""},
        {"a,b", "semi;colon", "tab\there", "\"quoted\""},
        {"line\nbreak", "cr\r\nlf", " leading", "trailing "},
        {"=1+1", "-5", "1,234.5", "12:18"},
        {"", "", "", ""},
        {"\"", "\"\"", "\\n", "a\"b"}};
    CHECK(base::split_csv(text, ',') == cells);
}
