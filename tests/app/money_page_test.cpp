// The page "Money": lines, rates, lists and terms from their forms to the sums.
#include "catch_amalgamated.hpp"
#include "tests/app/limit_bench.hpp"

#include <string>

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::Hangar;
using canvas::support::said;

namespace {

const views::MoneyView& money_of(Hangar& h) {
    h.app.apply(intent::OpenMoney{h.aircraft});
    const auto* page = std::get_if<MoneyPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    return page->view;
}

bool has(const base::Message& message, const char* part) {
    return said(message).find(part) != std::string::npos;
}

const views::MoneyRow& row(Hangar& h, const std::string& name) {
    for (const views::MoneyRow& one : money_of(h).rows)
        if (said(one.name) == name) return one;
    FAIL("no such row");
    throw std::logic_error{name};
}

void add_line(Hangar& h, const char* name, const char* price) {
    h.open(FormKind::cost_line, h.aircraft);
    h.type("line_name", name);
    h.type("price", price);
    h.choose("tax", "none");
    h.send();
}

}  // namespace

TEST_CASE("nothing recorded is said, and the usual lines begin an estimate", "[app][money]") {
    Hangar h;
    CHECK(has(money_of(h).missing, "Nothing is recorded"));
    h.app.apply(intent::UsualLines{h.aircraft});
    h.host.answer(h.app);
    CHECK(money_of(h).missing.word == base::Word::blank);
    CHECK(money_of(h).rows.size() == 11);
    CHECK(has(money_of(h).not_whole, "8 lines"));
    CHECK(has(row(h, "Labour, hours").lines.front(), "expected 240"));
    CHECK(!has(row(h, "Labour, hours").lines.front(), "240.0"));
    CHECK(has(row(h, "Own engine, overhauled").lines.front(), "chosen"));
    // Once is enough.
    const std::size_t records = h.records().size();
    h.app.apply(intent::UsualLines{h.aircraft});
    CHECK(h.records().size() == records);
}

TEST_CASE("a line is added, opened again as it was said, and changed", "[app][money]") {
    Hangar h;
    h.open(FormKind::cost_line, h.aircraft);
    h.type("line_name", "Overhaul kit");
    h.choose("cost_group", "Overhaul kit");
    h.type("price", "168400");
    h.choose("tax", "paid and recovered");
    h.type("tax_permille", "20");
    h.more();
    h.type("low_price", "160000");
    h.type("high_price", "190000");
    h.type("relief_terms", "Old parts go back");
    h.choose("at_shipment", "yes");
    h.send();
    const auto [body, line] = h.last<facts::CostLine>();
    CHECK(line.group == facts::CostGroup::kit);
    CHECK(base::print_money(*line.price) == "168400.00 EUR");
    CHECK(line.tax_permille == 200);
    CHECK(line.at_shipment);
    CHECK(has(money_of(h).gross.text, "202,080"));
    CHECK(has(money_of(h).back.text, "33,680"));
    CHECK(has(money_of(h).net.text, "168,400"));
    CHECK(has(money_of(h).range, "in 8 of 10 between"));
    h.app.apply(intent::OpenTask{FormKind::cost_line, h.aircraft, line.line});
    CHECK(h.field("line_name").text == "Overhaul kit");
    CHECK(h.field("price").text == "168400.00");
    h.type("price", "170000");
    h.send();
    const auto [later, now] = h.last<facts::CostLine>();
    CHECK(now.line == line.line);
    CHECK(now.high_price == line.high_price);
    CHECK(has(money_of(h).net.text, "170,000"));
    CHECK(money_of(h).rows.size() == 1);
}

TEST_CASE("what is wrong in a line stands beside its field", "[app][money][bad]") {
    Hangar h;
    h.open(FormKind::cost_line, h.aircraft);
    h.type("price", "100");
    h.type("tax_permille", "120");
    h.more();
    h.type("low_price", "200");
    h.send();
    CHECK(h.problem("tax_permille").has_value());
    h.type("tax_permille", "20");
    h.send();
    CHECK(h.problem("price") == base::Trouble::line_out_of_order);
    h.type("low_price", "50 USD");
    h.send();
    CHECK(h.problem("price") == base::Trouble::line_currencies);
}

TEST_CASE("another currency waits for its rate, which is used one way only", "[app][money]") {
    Hangar h;
    add_line(h, "Crate", "1000 USD");
    h.open(FormKind::cost_terms, h.aircraft);
    h.type("home_currency", "eur");
    h.send();
    CHECK(h.last<facts::CostTerms>().second.home == "EUR");
    CHECK(has(money_of(h).not_whole, "1 line"));
    CHECK(row(h, "Crate").notes.front().code == base::Trouble::rate_missing);
    h.open(FormKind::exchange_rate, h.aircraft);
    CHECK(h.field("rate_to").text == "EUR");
    h.type("rate_from", "usd");
    h.type("rate", "0,9174");
    h.type("said_by", "Bank");
    h.send();
    CHECK(h.last<facts::ExchangeRate>().second.rate == "0.9174");
    CHECK(money_of(h).not_whole.word == base::Word::blank);
    CHECK(has(money_of(h).net.text, "918"));  // 917.40, up
    REQUIRE(!money_of(h).rates.empty());
    CHECK(has(money_of(h).rates.front(), "0.9174"));
    h.open(FormKind::exchange_rate, h.aircraft);
    h.type("rate_from", "EUR");
    h.type("rate", "x");
    h.send();
    CHECK(h.problem("rate").has_value());
    h.type("rate", "1");
    h.send();
    CHECK(h.problem("rate_to") == base::Trouble::rate_same_currency);
}

