// Routes and the first plan as records have them.
#include "tests/plan/planned.hpp"

#include "engine/plan/by_route.hpp"

using namespace twoclocks;
using support::day;
using support::in;
using support::Planned;

TEST_CASE("of routes the last record of each, the one chosen last, none left out",
          "[plan][records][route]") {
    Planned p;
    facts::Route near = support::route("near");
    near.chosen = true;
    near.kit_days = 100;
    p.say("2026-05-01", near);
    facts::Route far = support::route("far");
    p.say("2026-05-02", far);
    CHECK(plan::chosen_route(p.state("2026-06-01"))->route == "near");
    far.chosen = true;
    far.kit_days = 20;
    p.say("2026-05-03", far);
    CHECK(plan::chosen_route(p.state("2026-06-01"))->route == "far");
    CHECK(plan::chosen_route(p.state("2026-05-02"))->route == "near");
    CHECK(in(p.tasks("2026-06-01"), "kit").days == plan::Estimate{20, 20, 20});
    // Said anew on the same day, the later of the two holds, also where it is less.
    far.kit_days = 10;
    p.say("2026-05-03", far);
    CHECK(in(p.tasks("2026-06-01"), "kit").days.likely == 10);
    // Left out, it is chosen no longer, and nobody is taken in its place.
    far.left_out = true;
    p.say("2026-05-04", far);
    const auto left = p.state("2026-06-01");
    REQUIRE(left.routes.size() == 1);
    CHECK(plan::chosen_route(left) == nullptr);
    // One day: near, far, near again. The last of the three holds; a "no" takes it back.
    far.left_out = false;
    for (const auto& route : {near, far, near})
        p.say("2026-05-05", route);
    CHECK(plan::chosen_route(p.state("2026-06-01"))->route == "near");
    near.chosen = false;
    p.say("2026-05-06", near);
    CHECK(plan::chosen_route(p.state("2026-06-01")) == nullptr);
}

TEST_CASE("the first plan that was kept stays the first", "[plan][records]") {
    Planned p;
    p.say("2026-05-01", facts::PlanKept{{}, {}, {}, day("2027-01-10")});
    p.say("2026-06-01", facts::PlanKept{{}, {}, {}, day("2027-03-10")});
    const auto state = p.state("2026-07-01");
    REQUIRE(state.kept.has_value());
    CHECK(state.kept->said.back_on == day("2027-01-10"));
    CHECK(state.kept->on == day("2026-05-01"));
}

TEST_CASE("people who disagree about a route: the dearer, the longer, not known",
          "[plan][records][route]") {
    Planned p;
    facts::Route said = support::route("r");
    said.accepted = facts::Acceptance::accepted;
    said.price = base::Money{100'00, {}};
    p.say("2026-05-01", said);
    const facts::Fact first = p.facts.back();
    support::Pen ben{"ben"};
    said.price = base::Money{120'00, {}};
    said.queue_days = 40;
    p.facts.push_back(p.pen.correct(first, said));
    said.price = base::Money{90'00, {}};
    said.queue_days = 60;
    said.accepted = facts::Acceptance::refused;
    p.facts.push_back(ben.correct(first, said));
    const auto state = p.state("2026-06-01");
    REQUIRE(state.routes.size() == 1);
    CHECK(state.routes.front().said.price->minor_units == 120'00);
    CHECK(state.routes.front().said.queue_days == 60);
    CHECK(state.routes.front().said.accepted == facts::Acceptance::unknown);
}

TEST_CASE("days recorded of what only a route has count with it, and harm nothing without",
          "[plan][records][route]") {
    Planned p;
    facts::Route route = support::route("r");
    route.chosen = true;
    route.low_days = route.likely_days = route.high_days = 60;
    route.back_days = 2;
    p.say("2026-05-01", route);
    facts::PlanTask home;
    home.task = "home";
    home.low_days = home.likely_days = home.high_days = 9;
    p.say("2026-05-02", home);
    facts::PlanTask wash;
    wash.task = "wash";
    wash.name = "Wash it";
    wash.low_days = wash.likely_days = wash.high_days = 1;
    wash.waits_for = "shop";
    p.say("2026-05-02", wash);
    CHECK(in(p.tasks("2026-06-01"), "home").days.likely == 9);
    CHECK(plan::make_network(p.tasks("2026-06-01")).ok());
    route.chosen = false;
    p.say("2026-05-03", route);
    CHECK(plan::make_network(p.tasks("2026-06-01")).ok());
    CHECK(in(p.tasks("2026-06-01"), "wash").after.empty());
}

TEST_CASE("steps at the shop begin the stay that stands for them", "[plan][records][route]") {
    Planned p;
    facts::Route route = support::route("r");
    route.chosen = true;
    route.low_days = route.likely_days = route.high_days = 60;
    p.say("2026-05-01", route);
    p.say("2026-05-12", facts::PlanStep{"induct", facts::TaskStep::finished, {}, {}});
    p.say("2026-05-10", facts::PlanStep{"induct", facts::TaskStep::begun, {}, {}});
    p.say("2026-05-14", facts::PlanStep{"strip", facts::TaskStep::begun, {}, {}});
    CHECK(in(p.tasks("2026-06-01"), "shop").progress.begun == -22);  // from 10 May on
}

TEST_CASE("with the overhaul done its campaign is over", "[plan][records]") {
    Planned p;
    facts::Fact added = p.pen.add(day("2026-01-02"),
                                  {p.aircraft},
                                  facts::ItemAdded{"Overhaul", facts::ItemRole::overhaul, {}});
    p.facts.push_back(added);
    p.say("2026-05-10", facts::PlanStep{"hand_over", facts::TaskStep::finished, {}, {}});
    p.say("2026-05-10", facts::PlanKept{{}, {}, {}, day("2026-08-01")});
    REQUIRE(p.state("2026-09-01").steps.size() == 1);
    p.facts.push_back(
        p.pen.write(day("2026-08-20"), {p.aircraft}, support::renews({added.id}, 10'000)));
    CHECK(p.state("2026-09-01").steps.empty());
    CHECK(!p.state("2026-09-01").kept);
    p.say("2026-09-02", facts::PlanStep{"quotes", facts::TaskStep::begun, {}, {}});
    CHECK(p.state("2026-09-03").steps.size() == 1);
}
