// One line of an estimate: quantity and price, the day it is paid, duty, tax, home currency.
#include "tests/budget/lines.hpp"

using namespace twoclocks;
using namespace twoclocks::budget;
using namespace twoclocks::budget::by_hand;
using base::Trouble;
using facts::CostGroup;
using facts::TaxCase;

using Codes = std::vector<Trouble>;

TEST_CASE("quantity times price, each point by itself, rounded up", "[budget][line]") {
    facts::CostLine labour = line("labour", "92.50 EUR");
    labour.low_price = money("90.00 EUR");
    labour.high_price = money("95.01 EUR");
    labour.low_quantity = 220'000;
    labour.quantity = 240'000;
    labour.high_quantity = 320'333;  // thousandths of an hour
    const CostedLine out = worked_out(recorded(labour), setting());
    REQUIRE(out.known);
    CHECK(out.price == Points{1'980'000, 2'220'000, 3'043'484});  // 30434.838...
    CHECK(out.home_gross == out.price);
    CHECK(out.notes.empty());
}

TEST_CASE("a price without a least and a most has none, and one without a quantity is of one",
          "[budget][line]") {
    const CostedLine out = worked_out(recorded(line("kit", "182000 EUR")), setting());
    CHECK(out.price == Points{18'200'000, 18'200'000, 18'200'000});
    CHECK(out.on == day("2026-01-01"));
}