TEST_CASE("a price list is pasted, prices a line, and a newer one says what it changes",
          "[app][money]") {
    Hangar h;
    h.open(FormKind::price_list, h.aircraft);
    h.type("list", "Kits");
    h.type("date", "2026-01-05");
    h.type("rows", "Article;Price;Name\nK-1;90.00;\"Kit; whole\"\nK-2;5,50 USD;Seal\n");
    h.send();
    CHECK(h.last<facts::PriceList>().second.rows ==
          "K-1\t90.00 EUR\tKit; whole\nK-2\t5.50 USD\tSeal\n");
    h.open(FormKind::cost_line, h.aircraft);
    h.type("line_name", "Kit");
    h.choose("tax", "none");
    h.more();
    h.type("price_list", "Kits");
    h.type("article", "K-1");
    h.send();
    CHECK(has(money_of(h).net.text, "90"));
    CHECK(money_of(h).changes.empty());
    h.open(FormKind::price_list, h.aircraft);
    h.type("list", "Kits");
    h.type("rows", "K-1\t99.00\tKit");
    CHECK(said(h.field("faults").told.at(2)) == "Prices of the estimate that it changes: 1");
    CHECK(said(h.field("faults").told.at(3)) ==
          "Kit: 90.00\u00a0EUR now, 99.00\u00a0EUR by this list");
    h.type("rows", "K-1\t99.00\tKit\nK-2\tlots\tSeal");  // nothing of it would be saved
    CHECK(said(h.field("faults").told.back()).starts_with("Row 2: "));
    h.type("rows", "K-1\t99.00\tKit");
    h.type("date", "2099-01-01");  // nor of this
    CHECK(h.field("faults").told.size() == 2);
    h.type("date", "2026-11-25");
    h.type("list", "");
    CHECK(said(h.field("faults").told.at(2)).starts_with("Name the list"));
    h.type("list", "Kits");
    h.send();
    CHECK(has(money_of(h).net.text, "99"));
    REQUIRE(money_of(h).changes.size() == 1);
    CHECK(has(money_of(h).changes.front(), "90.00"));
    h.open(FormKind::price_list, h.aircraft);
    h.type("list", "Kits");
    h.type("rows", "K-1;ninety;Kit\nK-2;x9;Seal");
    h.send();
    CHECK(h.problem("faults") == base::Trouble::table_rows_faulty);
    // Columns in another order, by their headings; a row that cannot be taken is left out.
    h.type("rows", "Amount,Part number,Description\n\"1,250.00\",K-1,Kit\nlots,K-2,Seal\n");
    CHECK(said(h.field("column-12").options.at(1)) == "Column 1: Amount");
    CHECK(h.field("column-12").chosen == 1);
    CHECK(h.field("column-11").chosen == 2);
    h.choose("faults", "all but the rows that cannot be taken");
    h.send();
    CHECK(h.last<facts::PriceList>().second.rows == "K-1\t1250.00 EUR\tKit\n");
}

TEST_CASE("of the engines one is chosen, and its choice moves the sum", "[app][money]") {
    Hangar h;
    const auto engine = [&](const char* name, const char* price, const char* taken) {
        h.open(FormKind::cost_line, h.aircraft);
        h.type("line_name", name);
        h.type("price", price);
        h.choose("tax", "none");
        h.choose("taken", taken);
        h.more();
        h.type("one_of", "Engine");
        h.send();
    };
    engine("Own", "49000", "chosen");
    engine("Exchange", "78000", "can be had, not chosen");
    CHECK(has(money_of(h).net.text, "49,000"));
    CHECK(has(row(h, "Exchange").sum, "if chosen"));
    CHECK(money_of(h).faults.empty());
    h.open(FormKind::cost_line, h.aircraft);
    h.choose("line", "Exchange");
    h.choose("taken", "chosen");
    h.send();
    REQUIRE(money_of(h).faults.size() == 1);
    CHECK(money_of(h).faults.front().code == base::Trouble::option_twice);
    CHECK(money_of(h).not_whole.word == base::Word::blank);  // both are in the sum
    h.open(FormKind::cost_line, h.aircraft);
    h.choose("line", "Own");
    h.choose("taken", "can be had, not chosen");
    h.send();
    CHECK(money_of(h).faults.empty());
    CHECK(has(money_of(h).net.text, "78,000"));
}

TEST_CASE("lines of the last overhaul are taken over with the day of their price", "[app][money]") {
    Hangar h;
    add_line(h, "Kit", "100");
    const base::Date priced = h.last<facts::CostLine>().first.on;
    Outside later;
    later.today_day_number = canvas::support::today.day_number + 10;
    later.wall_ms = std::int64_t{later.today_day_number} * 86'400'000;
    later.random_a = 77;
    later.random_b = 78;
    h.app.refresh(later);
    h.open(FormKind::work_done, h.overhaul);
    h.send();
    CHECK(has(money_of(h).missing, "Nothing is recorded"));
    REQUIRE(money_of(h).past_lines == 1);
    h.app.apply(intent::TakeOverLines{h.aircraft});
    h.host.answer(h.app);
    CHECK(h.last<facts::CostLine>().second.price_on == priced);
    CHECK(has(money_of(h).net.text, "100"));
}
