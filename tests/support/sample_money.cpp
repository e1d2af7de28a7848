// Pages of what an overhaul costs, filled as far as they go: long names, two currencies, routes,
// lines that are missing something.
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/sample_screens.hpp"

#include "engine/views/money_view.hpp"

namespace twoclocks::canvas::samples {
namespace {

using twoclocks::support::hand_today;

facts::CostLine line(const char* name, facts::CostGroup group, std::int64_t whole) {
    facts::CostLine out = twoclocks::support::cost_line(name);
    out.name = name;
    out.group = group;
    out.tax = facts::TaxCase::recoverable;
    out.tax_permille = 200;
    out.price = base::Money{whole * 100, {}};
    out.low_price = base::Money{whole * 90, {}};
    out.high_price = base::Money{whole * 130, {}};
    return out;
}

timeline::AircraftState costed_state() {
    timeline::AircraftState state = twoclocks::support::hand_state();
    twoclocks::support::add_item(state, facts::ItemRole::overhaul, base::hours(40), {});
    facts::CostLine kit = line("Overhaul kit", facts::CostGroup::kit, 168'400);
    kit.low_price.reset();
    kit.high_price.reset();
    kit.price = base::Money{168'400'00, base::parse_currency("USD").value()};
    kit.at_shipment = true;
    kit.deposit_permille = 300;
    facts::CostLine labour = line(
        "Labour of the shop over the water, hours of its people", facts::CostGroup::labour, 88);
    labour.low_quantity = 220'000;
    labour.quantity = 240'000;
    labour.high_quantity = 320'000;
    labour.price_until = hand_today;
    labour.said_by = "Shop of the example";
    facts::CostLine exchange = line("Exchange engine", facts::CostGroup::engine, 81'500);
    exchange.taken = facts::CostTaken::offered;
    exchange.one_of = "Engine";
    facts::CostLine findings = line("Findings", facts::CostGroup::findings, 0);
    findings.price.reset();
    findings.low_price.reset();
    findings.high_price.reset();
    for (const auto& one : {kit, labour, exchange, findings})
        state.money.lines.push_back({one, hand_today, {}});
    state.money.terms.home = "EUR";
    state.money.rates.push_back({{"USD", "EUR", "0.9174", "Bank of the example"}, hand_today, {}});
    for (const char* const key : {"near", "far"}) {
        facts::Route route = twoclocks::support::route(key);
        route.price = base::Money{226'000'00, {}};
        state.campaign.routes.push_back({route, hand_today, {}});
    }
    return state;
}

Screen money_screen(const timeline::AircraftState& state) {
    Screen screen = aircraft();
    MoneyPage page{views::make_money_view(views::assess(state, hand_today))};
    screen.whys = views::whys_of(page.view);
    screen.page = std::move(page);
    return screen;
}

}  // namespace

Screen money() {
    static const Screen made = money_screen(costed_state());
    return made;
}

Screen no_money() {
    return money_screen(twoclocks::support::hand_state());
}

}  // namespace twoclocks::canvas::samples
