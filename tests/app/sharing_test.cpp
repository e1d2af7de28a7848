// A part of the record as a file, locked or not, and locked files that come in.
#include "tests/app/limit_bench.hpp"

#include "engine/facts/journal.hpp"

using namespace twoclocks;
using namespace twoclocks::canvas;
using base::Trouble;
using canvas::support::Hangar;
using canvas::support::said;

namespace {

constexpr const char* locked = "{\"two_clocks_locked\":1,\"key\":\"PBKDF2-HMAC-SHA-256\"}\nAAAA\n";

/// Types a password for the locked file that is open.
void try_password(Hangar& h) {
    h.type("password", "guessed it");
    h.send();
}

/// A second aircraft, a price, and the form that hands a part over.
struct Two : Hangar {
    Two() {
        open(FormKind::author, {});
        type("author", "Ann");
        send();
        open(FormKind::plan_costs, aircraft);
        type("lost_day", "700");
        send();
        canvas::support::add_aircraft(app, "TEST-2");
        host.answer(app);
        host.file.clear();
        open(FormKind::share, {});
    }
};

}  // namespace

TEST_CASE("the file holds what was chosen, and the page says how much", "[app][share]") {
    Two h;
    const std::string all = said(h.field("password").told.front());
    CHECK(all.find("2 aircraft") == 0);
    h.app.apply(intent::ChooseOption{"what", 1});
    CHECK(said(h.field("password").told.front()).find("1 aircraft") == 0);
    h.app.apply(intent::ChooseOption{"money", 1});
    h.app.apply(intent::ChooseOption{"names", 1});
    h.send();
    CHECK(h.host.file_name == "TEST-1-record-2026-11-25.jsonl");
    const auto facts = facts::parse_journal(h.host.file).facts;
    REQUIRE_FALSE(facts.empty());
    for (const facts::Fact& fact : facts) {
        CHECK(fact.by.empty());
        CHECK_FALSE(std::holds_alternative<facts::PlanCosts>(fact.body.fields));
    }
    CHECK(h.host.locked.empty());
}

TEST_CASE("everything without a password is the export there always was", "[app][share]") {
    Two h;
    h.send();
    CHECK(h.host.file_name == "two-clocks-2026-11-25.jsonl");
    h.app.apply(intent::OpenFiles{});
    const auto* files = std::get_if<FilesPage>(&h.app.screen().page);
    REQUIRE(files != nullptr);
    CHECK(said(files->last_export) == "Last export: 25 Nov 2026");
}

TEST_CASE("a password is asked for twice, locks the file and is kept nowhere", "[app][share]") {
    Two h;
    h.type("password", "short");
    h.type("again", "short");
    h.send();
    CHECK(h.problem("password") == Trouble::password_short);
    h.type("password", "\u00e9\u00fc\u00e9\u00fc");  // four letters, whatever they take
    h.send();
    CHECK(h.problem("password") == Trouble::password_short);
    h.type("password", "long enough");
    h.type("again", "long enouhg");
    h.send();
    CHECK(h.problem("again") == Trouble::password_differs);
    h.type("again", "long enough");
    CHECK(said(h.field("again").understood) == "11 characters");
    h.send();
    REQUIRE(h.host.locked.size() == 1);
    CHECK(h.host.locked.front().name == "two-clocks-record-2026-11-25.locked");
    CHECK(h.host.locked.front().password == "long enough");
    CHECK(facts::parse_journal(h.host.locked.front().bytes).ours);
    CHECK(h.host.file.empty());
    CHECK(h.host.draft.find("enough") == std::string::npos);
    h.app.lock_told("done", h.host.locked.front().name);
    CHECK(said(h.app.screen().notices.back().text).find("is handed over") != std::string::npos);
    h.app.lock_told("missing", {});
    CHECK(said(h.app.screen().notices.back().text).find("not locked") != std::string::npos);
}

