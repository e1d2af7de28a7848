// What is tried on the page of the plan and recorded only when it is kept, and one bound for the
// whole fleet.
#include "catch_amalgamated.hpp"
#include "tests/app/limit_bench.hpp"

#include <string>

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::Hangar;
using canvas::support::said;

namespace {

const PlanPage& plan_page(Hangar& h) {
    const auto* page = std::get_if<PlanPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    return *page;
}

std::string best(Hangar& h) {
    return said(plan_page(h).view.induction.best.text);
}

}  // namespace

TEST_CASE("what days are worth is tried on the plan, its costs move, and nothing is recorded",
          "[app][plan][induct]") {
    Hangar h;
    h.app.apply(intent::OpenPlan{h.aircraft});
    CHECK(plan_page(h).worth.empty());
    const std::size_t recorded = h.records().size();
    h.app.apply(intent::OpenPlan{h.aircraft});
    h.app.apply(intent::WeighDays{});
    REQUIRE(plan_page(h).worth.size() == 6);
    CHECK_FALSE(plan_page(h).is_tried);
    CHECK_FALSE(plan_page(h).worth.front().problem);  // nobody has typed yet
    h.app.field_text("lost_day", "410");
    CHECK(plan_page(h).is_tried);
    CHECK(said(plan_page(h).view.induction.missing).starts_with("Say also what the overhaul"));
    h.app.field_text("overhaul_sum", "278000");
    REQUIRE(plan_page(h).view.induction.chart);
    // The calendar stops it on a known day: four weeks past it stand 28 of these days.
    CHECK(said(plan_page(h).view.induction.lines.back()).starts_with("Four weeks later: 11,480"));
    h.app.field_text("lost_day", "1");
    CHECK(said(plan_page(h).view.induction.lines.back()).starts_with("Four weeks later: 28"));
    h.app.field_text("lost_day", "4,1,0");
    REQUIRE(plan_page(h).worth.front().problem);
    CHECK(plan_page(h).is_tried);
    h.app.apply(intent::StopTrying{});
    CHECK_FALSE(plan_page(h).is_tried);
    CHECK(said(plan_page(h).view.induction.missing).starts_with("Say what a day of standing"));
    h.app.apply(intent::WeighDays{});
    CHECK(plan_page(h).worth.empty());
    CHECK(h.records().size() == recorded);
}

TEST_CASE("what was tried on the plan is kept through its form", "[app][plan][induct]") {
    Hangar h;
    h.app.apply(intent::OpenPlan{h.aircraft});
    h.app.apply(intent::WeighDays{});
    h.app.field_text("lost_day", "410");
    h.app.field_text("overhaul_sum", "278000");
    const std::string tried = best(h);
    h.app.apply(intent::KeepTried{});
    CHECK(h.field("overhaul_sum").text == "278000");
    h.type("lost_day", "");
    h.send();
    CHECK(h.problem("lost_day") == base::Trouble::form_needed);
    h.type("lost_day", "410");
    h.send();
    CHECK(base::print_money(*h.last<facts::PlanCosts>().second.sum) == "278000.00 EUR");
    h.app.apply(intent::OpenPlan{h.aircraft});
    CHECK(best(h) == tried);
}

TEST_CASE("one bound for the fleet goes into the terms of every plan", "[app][stagger]") {
    Hangar h;
    canvas::support::add_aircraft(h.app, "G-TRAY");
    h.host.answer(h.app);
    h.app.apply(intent::OpenPlan{h.aircraft});
    h.open(FormKind::plan_terms, h.aircraft);
    h.type("margin", "7");
    h.send();
    h.app.apply(intent::OpenStagger{});
    const auto bound = [&] {
        h.app.apply(intent::OpenStagger{});
        const auto* page = std::get_if<StaggerPage>(&h.app.screen().page);
        REQUIRE(page != nullptr);
        REQUIRE(!page->view.bounds.empty());
        return said(page->view.bounds.front());
    };
    CHECK(bound() == "How many may be out at once is not recorded.");
    const std::size_t before = h.records().size();
    h.open(FormKind::fleet_bound, {});
    h.type("at_once", "1");
    h.send();
    CHECK(bound() == "At most 1 out at once.");
    CHECK(h.records().size() == before + 2);
    // Said anew on the same day, and the other terms stay.
    h.open(FormKind::fleet_bound, {});
    CHECK(h.field("at_once").text == "1");
    h.send();
    CHECK(h.problem("at_once") == base::Trouble::form_same_as_before);
    h.type("at_once", "2");
    h.send();
    CHECK(bound() == "At most 2 out at once.");
    h.open(FormKind::plan_terms, h.aircraft);
    CHECK(h.field("margin").text == "7");
    h.open(FormKind::fleet_bound, {});
    h.type("at_once", "");
    h.send();
    CHECK(bound() == "How many may be out at once is not recorded.");
}
