// What the pages of cash and of a sale say that they do not count.

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"

#include <algorithm>

#include "engine/views/cash_view.hpp"
#include "engine/views/sale_view.hpp"

using namespace twoclocks;
using support::add_item;
using support::hand_state;
using support::hand_today;

TEST_CASE("bills of an overhaul that is over stand in no month, and the page says so",
          "[views][cash]") {
    timeline::AircraftState state = hand_state();
    add_item(state, facts::ItemRole::overhaul, base::hours(2'000), {});
    const auto is_said = [&] {
        const views::Assessed aircraft = views::assess(state, hand_today);
        const auto view =
            views::make_cash_view(aircraft, views::live(aircraft, aircraft.state.campaign, 50));
        return std::any_of(view.notes.begin(), view.notes.end(), [](const base::Message& note) {
            return note.word == base::Word::cash_past_note;
        });
    };
    CHECK_FALSE(is_said());
    state.money.past.push_back({support::cost_line("kit"), hand_today, {}});
    CHECK(is_said());
}

TEST_CASE("a past bill that was paid in part stands by itself, with what is open of it",
          "[views][cash]") {
    timeline::AircraftState state = hand_state();
    add_item(state, facts::ItemRole::overhaul, base::hours(2'000), {});
    facts::CostLine kit = support::cost_line("kit");
    kit.tax = facts::TaxCase::none;
    kit.price = base::Money{10'000'00, {}};
    state.money.past.push_back({kit, hand_today, {}});
    facts::Payment part;
    part.line = "kit";
    part.amount = base::Money{4'000'50, {}};
    state.money.past_payments.push_back({part, hand_today, {}});
    const views::Assessed aircraft = views::assess(state, hand_today);
    const auto view =
        views::make_cash_view(aircraft, views::live(aircraft, aircraft.state.campaign, 50));
    const auto block =
        std::find_if(view.blocks.begin(), view.blocks.end(), [](const views::SumsBlock& one) {
            return one.title.word == base::Word::cash_past;
        });
    REQUIRE(block != view.blocks.end());
    REQUIRE(block->pairs.size() == 1);
    // By hand: 10,000.00 - 4,000.50 = 5,999.50.
    CHECK(base::say(block->pairs.front().figure, {}) == "6,000\u00a0EUR");
    CHECK(base::say(block->pairs.front().below, {}) ==
          "4,000.50\u00a0EUR of 10,000.00\u00a0EUR is on record as paid");
    // And in no month.
    CHECK(view.missing.word == base::Word::cash_nothing);
}

TEST_CASE("a sale says of what counts landings as well that it may come sooner", "[views][sale]") {
    timeline::AircraftState state = hand_state();
    add_item(state, facts::ItemRole::overhaul, base::hours(450), 600);
    add_item(state, facts::ItemRole::inspection, base::hours(50), {});
    const auto is_said = [&] {
        const views::Assessed aircraft = views::assess(state, hand_today);
        const auto view = views::make_sale_view(aircraft, base::hours(100));
        REQUIRE_FALSE(view.blocks.empty());
        REQUIRE_FALSE(view.blocks.front().rows.empty());
        const auto& lines = view.blocks.front().rows.front().lines;
        return std::any_of(lines.begin(), lines.end(), [](const base::Message& line) {
            return line.word == base::Word::sale_counts_too;
        });
    };
    CHECK_FALSE(is_said());
    state.landings = base::Count{100};
    state.items.back().limit->landings = base::Count{900};
    CHECK(is_said());
}
