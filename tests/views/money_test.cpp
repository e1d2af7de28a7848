// What an overhaul costs, in words: the sums at the top with their whys, rows, routes side by side.
#include "catch_amalgamated.hpp"
#include "tests/views/planned.hpp"

#include "engine/views/money_view.hpp"

using namespace twoclocks;
using support::add_item;
using support::euro;
using support::hand_state;
using support::hand_today;
using support::said;
using timeline::AircraftState;

namespace {

facts::CostLine taxed_line(const char* key, std::int64_t whole) {
    facts::CostLine out = support::cost_line(key);
    out.name = key;
    out.tax = facts::TaxCase::recoverable;
    out.tax_permille = 200;
    out.price = euro(whole);
    return out;
}

facts::Route untaxed_route(const char* key, std::int64_t whole) {
    facts::Route out = support::route(key);
    out.name = key;
    out.price = euro(whole);
    out.tax = facts::TaxCase::none;
    return out;
}

/// 100 h left of 500, one flown a day.
AircraftState with_lines(const std::vector<facts::CostLine>& lines) {
    AircraftState state = hand_state();
    add_item(state, facts::ItemRole::overhaul, base::hours(100), {});
    for (const facts::CostLine& one : lines)
        state.money.lines.push_back({one, hand_today, {}});
    return state;
}

views::MoneyView money_shown(const AircraftState& state) {
    return views::make_money_view(views::assess(state, hand_today));
}

bool has(const base::Message& message, const char* part) {
    return said(message).find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("gross, what comes back and net, each with every line in its why", "[views][money]") {
    const views::MoneyView view =
        money_shown(with_lines({taxed_line("Kit", 1'000), taxed_line("Paint", 101)}));
    CHECK(has(view.gross.text, "1,322"));  // 1,101 and 20 %: 1,321.20, up
    CHECK(has(view.back.text, "220.20"));
    CHECK(has(view.net.text, "1,101"));
    REQUIRE(view.gross.why.lines.size() == 7);  // each line with its workings, and the sum
    CHECK(has(view.gross.why.lines[0].text, "1,200.00"));
    CHECK(has(view.gross.why.lines[1].text, "200"));
    CHECK(has(view.gross.why.lines[3].text, "121.20"));
    CHECK(has(view.gross.why.lines[6].text, "1,321.20"));
    CHECK(has(view.net.why.lines.back().text, "1,101.00"));
    CHECK(views::whys_of(view).size() == 3);
    CHECK(view.range.word == base::Word::blank);  // nothing strays
    CHECK(view.movers.empty());
    CHECK(view.rows.size() == 2);
    REQUIRE(view.rows[0].lines.size() == 1);     // the price
    REQUIRE(view.rows[0].workings.size() == 2);  // tax, who said so
    CHECK(has(view.rows[0].workings[0], "200"));
}

TEST_CASE("a line without a price is named and not in the sum", "[views][money][bad]") {
    facts::CostLine open = taxed_line("Findings", 0);
    open.price.reset();
    const views::MoneyView view = money_shown(with_lines({taxed_line("Kit", 1'000), open}));
    CHECK(said(view.not_whole).starts_with("1 line"));
    REQUIRE(view.rows.size() == 2);
    CHECK(said(view.rows[1].sum) == "not in the sum");
    REQUIRE(view.rows[1].notes.size() == 1);
    CHECK(view.rows[1].notes.front().code == base::Trouble::price_missing);
}

TEST_CASE("a sum of no line is not nothing but not known", "[views][money][bad]") {
    facts::CostLine open = taxed_line("Findings", 0);
    open.price.reset();
    const views::MoneyView view = money_shown(with_lines({open}));
    CHECK(said(view.gross.text) == "To pay: not known");
    CHECK(said(view.net.text) == "Net: not known");
}

TEST_CASE("a kit rises until it ships, which is after its order and not as if ordered today",
          "[views][money]") {
    AircraftState state = support::ends_in(1'500);
    facts::CostLine kit = taxed_line("Kit", 1'000);
    kit.group = facts::CostGroup::kit;
    kit.tax = facts::TaxCase::none;
    state.money.lines.push_back({kit, hand_today, {}});
    state.money.terms.kit_rise_permille = 100;
    // Ordered some 200 days before the limit it ships about four years from today: 1.1 to the power
    // of four is 1.46. Ordered today it would be 1.05.
    const views::MoneyView view = money_shown(state);
    CHECK(has(view.net.text, "1,4"));
}

TEST_CASE("every open route comes to its own net, for each hour of the limit", "[views][money]") {
    AircraftState state = with_lines({taxed_line("Paint", 1'000)});
    state.campaign.routes.push_back({untaxed_route("near", 5'000), hand_today, {}});
    state.campaign.routes.push_back({untaxed_route("far", 4'000), hand_today, {}});
    facts::Route refused = untaxed_route("no", 1);
    refused.accepted = facts::Acceptance::refused;
    state.campaign.routes.push_back({refused, hand_today, {}});
    const views::MoneyView view = money_shown(state);
    REQUIRE(view.paths.size() == 2);
    CHECK(has(view.paths[0].net, "6,000"));
    CHECK(has(view.paths[0].hour, "12.00"));  // over 500 h
    CHECK(has(view.paths[1].net, "5,000"));
    // No route is chosen: the estimate itself has neither.
    CHECK(view.rows.size() == 1);
    state.campaign.chosen_route = 1;
    const views::MoneyView by_far = money_shown(state);
    CHECK(has(by_far.net.text, "5,000"));
    REQUIRE(by_far.rows.size() == 2);
    CHECK_FALSE(by_far.rows[0].is_recorded);
    CHECK(by_far.rows[0].key == "far");  // its price is changed there
    CHECK(has(by_far.route, "far"));
}

TEST_CASE("amounts in another currency are told as they are paid, with their rate",
          "[views][money]") {
    facts::CostLine crate = taxed_line("Crate", 0);
    crate.tax = facts::TaxCase::none;
    crate.price = base::Money{100'000, base::parse_currency("USD").value()};
    AircraftState state = with_lines({taxed_line("Kit", 1'000), crate});
    state.money.terms.home = "EUR";
    state.money.rates.push_back({{"USD", "EUR", "0.9174", "Bank"}, hand_today, {}});
    const views::MoneyView view = money_shown(state);
    REQUIRE(view.currencies.size() == 2);
    CHECK(has(view.currencies[1], "1,000.00"));
    REQUIRE(view.rates.size() == 1);
    CHECK(has(view.rates[0], "0.9174"));
    CHECK(has(view.rates[0], "Bank"));
    CHECK(has(view.rows[1].sum, "918"));  // 917.40, up
}

TEST_CASE("what strays most is ranked first, of a thousand of the greatest", "[views][money]") {
    facts::CostLine kit = taxed_line("Kit", 1'000);
    kit.high_price = euro(1'100);
    facts::CostLine findings = taxed_line("Findings", 100);
    findings.high_price = euro(500);
    const views::MoneyView view = money_shown(with_lines({kit, findings}));
    REQUIRE(view.movers.size() == 2);
    CHECK(said(view.movers[0].name) == "Findings");
    CHECK(view.movers[0].permille == 1'000);
    CHECK(view.movers[1].permille == 250);
    // By hand: the two sums stray upwards alone, so nearly every way is more than as expected.
    CHECK(said(view.range)
              .starts_with("With each line as expected. In 100 of 100 ways it is more: "
                           "in half of 10,000 more than"));
}
