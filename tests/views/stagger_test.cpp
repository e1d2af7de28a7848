// Who of the fleet goes in when, in words.
#include "catch_amalgamated.hpp"
#include "tests/support/by_hand.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/said.hpp"

#include <string>
#include <utility>
#include <vector>

#include "engine/views/stagger_view.hpp"

using namespace twoclocks;
using support::add_item;
using support::hand_state;
using support::hand_today;
using support::said;
using timeline::AircraftState;
using views::Assessed;

namespace {

/// Its calendar ends in so many days, its kit is here, its place is given.
Assessed coming(const char* registration, std::uint64_t id, std::int32_t days, std::int32_t bound) {
    AircraftState state = hand_state();
    state.id = support::id_of(id);
    state.registration = registration;
    add_item(state, facts::ItemRole::overhaul, {}, days);
    for (const char* const task :
         {"quotes", "records", "money", "order", "kit", "kit_check", "slot", "queue"})
        state.campaign.steps.push_back({task, {}, {}, base::add_days(hand_today, -1), {}});
    if (bound > 0) state.campaign.terms.out_at_once = bound;
    return views::assess(state, hand_today);
}

}  // namespace

TEST_CASE("with no bound each flies to its last day", "[views][stagger]") {
    const Assessed one = coming("ISLE-1", 1, 100, 0);
    const Assessed two = coming("ISLE-2", 2, 110, 0);
    const auto view = views::make_stagger_view({&one, &two});
    REQUIRE(view.rows.size() == 2);
    for (const auto& row : view.rows)
        CHECK(said(row.reason) == "Flies to the last day that can be counted on.");
    CHECK(said(view.bounds.front()).starts_with("How many may be out at once is not recorded"));
}

TEST_CASE("one at a time, the second is moved and says for whom", "[views][stagger]") {
    const Assessed one = coming("ISLE-1", 1, 200, 1);
    const Assessed two = coming("ISLE-2", 2, 210, 0);
    const auto view = views::make_stagger_view({&one, &two});
    REQUIRE(view.rows.size() == 2);
    CHECK(said(view.bounds.front()) == "At most 1 out at once.");
    // Days given up weigh less than days standing: one goes in long before its limit.
    CHECK(said(view.rows[0].reason).find("before its limit, to make room for") !=
          std::string::npos);
    CHECK(said(view.rows[1].reason) == "Flies to the last day that can be counted on.");
    CHECK(!view.rows[0].stands);
}

TEST_CASE("what cannot be met is said", "[views][stagger][bad]") {
    const Assessed one = coming("ISLE-1", 1, 5, 1);
    const Assessed two = coming("ISLE-2", 2, 6, 1);
    const auto view = views::make_stagger_view({&one, &two});
    REQUIRE(view.rows.size() == 2);
    CHECK(view.rows[1].stands);
    bool told = false;
    for (const auto& note : view.notes)
        told = told || said(note).starts_with("What cannot be met: ISLE-");
    CHECK(told);
}

TEST_CASE("fewer than two with a day: nothing to stagger", "[views][stagger]") {
    const Assessed one = coming("ISLE-1", 1, 100, 1);
    CHECK(said(views::make_stagger_view({&one}).missing) ==
          "It takes two aircraft whose overhaul has a day.");
    CHECK(said(views::make_stagger_view({}).missing) ==
          "It takes two aircraft whose overhaul has a day.");
}

TEST_CASE("what is in already fills its place", "[views][stagger]") {
    const Assessed one = coming("ISLE-1", 1, 20, 1);
    AircraftState state = hand_state();
    state.id = support::id_of(2);
    state.registration = "ISLE-2";
    add_item(state, facts::ItemRole::overhaul, {}, 15);
    for (const char* const task :
         {"quotes", "records", "money", "order", "kit", "kit_check", "slot", "queue"})
        state.campaign.steps.push_back({task, {}, {}, base::add_days(hand_today, -9), {}});
    state.campaign.steps.push_back({"hand_over", hand_today, {}, {}, {}});
    const Assessed two = views::assess(state, hand_today);
    const auto view = views::make_stagger_view({&one, &two});
    REQUIRE(view.rows.size() == 2);
    CHECK(said(view.rows[0].name) == "ISLE-2");
    CHECK(said(view.rows[0].days).starts_with("In already, back about"));
    CHECK(view.rows[1].stands);
    CHECK(said(view.rows[1].reason).ends_with("to make room for ISLE-2."));
}

TEST_CASE("who has no day is named", "[views][stagger]") {
    const Assessed one = coming("ISLE-1", 1, 100, 1);
    const Assessed two = coming("ISLE-2", 2, 300, 1);
    AircraftState unread = hand_state();
    unread.id = support::id_of(3);
    unread.registration = "ISLE-3";
    unread.usage.clear();
    unread.certain.clear();
    add_item(unread, facts::ItemRole::overhaul, base::hours(100), {});
    const Assessed three = views::assess(unread, hand_today);
    bool told = false;
    for (const auto& note : views::make_stagger_view({&one, &two, &three}).notes)
        told = told || said(note) == "ISLE-3 is left out: no day can be given for it.";
    CHECK(told);
}

TEST_CASE("what each shop takes is said of that shop", "[views][stagger]") {
    std::vector<Assessed> fleet;
    std::uint64_t id = 1;
    for (const auto& [name, takes] : {std::pair{"North", 3}, std::pair{"South", 1}}) {
        AircraftState state = coming("ISLE", id++, 100, 0).state;
        facts::Route route = support::route(name);
        route.name = name;
        route.carriage = facts::Carriage::stays;
        route.shop_takes = takes;
        state.campaign.routes = {{route, hand_today, {}}};
        state.campaign.chosen_route = 0;
        fleet.push_back(views::assess(state, hand_today));
    }
    const auto view = views::make_stagger_view({&fleet[0], &fleet[1]});
    REQUIRE(view.bounds.size() == 3);
    CHECK(said(view.bounds[1]) == "North takes 3 at once.");
    CHECK(said(view.bounds[2]) == "South takes 1 at once.");
}
