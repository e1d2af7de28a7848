// The pages of cores, cash and the reserve: from their forms to the figures.
#include "catch_amalgamated.hpp"
#include "tests/app/limit_bench.hpp"

#include <string>

using namespace twoclocks;
using namespace twoclocks::canvas;
using base::Trouble;
using canvas::support::Hangar;
using canvas::support::said;
using views::SumsOf;

namespace {

const views::SumsView& sums_of(Hangar& h, SumsOf of) {
    h.app.apply(intent::OpenSums{h.aircraft, of});
    const auto* page = std::get_if<SumsPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    REQUIRE(page->view.of == of);
    return page->view;
}

bool tells(const base::Message& message, const char* part) {
    return said(message).find(part) != std::string::npos;
}

bool any_tells(const std::vector<base::Message>& all, const char* part) {
    return std::any_of(
        all.begin(), all.end(), [&](const base::Message& one) { return tells(one, part); });
}

const views::SumsBlock& block_of(Hangar& h, SumsOf of, const char* title) {
    for (const views::SumsBlock& block : sums_of(h, of).blocks)
        if (said(block.title) == title) return block;
    CAPTURE(title);
    FAIL("no such block");
    throw std::logic_error{title};
}

void add_core(Hangar& h) {
    h.open(FormKind::core, h.aircraft);
    h.type("core_name", "Main gearbox");
    h.type("core_charge", "20000");
    h.type("best_credit", "16000");
    h.type("part_credit", "9000");
    h.type("part_permille", "30");
    h.type("nothing_permille", "20");
    h.type("core_by", "2026-12-10");
    h.more();
    h.choose("tax", "none");
    h.send();
}

void step(Hangar& h, const char* stage, const char* on) {
    const std::string key = h.last<facts::Core>().second.core;
    h.app.apply(intent::OpenTask{FormKind::core_step, h.aircraft, key});
    h.choose("core_stage", stage);
    h.type("date", on);
}

void add_kit(Hangar& h) {
    h.open(FormKind::cost_line, h.aircraft);
    h.type("line_name", "Overhaul kit");
    h.choose("cost_group", "Overhaul kit");
    h.type("price", "100000");
    h.choose("tax", "none");
    h.send();
}

}  // namespace

TEST_CASE("a core is recorded, told how long it has, and followed to its credit", "[app][cores]") {
    Hangar h;
    CHECK(tells(sums_of(h, SumsOf::cores).missing, "No core is recorded"));
    add_core(h);
    // By hand: 0.5 x 16,000 + 0.3 x 9,000 = 10,700.
    CHECK(tells(sums_of(h, SumsOf::cores).top.back().text, "10,700.00"));
    const views::SumsRow& row = block_of(h, SumsOf::cores, "To send or destroy now").rows.front();
    CHECK(said(row.name) == "Main gearbox");
    CHECK(any_tells(row.lines, "15 days left: to be back by 10 Dec 2026"));
    // Near: the aircraft asks for it, and says what.
    h.app.apply(intent::OpenAircraft{h.aircraft});
    const auto* view = std::get_if<views::AircraftView>(&h.app.screen().page);
    REQUIRE(view != nullptr);
    CHECK(view->state == views::State::act);
    CHECK(any_tells(view->cautions, "A core has to be back by 10 Dec 2026"));
    step(h, "came off", "2026-11-20");
    h.send();
    CHECK(block_of(h, SumsOf::cores, "To send or destroy now").rows.size() == 1);
    step(h, "sent", "2026-11-24");
    h.send();
    CHECK(any_tells(block_of(h, SumsOf::cores, "On their way").rows.front().lines,
                    "Credit expected by 23 Feb 2027"));
    h.app.apply(intent::OpenAircraft{h.aircraft});
    view = std::get_if<views::AircraftView>(&h.app.screen().page);
    CHECK(view->state != views::State::act);
    step(h, "settled", "2026-11-25");
    h.type("core_credit", "9000");
    h.send();
    CHECK(block_of(h, SumsOf::cores, "Over").rows.size() == 1);
    CHECK(tells(sums_of(h, SumsOf::cores).top.back().text, "0.00"));
}

TEST_CASE("what cannot be of a core is refused beside its field", "[app][cores][bad]") {
    Hangar h;
    h.open(FormKind::core_step, h.aircraft);  // before there is one
    h.send();
    CHECK(h.problem("core") == Trouble::core_unknown);
    add_core(h);
    step(h, "came off", "2026-11-20");
    h.send();
    step(h, "sent", "2026-11-19");
    h.send();
    CHECK(h.problem("date") == Trouble::core_sent_early);
    h.type("date", "2026-11-27");
    h.send();
    CHECK(h.problem("date") == Trouble::form_day_ahead);
    h.type("date", "2026-11-21");
    h.choose("core_stage", "settled");
    h.type("core_credit", "20000.01");
    h.send();
    CHECK(h.problem("core_credit") == Trouble::core_credit_over);
    h.type("core_credit", "20000");
    h.send();
    step(h, "settled", "2026-11-22");
    h.type("core_credit", "1");
    h.send();
    CHECK(h.problem("core_stage") == Trouble::core_settled_twice);
    h.open(FormKind::core, h.aircraft);
    h.send();
    CHECK(h.problem("core_name") == Trouble::form_needed);
    h.type("core_name", "Clutch");
    h.type("core_charge", "5");
    h.type("best_credit", "6");
    h.send();
    CHECK(h.problem("best_credit") == Trouble::core_credit_high);
    h.type("best_credit", "5 XYZ");
    h.send();
    CHECK(h.problem("best_credit") == Trouble::money_currency);
}

