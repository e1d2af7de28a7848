// The page of checks: its fields ask, its rows answer, and every figure leads to its why.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"

#include <algorithm>

#include "engine/base/region.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;

struct OpenedChecks {
    OpenedChecks() {
        canvas::support::start(app);
        canvas::support::add_aircraft(app);
        host.answer(app);
        aircraft = std::get<views::AircraftView>(app.screen().page).id;
        app.apply(intent::OpenChecks{aircraft});
    }

    [[nodiscard]] const ChecksPage& shown() {
        REQUIRE(std::holds_alternative<ChecksPage>(app.screen().page));
        return std::get<ChecksPage>(app.screen().page);
    }

    [[nodiscard]] std::string summary() { return base::say(shown().view.summary, {}); }

    FakeHost host;
    AppState app{host};
    base::Id aircraft;
};

}  // namespace

TEST_CASE("the checks of an aircraft are searched as one types", "[app][checks]") {
    OpenedChecks page;
    CHECK(page.summary() == "1 of 1 checks");
    page.app.field_text("checks-search", "over");
    CHECK(page.summary() == "1 of 1 checks");
    page.app.field_text("checks-search", "gearbox");
    CHECK(page.summary() == "0 of 1 checks");
    page.app.apply(intent::FillField{"checks-search", {}});
    CHECK(page.summary() == "1 of 1 checks");
}

TEST_CASE("a day or hours that cannot be read ask for nothing and say why", "[app][checks]") {
    OpenedChecks page;
    page.app.field_text("checks-within", "1,234");
    page.app.field_closed("checks-within");
    const auto& fields = page.shown().fields;
    const auto wrong = std::count_if(
        fields.begin(), fields.end(), [](const FieldView& field) { return field.problem; });
    CHECK(wrong == 1);
    CHECK(page.summary() == "1 of 1 checks");
    page.app.field_text("checks-within", "10");
    CHECK(page.summary() == "0 of 1 checks");
    page.app.field_text("checks-within", "1200");
    CHECK(page.summary() == "1 of 1 checks");
}

TEST_CASE("a figure of the checks opens its why", "[app][checks]") {
    OpenedChecks page;
    REQUIRE_FALSE(page.app.screen().whys.empty());
    page.app.apply(intent::OpenWhy{0});
    const auto* why = std::get_if<views::Why>(&page.app.screen().sheet);
    REQUIRE(why != nullptr);
    CHECK(base::say(why->figure, {}) == "1,200.0 h");
}

TEST_CASE("opened again, the list of checks asks for everything", "[app][checks]") {
    OpenedChecks page;
    page.app.field_text("checks-search", "gearbox");
    page.app.back();
    page.app.apply(intent::OpenChecks{page.aircraft});
    CHECK(page.summary() == "1 of 1 checks");
}