TEST_CASE("a locked file asks for its password, and says when it is the wrong one",
          "[app][share]") {
    Hangar h;
    h.app.file_chosen("from Ben.locked", locked);
    CHECK(said(h.form().intro).find("from Ben.locked") == 0);
    h.send();
    CHECK(h.host.opened.empty());
    CHECK(h.problem("password") == Trouble::form_needed);
    try_password(h);
    REQUIRE(h.host.opened.size() == 1);
    CHECK(h.host.opened.front().bytes == locked);
    CHECK(h.host.opened.front().password == "guessed it");
    h.send();  // while it is being opened
    CHECK(h.host.opened.size() == 1);
    h.app.lock_told("wrong", "from Ben.locked");
    REQUIRE(h.form().problems.size() == 1);
    CHECK(h.form().problems.front().code == Trouble::password_wrong);
    h.app.lock_told("damaged", "from Ben.locked");
    CHECK(h.form().problems.front().code == Trouble::lock_damaged);
    h.app.lock_told("missing", "from Ben.locked");
    CHECK(h.form().problems.front().code == Trouble::lock_missing);
    // Clearing takes the password away, not the file.
    h.app.apply(intent::ClearEntry{});
    CHECK(h.field("password").text.empty());
    CHECK(h.app.screen().notices.back().action_label.word == base::Word::blank);
    try_password(h);
    REQUIRE(h.host.opened.size() == 2);
    CHECK(h.host.opened.back().bytes == locked);
    // What was in it comes as any chosen file does, in the place of the question.
    h.app.file_chosen("from Ben.locked", facts::print_journal({}));
    CHECK(std::holds_alternative<FilesPage>(h.app.screen().page));
    CHECK(h.host.draft.find("guessed") == std::string::npos);
}

TEST_CASE("out of an opened file leads one Back, as out of any other", "[app][share]") {
    Hangar h;
    h.app.apply(intent::OpenFiles{});
    h.app.file_chosen("one.locked", locked);
    try_password(h);
    const int backs = h.host.backs;
    h.app.file_chosen("one.locked", facts::print_journal({}));
    // The browser is asked to go back to the files below, and does.
    REQUIRE(h.host.backs == backs + 1);
    CHECK(h.field("password").text.empty());
    h.app.back();
    REQUIRE(std::holds_alternative<FilesPage>(h.app.screen().page));
    CHECK(std::get<FilesPage>(h.app.screen().page).preview);
}

TEST_CASE("whoever goes on while a file is being opened is told nothing untrue", "[app][share]") {
    Hangar h;
    h.app.apply(intent::OpenFiles{});
    h.app.file_chosen("one.locked", locked);
    try_password(h);
    CHECK(said(h.app.screen().notices.back().text).find("Opening") == 0);
    h.app.back();
    CHECK(std::holds_alternative<FilesPage>(h.app.screen().page));
    h.app.lock_told("wrong", "one.locked");
    CHECK(h.app.screen().notices.empty());
    // And an answer about one file is no answer about another.
    h.app.file_chosen("two.locked", locked);
    h.app.lock_told("wrong", "one.locked");
    CHECK(h.form().problems.empty());
}

TEST_CASE("a locked file takes no place of what is being typed", "[app][share]") {
    Hangar h;
    h.open(FormKind::new_item, h.aircraft);
    h.type("name", "Inspection");
    h.app.file_chosen("one.locked", locked);
    CHECK(said(h.form().title) == "This file is locked");
    h.app.back();
    CHECK(std::holds_alternative<FilesPage>(h.app.screen().page));
    h.open(FormKind::new_item, h.aircraft);
    CHECK(h.field("name").text == "Inspection");
    // What was in it arrives although the keys are looked at meanwhile.
    h.app.file_chosen("one.locked", locked);
    try_password(h);
    h.app.apply(intent::OpenKeys{});
    const int backs = h.host.backs;
    h.app.file_chosen("one.locked", facts::print_journal({}));
    REQUIRE(h.host.backs == backs + 1);
    h.app.back();  // as the browser was asked to
    CHECK(std::holds_alternative<FilesPage>(h.app.screen().page));
    h.app.back();
    CHECK_FALSE(std::holds_alternative<FormPage>(h.app.screen().page));
}

TEST_CASE("a lock of a newer version, and a damaged one, say so", "[app][share]") {
    Hangar h;
    h.app.file_chosen("newer", "{\"two_clocks_locked\":2}\nAAAA\n");
    CHECK(h.form().problems.front().code == Trouble::lock_newer);
    h.type("password", "whatever");
    h.send();
    CHECK(h.host.opened.empty());
    CHECK(h.form().problems.front().code == Trouble::lock_newer);
    h.app.file_chosen("torn", "{\"two_clocks_locked\":1,\nAAAA\n");
    CHECK(h.form().problems.front().code == Trouble::lock_damaged);
}
