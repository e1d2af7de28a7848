#include "engine/base/written_number.hpp"

#include "catch_amalgamated.hpp"

#include <cstdint>
#include <limits>
#include <optional>

using namespace twoclocks::base;

TEST_CASE("whole numbers are read with every thousands sign, and nothing else is",
          "[base][written_number]") {
    struct Row {
        const char* text;
        std::optional<std::int64_t> number;
    };

    for (const Row& row : {Row{"0", 0},
                           Row{"007", 7},
                           Row{"1234", 1234},
                           Row{"1 234", 1234},
                           Row{"1\u00A0234", 1234},
                           Row{"1\u202F234", 1234},
                           Row{"1\u2007234", 1234},
                           Row{"1'234", 1234},
                           Row{"1’234", 1234},
                           Row{"1,234", 1234},
                           Row{"1.234", 1234},
                           Row{"1,234,567", 1'234'567},
                           Row{" \u00A01234\t\n", 1234},
                           Row{"999999999", 999'999'999},
                           Row{"1000000000", 1'000'000'000},  // one more than asked for: too large
                           Row{"99999999999999999999", 1'000'000'000},
                           Row{"", std::nullopt},
                           Row{"-1", std::nullopt},
                           Row{"+1", std::nullopt},
                           Row{"1.5", std::nullopt},
                           Row{"1,23", std::nullopt},
                           Row{"0,125", std::nullopt},
                           Row{"1234.567", std::nullopt},
                           Row{"1,234.0", std::nullopt},
                           Row{"1,23,456", std::nullopt},
                           Row{"12:30", std::nullopt},
                           Row{"twelve", std::nullopt},
                           Row{"1e3", std::nullopt}}) {
        CAPTURE(row.text);
        CHECK(parse_whole(row.text, 999'999'999) == row.number);
    }
}

TEST_CASE("a decimal number prints every digit", "[base][written_number]") {
    CHECK(print_decimal(0, 0) == "0");
    CHECK(print_decimal(0, 2) == "0.00");
    CHECK(print_decimal(5, 2) == "0.05");
    CHECK(print_decimal(123'450, 2) == "1234.50");
    CHECK(print_decimal(-5, 1) == "-0.5");
    CHECK(print_decimal(-1234, 3) == "-1.234");
    CHECK(print_decimal(std::numeric_limits<std::int64_t>::min(), 2) == "-92233720368547758.08");
}
