// Answering on the canvas, and answering again.
#include "catch_amalgamated.hpp"
#include "tests/app/fake_host.hpp"
#include "tests/support/pen.hpp"

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/facts/parse.hpp"

namespace {

using namespace twoclocks;
using namespace twoclocks::canvas;
using canvas::support::FakeHost;
using facts::Fact;
using twoclocks::support::day;
using twoclocks::support::Pen;
using twoclocks::support::reads;

/// One aircraft whose last reading three people correct, and a second that one of them moves it to.
struct Three {
    Pen ann{"ann"};
    Pen ben{"ben"};
    Pen cay{"cay"};
    Fact aircraft =
        ann.add(day("2026-01-01"), {}, facts::AircraftAdded{"ISLE-1", {}, {}, {}, false});
    Fact meter = ann.add(day("2026-01-01"), {aircraft.id}, facts::MeterFitted{});
    Fact reading = ann.write(day("2026-06-01"), {aircraft.id, meter.id}, reads(1600));
    Fact from_ann = ann.correct(reading, reads(1650));
    Fact from_ben = ben.correct(reading, reads(1700));
    Fact from_cay = cay.correct(reading, reads(1620));
};

std::string file_of(const std::vector<Fact>& facts) {
    return facts::print_journal(twoclocks::support::journal_of(facts));
}

void join(AppState& app, FakeHost& host, const std::vector<Fact>& facts) {
    app.file_chosen("other.jsonl", file_of(facts));
    app.apply(intent::AcceptImport{});
    host.answer(app);
}

const views::AircraftView& open(AppState& app, base::Id aircraft) {
    app.apply(intent::OpenFleet{});
    app.apply(intent::OpenAircraft{aircraft});
    const auto* view = std::get_if<views::AircraftView>(&app.screen().page);
    REQUIRE(view != nullptr);
    return *view;
}

/// Chooses the side of the only question that shows these words.
void choose_side(AppState& app, FakeHost& host, base::Id aircraft, const std::string& words) {
    const views::AircraftView& view = open(app, aircraft);
    REQUIRE(view.questions.size() == 1);
    const auto& sides = view.questions.front().sides;
    for (std::size_t side = 0; side < sides.size(); ++side) {
        if (base::say(sides[side].value, {}) != words) continue;
        app.apply(intent::AnswerQuestion{0, static_cast<std::int32_t>(side)});
        host.answer(app);
        return;
    }
    FAIL("no side says so");
}

std::string total(AppState& app, base::Id aircraft) {
    return base::say(open(app, aircraft).total_time.text, {});
}

}  // namespace

TEST_CASE("a question that was answered can be answered otherwise when it opens again",
          "[app][answer]") {
    Three t;
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    join(app, host, {t.aircraft, t.meter, t.reading, t.from_ann, t.from_ben});
    choose_side(app, host, t.aircraft.id, "Reading 170.0 h");
    CHECK(open(app, t.aircraft.id).questions.empty());
    join(app, host, {t.from_cay});
    choose_side(app, host, t.aircraft.id, "Reading 162.0 h");
    CHECK(open(app, t.aircraft.id).questions.empty());
    CHECK(total(app, t.aircraft.id) == "162.0 h total, read 1 Jun 2026");
}

TEST_CASE("an answer settles a dispute on every aircraft it spans, at once", "[app][answer]") {
    Three t;
    const Fact second =
        t.ann.add(day("2026-01-01"), {}, facts::AircraftAdded{"ISLE-2", {}, {}, {}, false});
    const Fact meter = t.ann.add(day("2026-01-01"), {second.id}, facts::MeterFitted{});
    facts::Body moved = t.reading.body;
    moved.about = {second.id, meter.id};
    moved.fields = reads(1610);
    FakeHost host;
    AppState app{host};
    canvas::support::start(app);
    join(app,
         host,
         {t.aircraft,
          t.meter,
          t.reading,
          second,
          meter,
          t.ann.correct(t.reading, moved),
          t.from_ben});
    CHECK(open(app, second.id).questions.size() == 1);
    choose_side(app, host, t.aircraft.id, "Reading 161.0 h");
    CHECK(open(app, t.aircraft.id).questions.empty());
    CHECK(open(app, second.id).questions.empty());
    CHECK(total(app, second.id) == "161.0 h total, read 1 Jun 2026");
    CHECK(total(app, t.aircraft.id) == "0.0 h total, read 1 Jan 2026");
}
