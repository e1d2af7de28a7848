// Pages of cores, cash and the reserve, filled as far as they go: every standing, late and at risk,
// terms, payments, accounts, shares.
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/sample_screens.hpp"
#include "wasm/app/form_fields.hpp"

#include "engine/views/cash_view.hpp"
#include "engine/views/cores_view.hpp"
#include "engine/views/reserve_view.hpp"
#include "engine/views/sale_view.hpp"

namespace twoclocks::canvas::samples {
namespace {

using facts::CoreStage;
using twoclocks::support::hand_today;

base::Money whole(std::int64_t amount) {
    return {amount * 100, {}};
}

timeline::CoreState core_of_sample(const char* name, std::int32_t due_in, int stages) {
    facts::Core said = twoclocks::support::core(name);
    said.name = name;
    said.kit = "Overhaul kit of the example, second issue";
    said.part_numbers = "MG-2, MG-2A, MG-2B with the long shaft";
    said.serial = "0117";
    said.charge = whole(24'000);
    said.best_credit = whole(19'500);
    said.part_credit = whole(9'200);
    said.bill = whole(1'800);
    said.part_permille = 350;
    said.nothing_permille = 150;
    said.billed_permille = 50;
    said.return_by = base::add_days(hand_today, due_in);
    said.log_card = true;
    said.lien = "Bank of the example";
    said.tax = facts::TaxCase::borne;
    said.tax_permille = 200;
    timeline::CoreState out{said, base::add_days(hand_today, -90), {}};
    for (int stage = 0; stage < stages; ++stage) {
        facts::CoreStep step;
        step.core = name;
        step.stage = static_cast<CoreStage>(stage);
        step.reference = "Consignment 5";
        if (step.stage == CoreStage::settled) step.credit = whole(9'200);
        out.steps.push_back({step, base::add_days(hand_today, -60 + stage), {}});
    }
    return out;
}

facts::CostLine line_of_sample(const char* name, facts::CostGroup group, std::int64_t price) {
    facts::CostLine out = twoclocks::support::cost_line(name);
    out.name = name;
    out.group = group;
    out.tax = facts::TaxCase::recoverable;
    out.tax_permille = 200;
    out.price = whole(price);
    return out;
}

void add_terms(timeline::MoneyState& money) {
    facts::PayTerm term;
    term.term = "deposit";
    term.name = "deposit with the order of the kit";
    term.permille = 300;
    money.pay_terms.push_back({term, hand_today, {}});
    facts::Payment paid;
    paid.line = "Overhaul kit";
    paid.amount = whole(20'000);
    money.payments.push_back({paid, base::add_days(hand_today, -20), {}});
    paid.line = "Paint";
    money.payments.push_back({paid, base::add_days(hand_today, -20), {}});
    facts::Balance balance;
    balance.account = "Overhaul account";
    balance.held_by = "Bank of the example";
    for (const std::int64_t amount : {41'000, 58'500}) {
        balance.amount = whole(amount);
        money.balances.push_back({balance, base::add_days(hand_today, -10), {}});
    }
    money.reserve.hour = whole(45);
    money.reserve.interest_permille = 20;
    money.reserve_on = hand_today;
    money.reserve_fact = base::Id{};
    for (const char* const who : {"Harbour flights of the example", "Owner of the example"}) {
        facts::Holder holder;
        holder.holder = who;
        holder.permille = 400;
        money.holders.push_back({holder, hand_today, {}});
    }
}

timeline::AircraftState summed_state() {
    timeline::AircraftState state = twoclocks::support::hand_state();
    twoclocks::support::add_item(state, facts::ItemRole::overhaul, base::hours(40), {});
    timeline::MoneyState& money = state.money;
    money.lines.push_back(
        {line_of_sample("Overhaul kit", facts::CostGroup::kit, 168'400), hand_today, {}});
    money.lines.push_back({line_of_sample("Labour of the shop over the water, hours of its people",
                                          facts::CostGroup::labour,
                                          21'240),
                           hand_today,
                           {}});
    money.terms.home = "EUR";
    money.cores = {core_of_sample("Main gearbox with the long name of the example", 12, 1),
                   core_of_sample("Tail gearbox", -3, 1),
                   core_of_sample("Swashplate", 90, 0),
                   core_of_sample("Clutch", 40, 2),
                   core_of_sample("Servo", 40, 5)};
    timeline::CoreState blades = core_of_sample("Blades", 40, 1);
    blades.said.destroy = true;
    money.cores.push_back(blades);
    add_terms(money);
    state.campaign.costs.interest_permille = 35;
    return state;
}

Screen sums_screen(const views::SumsView& view) {
    Screen screen = aircraft();
    screen.whys = views::whys_of(view);
    screen.page = SumsPage{view};
    return screen;
}

/// One of the pages, of one aircraft.
Screen made(views::SumsView (*make)(const views::Assessed&, const views::Living&),
            const timeline::AircraftState& state) {
    const views::Assessed assessed = views::assess(state, hand_today);
    constexpr std::int32_t ways = 200;
    return sums_screen(make(assessed, views::live(assessed, state.campaign, ways)));
}

}  // namespace

Screen cores() {
    return made(views::make_cores_view, summed_state());
}

Screen cash() {
    return made(views::make_cash_view, summed_state());
}

Screen reserve() {
    return made(views::make_reserve_view, summed_state());
}

Screen sale() {
    timeline::AircraftState state = summed_state();
    twoclocks::support::add_item(state, facts::ItemRole::inspection, base::hours(30), {});
    facts::ClosingPoint point = twoclocks::support::closing("lien");
    point.text = "The bank of the example has a claim until the last instalment";
    point.cost = whole(12'500);
    point.until = base::add_days(hand_today, -5);
    state.money.closing.push_back({point, hand_today, {}});
    const views::Assessed assessed = views::assess(state, hand_today);
    Screen screen = sums_screen(views::make_sale_view(assessed, base::hours(200)));
    std::get_if<SumsPage>(&screen.page)->asked = make_field(
        "buyer-year", base::Word::field_buyer_year, FieldKind::hours, "200", Need::optional);
    return screen;
}

Screen closing() {
    timeline::AircraftState state = summed_state();
    facts::ClosingPoint point = twoclocks::support::closing("lien");
    point.text = "The bank of the example has a claim until the last instalment";
    point.cost = whole(12'500);
    point.payer = facts::ClosingPayer::seller;
    point.until = base::add_days(hand_today, -5);
    state.money.closing.push_back({point, hand_today, {}});
    point.settled = true;
    point.paper = "Contract, annex 3";
    state.money.closing.push_back({point, hand_today, {}});
    return sums_screen(views::make_closing_view(views::assess(state, hand_today)));
}

Screen compare() {
    const views::Assessed one = views::assess(summed_state(), hand_today);
    const views::Assessed other = views::assess(twoclocks::support::hand_state(), hand_today);
    return sums_screen(views::make_compare_view({&one, &other}, base::hours(120)));
}

Screen no_cores() {
    return made(views::make_cores_view, twoclocks::support::hand_state());
}

}  // namespace twoclocks::canvas::samples
