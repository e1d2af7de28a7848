#include "engine/base/money.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/first_trouble.hpp"

#include <cstdint>
#include <string>
#include <type_traits>

#include "engine/base/message_args.hpp"
#include "engine/base/region.hpp"

using namespace twoclocks::base;
using twoclocks::support::first_trouble;

namespace {

// A bare number is no money: its currency would be a guess.
static_assert(!std::is_convertible_v<std::int64_t, Money>);

Currency code(const char* letters) {
    return parse_currency(letters).value();
}

Money euros(std::int64_t cents) {
    return {cents, code("EUR")};
}

std::string read(const char* text, const char* otherwise = "EUR") {
    const Result<Money> money = parse_money(text, code(otherwise));
    return money ? print_money(money.value()) : first_trouble(money);
}

struct MoneyText {
    const char* text;
    const char* outcome;
};

}  // namespace

TEST_CASE("amounts are read with every separator people write", "[base][money]") {
    for (const MoneyText& row : {MoneyText{"0", "0.00 EUR"},
                                 MoneyText{"1234", "1234.00 EUR"},
                                 MoneyText{"1234.5", "1234.50 EUR"},
                                 MoneyText{"1234,50", "1234.50 EUR"},
                                 MoneyText{"1 234,50", "1234.50 EUR"},
                                 MoneyText{"1\u202F234,50", "1234.50 EUR"},
                                 MoneyText{"1\u00A0234.50", "1234.50 EUR"},
                                 MoneyText{"1'234.50", "1234.50 EUR"},
                                 MoneyText{"1’234.50", "1234.50 EUR"},
                                 MoneyText{"1.234,50", "1234.50 EUR"},
                                 MoneyText{"1,234.50", "1234.50 EUR"},
                                 MoneyText{"1,234,567", "1234567.00 EUR"},
                                 MoneyText{"1.234.567,8", "1234567.80 EUR"},
                                 MoneyText{"-12,5", "-12.50 EUR"},
                                 MoneyText{"−0.05", "-0.05 EUR"},
                                 MoneyText{"\t1234.50\r\n", "1234.50 EUR"},
                                 MoneyText{"1 234,50 CHF", "1234.50 CHF"},
                                 MoneyText{"CHF 1'234.50", "1234.50 CHF"},
                                 MoneyText{"usd1234", "1234.00 USD"},
                                 MoneyText{"1234usd", "1234.00 USD"},
                                 MoneyText{"0.123 KWD", "0.123 KWD"},
                                 MoneyText{"1.2345 CLF", "1.2345 CLF"}}) {
        CAPTURE(row.text);
        CHECK(read(row.text) == row.outcome);
    }
}

TEST_CASE("what is no plain amount is refused by its own name", "[base][money]") {
    for (const MoneyText& row : {MoneyText{"", "money_malformed"},
                                 MoneyText{"EUR", "money_malformed"},
                                 MoneyText{".5", "money_malformed"},
                                 MoneyText{"5.", "money_malformed"},
                                 MoneyText{"12:30", "money_malformed"},
                                 MoneyText{"1 5,50", "money_malformed"},
                                 MoneyText{"1.5 7", "money_malformed"},
                                 MoneyText{"1,23,45.6", "money_malformed"},
                                 MoneyText{"EUR 5 EUR", "money_malformed"},
                                 MoneyText{"$5", "money_malformed"},
                                 MoneyText{"1,234", "money_ambiguous"},
                                 MoneyText{"1.234", "money_ambiguous"},
                                 MoneyText{"999,000 USD", "money_ambiguous"},
                                 MoneyText{"1.234 KWD", "money_ambiguous"},
                                 MoneyText{"1.2345", "money_decimals"},
                                 MoneyText{"0.005", "money_decimals"},
                                 MoneyText{"12.5 JPY", "money_decimals"},
                                 MoneyText{"1.2345 KWD", "money_decimals"},
                                 MoneyText{"5 EURO", "money_currency"},
                                 MoneyText{"5 XAU", "money_currency"},
                                 MoneyText{"5 EU", "money_currency"},
                                 MoneyText{"10000000000000", "10000000000000.00 EUR"},
                                 MoneyText{"10000000000000.01", "money_absurd"},
                                 MoneyText{"10000000000001", "money_absurd"},
                                 MoneyText{"99999999999999999999999999", "money_absurd"},
                                 MoneyText{"1000000000000000 JPY", "1000000000000000 JPY"},
                                 MoneyText{"1000000000000001 JPY", "money_absurd"}}) {
        CAPTURE(row.text);
        CHECK(read(row.text) == row.outcome);
    }
}

TEST_CASE("one sign and three digits is a thousand only where a currency has no decimals",
          "[base][money]") {
    CHECK(read("1,234", "JPY") == "1234 JPY");
    CHECK(read("1.234", "JPY") == "1234 JPY");
    CHECK(read("1,234 JPY", "EUR") == "1234 JPY");
    CHECK(read("1,234", "KWD") == "money_ambiguous");
    CHECK(read("1,23", "JPY") == "money_decimals");
}

