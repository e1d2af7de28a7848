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
    far.left_out = true;
    p.say("2026-05-04", far);
    const auto left = p.state("2026-06-01");
    REQUIRE(left.routes.size() == 1);
    CHECK(plan::chosen_route(left)->route == "near");
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
