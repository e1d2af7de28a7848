// Amounts, rates and estimates against sources that are not ours.
#include "tests/budget/lines.hpp"

#ifndef __EMSCRIPTEN__
#include <boost/multiprecision/cpp_int.hpp>
#endif
#include <cmath>
#include <random>

#include "engine/base/scaled.hpp"

using namespace twoclocks;
using namespace twoclocks::budget;
using namespace twoclocks::budget::by_hand;
using base::MoneyRound;

#ifndef __EMSCRIPTEN__
namespace {

using Wide = boost::multiprecision::cpp_int;

/// A quotient cut as the rule says, in integers of any size.
Wide cut(const Wide& over, const Wide& by, MoneyRound round) {
    Wide quotient = over / by;
    Wide rest = over % by;
    if (rest < 0) {
        rest += by;
        quotient -= 1;
    }
    const bool more =
        (round == MoneyRound::up && rest > 0) || (round == MoneyRound::half_up && 2 * rest >= by);
    return more ? Wide{quotient + 1} : quotient;
}

}  // namespace

TEST_CASE("scaling agrees with integers of any size", "[outside][money]") {
    // Source: Boost.Multiprecision cpp_int, a general-purpose library.
    std::mt19937_64 random{4'217};
    std::int32_t beyond = 0;
    for (std::int32_t way = 0; way < 100'000; ++way) {
        const auto some = [&](std::uint32_t bits) {
            return static_cast<std::int64_t>(random() >> (64 - bits));
        };
        std::int64_t amount = some(1 + static_cast<std::uint32_t>(random() % 50));
        if (random() % 3 == 0) amount = -amount;
        const std::int64_t times = some(1 + static_cast<std::uint32_t>(random() % 40));
        const std::int64_t over = 1 + some(1 + static_cast<std::uint32_t>(random() % 40));
        for (const MoneyRound round : {MoneyRound::down, MoneyRound::up, MoneyRound::half_up}) {
            const Wide expected = cut(Wide{amount} * times, over, round);
            const auto out = base::scaled({amount, {}}, times, over, round);
            const bool fits = abs(expected) <= base::most_minor_units;
            CAPTURE(amount, times, over);
            REQUIRE(out.has_value() == fits);
            if (fits) REQUIRE(Wide{out->minor_units} == expected);
            if (!fits) ++beyond;
        }
    }
    CHECK(beyond > 100);  // both sides of the bound were met
}

#endif

TEST_CASE("fixed rates of Regulation (EC) 1103/97", "[outside][money]") {
    // Source: Regulation (EC) No 1103/97, articles 4 and 5: from a national unit to the euro by
    // dividing, six figures that count, half up; between national units through the euro with no
    // fewer than three decimals. FRF 6.55957 and DEM 1.95583 from memory.
    const auto to_euro = [](std::int64_t minor_units, std::int64_t per_minor) {
        return base::scaled({minor_units, {}}, 100'000 * per_minor, 655'957, MoneyRound::half_up)
            ->minor_units;
    };
    CHECK(to_euro(10'000, 1) == 1'524);            // 100 FRF are 15.24 EUR
    CHECK(to_euro(100'000'000, 1) == 15'244'902);  // a million; the inverse would give .00
    const std::int64_t thousandths = to_euro(10'000, 10);
    CHECK(thousandths == 15'245);
    const auto marks = base::scaled({thousandths, {}}, 195'583, 1'000'000, MoneyRound::half_up);
    CHECK(marks->minor_units == 2'982);  // 29.82 DEM
}

TEST_CASE("minor units of either side are those of ISO 4217", "[outside][money]") {
    // Source: ISO 4217, minor units: JPY 0, KWD 3, CLF 4, EUR 2 (npm currency-codes 2.2.0).
    const auto turned_to = [](base::Money amount, const Rate& rate) {
        return base::print_money(*turned(amount, rate, MoneyRound::half_up));
    };
    const auto thousand = base::Money{1'000, currency("KWD")};  // one, of a thousand minor units
    CHECK(turned_to(money("1000 JPY"), rate("JPY", "EUR", "0.0061", "2026-01-01")) == "6.10 EUR");
    CHECK(turned_to(money("6.10 EUR"), rate("EUR", "JPY", "163.93", "2026-01-01")) == "1000 JPY");
    CHECK(turned_to(thousand, rate("KWD", "EUR", "2.98765", "2026-01-01")) == "2.99 EUR");
    CHECK(turned_to(money("2.99 EUR"), rate("EUR", "KWD", "0.334711", "2026-01-01")) ==
          "1.001 KWD");
    CHECK(turned_to(money("1.0000 CLF"), rate("CLF", "JPY", "6123", "2026-01-01")) == "6123 JPY");
    CHECK(turned_to(money("1 JPY"), rate("JPY", "CLF", "0.000163", "2026-01-01")) == "0.0002 CLF");
}

TEST_CASE("tax on an invoice", "[outside][money]") {
    // Source: 1234.56 x 1.2 = 1481.472; common practice of invoices, half up.
    facts::CostLine kit = line("kit", "1234.56 EUR");
    kit.tax = facts::TaxCase::borne;
    kit.tax_permille = 200;
    CHECK(worked_out(recorded(kit), setting()).home_gross.likely == 148'147);
    CHECK(base::scaled(money("100 EUR"), 1'000, 1'200, MoneyRound::half_up)->minor_units == 8'333);
}

TEST_CASE("a shop's whole price with tax and in another currency", "[outside][money]") {
    // Common practice, no source: 290,000 is about 350 thousand with 20 % tax, and about 360
    // thousand in a currency at 1.24.
    facts::CostLine whole = line("whole", "290000 GBP");
    whole.tax = facts::TaxCase::borne;
    whole.tax_permille = 200;
    Setting how = setting();
    how.home = currency("GBP");
    CHECK(worked_out(recorded(whole), how).home_gross.likely == 34'800'000);
    whole.tax = facts::TaxCase::none;
    how.home = currency("EUR");
    how.rates = {rate("GBP", "EUR", "1.24", "2026-01-01")};
    CHECK(worked_out(recorded(whole), how).home_gross.likely == 35'960'000);
}

TEST_CASE("the shares of one line are those of its triangle", "[outside][estimate]") {
    // Source: quantiles of the triangular distribution (2, 4, 9): 3.183216, 4.816700, 7.129171
    // (two general-purpose libraries). A thousand draws in ten stray by less than 2 %.
    facts::CostLine kit = line("kit", "400000 EUR");
    kit.low_price = money("200000 EUR");
    kit.high_price = money("900000 EUR");
    const Shares shares = estimate({recorded(kit)}, {}, setting()).gross_shares;
    const auto near = [](std::int64_t out, double expected) {
        return std::abs(static_cast<double>(out) / (expected * 10'000'000) - 1) < 0.02;
    };
    CHECK(near(shares.tenth, 3.183216));
    CHECK(near(shares.half, 4.816700));
    CHECK(near(shares.ninth, 7.129171));
}
