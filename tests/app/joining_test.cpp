// What a file would do, told before it is joined: figures that move, records that would disagree.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/support/hangar.hpp"
#include "tests/support/said.hpp"

#include <algorithm>

#include "engine/base/region.hpp"
#include "engine/facts/print.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;
using facts::Fact;
using ::twoclocks::support::reads;
using twoclocks::support::said;

std::string file_of(const facts::Journal& journal, const std::vector<Fact>& more) {
    facts::Journal out = journal;
    for (const Fact& fact : more)
        out.add(fact);
    return facts::print_journal(out);
}

/// A device that has joined one file and looks at another.
struct Joining {
    Joining(const std::string& has, const std::string& file) {
        canvas::support::start(app);
        app.file_chosen("mine.jsonl", has);
        app.apply(intent::AcceptImport{});
        host.answer(app);
        app.file_chosen("theirs.jsonl", file);
    }

    const ImportPreview& preview() {
        const auto* page = std::get_if<FilesPage>(&app.screen().page);
        REQUIRE(page != nullptr);
        REQUIRE(page->preview);
        return *page->preview;
    }

    std::vector<std::string> changes() {
        std::vector<std::string> out;
        for (const base::Message& change : preview().changes)
            out.push_back(base::say(change, {}));
        return out;
    }

    FakeHost host;
    AppState app{host};
};

const views::QuestionView::Side& side_from(const Disagreement& one, const std::string& origin) {
    const auto& sides = one.question.sides;
    const auto found = std::find_if(
        sides.begin(), sides.end(), [&](const auto& side) { return said(side.origin) == origin; });
    CAPTURE(origin);
    REQUIRE(found != sides.end());
    return *found;
}

/// The place of the side with a value.
std::int32_t side_of(const views::QuestionView& question, const std::string& value) {
    for (std::size_t side = 0; side < question.sides.size(); ++side) {
        if (said(question.sides[side].value) == value) return static_cast<std::int32_t>(side);
    }
    FAIL("no side says " << value);
    return -1;
}

}  // namespace

TEST_CASE("a file that disagrees is told with both values, who, when, on which device, and where",
          "[app][joining]") {
    twoclocks::support::Hangar h;
    Joining bench{file_of(h.journal, {h.ann.correct(h.reading, reads(1650))}),
                  file_of(h.journal, {h.ben.correct(h.reading, reads(1700))})};
    REQUIRE(bench.preview().disagreements.size() == 1);
    const Disagreement& one = bench.preview().disagreements.front();
    CHECK(said(one.about) == "ISLE-1: records would disagree");
    CHECK(said(one.question.what) == "A record was changed in two ways.");
    REQUIRE(one.question.sides.size() == 2);
    const auto& ann = side_from(one, "Here");
    const auto& ben = side_from(one, "In the file");
    CHECK(said(ann.value) == "Reading 165.0 h");
    CHECK(said(ann.told_by).find("Tester ann, written ") == 0);
    CHECK(said(ann.told_by).find(" UTC on device ann") != std::string::npos);
    CHECK(said(ben.value) == "Reading 170.0 h");
    CHECK(said(ben.told_by).find(" UTC on device ben") != std::string::npos);
    CHECK(bench.changes() ==
          std::vector<std::string>{
              "1 correction for ISLE-1",
              "ISLE-1, hours left to the overhaul: 1,035.0 now, 1,030.0 with this file",
              "1 disagreement to settle"});
}

