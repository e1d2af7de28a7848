// Taking back what was just saved: a record that says so, never a deletion.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/support/said.hpp"

#include <string>

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;
using twoclocks::support::said;

/// Presses the button of the only notice.
void press_notice(AppState& app) {
    REQUIRE(app.screen().notices.size() == 1);
    const Notice notice = app.screen().notices.front();
    REQUIRE(notice.action);
    CHECK(said(notice.action_label) == "Take it back");
    app.apply(*notice.action);
}

const views::AircraftView& page_of_aircraft(AppState& app) {
    const auto* view = std::get_if<views::AircraftView>(&app.screen().page);
    REQUIRE(view != nullptr);
    return *view;
}

const views::AircraftCard& only_card(AppState& app) {
    app.apply(intent::OpenFleet{});
    const auto* fleet = std::get_if<views::FleetView>(&app.screen().page);
    REQUIRE(fleet != nullptr);
    REQUIRE(fleet->cards.size() == 1);
    return fleet->cards.front();
}

std::string hours_left(AppState& app) {
    return said(only_card(app).hours.left);
}

void save_reading(AppState& app, FakeHost& host, const std::string& digits) {
    app.apply(intent::OpenLog{});
    for (const char key : digits)
        app.apply(intent::PadKey{key});
    app.apply(intent::SaveReading{});
    host.answer(app);
}

}  // namespace

TEST_CASE("a saved reading can be taken back at once, and the record says why", "[app][undo]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    save_reading(app, host, "1002.3");
    CHECK(said(page_of_aircraft(app).hours_left.text) == "1,197.7 h");
    press_notice(app);
    CHECK(said(page_of_aircraft(app).hours_left.text) == "1,197.7 h");  // not before it is stored
    host.answer(app);
    CHECK(said(page_of_aircraft(app).hours_left.text) == "1,200.0 h");
    CHECK(said(app.screen().notices.front().text) ==
          "Taken back: 1 record. It stays in the history.");
    CHECK_FALSE(app.screen().notices.front().action);
    app.apply(intent::ExportJournal{});
    CHECK(host.file.find("Taken back right after it was saved") != std::string::npos);
    CHECK(host.file.find("\"kind\":\"withdrawal\"") != std::string::npos);
    CHECK(host.file.find("\"kind\":\"reading\"") != std::string::npos);
}

TEST_CASE("an aircraft that was just added is taken back with all its records", "[app][undo]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    press_notice(app);
    host.answer(app);
    const auto* fleet = std::get_if<views::FleetView>(&app.screen().page);
    REQUIRE(fleet != nullptr);
    CHECK(fleet->cards.empty());
}

TEST_CASE("the notice of a correction takes it back to what it was", "[app][undo]") {
    for (const FormKind kind : {FormKind::correct, FormKind::withdraw}) {
        FakeHost host;
        AppState app{host};
        canvas::support::start(app);
        canvas::support::add_aircraft(app);
        host.answer(app);
        save_reading(app, host, "1002.3");
        app.apply(intent::OpenHistory{});
        const auto* history = std::get_if<views::HistoryView>(&app.screen().page);
        REQUIRE(history != nullptr);
        app.apply(intent::OpenForm{kind, history->rows.front().fact});
        if (kind == FormKind::correct) app.field_text("reads", "1010");
        app.field_text("why", "misread");
        app.apply(intent::SubmitForm{});
        host.answer(app);
        REQUIRE(app.screen().notices.size() == 1);
        const Intent take_back = *app.screen().notices.front().action;
        CHECK(hours_left(app) == (kind == FormKind::correct ? "1,190.0 h" : "1,200.0 h"));
        app.apply(take_back);
        host.answer(app);
        CHECK(hours_left(app) == "1,197.7 h");
        CHECK(only_card(app).state == views::State::nothing_due);
    }
}

TEST_CASE("a second tap on Take it back writes nothing twice", "[app][undo]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    save_reading(app, host, "1002.3");
    const Intent take_back = *app.screen().notices.front().action;
    app.apply(take_back);
    app.apply(take_back);
    CHECK(host.asked.size() == 1);
}
