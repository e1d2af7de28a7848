#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"

#include "engine/base/region.hpp"
#include "engine/facts/parse.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;

const FilesPage& files(AppState& app) {
    const auto* page = std::get_if<FilesPage>(&app.screen().page);
    REQUIRE(page != nullptr);
    return *page;
}

/// A journal with the aircraft of the tests, as another device exports it.
std::string exported_journal() {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    canvas::support::add_aircraft(app);
    host.answer(app);
    app.apply(intent::ExportJournal{});
    return host.file;
}

/// Starts, and joins the journal of the other device.
void join_other(FakeHost& host, AppState& app) {
    canvas::support::start(app);
    app.file_chosen("other.txt", exported_journal());
    app.apply(intent::AcceptImport{});
    host.answer(app);
}

}  // namespace

TEST_CASE("an import says what it would change and changes nothing until it is joined",
          "[app][import]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    app.file_chosen("other.txt", exported_journal());
    REQUIRE(files(app).preview);
    CHECK(files(app).preview->can_accept);
    CHECK(base::say(files(app).preview->summary, {}) == "5 new records, 0 already here");
    CHECK(base::say(files(app).preview->changes.front(), {}) == "New aircraft: TEST-1");
    CHECK(base::say(files(app).summary, {}) == "0 aircraft, 0 records");
    CHECK(host.asked.empty());
    app.apply(intent::AcceptImport{});
    CHECK(base::say(files(app).summary, {}) == "0 aircraft, 0 records");
    host.answer(app);
    CHECK(base::say(files(app).summary, {}) == "1 aircraft, 5 records");
    CHECK_FALSE(files(app).preview);
    app.apply(intent::ExportJournal{});
    CHECK(host.file == exported_journal());
}

TEST_CASE("a file joined twice adds nothing and cannot be joined again", "[app][import]") {
    FakeHost host;
    AppState app{host};
    join_other(host, app);
    app.file_chosen("other.txt", exported_journal());
    CHECK_FALSE(files(app).preview->can_accept);
    CHECK(base::say(files(app).preview->summary, {}) == "0 new records, 5 already here");
    app.apply(intent::AcceptImport{});
    CHECK(host.asked.empty());
    app.apply(intent::DropImport{});
    CHECK_FALSE(files(app).preview);
}

TEST_CASE("who wrote what is here already is told as that, not as new records", "[app][import]") {
    FakeHost host;
    AppState app{host};
    join_other(host, app);
    app.apply(intent::ExportJournal{});
    const std::string without = host.file;
    const std::string mark = "\"by\":\"";
    REQUIRE(without.find(mark) == std::string::npos);  // nobody has signed
    std::string with_names;
    for (std::size_t from = 0; from < without.size();) {
        const std::size_t end = without.find('\n', from);
        std::string line = without.substr(from, end - from);
        if (from > 0) line.insert(line.size() - 1, ",\"by\":\"Ann\"");
        with_names += line + '\n';
        from = end + 1;
    }
    app.file_chosen("signed.txt", with_names);
    REQUIRE(files(app).preview);
    CHECK(base::say(files(app).preview->summary, {}) == "0 new records, 5 already here");
    REQUIRE(files(app).preview->changes.size() == 1);
    CHECK(base::say(files(app).preview->changes.front(), {}) ==
          "5 records of TEST-1 get the names of who wrote them");
    CHECK(files(app).preview->can_accept);
}

TEST_CASE("an import is set aside and taken back, here and after a restart", "[app][import]") {
    FakeHost host;
    AppState app{host};
    join_other(host, app);
    app.apply(intent::SetAside{files(app).batches.front().number});
    host.answer(app);
    CHECK(base::say(files(app).summary, {}) == "0 aircraft, 0 records");
    CHECK(files(app).batches.front().aside);

    FakeHost second_host;
    AppState again{second_host};
    for (const std::string& segment : host.stored)
        CHECK(again.stored(StoredKind::segment, segment));
    canvas::support::start(again);
    again.apply(intent::OpenFiles{});
    CHECK(files(again).batches.front().aside);
    again.apply(intent::TakeBack{files(again).batches.front().number});
    second_host.answer(again);
    CHECK(base::say(files(again).summary, {}) == "1 aircraft, 5 records");
}

TEST_CASE("a foreign, an empty and a newer file change nothing and say why", "[app][import]") {
    struct Row {
        std::string bytes;
        base::Trouble trouble;
    };

    const std::string newer = "{\"journal\":\"twoclocks\",\"version\":2}\n";
    const Row rows[] = {{"", base::Trouble::file_empty},
                        {"PK\x03\x04", base::Trouble::file_foreign},
                        {"{\"a\":1}\n", base::Trouble::file_foreign},
                        {newer, base::Trouble::file_newer}};
    for (const Row& row : rows) {
        FakeHost host;
        AppState app{host};
        canvas::support::start(app);
        app.file_chosen("file", row.bytes);
        REQUIRE(files(app).preview);
        CHECK_FALSE(files(app).preview->can_accept);
        REQUIRE_FALSE(files(app).preview->problems.empty());
        CHECK(files(app).preview->problems.front().code == row.trouble);
        app.apply(intent::AcceptImport{});
        CHECK(host.asked.empty());
    }
}

TEST_CASE("a file torn in the middle of its last record joins the whole ones and names the line",
          "[app][import]") {
    const std::string whole = exported_journal();
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    app.file_chosen("torn.txt", whole.substr(0, whole.size() - 40));
    REQUIRE(files(app).preview);
    CHECK(files(app).preview->problems.front().code == base::Trouble::file_torn);
    CHECK(files(app).preview->problems.front().line == 6);
    CHECK(base::say(files(app).preview->summary, {}) == "4 new records, 0 already here");
    app.apply(intent::AcceptImport{});
    host.answer(app);
    app.file_chosen("whole.txt", whole);
    CHECK(base::say(files(app).preview->summary, {}) == "1 new record, 4 already here");
}

TEST_CASE("while another window holds the pen nothing is handed to the store", "[app][saving]") {
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    app.read_only(true);
    canvas::support::add_aircraft(app);
    CHECK(host.asked.empty());
    REQUIRE(app.screen().notices.size() == 1);
    CHECK(app.screen().read_only);
    app.read_only(false);
    app.apply(intent::SubmitForm{});
    CHECK(host.asked.size() == 1);
}
