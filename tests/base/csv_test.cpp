// Tables as text.
#include "engine/base/csv.hpp"

#include "catch_amalgamated.hpp"

#include "engine/base/rate_figure.hpp"

using namespace twoclocks::base;

using Rows = std::vector<std::vector<std::string>>;

TEST_CASE("the separator is what the first row has most of", "[base][csv]") {
    CHECK(csv_separator("a\tb;c,d") == '\t');
    CHECK(csv_separator("a;b,c\nd\te") == ';');
    CHECK(csv_separator("a,b") == ',');
    CHECK(csv_separator("") == ',');
    CHECK(csv_separator("\"Hours; total\",Date") == ',');
    CHECK(csv_separator("a,b\r1;2;3,4;5") == ',');
    CHECK(csv_separator("a;b;c,d") == ';');
}

TEST_CASE("rows and fields as RFC 4180 has them", "[base][csv]") {
    // Source: RFC 4180, section 2: rules 1 to 7.
    CHECK(split_csv("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", ',') ==
          Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(split_csv("aaa,bbb\nzzz,yyy", ',') == Rows{{"aaa", "bbb"}, {"zzz", "yyy"}});
    CHECK(split_csv("\"aaa\",\"b \r\nbb\",\"ccc\"\r\n", ',') == Rows{{"aaa", "b \r\nbb", "ccc"}});
    CHECK(split_csv("\"aaa\",\"b\"\"bb\",\"ccc\"", ',') == Rows{{"aaa", "b\"bb", "ccc"}});
    CHECK(split_csv("a,,c\n,\n", ',') == Rows{{"a", "", "c"}, {"", ""}});
    CHECK(split_csv("\n\na;b\n\n", ';') == Rows{{"a", "b"}});
    CHECK(split_csv("a,\"never closed\nb", ',') == Rows{{"a", "never closed\nb"}});
    CHECK(split_csv("5\" pipe,1", ',') == Rows{{"5\" pipe", "1"}});
    CHECK(split_csv("", ',').empty());
}

TEST_CASE("rates between currencies are digits with one sign", "[base][rate]") {
    const auto figure = [](const char* text) { return parse_rate(text); };
    REQUIRE(figure("1.0845"));
    CHECK(figure("1.0845").value().digits == 10'845);
    CHECK(figure("1.0845").value().decimals == 4);
    CHECK(figure("0,00612").value().digits == 612);
    CHECK(figure("0,00612").value().decimals == 5);
    CHECK(figure("163").value().decimals == 0);
    CHECK(figure("123456789").value().digits == 123'456'789);
    CHECK(figure("0.000123456789").value().digits == 123'456'789);
    for (const char* wrong : {"",
                              ".5",
                              "5.",
                              "0",
                              "0.000",
                              "-1",
                              "1.2.3",
                              "1 000",
                              "1e3",
                              "1234567890",
                              "0.0000000000001"})
        CHECK_FALSE(figure(wrong));
}
