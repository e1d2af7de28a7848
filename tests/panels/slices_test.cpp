// A page that takes ten thousand ways is made over several frames, and comes to what it comes to at
// once.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/support/phone.hpp"

#include <string>

using namespace twoclocks;
using namespace twoclocks::canvas;

TEST_CASE("lives in slices come to what they come to at once, and frames end", "[panels][plan]") {
    canvas::support::FakeHost host;
    AppState at_once{host};
    canvas::support::start(at_once);
    canvas::support::add_aircraft(at_once);
    host.answer(at_once);
    const auto* aircraft = std::get_if<views::AircraftView>(&at_once.screen().page);
    REQUIRE(aircraft != nullptr);
    const base::Id id = aircraft->id;
    at_once.apply(intent::OpenPlan{id});
    const auto* whole = std::get_if<PlanPage>(&at_once.screen().page);
    REQUIRE(whole != nullptr);
    const std::string order = base::say(whole->view.order.text, {});
    const std::string back = base::say(whole->view.back.text, {});

    canvas::support::FakeHost other;
    AppState sliced{other};
    sliced.work_in_slices();
    canvas::support::start(sliced);
    canvas::support::add_aircraft(sliced);
    other.answer(sliced);
    const base::Id same = std::get<views::AircraftView>(sliced.screen().page).id;
    CHECK_FALSE(sliced.work_on());  // this page waits for nothing
    sliced.apply(intent::OpenPlan{same});
    std::int32_t slices = 0;
    do {
        const auto* working = std::get_if<WorkingPage>(&sliced.screen().page);
        REQUIRE(working != nullptr);
        CHECK(base::say(working->told, {}).find(std::to_string(slices)) != std::string::npos);
        ++slices;
        REQUIRE(sliced.work_on());
    } while (!std::holds_alternative<PlanPage>(sliced.screen().page));
    CHECK(slices == 10);
    CHECK_FALSE(sliced.work_on());
    const auto& page = std::get<PlanPage>(sliced.screen().page);
    CHECK(base::say(page.view.order.text, {}) == order);
    CHECK(base::say(page.view.back.text, {}) == back);
    // It is kept: coming back waits for nothing.
    sliced.apply(intent::OpenAircraft{same});
    sliced.apply(intent::OpenPlan{same});
    CHECK(std::holds_alternative<PlanPage>(sliced.screen().page));
}
