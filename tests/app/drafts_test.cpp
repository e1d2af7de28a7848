// What is typed and not saved comes back after a reload; clearing it can be undone.
#include "wasm/app/drafts.hpp"

#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/app/shown.hpp"
#include "tests/support/said.hpp"

#include <string>

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;
using canvas::support::pad;
using twoclocks::support::said;

const FormPage& form(AppState& app) {
    const auto* page = std::get_if<FormPage>(&app.screen().page);
    REQUIRE(page != nullptr);
    return *page;
}

std::string text_of(AppState& app, std::string_view id) {
    for (const FieldView& field : form(app).fields)
        if (field.id == id) return field.text;
    return "no such field";
}

/// The next start on the same device: records and draft as the host kept them.
void start_again(AppState& app, const FakeHost& before, std::string_view draft, int days = 0) {
    for (const std::string& segment : before.stored)
        CHECK(app.stored(StoredKind::segment, segment));
    app.set_setting("caution", "accepted");
    app.set_device("test-device");
    app.refresh({20'782 + days, 1'795'600'000'000, 0x4321U, 0x8765U});
    app.stored_draft(draft);
    app.loaded();
}

base::Id add_one(FakeHost& host, AppState& app) {
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    const auto* view = std::get_if<views::AircraftView>(&app.screen().page);
    REQUIRE(view != nullptr);
    return view->id;
}

}  // namespace

TEST_CASE("a form that was being filled in is back after a reload, on its page", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    CHECK(host.draft.empty());
    app.apply(intent::OpenForm{FormKind::new_item, aircraft});
    CHECK(host.draft.empty());
    app.field_text("name", "Belt\t\"B\" \\ 1\nnew");
    app.apply(intent::ChooseOption{"role", 2});
    app.field_text("hours", "1,234");
    REQUIRE_FALSE(host.draft.empty());

    FakeHost second_host;
    AppState second{second_host};
    start_again(second, host, host.draft, 1);
    CHECK(form(second).fields[2].problem->code == base::Trouble::hours_ambiguous);
    CHECK(text_of(second, "name") == "Belt\t\"B\" \\ 1\nnew");
    CHECK(form(second).fields[1].chosen == 2);
    CHECK(said(form(second).draft_note) == "Your unfinished entry of yesterday is back.");
    // Back leads to the aircraft and the fleet, as it would have.
    second.back();
    CHECK(std::holds_alternative<views::AircraftView>(second.screen().page));
    second.back();
    CHECK(std::holds_alternative<views::FleetView>(second.screen().page));
}

TEST_CASE("a draft says the day it was typed, however often it is looked at", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    app.apply(intent::OpenForm{FormKind::new_item, aircraft});
    app.field_text("name", "Belt");
    std::string draft = host.draft;
    for (const auto& [days, when] : std::vector<std::pair<int, std::string>>{
             {0, "today"}, {1, "yesterday"}, {2, "25 Nov 2026"}}) {
        FakeHost next_host;
        AppState next{next_host};
        start_again(next, host, draft, days);
        CHECK(said(form(next).draft_note) == "Your unfinished entry of " + when + " is back.");
        next.apply(intent::ToggleChoice{"role"});
        if (next_host.drafts_kept > 0) draft = next_host.draft;
    }
}

TEST_CASE("a reading that was being typed is back, and goes when it is saved", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    app.apply(intent::OpenPad{aircraft});
    for (const char key : std::string{"1002.3"})
        app.apply(intent::PadKey{key});
    app.field_text("date", "2026-11-25");

    FakeHost second_host;
    AppState second{second_host};
    start_again(second, host, host.draft);
    CHECK(pad(second).digits == "1002.3");
    CHECK(said(pad(second).draft_note) == "Your unfinished entry of today is back.");
    second.apply(intent::SaveReading{});
    REQUIRE(second_host.asked.size() == 1);
    CHECK(second_host.drafts_kept == 0);  // not before it is stored
    second_host.answer(second);
    CHECK(second_host.drafts_kept == 1);
    CHECK(second_host.draft.empty());
}

TEST_CASE("a form's draft goes when it is saved, and stays when saving fails", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    CHECK_FALSE(host.draft.empty());
    host.answer(app, false);
    CHECK_FALSE(host.draft.empty());
    app.apply(intent::SubmitForm{});
    host.answer(app);
    CHECK(host.draft.empty());
}

TEST_CASE("a form that is left keeps its draft for when it is opened again", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    app.apply(intent::OpenForm{FormKind::new_item, aircraft});
    app.field_text("name", "Belt");
    app.back();
    CHECK_FALSE(host.draft.empty());
    app.apply(intent::OpenForm{FormKind::parked, aircraft});
    CHECK(said(form(app).draft_note).empty());
    app.back();
    app.apply(intent::OpenForm{FormKind::new_item, aircraft});
    CHECK(text_of(app, "name") == "Belt");
    CHECK_FALSE(said(form(app).draft_note).empty());
    app.back();

    // It was not on the page, so a reload does not open it.
    FakeHost second_host;
    AppState second{second_host};
    start_again(second, host, host.draft);
    CHECK(std::holds_alternative<views::FleetView>(second.screen().page));
    second.apply(intent::OpenForm{FormKind::new_item, aircraft});
    CHECK(text_of(second, "name") == "Belt");
}

TEST_CASE("a pad that is left by hand is empty the next time", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    app.apply(intent::OpenPad{aircraft});
    app.apply(intent::PadKey{'7'});
    CHECK_FALSE(host.draft.empty());
    app.back();
    CHECK(host.draft.empty());
    app.apply(intent::OpenPad{aircraft});
    CHECK(pad(app).digits.empty());
}

TEST_CASE("discarding a draft empties the form, and can be undone", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    app.apply(intent::OpenForm{FormKind::new_item, aircraft});
    CHECK_FALSE(form(app).can_clear);
    app.field_text("name", "Belt");
    CHECK(form(app).can_clear);
    app.apply(intent::ClearEntry{});
    CHECK(text_of(app, "name").empty());
    CHECK(host.draft.empty());
    REQUIRE(app.screen().notices.size() == 1);
    REQUIRE(app.screen().notices.front().action);
    app.apply(*app.screen().notices.front().action);
    CHECK(text_of(app, "name") == "Belt");
    CHECK_FALSE(host.draft.empty());
    CHECK(app.screen().notices.empty());
}

TEST_CASE("a draft that does not read is dropped and harms nothing", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    app.apply(intent::OpenForm{FormKind::new_item, aircraft});
    app.field_text("name", "Belt \xC3\xA9");
    app.apply(intent::ChooseOption{"role", 2});
    const std::string whole = host.draft;
    std::vector<std::string> drafts{"",
                                    "two-clocks-drafts\t2\n",
                                    "two-clocks-drafts\t1\ntext\ta\tb",
                                    "{\"draft\":1}",
                                    std::string(70'000, 'x')};
    for (std::size_t size = 0; size <= whole.size(); ++size)
        drafts.push_back(whole.substr(0, size));
    for (std::size_t place = 0; place < whole.size(); ++place) {
        drafts.push_back(whole);
        drafts.back()[place] = static_cast<char>(drafts.back()[place] ^ 1);
    }
    for (const std::string& draft : drafts) {
        CAPTURE(draft);
        FakeHost next_host;
        AppState next{next_host};
        start_again(next, host, draft);
        (void)next.screen();
        CHECK(next_host.asked.empty());
        next.apply(intent::OpenFleet{});
        CHECK(std::holds_alternative<views::FleetView>(next.screen().page));
    }
    CHECK(Drafts::read(whole).print() == whole);
}

TEST_CASE("a draft of something that is no longer here opens nothing", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    for (const FormKind kind : {FormKind::meter_change, FormKind::work_done, FormKind::correct}) {
        app.apply(intent::OpenForm{kind, aircraft});
        app.field_text("why", "because");
        app.field_text("what", "all of it");
        REQUIRE_FALSE(host.draft.empty());
        FakeHost empty;
        AppState next{empty};
        start_again(next, empty, host.draft);
        CHECK(std::holds_alternative<views::FleetView>(next.screen().page));
        app.apply(intent::ClearEntry{});
        app.back();
    }
    app.apply(intent::OpenPad{aircraft});
    app.apply(intent::PadKey{'7'});
    FakeHost empty;
    AppState next{empty};
    start_again(next, empty, host.draft);
    CHECK(std::holds_alternative<views::FleetView>(next.screen().page));
}

TEST_CASE("a window that may not write neither opens nor overwrites a draft", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    app.apply(intent::OpenForm{FormKind::new_item, aircraft});
    app.field_text("name", "Belt");
    FakeHost second_host;
    AppState second{second_host};
    second.read_only(true);
    start_again(second, host, host.draft);
    CHECK(std::holds_alternative<views::FleetView>(second.screen().page));
    second.apply(intent::OpenForm{FormKind::new_item, aircraft});
    second.field_text("name", "Other");
    CHECK(second_host.drafts_kept == 0);
}

TEST_CASE("nothing is kept twice: a draft is handed over only when it changed", "[app][drafts]") {
    FakeHost host;
    AppState app{host};
    const base::Id aircraft = add_one(host, app);
    app.apply(intent::OpenForm{FormKind::new_item, aircraft});
    const int before = host.drafts_kept;
    app.field_text("name", "Belt");
    app.field_text("name", "Belt");
    app.apply(intent::EditField{"hours"});
    CHECK(host.drafts_kept == before + 1);
}

TEST_CASE("at most six entries wait, the oldest gives way", "[app][drafts]") {
    Drafts drafts;
    for (std::uint64_t number = 1; number <= 8; ++number) {
        Draft draft;
        draft.kind = "new_item";
        draft.subject = {0x0190000000007000ULL, 0x8000000000000000ULL + number};
        draft.on = {20'782};
        drafts.put(draft);
    }
    CHECK(drafts.find("new_item", {0x0190000000007000ULL, 0x8000000000000002ULL}) == nullptr);
    CHECK(drafts.find("new_item", {0x0190000000007000ULL, 0x8000000000000003ULL}) != nullptr);
    CHECK(Drafts::read(drafts.print()).print() == drafts.print());
}
