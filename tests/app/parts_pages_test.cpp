// The pages of parts, and what else of the app a part concerns: drafts, questions, imports, and
// the aircraft that shared it.
#include "tests/app/parts_hangar.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;
using canvas::support::PartsHangar;
using facts::Fact;
using twoclocks::support::day;
using Lines = std::vector<std::string>;

const PartsPage& parts(AppState& app) {
    const auto* page = std::get_if<PartsPage>(&app.screen().page);
    REQUIRE(page != nullptr);
    return *page;
}

Lines titles(AppState& app) {
    Lines out;
    for (const views::PartGroup& group : parts(app).view.groups)
        out.push_back(base::say(group.title, {}));
    return out;
}

Lines offered(const PartPage& page) {
    Lines out;
    for (const PartOffer& offer : page.offered)
        out.push_back(offer.id);
    return out;
}

Lines changes(AppState& app) {
    const auto* files = std::get_if<FilesPage>(&app.screen().page);
    REQUIRE(files != nullptr);
    REQUIRE(files->preview);
    Lines out;
    for (const base::Message& change : files->preview->changes)
        out.push_back(base::say(change, {}));
    return out;
}

void fit(PartsHangar& h, const char* registration) {
    h.enter(FormKind::part_fit, h.gearbox.id, {{"date", "2026-11-01"}, {"host", registration}});
    CHECK(h.saved().size() == 1);
}

}  // namespace

TEST_CASE("the parts of an aircraft are searched, and all parts are a choice away",
          "[app][parts]") {
    PartsHangar h;
    fit(h, "TEST-1");
    h.app.apply(intent::OpenParts{h.second.id});
    CHECK(parts(h.app).view.registration == "TEST-2");
    CHECK(titles(h.app).empty());
    h.app.apply(intent::ChooseOption{"parts-which", 1});
    CHECK(titles(h.app) == Lines{"On TEST-1"});
    h.app.field_text("parts-search", "belt");
    CHECK(titles(h.app).empty());
    h.app.field_text("parts-search", "gearB");
    CHECK(titles(h.app) == Lines{"On TEST-1"});
    h.app.apply(intent::FillField{"parts-search", {}});
    CHECK(titles(h.app) == Lines{"On TEST-1"});
    // Opened again, it asks for nothing.
    h.app.apply(intent::OpenFleet{});
    h.app.apply(intent::OpenParts{h.second.id});
    CHECK(titles(h.app).empty());
}

TEST_CASE("of a part only what makes sense where it is can be recorded", "[app][parts]") {
    PartsHangar h;
    CHECK(offered(h.part_page(h.gearbox.id)) == Lines{"part-fit",
                                                      "part-move",
                                                      "part-work",
                                                      "part-item",
                                                      "part-directive",
                                                      "part-rebuild",
                                                      "part-scrap"});
    fit(h, "TEST-1");
    CHECK(offered(h.part_page(h.gearbox.id)) ==
          Lines{"part-remove", "part-work", "part-item", "part-directive", "part-rebuild"});
}

TEST_CASE("a part that was withdrawn leaves its page to the list of all parts", "[app][parts]") {
    PartsHangar h;
    (void)h.part_page(h.gearbox.id);
    h.enter(FormKind::withdraw, h.gearbox.id, {{"why", "Never ours"}});
    CHECK(h.saved().size() == 1);
    h.app.apply(intent::OpenFleet{});
    h.app.apply(intent::OpenPart{h.gearbox.id});
    CHECK(parts(h.app).view.groups.empty());
}

TEST_CASE("a part that is not signed for says so on its page, with its why and its form",
          "[app][parts]") {
    PartsHangar h;
    fit(h, "TEST-1");
    h.app.apply(intent::OpenForm{FormKind::event, h.first.id});
    h.app.apply(intent::ChooseOption{"part-1", 1});
    h.app.apply(intent::SubmitForm{});
    CHECK(h.saved().size() == 1);
    const PartPage& page = h.part_page(h.gearbox.id);
    REQUIRE(page.view.events.size() == 1);
    REQUIRE(h.app.screen().whys.size() == 1);
    h.app.apply(intent::OpenWhy{0});
    CHECK(std::holds_alternative<views::Why>(h.app.screen().sheet));
    h.app.apply(intent::CloseSheet{});
    h.host.answer(h.app);
    h.app.apply(intent::OpenForm{FormKind::sign_event, page.view.events.front().event});
    h.app.field_text("done_by", "Ann");
    h.app.apply(intent::SubmitForm{});
    CHECK(h.saved().size() == 1);
    CHECK(h.part_page(h.gearbox.id).view.events.empty());
}

TEST_CASE("all records of a part are listed under its name", "[app][parts]") {
    PartsHangar h;
    fit(h, "TEST-1");
    h.app.apply(intent::OpenHistory{h.gearbox.id});
    const auto* view = std::get_if<views::HistoryView>(&h.app.screen().page);
    REQUIRE(view != nullptr);
    CHECK(view->registration == "Gearbox 7");
    CHECK(view->rows.size() == 2);
}