TEST_CASE("joined and left open the safer value is in use; set aside, all is as before",
          "[app][joining]") {
    twoclocks::support::Hangar h;
    Joining bench{file_of(h.journal, {h.ann.correct(h.reading, reads(1650))}),
                  file_of(h.journal, {h.ben.correct(h.reading, reads(1700))})};
    bench.app.apply(intent::AcceptImport{});
    bench.host.answer(bench.app);
    const auto aircraft = [&]() -> views::AircraftView {
        bench.app.apply(intent::OpenAircraft{h.id()});
        return std::get<views::AircraftView>(bench.app.screen().page);
    };
    CHECK(said(aircraft().hours_left.text) == "1,030.0 h");
    CHECK(aircraft().hours_left.questioned);
    CHECK_FALSE(aircraft().calendar_left.questioned);
    bench.app.apply(intent::SetAside{2});
    bench.host.answer(bench.app);
    CHECK(said(aircraft().hours_left.text) == "1,035.0 h");
    CHECK_FALSE(aircraft().hours_left.questioned);
    bench.app.apply(intent::TakeBack{2});
    bench.host.answer(bench.app);
    CHECK(aircraft().hours_left.questioned);
    const std::int32_t ann = side_of(aircraft().questions.front(), "Reading 165.0 h");
    bench.app.apply(intent::AnswerQuestion{0, ann});
    bench.host.answer(bench.app);
    CHECK(said(aircraft().hours_left.text) == "1,035.0 h");
    CHECK(aircraft().questions.empty());
}

TEST_CASE("a question that is asked already is not told again", "[app][joining]") {
    twoclocks::support::Hangar h;
    const Fact first = h.ann.correct(h.reading, reads(1650));
    const Fact second = h.ben.correct(h.reading, reads(1700));
    Joining bench{file_of(h.journal, {first, second}),
                  file_of(h.journal, {first, second, h.read(h.ben, "2024-06-20", 1750)})};
    CHECK(bench.preview().disagreements.empty());
    CHECK(bench.changes().front() == "1 new reading for ISLE-1");
}

TEST_CASE("an answer in the file is told as one, and what it settles is asked no more",
          "[app][joining]") {
    twoclocks::support::Hangar h;
    const Fact first = h.ann.correct(h.reading, reads(1650));
    const Fact second = h.ben.correct(h.reading, reads(1700));
    const std::vector<facts::Ref> sides{{first.id, 0}, {second.id, 0}};
    Joining bench{file_of(h.journal, {first, second}),
                  file_of(h.journal, {first, second, h.ann.answer(h.id(), sides, {sides[0]})})};
    CHECK(bench.preview().disagreements.empty());
    CHECK(bench.changes() ==
          std::vector<std::string>{
              "1 answer to a question about ISLE-1",
              "ISLE-1, hours left to the overhaul: 1,030.0 now, 1,035.0 with this file"});
}

TEST_CASE("two people who correct alike do not disagree: the side is here and in the file",
          "[app][joining]") {
    twoclocks::support::Hangar h;
    Joining alike{file_of(h.journal, {h.ann.correct(h.reading, reads(1650))}),
                  file_of(h.journal, {h.ben.correct(h.reading, reads(1650))})};
    CHECK(alike.preview().disagreements.empty());
    const Fact shared = h.ann.correct(h.reading, reads(1650));
    Joining both{file_of(h.journal, {shared}),
                 file_of(h.journal, {shared, h.ben.correct(h.reading, reads(1700))})};
    REQUIRE(both.preview().disagreements.size() == 1);
    const Disagreement& one = both.preview().disagreements.front();
    CHECK(said(side_from(one, "Here and in the file").value) == "Reading 165.0 h");
    CHECK(said(side_from(one, "In the file").value) == "Reading 170.0 h");
}

TEST_CASE("a limit that moves the calendar is told by its day, one that goes unknown as unknown",
          "[app][joining]") {
    twoclocks::support::Hangar h;
    facts::LimitSet shorter = std::get<facts::LimitSet>(h.overhaul_limit.body.fields);
    shorter.months = 120;
    Joining bench{file_of(h.journal, {}),
                  file_of(h.journal,
                          {h.ben.correct(h.overhaul_limit,
                                         ::twoclocks::support::body(h.overhaul_limit.body.on,
                                                                    h.overhaul_limit.body.about,
                                                                    shorter))})};
    // 2020-01-01 and 144 months, 120 months.
    CHECK(bench.changes().back() ==
          "ISLE-1, calendar limit of the overhaul: 1 Jan 2032 now, 1 Jan 2030 with this file");
}