TEST_CASE("minor units are those of the standard", "[base][money]") {
    struct Fact {
        const char* code;
        std::int32_t digits;
    };

    // ISO 4217 list one [L: npm currency-codes 2.2.0].
    for (const Fact& row : {Fact{"USD", 2},
                            Fact{"EUR", 2},
                            Fact{"GBP", 2},
                            Fact{"CHF", 2},
                            Fact{"CAD", 2},
                            Fact{"AUD", 2},
                            Fact{"HUF", 2},
                            Fact{"JPY", 0},
                            Fact{"KRW", 0},
                            Fact{"CLP", 0},
                            Fact{"ISK", 0},
                            Fact{"KWD", 3},
                            Fact{"BHD", 3},
                            Fact{"TND", 3},
                            Fact{"IQD", 3},
                            Fact{"CLF", 4}}) {
        CAPTURE(row.code);
        CHECK(minor_digits(code(row.code)) == row.digits);
    }
}

TEST_CASE("the list of currencies is in order, each once, each readable", "[base][money]") {
    const auto& all = currencies();
    CHECK(all.size() == 166);
    for (std::size_t at = 0; at < all.size(); ++at) {
        if (at > 0) CHECK(all[at - 1] < all[at]);
        CHECK(parse_currency(print_currency(all[at])).value() == all[at]);
    }
}

TEST_CASE("every amount prints and reads back the same", "[base][money]") {
    for (const char* letters : {"JPY", "EUR", "KWD", "CLF"}) {
        for (std::int64_t units = -12'345; units < 2'000'000; units += 7'919) {
            const Money money{units, code(letters)};
            const auto back = parse_money(print_money(money), code("USD"));
            CAPTURE(print_money(money));
            // "1.234 KWD" is a thousand to some: a person is asked for one digit more or less.
            const bool plain = first_trouble(back) != "money_ambiguous";
            const std::int64_t size = units < 0 ? -units : units;
            const bool like_a_group = size >= 1000 && size < 1'000'000;
            CHECK(plain == !(minor_digits(money.currency) == 3 && like_a_group));
            if (plain) CHECK(back.value() == money);
        }
    }
}

TEST_CASE("a division goes the way its name says, on both sides of zero", "[base][money]") {
    struct Cut {
        std::int64_t cents;
        std::int64_t parts;
        std::int64_t down;
        std::int64_t up;
        std::int64_t half_up;
    };

    for (const Cut& row : {Cut{100, 3, 33, 34, 33},
                           Cut{101, 3, 33, 34, 34},
                           Cut{99, 3, 33, 33, 33},
                           Cut{5, 2, 2, 3, 3},
                           Cut{-5, 2, -3, -2, -2},
                           Cut{-100, 3, -34, -33, -33},
                           Cut{-101, 3, -34, -33, -34},
                           Cut{0, 7, 0, 0, 0}}) {
        CAPTURE(row.cents, row.parts);
        CHECK(divided(euros(row.cents), row.parts, MoneyRound::down) == euros(row.down));
        CHECK(divided(euros(row.cents), row.parts, MoneyRound::up) == euros(row.up));
        CHECK(divided(euros(row.cents), row.parts, MoneyRound::half_up) == euros(row.half_up));
    }
}

TEST_CASE("a split never loses a minor unit", "[base][money]") {
    for (const std::int64_t cents : {100, 101, 99, 0, 1, -100, -1}) {
        for (const std::int32_t parts : {1, 2, 3, 7}) {
            CAPTURE(cents, parts);
            const std::vector<Money> shares = split(euros(cents), parts);
            REQUIRE(shares.size() == static_cast<std::size_t>(parts));
            std::int64_t sum = 0;
            for (const Money& share : shares)
                sum += share.minor_units;
            CHECK(sum == cents);
            CHECK(shares.front().minor_units - shares.back().minor_units <= 1);
            CHECK(shares.front().minor_units >= shares.back().minor_units);
        }
    }
}

TEST_CASE("a decimal number is said with the signs of the region", "[base][region]") {
    const Region comma{",", "\u202F", DateOrder::day_first};
    const auto said = [](std::int64_t units, std::int32_t decimals, const Region& region) {
        return say(Message{Word::money_figure, {decimal_arg(units, decimals), text_arg("EUR")}},
                   region);
    };
    CHECK(said(123'450, 2, {}) == "1,234.50 EUR");
    CHECK(said(123'450, 2, comma) == "1\u202F234,50 EUR");
    CHECK(said(-5, 2, {}) == "−0.05 EUR");
    CHECK(said(1234, 0, {}) == "1,234 EUR");
    CHECK(said(7, 99, {}) == "0.000000007 EUR");
}
