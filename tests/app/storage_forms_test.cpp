// "Put into storage", "Return to service" and the page "On return": what they ask, what is saved.
#include "catch_amalgamated.hpp"
#include "tests/app/limit_bench.hpp"

#include <string>

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::Hangar;
using canvas::support::said;
using canvas::support::today;

namespace {

const views::AircraftView& aircraft_page(Hangar& h) {
    h.app.apply(intent::OpenFleet{});
    h.app.apply(intent::OpenAircraft{h.aircraft});
    const auto* view = std::get_if<views::AircraftView>(&h.app.screen().page);
    REQUIRE(view != nullptr);
    return *view;
}

const ReturnPage& return_page(Hangar& h) {
    const auto* page = std::get_if<ReturnPage>(&h.app.screen().page);
    REQUIRE(page != nullptr);
    return *page;
}

std::string days_ago(std::int32_t days) {
    return base::print_date(base::add_days(today, -days));
}

void put_away(Hangar& h, std::int32_t days) {
    h.open(FormKind::storage, h.aircraft);
    h.type("date", days_ago(days));
    h.type("source", "Manual, chapter 10");
    h.send();
}

}  // namespace

TEST_CASE("storage is kept with its document, and the aircraft says since when", "[app][storage]") {
    Hangar h;
    CHECK(aircraft_page(h).storage.empty());
    put_away(h, 10);
    const auto [body, stored] = h.last<facts::OutOfService>();
    CHECK(base::print_date(body.on) == days_ago(10));
    CHECK(stored.stored);
    CHECK(stored.source == "Manual, chapter 10");
    CHECK_FALSE(stored.until.has_value());
    const views::AircraftView& view = aircraft_page(h);
    CHECK(view.can_return);
    REQUIRE(view.storage.size() == 1);
    CHECK(said(view.storage.front()).find("Manual, chapter 10") != std::string::npos);
}

TEST_CASE("storage that ends before it begins is refused", "[app][storage]") {
    Hangar h;
    h.open(FormKind::storage, h.aircraft);
    h.type("date", days_ago(10));
    h.type("until", days_ago(10));
    h.send();
    CHECK(h.problem("until") == base::Trouble::form_ends_before_start);
    h.type("until", days_ago(9));
    h.send();
    CHECK(h.last<facts::OutOfService>().second.until.has_value());
}

TEST_CASE("a return corrects the record of the storage and says by what", "[app][storage]") {
    Hangar h;
    put_away(h, 10);
    h.open(FormKind::return_to_service, h.aircraft);
    h.type("date", days_ago(10));
    h.type("reference", "WO 17");
    h.send();
    CHECK(h.problem("date") == base::Trouble::form_return_before);
    h.type("date", days_ago(9));
    h.send();
    const auto [body, correction] = h.last<facts::Correction>();
    CHECK(correction.why == "Returned to service: WO 17");
    const auto& instead = std::get<facts::OutOfService>(correction.instead->fields);
    CHECK(base::print_date(*instead.until) == days_ago(9));
    CHECK(instead.stored);
    CHECK(instead.source == "Manual, chapter 10");
    const views::AircraftView& view = aircraft_page(h);
    CHECK(view.storage.empty());
    CHECK_FALSE(view.can_return);
}

TEST_CASE("what is not stored cannot return, nor what records disagree about", "[app][storage]") {
    Hangar h;
    h.open(FormKind::return_to_service, h.aircraft);
    h.send();
    CHECK(h.problem("date") == base::Trouble::form_not_stored);
    h.open(FormKind::parked, h.aircraft);
    h.send();
    h.open(FormKind::return_to_service, h.aircraft);
    h.send();
    CHECK(h.problem("date") == base::Trouble::form_not_stored);
}

TEST_CASE("on return tells what stops it on the day that is asked", "[app][storage]") {
    Hangar h;
    canvas::support::begin_inspection(h, true);
    h.type("hours", "");
    h.type("days", "30");
    h.choose("in_force", "on return from storage");
    h.send();
    put_away(h, 10);
    h.app.apply(intent::OpenReturn{h.aircraft});
    CHECK(said(return_page(h).view.summary).find("1 check before") != std::string::npos);
    REQUIRE_FALSE(return_page(h).view.groups.empty());
    CHECK(return_page(h).view.groups.front().rows.front().name == "Inspection");
    REQUIRE(return_page(h).fields.size() == 1);
    const std::string field = return_page(h).fields.front().id;
    CHECK(return_page(h).fields.front().text == base::print_date(today));
    // In a hundred years everything has run out.
    h.app.field_text(field, "2126-01-01");
    h.app.field_closed(field);
    CHECK(said(return_page(h).view.summary).find("2 checks before") != std::string::npos);
    h.app.field_text(field, "never");
    h.app.field_closed(field);
    CHECK(return_page(h).fields.front().problem.has_value());
}
