// The page of status: it opens from the aircraft, and every clock leads to its why.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"

#include "engine/base/region.hpp"

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;

TEST_CASE("the status of an aircraft opens, explains itself and goes back", "[app][status]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    const auto aircraft = std::get<views::AircraftView>(app.screen().page).id;
    app.apply(intent::OpenStatus{aircraft});
    const auto* status = std::get_if<views::StatusView>(&app.screen().page);
    REQUIRE(status != nullptr);
    CHECK(status->id == aircraft);
    REQUIRE(status->groups.size() == 1);
    CHECK(app.screen().whys.size() == status->groups[0].rows.at(0).clocks.size());
    app.apply(intent::OpenWhy{0});
    CHECK(std::holds_alternative<views::Why>(app.screen().sheet));
    app.back();
    app.back();
    CHECK(std::holds_alternative<views::AircraftView>(app.screen().page));
}
