// A new aircraft from a type template: nothing is a record before a person saves it, with the
// document it stands in.
#include "catch_amalgamated.hpp"
#include "tests/app/template_bench.hpp"
#include "wasm/app/shipped_templates.hpp"

#include <filesystem>

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using namespace twoclocks::canvas::bench;

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t out = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++out;
    return out;
}

}  // namespace

TEST_CASE("every template under assets is in the program", "[app][templates]") {
    std::size_t files = 0;
    const std::filesystem::path folder{std::string{HOUSE_ROOT} + "/assets/templates"};
    for (const auto& entry : std::filesystem::directory_iterator{folder})
        files += entry.path().extension() == ".json" ? 1U : 0U;
    CHECK(files > 0);
    CHECK(shipped_templates().size() == files);
}

TEST_CASE("a template proposes the overhaul limits, and what was typed stays", "[app][templates]") {
    FakeHost host;
    AppState app{host};
    start(app);
    app.apply(intent::OpenForm{FormKind::new_aircraft, {}});
    CHECK(text_of(app, "limit_hours").empty());
    choose(app, "template", piston);
    CHECK(text_of(app, "limit_hours") == "2200.0");
    CHECK(text_of(app, "limit_years") == "12");
    choose(app, "template", "Piston trainer, short intervals");
    CHECK(text_of(app, "limit_hours") == "2000.0");
    CHECK(text_of(app, "limit_years") == "10");
    app.field_text("limit_hours", "1900");
    choose(app, "template", "none");
    CHECK(text_of(app, "limit_hours") == "1900");
    CHECK(text_of(app, "limit_years").empty());
    CHECK(host.asked.empty());
}

TEST_CASE("an aircraft from a template is led to what its documents say, part by part",
          "[app][templates]") {
    FakeHost host;
    AppState app{host};
    add_from_template(app, host);
    REQUIRE(asks_documents(app));
    CHECK(state(app, host).items.size() == 1);  // the overhaul that its own form asked for
    CHECK(state(app, host).work_rules.empty());
    CHECK(chosen(app, "template") == piston);
    CHECK(chosen(app, "part") == "05 Inspections");
    CHECK(told(app, "template").starts_with("Invented."));
    CHECK(told(app, "take-annual") ==
          "Limit: 12 months\nprogramme\nCounts from the last overhaul until it is renewed\n");
    CHECK(field(app, "take-overhaul") == nullptr);
    CHECK(field(app, "take-belts") == nullptr);
    app.field_text("source", "Maintenance manual");
    app.field_text("revision", "7");
    submit(app, host);
    REQUIRE(asks_documents(app));
    CHECK(chosen(app, "part") == "62 Rotors");
    CHECK(text_of(app, "source") == "Maintenance manual");
    CHECK(text_of(app, "revision") == "7");
    CHECK(state(app, host).items.size() == 5);
    CHECK(take_all(app, host) == 7);  // six chapters, and the works
    const auto* page = std::get_if<views::AircraftView>(&app.screen().page);
    REQUIRE(page != nullptr);
    CHECK(page->registration == "TEST-1");
    const facts::TypeTemplate& type = shipped_templates().front();
    const timeline::AircraftState after = state(app, host);
    CHECK(after.items.size() == type.items.size());
    CHECK(after.work_rules.size() == type.works.size());
    for (std::size_t at = 0; at < type.works.size(); ++at) {
        CHECK(after.work_rules[at].name == type.works[at].name);
        CHECK(after.work_rules[at].renews.size() == type.works[at].renews.size());
        CHECK(after.work_rules[at].source == "Maintenance manual");
    }
    CHECK(left(after, "Annual inspection") == "-, 2017-06-30");
    CHECK(after.questions.empty());
    CHECK(host.draft.empty());
}

TEST_CASE("without a document the source is empty, and the aircraft says so", "[app][templates]") {
    FakeHost host;
    AppState app{host};
    add_from_template(app, host);
    submit(app, host);
    CHECK(host.file.empty());
    (void)journal(app, host);
    // An empty source is not written.
    CHECK(count_of(host.file, "\"source\":") == 0);
    CHECK(count_of(host.file, "\"kind\":\"limit\"") == 5);
    app.apply(intent::OpenFleet{});
    const auto* fleet = std::get_if<views::FleetView>(&app.screen().page);
    REQUIRE(fleet != nullptr);
    app.apply(intent::OpenAircraft{fleet->cards.front().id});
    const auto* page = std::get_if<views::AircraftView>(&app.screen().page);
    REQUIRE(page != nullptr);
    CHECK(page->due.size() == 5);
    for (const views::DueRow& row : page->due) {
        CAPTURE(row.name);
        CHECK(said(row.source) == "source not given");
    }
}