TEST_CASE("an unfinished entry of a part comes back after a restart, over its page",
          "[app][parts]") {
    PartsHangar h;
    h.app.apply(intent::OpenForm{FormKind::part_fit, h.gearbox.id});
    h.put("host", "TEST-2");
    h.put("position", "main");
    FakeHost second;
    AppState again{second};
    for (const std::string& segment : h.host.stored)
        CHECK(again.stored(StoredKind::segment, segment));
    again.stored_draft(h.host.draft);
    canvas::support::start(again);
    const auto* form = std::get_if<FormPage>(&again.screen().page);
    REQUIRE(form != nullptr);
    CHECK(base::say(form->title, {}) == "Fit a part");
    const auto field = [&](const char* id) {
        return *std::find_if(form->fields.begin(), form->fields.end(), [&](const auto& each) {
            return each.id == id;
        });
    };
    CHECK(field("position").text == "main");
    CHECK(field("host_total").text == "500.0");
    // The total still is the form's own: another day takes it along.
    again.field_text("date", "2026-10-01");
    form = std::get_if<FormPage>(&again.screen().page);
    CHECK(field("host_total").text.empty());
    again.back();
    CHECK(std::holds_alternative<PartPage>(again.screen().page));
}

TEST_CASE("a question about a part is answered on its page", "[app][parts][answer]") {
    PartsHangar h;
    twoclocks::support::Pen ben{"ben"};
    facts::PartAdded one = PartsHangar::plate("7");
    one.tsn = base::hours(310);
    facts::PartAdded other = PartsHangar::plate("7");
    other.tsn = base::hours(320);
    h.join({h.ann.correct(h.gearbox, one), ben.correct(h.gearbox, other)});
    REQUIRE(h.part_page(h.gearbox.id).view.questions.size() == 1);
    const auto asked = h.part_page(h.gearbox.id).view.questions[0];
    REQUIRE(asked.sides.size() == 2);
    h.app.apply(intent::AnswerQuestion{0, 0});
    h.host.answer(h.app);
    CHECK(h.part_page(h.gearbox.id).view.questions.empty());
    const auto chosen = h.state(h.gearbox.id);
    CHECK((chosen.tsn == base::hours(310) || chosen.tsn == base::hours(320)));
    CHECK(chosen.questions.empty());
    h.app.apply(intent::ExportJournal{});
    const auto all = facts::parse_journal(h.host.file).facts;
    const auto answer = std::find_if(all.begin(), all.end(), [](const Fact& fact) {
        return std::holds_alternative<facts::Answer>(fact.body.fields);
    });
    REQUIRE(answer != all.end());
    CHECK(answer->body.about.front() == h.gearbox.id);
}

TEST_CASE("an import names the aircraft of what names a part first, or the part",
          "[app][parts][import]") {
    PartsHangar h;
    const Fact belt = h.ann.add(day("2026-11-02"), {}, PartsHangar::plate("8"));
    const Fact on = h.ann.write(day("2026-11-02"), {belt.id, h.first.id}, facts::PartFitted{});
    const Fact moved =
        h.ann.write(day("2026-11-02"), {h.gearbox.id}, facts::PartMoved{"Shelf", {}, {}, {}, {}});
    const Fact lost =
        h.ann.write(day("2026-11-02"), {base::Id{9, 9}}, facts::PartMoved{"Shelf", {}, {}, {}, {}});
    h.app.file_chosen(
        "other.jsonl",
        facts::print_journal(twoclocks::support::journal_of({belt, on, moved, lost})));
    Lines said = changes(h.app);
    std::sort(said.begin(), said.end());
    CHECK(said == Lines{"1 other new record for Gearbox 7",
                        "1 other new record for TEST-1",
                        "1 record of an aircraft or part that is not in the file",
                        "New part: Gearbox 8"});
}

TEST_CASE("an import counts a question about a part once", "[app][parts][import]") {
    PartsHangar h;
    fit(h, "TEST-1");
    h.app.apply(intent::ExportJournal{});
    const auto all = facts::parse_journal(h.host.file).facts;
    const auto fitted = std::find_if(all.begin(), all.end(), [](const Fact& fact) {
        return std::holds_alternative<facts::PartFitted>(fact.body.fields);
    });
    REQUIRE(fitted != all.end());
    twoclocks::support::Pen ben{"ben"};
    facts::PartFitted one;
    one.host_total = base::hours(1001);
    facts::PartFitted other;
    other.host_total = base::hours(1002);
    h.app.file_chosen("other.jsonl",
                      facts::print_journal(twoclocks::support::journal_of(
                          {h.ann.correct(*fitted, one), ben.correct(*fitted, other)})));
    const Lines said = changes(h.app);
    CHECK(said.back() == "1 disagreement to settle");
}

TEST_CASE("a record of one aircraft works out every part that ever was on it", "[app][parts]") {
    // The gearbox flew on TEST-1 by an estimate; a reading of TEST-1 from before changes its hours
    // on TEST-2.
    PartsHangar h;
    const Fact on = h.ann.write(day("2026-11-02"), {h.gearbox.id, h.first.id}, facts::PartFitted{});
    const Fact off =
        h.ann.write(day("2026-11-10"), {h.gearbox.id, h.first.id}, facts::PartRemoved{});
    const Fact over =
        h.ann.write(day("2026-11-11"), {h.gearbox.id, h.second.id}, facts::PartFitted{});
    h.join({on, off, over});
    const auto hours = [&] { return base::say(h.part_page(h.gearbox.id).view.hours_new.text, {}); };
    CHECK(hours() == "about 350.0 h, an estimate");
    h.join({h.ann.write(
        day("2026-11-10"), {h.first.id, h.first_meter.id}, twoclocks::support::reads(200))});
    CHECK(hours() == "about 320.0 h, an estimate");
    h.app.apply(intent::OpenFleet{});
    h.app.apply(intent::OpenParts{h.second.id});
    REQUIRE(parts(h.app).view.groups.size() == 1);
    CHECK(base::say(parts(h.app).view.groups[0].rows[0].since_new, {}) == "about 320.0 h");
}