TEST_CASE("duty is on the price, tax on both; what comes back is paid first", "[budget][line]") {
    facts::CostLine kit = line("kit", "1000.00 EUR");
    kit.duty_permille = 25;
    kit.tax = TaxCase::recoverable;
    kit.tax_permille = 200;
    const CostedLine out = worked_out(recorded(kit), setting());
    CHECK(out.duty.likely == 2'500);
    CHECK(out.tax.likely == 20'500);
    CHECK(out.home_gross.likely == 123'000);
    CHECK(out.home_back.likely == 20'500);
    kit.tax = TaxCase::borne;
    CHECK(worked_out(recorded(kit), setting()).home_back.likely == 0);
    CHECK(worked_out(recorded(kit), setting()).home_gross.likely == 123'000);
    kit.tax = TaxCase::reverse_charge;
    CHECK(worked_out(recorded(kit), setting()).home_gross.likely == 102'500);
    kit.tax = TaxCase::none;
    CHECK(worked_out(recorded(kit), setting()).home_gross.likely == 102'500);
}

TEST_CASE("tax is rounded by the rule that is recorded", "[budget][line]") {
    facts::CostLine kit = line("kit", "0.15 EUR");
    kit.tax = TaxCase::borne;
    kit.tax_permille = 100;  // 1.5 minor units
    Setting how = setting();
    CHECK(worked_out(recorded(kit), how).tax.likely == 2);
    how.terms.tax_round = facts::TaxRound::down;
    CHECK(worked_out(recorded(kit), how).tax.likely == 1);
    kit.tax_permille = 10;  // 0.15 minor units
    how.terms.tax_round = facts::TaxRound::up;
    CHECK(worked_out(recorded(kit), how).tax.likely == 1);
}

TEST_CASE("a tax that nobody named is told, and counted where its share is known",
          "[budget][line][bad]") {
    facts::CostLine kit = line("kit", "100 EUR");
    kit.tax = TaxCase::unknown;
    const CostedLine without = worked_out(recorded(kit), setting());
    CHECK(codes(without.notes) == Codes{Trouble::tax_unknown});
    CHECK(without.home_gross.likely == 10'000);
    kit.tax_permille = 190;
    const CostedLine with = worked_out(recorded(kit), setting());
    CHECK(with.home_gross.likely == 11'900);
    CHECK(with.home_back.likely == 0);
}

TEST_CASE("relief spares duty until its day; after it duty counts and it says so",
          "[budget][line]") {
    facts::CostLine engine = line("engine", "1000 EUR");
    engine.group = CostGroup::engine;
    engine.duty_permille = 50;
    engine.relief = facts::DutyRelief::processing;
    engine.relief_until = day("2026-06-30");
    Setting how = setting();
    how.days.shipped = day("2026-06-30");
    CHECK(worked_out(recorded(engine), how).duty.likely == 0);
    how.days.shipped = day("2026-07-01");
    const CostedLine late = worked_out(recorded(engine), how);
    CHECK(late.duty.likely == 5'000);
    CHECK(codes(late.notes) == Codes{Trouble::relief_over});
}

TEST_CASE("a price rises from its own day to the day it is paid", "[budget][line]") {
    facts::CostLine kit = line("kit", "1000.00 EUR");
    kit.group = CostGroup::kit;
    kit.price_on = day("2026-01-01");
    Setting how = setting();
    how.terms.kit_rise_permille = 40;
    CHECK(worked_out(recorded(kit), how).risen.likely == 100'000);  // no day is known
    how.days.shipped = day("2028-01-01");                           // 730 days
    const CostedLine out = worked_out(recorded(kit), how);
    CHECK(out.rise_days == 730);
    CHECK(out.risen.likely >= 108'160);  // 1.04 twice, and a hair is a minor unit more
    CHECK(out.risen.likely <= 108'161);
    // A price that holds on the day of the order stays, unless that of the shipment counts.
    how.days.ordered = day("2027-06-01");
    kit.price_until = day("2027-06-01");
    CHECK(worked_out(recorded(kit), how).risen.likely == 100'000);
    kit.at_shipment = true;
    CHECK(worked_out(recorded(kit), how).risen.likely >= 108'160);
    kit.at_shipment = false;
    kit.price_until = day("2027-05-31");
    CHECK(worked_out(recorded(kit), how).risen.likely >= 108'160);
    CHECK(worked_out(recorded(kit), how).notes.empty());  // it has not lapsed yet
    // Of another group nothing is known.
    kit.group = CostGroup::other;
    how.days.back = day("2028-01-01");
    CHECK(worked_out(recorded(kit), how).risen.likely == 100'000);
}

TEST_CASE("a quote past its day says so and still counts", "[budget][line][bad]") {
    facts::CostLine kit = line("kit", "100 EUR");
    kit.price_until = day("2025-12-31");
    const CostedLine out = worked_out(recorded(kit), setting());
    CHECK(out.known);
    CHECK(codes(out.notes) == Codes{Trouble::price_lapsed});
    CHECK(out.notes.front().severity == base::Severity::caution);
    // Agreed on while it held, it holds.
    Setting how = setting();
    how.days.booked = day("2025-12-01");
    CHECK(worked_out(recorded(kit), how).notes.empty());
}

TEST_CASE("another currency is turned up at the end, what comes back down", "[budget][line]") {
    facts::CostLine kit = line("kit", "100.01 USD");
    kit.tax = TaxCase::recoverable;
    kit.tax_permille = 100;
    Setting how = setting();
    how.rates = {rate("USD", "EUR", "0.9", "2025-12-20")};
    const CostedLine out = worked_out(recorded(kit), how);
    REQUIRE(out.known);
    CHECK(out.gross().likely == 11'001);    // 10.00 tax of 10.001
    CHECK(out.home_gross.likely == 9'901);  // 99.009
    CHECK(out.home_back.likely == 900);     // 9.00
    CHECK(out.notes.empty());
}

TEST_CASE("no rate, or only the other way round, is no sum; an old one is told",
          "[budget][line][bad]") {
    const auto kit = recorded(line("kit", "100 USD"));
    Setting how = setting();
    how.rates = {rate("EUR", "USD", "1.1", "2025-12-20")};
    const CostedLine none = worked_out(kit, how);
    CHECK_FALSE(none.known);
    CHECK(codes(none.notes) == Codes{Trouble::rate_missing});
    how.rates = {rate("USD", "EUR", "0.9", "2025-12-01"),
                 rate("USD", "EUR", "0.8", "2025-11-01"),
                 rate("USD", "EUR", "0.7", "2026-01-02")};  // not yet
    const CostedLine old = worked_out(kit, how);
    CHECK(old.home_gross.likely == 9'000);
    CHECK(codes(old.notes) == Codes{Trouble::rate_old});  // 31 days
    how.terms.rate_days = 31;
    CHECK(worked_out(kit, how).notes.empty());
}

TEST_CASE("without a price there is no sum, only what is missing", "[budget][line][bad]") {
    const CostedLine out = worked_out(recorded(line("kit", "")), setting());
    CHECK_FALSE(out.known);
    CHECK(codes(out.notes) == Codes{Trouble::price_missing});
}

TEST_CASE("a price list prices a line by its last version", "[budget][line]") {
    facts::CostLine kit = line("kit", "");
    kit.list = "Kits";
    kit.article = "K-1";
    Setting how = setting();
    how.lists = {{"Kits", day("2025-01-01"), {{"K-1", money("90 EUR"), ""}}, "", {}},
                 {"Kits", day("2025-06-01"), {{"K-1", money("100 EUR"), ""}}, "", {}},
                 {"Other", day("2025-12-01"), {{"K-1", money("5 EUR"), ""}}, "", {}}};
    const CostedLine out = worked_out(recorded(kit), how);
    CHECK(out.price.likely == 10'000);
    CHECK(out.from_list);
    kit.article = "K-2";
    const CostedLine none = worked_out(recorded(kit), how);
    CHECK_FALSE(none.known);
    CHECK(codes(none.notes) == Codes{Trouble::article_missing});
    // The price of a list is of the day of its version.
    kit.article = "K-1";
    kit.group = CostGroup::kit;
    how.terms.kit_rise_permille = 100;
    how.days.shipped = day("2026-06-01");
    CHECK(worked_out(recorded(kit), how).rise_days == 365);
}

TEST_CASE("a sum beyond what an amount can be is none", "[budget][line][bad]") {
    facts::CostLine kit = line("kit", "9999999999999.99 EUR");
    kit.quantity = 1'000'000'000;
    const CostedLine out = worked_out(recorded(kit), setting());
    CHECK_FALSE(out.known);
    CHECK(codes(out.notes) == Codes{Trouble::sum_beyond});
}