TEST_CASE("an item can have other figures of another document, or be left out",
          "[app][templates]") {
    FakeHost host;
    AppState app{host};
    add_from_template(app, host);
    app.field_text("source", "Maintenance manual");
    app.field_text("revision", "7");
    choose(app, "take-annual", "leave out");
    choose(app, "take-inspection_300", "other figures");
    CHECK(text_of(app, "hours-inspection_300") == "300.0");
    CHECK(said(field(app, "hours-inspection_300")->label) == "300 h inspection: hours");
    app.field_text("hours-inspection_300", "0");
    submit(app, host);
    REQUIRE(field(app, "hours-inspection_300")->problem);
    CHECK(field(app, "hours-inspection_300")->problem->code == base::Trouble::limit_zero);
    CHECK(state(app, host).items.size() == 1);
    app.field_text("hours-inspection_300", "250");
    app.field_text("months-inspection_300", "24");
    app.field_text("source-inspection_300", "Approved programme");
    submit(app, host);
    const timeline::AircraftState after = state(app, host);
    CHECK(after.items.size() == 4);
    for (const timeline::ItemState& each : after.items) {
        CHECK(each.name != "Annual inspection");
        if (each.name != "300 h inspection") continue;
        CHECK(each.limit->hours == base::hours(250));
        CHECK(each.limit->months == 24);
        CHECK(each.limit->source == "Approved programme");
        CHECK(each.limit->revision.empty());  // the manual's says nothing of another document
    }
    choose(app, "part", "05 Inspections");  // what was left out is still there
    CHECK(field(app, "take-annual") != nullptr);
    CHECK(field(app, "take-inspection_300") == nullptr);
    choose(app, "take-annual", "leave out");
    app.apply(intent::SubmitForm{});
    REQUIRE(form(app).problems.size() == 1);
    CHECK(form(app).problems.front().code == base::Trouble::form_nothing_taken);
    CHECK(host.asked.empty());
}

TEST_CASE("all that is left can be taken over at once, from one document", "[app][templates]") {
    FakeHost host;
    AppState app{host};
    add_from_template(app, host);
    choose(app, "part", "all that is left");
    app.field_text("source", "Maintenance manual");
    submit(app, host);
    CHECK(state(app, host).items.size() == shipped_templates().front().items.size());
    REQUIRE(asks_documents(app));
    CHECK(chosen(app, "part") == "which work renews what");
    CHECK(told(app, "work-Calendar inspection").find("Keeps Overhaul of the helicopter: hours") !=
          std::string::npos);
    CHECK(take_all(app, host) == 1);
    CHECK(state(app, host).work_rules.size() == shipped_templates().front().works.size());
}

TEST_CASE("what was chosen of a template is back after a reload", "[app][templates][drafts]") {
    FakeHost host;
    AppState app{host};
    add_from_template(app, host);
    submit(app, host);
    app.field_text("source", "Blade cards");
    choose(app, "take-main_blades", "other figures");
    app.field_text("hours-main_blades", "2100");
    choose(app, "take-swashplate", "leave out");
    REQUIRE_FALSE(host.draft.empty());

    FakeHost second_host;
    AppState second{second_host};
    for (const std::string& segment : host.stored)
        CHECK(second.stored(StoredKind::segment, segment));
    second.set_setting("caution", "accepted");
    second.set_device("test-device");
    second.refresh({today.day_number, 1'795'600'000'000, 0x4321U, 0x8765U});
    second.stored_draft(host.draft);
    second.loaded();
    REQUIRE(asks_documents(second));
    CHECK(chosen(second, "template") == piston);
    CHECK(chosen(second, "part") == "62 Rotors");
    CHECK(text_of(second, "source") == "Blade cards");
    CHECK(chosen(second, "take-main_blades") == "other figures");
    CHECK(text_of(second, "hours-main_blades") == "2100");
    CHECK(chosen(second, "take-swashplate") == "leave out");
}

TEST_CASE("works taken over again after more items correct their rules, and double none",
          "[app][templates]") {
    FakeHost host;
    AppState app{host};
    add_from_template(app, host);
    choose(app, "part", "which work renews what");
    submit(app, host);
    const timeline::AircraftState before = state(app, host);
    CHECK(before.work_rules.size() == 2);  // those that renew the overhaul
    app.apply(intent::OpenForm{FormKind::from_template, before.id});
    choose(app, "template", piston);
    choose(app, "part", "all that is left");
    submit(app, host);
    CHECK(take_all(app, host) == 1);
    const timeline::AircraftState after = state(app, host);
    CHECK(after.questions.empty());
    const facts::TypeTemplate& type = shipped_templates().front();
    REQUIRE(after.work_rules.size() == type.works.size());
    CHECK(after.work_rules.front().name == "Overhaul");
    CHECK(after.work_rules.front().renews.size() == type.works.front().renews.size());
    app.apply(intent::OpenForm{FormKind::from_template, before.id});
    choose(app, "template", piston);
    CHECK(field(app, "part") == nullptr);
    CHECK(told(app, "template").find("Everything of this template is on record.") !=
          std::string::npos);
}
