// Where the records are kept: what the browser promised, what is in no file yet, what went wrong.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/support/said.hpp"

#include <algorithm>

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;
using twoclocks::support::said;

std::string all_storage(AppState& app) {
    app.apply(intent::OpenFiles{});
    const auto* page = std::get_if<FilesPage>(&app.screen().page);
    REQUIRE(page != nullptr);
    std::string out;
    for (const base::Message& line : page->storage)
        out += said(line) + '\n';
    return out;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::string reminder(AppState& app) {
    app.apply(intent::OpenFleet{});
    const auto* page = std::get_if<views::FleetView>(&app.screen().page);
    REQUIRE(page != nullptr);
    return said(page->reminder);
}

std::string not_copied(AppState& app) {
    app.apply(intent::OpenFiles{});
    return said(std::get<FilesPage>(app.screen().page).not_copied);
}

/// The same device some days later.
void later(AppState& app, std::int32_t days) {
    constexpr std::int64_t ms_per_day = 86'400'000;
    app.refresh({20'782 + days, 1'795'600'000'000 + days * ms_per_day, 5, 7});
}

}  // namespace

TEST_CASE("the page of files says what the browser promised and how much room there is",
          "[app][keeping]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    CHECK(has(all_storage(app), "is asked with the first save"));
    CHECK_FALSE(has(all_storage(app), " MB"));
    app.storage_note("persisted", 0);
    CHECK(has(all_storage(app), "may clear it when space runs short"));
    app.storage_note("persisted", 1);
    CHECK(has(all_storage(app), "has promised not to clear it"));
    app.storage_note("used", 1'200'001);
    CHECK_FALSE(has(all_storage(app), " MB"));
    app.storage_note("room", 9'999'999);
    CHECK(has(all_storage(app), "2 MB of 9 MB used"));  // used rounds up, room down
}

TEST_CASE("records in no file yet are counted, and the fleet asks for a copy after two weeks",
          "[app][keeping]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    CHECK(not_copied(app).empty());
    canvas::support::add_aircraft(app);
    host.answer(app);
    CHECK(not_copied(app) == "5 records written here are in no file yet");
    CHECK(reminder(app).empty());
    later(app, 13);
    CHECK(reminder(app).empty());
    later(app, 14);
    CHECK(has(reminder(app), "5 records written here, the oldest on "));
    app.apply(intent::ExportJournal{});
    CHECK(reminder(app).empty());
    CHECK(not_copied(app).empty());
    // It is known after a restart too, and what a person does not know counts as not copied.
    for (const bool remembered : {true, false}) {
        FakeHost second;
        AppState again{second};
        for (const std::string& segment : host.stored)
            CHECK(again.stored(StoredKind::segment, segment));
        if (remembered) {
            for (const auto& [name, value] : host.settings)
                again.set_setting(name, value);
        } else {
            again.set_setting("exported_at", "yesterday");
        }
        canvas::support::start(again);
        later(again, 14);
        CHECK(reminder(again).empty() == remembered);
    }
}

TEST_CASE("records that came in a file need no copy", "[app][keeping]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    app.apply(intent::ExportJournal{});
    FakeHost other_host;
    AppState other{other_host};
    canvas::support::start(other);
    other.file_chosen("a.jsonl", host.file);
    other.apply(intent::AcceptImport{});
    other_host.answer(other);
    later(other, 100);
    CHECK(reminder(other).empty());
    CHECK(not_copied(other).empty());
}

TEST_CASE("what is wrong with the store stays on the page beside everything else until dismissed",
          "[app][keeping]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    app.storage_note("cut", 1);
    app.storage_note("gap", 1);
    app.storage_note("gap", 2);
    app.apply(intent::ExportJournal{});
    const auto texts = [&] {
        std::vector<std::string> out;
        for (const Notice& notice : app.screen().notices)
            out.push_back(said(notice.text));
        return out;
    };
    const auto tells = [&](const std::string& part) {
        const auto all = texts();
        return std::any_of(
            all.begin(), all.end(), [&](const std::string& text) { return has(text, part); });
    };
    CHECK(texts().size() == 3);
    CHECK(tells("1 unfinished record was cut off"));
    CHECK(tells("3 stored records could not be read"));
    CHECK(tells("File handed over"));
    app.apply(intent::OpenFleet{});
    CHECK(tells("1 unfinished record was cut off"));
    app.apply(intent::DismissNotice{});
    CHECK(texts().empty());
}

TEST_CASE("a browser that keeps nothing is said at once", "[app][keeping]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    app.storage_note("refused", 1);
    REQUIRE(app.screen().notices.size() == 1);
    CHECK(app.screen().notices.front().urgent);
    CHECK(has(said(app.screen().notices.front().text), "no record can be saved"));
}
