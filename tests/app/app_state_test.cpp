#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/support/said.hpp"
#include "wasm/app/ledger.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;
using twoclocks::support::said;

template <class T>
const T& page(AppState& app) {
    const T* page = std::get_if<T>(&app.screen().page);
    REQUIRE(page != nullptr);
    return *page;
}

base::Id only_aircraft(AppState& app) {
    app.apply(intent::OpenFleet{});
    const auto& fleet = page<views::FleetView>(app);
    REQUIRE(fleet.cards.size() == 1);
    return fleet.cards.front().id;
}

void type(AppState& app, std::string_view keys) {
    for (const char key : keys)
        app.apply(intent::PadKey{key});
}

}  // namespace

TEST_CASE("an aircraft is shown only after the host has said that it is stored", "[app][saving]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    CHECK(host.asked.size() == 1);
    CHECK(said(app.screen().status) == "saving");
    CHECK(std::holds_alternative<FormPage>(app.screen().page));
    host.answer(app);
    CHECK(said(app.screen().status) == "saved");
    const auto& view = page<views::AircraftView>(app);
    CHECK(view.registration == "TEST-1");
    CHECK(said(view.hours_left.text) == "1,200.0 h");     // 2,200 - 1,000
    CHECK(said(view.calendar_left.text) == "1 y 203 d");  // to 2028-06-15
    CHECK(view.state == views::State::nothing_due);
}

TEST_CASE("what the host refuses is not shown as saved, and the form keeps what was typed",
          "[app][saving]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app, false);
    const auto& form = page<FormPage>(app);
    CHECK(form.fields.front().text == "TEST-1");
    REQUIRE(app.screen().notices.size() == 1);
    CHECK(app.screen().notices.front().urgent);
    app.apply(intent::SubmitForm{});
    host.answer(app);
    CHECK(page<views::AircraftView>(app).registration == "TEST-1");
}

TEST_CASE("a second tap on Save while the first is being stored stores nothing twice",
          "[app][saving]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    app.apply(intent::SubmitForm{});
    CHECK(host.asked.size() == 1);
}

TEST_CASE("everything comes back from the stored segments, and from a snapshot", "[app][store]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    const base::Id aircraft = only_aircraft(app);
    for (int reading = 1; reading <= 60; ++reading) {
        app.apply(intent::OpenPad{aircraft});
        type(app, std::to_string(1000 + reading / 4) + "." + std::to_string(reading % 4 * 2));
        app.apply(intent::SaveReading{});
        host.answer(app);
    }
    app.apply(intent::ExportJournal{});
    REQUIRE(host.stored.size() == 61);
    REQUIRE_FALSE(host.snapshots.empty());

    FakeHost second_host;
    AppState from_segments{second_host};
    for (const std::string& segment : host.stored)
        CHECK(from_segments.stored(StoredKind::segment, segment));
    canvas::support::start(from_segments);
    from_segments.apply(intent::ExportJournal{});
    CHECK(second_host.file == host.file);

    FakeHost third_host;
    AppState from_snapshot{third_host};
    CHECK(from_snapshot.stored(StoredKind::snapshot, host.snapshots.back()));
    for (std::size_t place = 50; place < host.stored.size(); ++place) {
        CHECK(from_snapshot.stored(StoredKind::segment, host.stored[place]));
    }
    canvas::support::start(from_snapshot);
    from_snapshot.apply(intent::ExportJournal{});
    CHECK(third_host.file == host.file);
}

TEST_CASE("while a stored line cannot be read no snapshot leaves it out", "[app][store]") {
    for (const bool unread : {false, true}) {
        FakeHost host;
        AppState app{host};
        const std::string head{"{\"segment\":\"facts\"}\n"};
        for (int segment = 0; segment < 60; ++segment)
            CHECK(app.stored(StoredKind::segment, head));
        if (unread) CHECK_FALSE(app.stored(StoredKind::segment, head + "{\"kind\":\"\"}\n"));
        canvas::support::start(app);
        CHECK(host.snapshots.empty() == unread);
    }
}

TEST_CASE("a damaged snapshot is refused whole, wherever the damage is", "[app][store]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    Ledger ledger;
    for (const std::string& segment : host.stored)
        CHECK(ledger.take_in(segment).empty());
    const std::string whole = ledger.snapshot();
    Ledger good;
    CHECK(good.take_snapshot(whole));
    CHECK(good.visible().facts().size() == 5);
    for (std::size_t place = 0; place < whole.size(); ++place) {
        std::string damaged = whole;
        damaged[place] = static_cast<char>(damaged[place] ^ 1);
        Ledger refused;
        CHECK_FALSE(refused.take_snapshot(damaged));
        CHECK(refused.visible().facts().empty());
        CHECK_FALSE(refused.take_snapshot(whole.substr(0, place)));
    }
}

