// What the pages of cash and of a sale say that they do not count.

#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"

#include <algorithm>

#include "engine/budget/from_records.hpp"
#include "engine/views/cash_view.hpp"
#include "engine/views/money_estimate.hpp"
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

TEST_CASE("what was paid before the release left the account all the same", "[views][cash]") {
    timeline::AircraftState state = hand_state();
    add_item(state, facts::ItemRole::overhaul, base::hours(2'000), {});
    const base::Date counted = base::add_days(hand_today, -30);
    state.money.balances.push_back(
        {facts::Balance{"Reserve", base::Money{100'000'00, {}}, {}}, counted, {}});
    facts::Payment part;
    part.amount = base::Money{40'000'00, {}};
    state.money.past_payments.push_back({part, base::add_days(hand_today, -20), {}});
    state.money.past_payments.push_back({part, base::add_days(hand_today, -40), {}});
    const views::Assessed aircraft = views::assess(state, hand_today);
    base::Problems faults;
    const auto hand = views::in_hand(aircraft, budget::setting_of(state, hand_today, {}), faults);
    // By hand: 100,000.00 counted, 40,000.00 paid since; the other was paid before.
    CHECK(hand == 60'000'00);
    // In a currency without a rate it is not known what is left, and it says why.
    state.money.past_payments.front().said.amount = base::parse_money("5 USD", {}).value();
    const views::Assessed unknown = views::assess(state, hand_today);
    CHECK_FALSE(views::in_hand(unknown, budget::setting_of(state, hand_today, {}), faults));
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().code == base::Trouble::rate_missing);
}

TEST_CASE("a kit to be ordered years from now is paid for as it comes, not weeks after",
          "[views][cash]") {
    timeline::AircraftState state = hand_state();
    add_item(state, facts::ItemRole::overhaul, {}, 1'461);
    const views::Assessed aircraft = views::assess(state, hand_today);
    const views::Living living = views::live(aircraft, aircraft.state.campaign, 500);
    const budget::PayDays days = views::pay_days(living);
    REQUIRE(days.ordered);
    REQUIRE(days.shipped);
    CHECK(*days.ordered > base::add_days(hand_today, 730));
    // By hand: 147 to 168 days on its way as planned, and some days to place the order; the weeks
    // of quotes and of finding the money are over by then.
    const std::int32_t wait = base::days_between(*days.ordered, *days.shipped);
    CHECK(wait >= 147);
    CHECK(wait <= 168 + 7);
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
