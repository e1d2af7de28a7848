// Routes, what days are worth and the plan that is kept: their pages, and what their forms record.
#include "catch_amalgamated.hpp"
#include "tests/app/limit_bench.hpp"
#include "tests/support/phone.hpp"

#include <string>

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::Hangar;
using canvas::support::said;

namespace {

const views::RoutesView& routes_of(Hangar& h) {
    const auto* page = std::get_if<RoutesPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    return page->view;
}

const views::PlanView& open_plan_of(Hangar& h) {
    h.app.apply(intent::OpenPlan{h.aircraft});
    const auto* page = std::get_if<PlanPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    return page->view;
}

void add_route(Hangar& h, const char* name, const char* price) {
    h.open(FormKind::route, h.aircraft);
    h.type("name", name);
    h.type("price", price);
    h.send();
}

}  // namespace

TEST_CASE("a route is added, opened again as it was said, and changed", "[app][route]") {
    Hangar h;
    h.app.apply(intent::OpenRoutes{h.aircraft});
    CHECK(said(routes_of(h).missing).starts_with("No route is recorded."));
    h.open(FormKind::route, h.aircraft);
    h.type("name", "Works of the example");
    h.choose("accepted", "yes");
    h.type("price", "280000");
    h.type("low_days", "30");
    h.type("likely_days", "40");
    h.type("high_days", "60");
    h.more();
    h.type("ferry", "3.5");
    h.choose("tax", "paid and borne");
    h.type("tax_share", "8.1");
    h.type("until", "2027-01-31");
    h.type("months", "12");
    h.type("hours", "1000");
    h.type("said_by", "Ann");
    h.send();
    const auto [body, route] = h.last<facts::Route>();
    CHECK(route.name == "Works of the example");
    CHECK(route.accepted == facts::Acceptance::accepted);
    CHECK(base::print_money(*route.price) == "280000.00 EUR");
    CHECK(route.ferry == base::tenths(35));
    CHECK(route.tax_permille == 81);
    CHECK(route.warranty_hours == base::hours(1'000));
    h.app.apply(intent::OpenRoutes{h.aircraft});
    REQUIRE(routes_of(h).rows.size() == 1);
    // 8.1 % of 280,000 is 22,680.
    CHECK(said(routes_of(h).rows.front().cost) ==
          "302,680\xC2\xA0"
          "EUR");
    h.app.apply(intent::OpenTask{FormKind::route, h.aircraft, route.route});
    CHECK(h.field("name").text == "Works of the example");
    CHECK(h.field("price").text == "280000.00");
    CHECK(h.field("likely_days").text == "40");
    h.choose("chosen", "the plan goes by it");
    h.send();
    const auto [again, changed] = h.last<facts::Route>();
    CHECK(changed.route == route.route);
    CHECK(changed.chosen);
    CHECK(changed.tax_permille == 81);  // what was not touched stays
    CHECK(changed.price_until == route.price_until);
    CHECK(said(open_plan_of(h).route.front()) == "Planned by the route Works of the example.");
}

TEST_CASE("another route taken from the list shows what is recorded of it", "[app][route]") {
    Hangar h;
    add_route(h, "Near", "100");
    add_route(h, "Far", "200");
    h.open(FormKind::route, h.aircraft);
    CHECK(h.field("name").text.empty());
    h.choose("route", "Far");
    CHECK(h.field("price").text == "200.00");
    h.choose("route", "Near");
    CHECK(h.field("price").text == "100.00");
    h.choose("route", "a new one");
    CHECK(h.field("price").text.empty());
}

TEST_CASE("a route without a name, with days in disorder or below nothing is complained of",
          "[app][route][bad]") {
    Hangar h;
    h.open(FormKind::route, h.aircraft);
    h.type("likely_days", "40");
    h.send();
    CHECK(h.problem("name") == base::Trouble::route_nameless);
    CHECK(h.problem("low_days") == base::Trouble::plan_task_days_missing);
    h.type("name", "Near");
    h.type("low_days", "50");
    h.type("high_days", "60");
    h.type("price", "-1");
    h.send();
    CHECK(h.problem("likely_days") == base::Trouble::task_out_of_order);
    h.type("low_days", "30");
    h.send();
    CHECK(h.problem("price") == base::Trouble::price_negative);
}

TEST_CASE("what days are worth brings up the cheapest day", "[app][plan][induct]") {
    Hangar h;
    CHECK(said(open_plan_of(h).induction.missing).starts_with("Say what a day of standing"));
    h.open(FormKind::plan_costs, h.aircraft);
    h.send();
    CHECK(h.problem("lost_day") == base::Trouble::form_needed);
    h.type("lost_day", "410");
    h.type("saved_day", "120.50");
    h.type("overhaul_sum", "278000");
    h.type("interest_permille", "4.5");
    h.send();
    const auto [body, costs] = h.last<facts::PlanCosts>();
    CHECK(base::print_money(*costs.saved_day) == "120.50 EUR");
    CHECK(costs.interest_permille == 45);
    CHECK(open_plan_of(h).induction.chart.has_value());
    h.open(FormKind::plan_costs, h.aircraft);
    CHECK(h.field("lost_day").text == "410.00");
    CHECK(h.field("interest_permille").text == "4.5");
}

TEST_CASE("the plan on the page is what is kept, and slip shows against it", "[app][plan][slip]") {
    Hangar h;
    const facts::PlanKept now = open_plan_of(h).as_it_stands;
    REQUIRE(now.back_on.has_value());
    h.open(FormKind::plan_kept, h.aircraft);
    CHECK(h.field("back_on").text == base::print_date(*now.back_on));
    h.send();
    const auto [body, kept] = h.last<facts::PlanKept>();
    CHECK(kept.back_on == now.back_on);
    const views::PlanView& after = open_plan_of(h);
    REQUIRE(!after.slip.empty());
    CHECK(said(after.slip.back().name) == "Back in service");
    CHECK(said(after.slip.back().moved) == "as kept");
}

TEST_CASE("the terms of a plan are corrected in whole numbers", "[app][plan]") {
    Hangar h;
    h.open(FormKind::plan_terms, h.aircraft);
    h.type("confidence", "85");
    h.type("at_once", "1");
    h.send();
    CHECK(h.last<facts::PlanTerms>().second.out_at_once == 1);
    for (const facts::Fact& fact : h.records())
        if (std::holds_alternative<facts::PlanTerms>(fact.body.fields))
            h.open(FormKind::correct, fact.id);
    CHECK(h.field("confidence_percent").text == "85");
    h.type("confidence_percent", "80");
    h.type("margin_days", "3");
    h.type("why", "Misread");
    h.send();
    const auto [body, correction] = h.last<facts::Correction>();
    REQUIRE(correction.instead);
    const auto& terms = std::get<facts::PlanTerms>(correction.instead->fields);
    CHECK(terms.confidence_percent == 80);
    CHECK(terms.margin_days == 3);  // what was not given may be given now
    h.app.apply(intent::OpenStagger{});
    const auto* page = std::get_if<StaggerPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    CHECK(said(page->view.missing) == "It takes two aircraft whose overhaul has a day.");
}