TEST_CASE("a reading takes two taps for one aircraft, digits not counted", "[app][log]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    const base::Id aircraft = only_aircraft(app);
    app.apply(intent::OpenLog{});
    REQUIRE(page<LogPage>(app).pad);
    type(app, "1002.3");
    CHECK(said(page<LogPage>(app).pad->difference) == "+2.3 h since 25 Nov 2026");
    app.apply(intent::SaveReading{});
    host.answer(app);
    CHECK(page<views::AircraftView>(app).id == aircraft);
    CHECK(said(page<views::AircraftView>(app).hours_left.text) == "1,197.7 h");
}

TEST_CASE("the pad refuses what cannot be and says what to do", "[app][log]") {
    struct Row {
        std::string_view keys;
        bool saves;
        std::optional<base::Trouble> trouble;
        bool meter_change;
    };

    const Row rows[] = {
        {"", false, std::nullopt, false},
        {"99", false, std::nullopt, false},  // more digits may come
        {"999.9", false, base::Trouble::entry_falls, true},
        {"1000.0", true, std::nullopt, false},
        {"1000.", true, std::nullopt, false},
        {"1024.0", true, std::nullopt, false},
        {"1024.1", false, base::Trouble::entry_too_fast, false},
        {"99999999", false, base::Trouble::hours_absurd, false},
    };
    for (const Row& row : rows) {
        CAPTURE(row.keys);
        FakeHost host;
        AppState app{host};
        canvas::support::start(app);
        canvas::support::add_aircraft(app);
        host.answer(app);
        app.apply(intent::OpenPad{only_aircraft(app)});
        type(app, row.keys);
        const LogPage::Pad& pad = *page<LogPage>(app).pad;
        CHECK(pad.can_save == row.saves);
        CHECK(pad.problem.has_value() == row.trouble.has_value());
        if (pad.problem && row.trouble) CHECK(pad.problem->code == *row.trouble);
        CHECK(pad.offer_meter_change == row.meter_change);
        app.apply(intent::SaveReading{});
        CHECK(host.asked.size() == (row.saves ? 1U : 0U));
    }
}

TEST_CASE("the pad takes one decimal sign, two decimals, no leading zeros, and erases",
          "[app][log]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    app.apply(intent::OpenPad{only_aircraft(app)});
    type(app, "0012..3.456");
    CHECK(page<LogPage>(app).pad->digits == "12.34");
    type(app, "<<");
    CHECK(page<LogPage>(app).pad->digits == "12.");
    type(app, "<<<<<");
    CHECK(page<LogPage>(app).pad->digits.empty());
}

TEST_CASE("a reading on another day needs a day that exists and has come", "[app][log]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    app.apply(intent::OpenPad{only_aircraft(app)});
    type(app, "1001");
    app.field_text("date", "2026-02-30");
    CHECK(page<LogPage>(app).pad->problem->code == base::Trouble::date_impossible);
    app.field_text("date", "2026-11-26");
    CHECK(page<LogPage>(app).pad->problem->code == base::Trouble::entry_day_ahead);
    app.field_text("date", "2026-11-24");
    CHECK(page<LogPage>(app).pad->problem->code == base::Trouble::entry_before_meter);
    app.field_text("date", "2026-11-25");
    CHECK(page<LogPage>(app).pad->can_save);
}

TEST_CASE("Back closes the sheet, then the page, and never leaves the first page", "[app][pages]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    const int pushed = host.pushed;
    app.apply(intent::OpenWhy{1});
    CHECK(host.pushed == pushed + 1);
    CHECK(std::holds_alternative<views::Why>(app.screen().sheet));
    app.back();
    CHECK(std::holds_alternative<std::monostate>(app.screen().sheet));
    CHECK(std::holds_alternative<views::AircraftView>(app.screen().page));
    app.back();
    CHECK(std::holds_alternative<views::FleetView>(app.screen().page));
    app.back();
    CHECK(std::holds_alternative<views::FleetView>(app.screen().page));
    CHECK_FALSE(app.screen().can_go_back);
}

TEST_CASE("every why of an aircraft opens and names the figure it explains", "[app][why]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    const auto count = static_cast<std::int32_t>(app.screen().whys.size());
    CHECK(count == 7 + 3);  // the head of the page, and hours, calendar and likely of the overhaul
    for (std::int32_t why = 0; why < count; ++why) {
        CAPTURE(why);
        app.apply(intent::OpenWhy{why});
        const auto* sheet = std::get_if<views::Why>(&app.screen().sheet);
        REQUIRE(sheet != nullptr);
        CHECK_FALSE(said(sheet->title).empty());
        CHECK_FALSE(said(sheet->figure).empty());
        CHECK_FALSE(sheet->lines.empty());
        app.back();
    }
}