TEST_CASE("money goes by the terms, and what was paid is no longer to pay", "[app][cash]") {
    Hangar h;
    CHECK(tells(sums_of(h, SumsOf::cash).missing, "No money moves yet"));
    add_kit(h);
    h.open(FormKind::pay_term, h.aircraft);
    h.type("term_name", "deposit");
    h.type("share_permille", "30");
    h.choose("cost_group", "Overhaul kit");
    h.send();
    const facts::PayTerm term = h.last<facts::PayTerm>().second;
    CHECK(term.permille == 300);
    CHECK(term.group == facts::CostGroup::kit);
    const views::SumsBlock& ahead = block_of(h, SumsOf::cash, "What is to come");
    REQUIRE(ahead.pairs.size() == 2);
    CHECK(tells(ahead.pairs[0].name, "Overhaul kit: deposit"));
    CHECK(tells(ahead.pairs[0].figure, "30,000.00"));
    CHECK(tells(ahead.pairs[1].figure, "70,000.00"));
    CHECK(tells(sums_of(h, SumsOf::cash).top.back().text, "100,000.00"));
    h.open(FormKind::payment, h.aircraft);
    h.choose("line_key", "Overhaul kit");
    h.type("amount", "30000");
    h.type("payee", "Shop");
    h.send();
    CHECK(h.last<facts::Payment>().second.line == h.last<facts::CostLine>().second.line);
    CHECK(block_of(h, SumsOf::cash, "What is to come").pairs.size() == 1);
    CHECK(block_of(h, SumsOf::cash, "What has moved").pairs.size() == 1);
    CHECK(tells(sums_of(h, SumsOf::cash).top.back().text, "70,000.00"));
    // The share is opened again as it was said, and left out.
    h.app.apply(intent::OpenTask{FormKind::pay_term, h.aircraft, term.term});
    CHECK(h.field("term_name").text == "deposit");
    h.type("share_permille", "40");
    h.send();
    CHECK(h.last<facts::PayTerm>().second.term == term.term);
    h.open(FormKind::payment, h.aircraft);
    h.send();
    CHECK(h.problem("amount").has_value());
}

TEST_CASE("the reserve: what should be there, what is, and whose share it is", "[app][reserve]") {
    Hangar h;
    CHECK(tells(sums_of(h, SumsOf::reserve).missing, "Nothing is recorded of the reserve"));
    h.open(FormKind::reserve_terms, h.aircraft);
    h.type("goal", "120000");
    h.type("per_month", "100");
    h.send();
    h.open(FormKind::balance, h.aircraft);
    h.type("account", "Overhaul account");
    h.type("amount", "10000");
    h.type("held_by", "Bank");
    h.send();
    const views::SumsView& view = sums_of(h, SumsOf::reserve);
    REQUIRE(view.top.size() == 3);
    CHECK(tells(view.top[1].text, "10,000.00"));
    CHECK(tells(view.top[2].text, "Short by"));
    CHECK(any_tells(view.told, "It does not catch up"));
    CHECK(block_of(h, SumsOf::reserve, "Ways to close it, one of them").pairs.size() == 4);
    for (const auto& [who, share] : {std::pair{"Ann", "60"}, std::pair{"Ben", "30"}}) {
        h.open(FormKind::holder, h.aircraft);
        h.type("holder", who);
        h.type("share_permille", share);
        h.send();
    }
    CHECK(sums_of(h, SumsOf::reserve).faults.front().code == Trouble::shares_not_whole);
    h.app.apply(intent::OpenTask{FormKind::holder, h.aircraft, "Ben"});
    h.type("share_permille", "40");
    h.send();
    CHECK(sums_of(h, SumsOf::reserve).faults.empty());
    CHECK(block_of(h, SumsOf::reserve, "Whose it is").rows.size() == 2);
    h.app.apply(intent::OpenTask{FormKind::balance, h.aircraft, "Overhaul account"});
    CHECK(h.field("held_by").text == "Bank");
    h.type("amount", "12000");
    h.send();
    CHECK(tells(sums_of(h, SumsOf::reserve).top[1].text, "12,000.00"));
    CHECK(block_of(h, SumsOf::reserve, "Accounts").rows.front().lines.size() == 3);
    h.open(FormKind::reserve_terms, h.aircraft);
    h.type("interest_permille", "-100");
    h.send();
    CHECK(h.problem("interest_permille").has_value());
}
