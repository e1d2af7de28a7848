// The page of cores in words, and what a core asks of the aircraft.
#include "engine/views/cores_view.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/said.hpp"

#include <algorithm>
#include <string>

#include "engine/views/make_views.hpp"

using namespace twoclocks;
using support::add_item;
using support::euro;
using support::hand_state;
using support::hand_today;
using support::said;
using timeline::AircraftState;

namespace {

AircraftState with_core(std::int32_t due_in) {
    AircraftState state = hand_state();
    add_item(state, facts::ItemRole::overhaul, base::hours(2'000), {});
    facts::Core core = support::core("gearbox");
    core.name = "Main gearbox";
    core.serial = "0117";
    core.part_numbers = "MG-2, MG-2A";
    core.best_credit = euro(16'000);
    core.nothing_permille = 250;
    core.tax = facts::TaxCase::none;
    core.return_by = base::add_days(hand_today, due_in);
    state.money.cores.push_back({core, hand_today, {}});
    return state;
}

timeline::PartState gearbox(const char* number) {
    timeline::PartState out;
    out.part_number = number;
    out.serial = "0117";
    return out;
}

views::SumsView page(const views::Assessed& aircraft) {
    return views::make_cores_view(aircraft, views::live(aircraft, aircraft.state.campaign, 100));
}

bool has_note(const views::SumsView& view, base::Trouble code) {
    const auto& notes = view.blocks.front().rows.front().notes;
    return std::any_of(
        notes.begin(), notes.end(), [&](const base::Problem& note) { return note.code == code; });
}

}  // namespace

TEST_CASE("the part that is aboard under that serial must be one that is taken",
          "[views][cores][bad]") {
    const AircraftState state = with_core(300);
    CHECK(!has_note(page(views::assess(state, hand_today, {gearbox("MG-2A")})),
                    base::Trouble::core_number));
    CHECK(has_note(page(views::assess(state, hand_today, {gearbox("MG-2B")})),
                   base::Trouble::core_number));
    CHECK(has_note(page(views::assess(state, hand_today, {gearbox("MG-")})),
                   base::Trouble::core_number));
}

TEST_CASE("what is counted on is explained outcome by outcome", "[views][cores]") {
    const views::SumsView view = page(views::assess(with_core(300), hand_today));
    const views::Why& why = view.top.back().why;
    CHECK(said(why.figure) == "Counted on: 12,000.00\u00a0EUR");
    REQUIRE(why.lines.size() == 5);
    CHECK(said(why.lines[1].text) == "full credit: 16,000.00\u00a0EUR, chance 75 %");
    CHECK(said(why.lines[2].text) == "no credit: 0.00\u00a0EUR, chance 25 %");
    CHECK(said(why.lines.back().text) == "Together: 12,000.00\u00a0EUR");
}

TEST_CASE("a core near its day puts the aircraft in act, and the card says so",
          "[views][cores][states]") {
    const auto card = [](const AircraftState& state) {
        const views::Assessed aircraft = views::assess(state, hand_today);
        return views::make_fleet_view({aircraft}).cards.front();
    };
    CHECK(card(with_core(31)).state == views::State::nothing_due);
    CHECK(card(with_core(30)).state == views::State::act);
    CHECK(said(card(with_core(30)).sentence).starts_with("A core has to be back by "));
    CHECK(said(card(with_core(-1)).sentence).ends_with("and is still here."));
    AircraftState sent = with_core(10);
    facts::CoreStep step;
    step.core = "gearbox";
    step.stage = facts::CoreStage::sent;
    sent.money.cores.front().steps.push_back({step, hand_today, {}});
    CHECK(card(sent).state == views::State::nothing_due);
    // A limit that is flown past goes before it.
    AircraftState over = with_core(10);
    add_item(over, facts::ItemRole::inspection, base::hours(1), {});
    CHECK(card(over).state != views::State::act);
}
