// What calendar work and the full overhaul come to, each by itself and up to one day for both.
#include "engine/views/money_paths.hpp"

#include "catch_amalgamated.hpp"
#include "tests/views/planned.hpp"

#include "engine/views/money_view.hpp"

using namespace twoclocks;
using support::add_item;
using support::euro;
using support::hand_today;
using support::said;
using timeline::AircraftState;

namespace {

facts::CostLine priced_for(facts::CostFor work, const char* key, std::int64_t whole) {
    facts::CostLine out = support::cost_line(key);
    out.name = key;
    out.work = work;
    out.tax = facts::TaxCase::none;
    out.price = euro(whole);
    return out;
}

/// 400 h and 100 days left of 500 h and 24 months, 30.4375 h a month: calendar work on 9 October
/// 2024 lasts to 5 August 2025, the overhaul to 20 February 2026. Both by hours.
AircraftState two_works() {
    AircraftState state = support::hand_state();
    add_item(state, facts::ItemRole::overhaul, base::hours(400), 100);
    const auto add_rule = [&](const char* name, std::vector<facts::Clock> clocks) {
        timeline::WorkRuleState rule;
        rule.name = name;
        rule.renews = {{state.items.front().id, std::move(clocks)}};
        state.work_rules.push_back(rule);
    };
    add_rule("Calendar inspection", {facts::Clock::calendar});
    add_rule("Overhaul", {});
    state.money.lines = {
        {priced_for(facts::CostFor::calendar_work, "Inspecting", 10'000), hand_today, {}},
        {priced_for(facts::CostFor::overhaul, "Overhauling", 49'900), hand_today, {}}};
    return state;
}

std::vector<views::MoneyPath> paths_of(const AircraftState& state) {
    return views::make_money_view(views::assess(state, hand_today)).paths;
}

}  // namespace

TEST_CASE("calendar work and the overhaul up to one day, worked out by hand", "[views][money]") {
    const auto paths = paths_of(two_works());
    REQUIRE(paths.size() == 2);
    CHECK(said(paths[0].net).find("10,000") != std::string::npos);
    CHECK(said(paths[1].net).find("49,900") != std::string::npos);
    // From 9 October 2024 to 20 February 2026 are 499 days, the last 199 of them after 5 August
    // 2025: 49,900 * 199 / 499 is 19,900. 499.9 h are flown: 29,900 / 499 is 59.919...
    CHECK(
        support::any_line(paths[0].lines,
                          "Then the overhaul on 5 Aug 2025, 49,900\u00a0EUR by then: 39.9 % of it "
                          "is used up by 20 Feb 2026"));
    CHECK(support::any_line(
        paths[0].lines, "Up to 20 Feb 2026: 29,900\u00a0EUR, 59.92\u00a0EUR for each of 499 h"));
    CHECK(support::any_line(
        paths[1].lines, "Up to 20 Feb 2026: 49,900\u00a0EUR, 100.00\u00a0EUR for each of 499 h"));
}

TEST_CASE("the later overhaul costs what it does on its own day", "[views][money]") {
    AircraftState state = two_works();
    // 400 days of 10 % a year of 365: 49,900 * 1.1 ^ (400 / 365) is 55,393.96.
    state.money.terms.other_rise_permille = 100;
    const auto paths = paths_of(state);
    REQUIRE(paths.size() == 2);
    CHECK(
        support::any_line(paths[0].lines,
                          "Then the overhaul on 5 Aug 2025, 55,394\u00a0EUR by then: 39.9 % of it "
                          "is used up by 20 Feb 2026"));
}

TEST_CASE("the price of a route is for the work of the plan", "[views][money]") {
    AircraftState state = two_works();
    facts::Route route = support::route("shop");
    route.name = "Shop";
    route.price = euro(40'000);
    route.tax = facts::TaxCase::none;

    state.campaign.routes.push_back({route, hand_today, {}});
    state.campaign.chosen_route = 0;
    const auto paths = paths_of(state);
    REQUIRE(paths.size() == 3);  // the route itself, then both works by it
    CHECK(said(paths[1].net).find("10,000") != std::string::npos);
    CHECK(support::any_line(paths[1].lines,
                            "Without the price of Shop: it is for the work of the plan"));
    CHECK(said(paths[2].net).find("89,900") != std::string::npos);
}

TEST_CASE("work that no line is for costs not nothing but is not known", "[views][money][bad]") {
    AircraftState state = two_works();
    state.money.lines.erase(state.money.lines.begin());
    const auto paths = paths_of(state);
    REQUIRE(paths.size() == 2);
    CHECK(said(paths[0].net) == "not known");
    CHECK(paths[0].hour.word == base::Word::blank);
    for (const base::Message& line : paths[0].lines)
        CHECK(line.word != base::Word::money_up_to);
}

TEST_CASE("a later overhaul that is not whole says so where it is added", "[views][money][bad]") {
    AircraftState state = two_works();
    facts::CostLine open = priced_for(facts::CostFor::overhaul, "Findings", 0);
    open.price.reset();
    state.money.lines.push_back({open, hand_today, {}});
    const auto paths = paths_of(state);
    REQUIRE(paths.size() == 2);
    CHECK(support::any_line(paths[0].lines, "1 line is not in the sum."));
}
