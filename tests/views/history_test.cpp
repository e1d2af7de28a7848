#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/make_views.hpp"

using namespace twoclocks;
using facts::Fact;
using facts::Journal;
using support::day;
using support::Hangar;
using views::HistoryRow;

namespace {

/// Flags of one record's row: corrected, withdrawn, questioned, and whether it can be changed.
std::string flags(const Journal& journal, const Fact& fact) {
    const HistoryRow row = views::make_history_row(journal, fact);
    std::string out;
    if (row.corrected) out += "corrected ";
    if (row.withdrawn) out += "withdrawn ";
    if (row.questioned) out += "questioned ";
    if (row.unknown_kind) out += "newer ";
    CHECK(row.can_correct == row.can_withdraw);
    return out + (row.can_correct ? "open" : "closed");
}

Journal with(const Journal& journal, const std::vector<Fact>& more) {
    Journal out = journal;
    for (const Fact& fact : more)
        out.add(fact);
    return out;
}

}  // namespace

TEST_CASE("a record's flags say what became of it", "[views][history]") {
    Hangar h;
    const Fact correction = h.ann.correct(h.reading, support::reads(1650));
    const Fact withdrawal = h.ben.withdraw(h.reading);
    const Fact answer =
        h.ann.answer(h.id(), {{correction.id, 0}, {withdrawal.id, 0}}, {{correction.id, 0}});
    const Fact newer = h.ann.write(day("2024-06-01"), {h.id()}, facts::UnknownKind{"vibration"});
    Fact twin = h.first_reading;
    twin.body.fields = support::reads(1001);

    CHECK(flags(h.journal, h.reading) == "open");
    const Journal corrected = with(h.journal, {correction});
    CHECK(flags(corrected, h.reading) == "corrected closed");
    CHECK(flags(corrected, correction) == "open");
    const Journal taken_back = with(h.journal, {withdrawal});
    CHECK(flags(taken_back, h.reading) == "withdrawn closed");
    CHECK(flags(taken_back, withdrawal) == "closed");
    const Journal both = with(h.journal, {correction, withdrawal, answer, newer, twin});
    CHECK(flags(both, h.reading) == "corrected withdrawn closed");
    CHECK(flags(both, answer) == "closed");
    CHECK(flags(both, newer) == "newer closed");
    CHECK(flags(both, twin) == "questioned open");
    const Fact to_newer = h.ann.correct(h.first_reading, facts::UnknownKind{"vibration"});
    CHECK(flags(with(h.journal, {to_newer}), to_newer) == "newer closed");
}

TEST_CASE("the history is newest first, by the day a record is true for", "[views][history]") {
    Hangar h;
    // A correction that moves a reading stands on the day it says.
    facts::Body moved = h.reading.body;
    moved.on = day("2024-06-15");
    const Fact correction = h.ann.correct(h.reading, moved);
    const Fact note = h.ann.write(day("2024-05-20"), {h.id()}, facts::Note{"Washed"});
    const auto view =
        views::make_history_view(with(h.journal, {correction, note}), h.id(), "ISLE-1");
    REQUIRE(view.rows.size() == 11);
    CHECK(view.rows[0].fact == correction.id);
    CHECK(view.rows[1].fact == h.reading.id);
    CHECK(view.rows[2].fact == note.id);
    CHECK(view.rows[3].fact == h.work.id);
    CHECK(view.rows.back().fact == h.aircraft.id);
    for (std::size_t i = 1; i < view.rows.size(); ++i) {
        CHECK(view.rows[i - 1].on >= view.rows[i].on);
    }
}

TEST_CASE("the history of all and of one aircraft", "[views][history]") {
    Hangar h;
    const Fact loose = h.ann.write(day("2024-05-20"), {}, facts::Note{"Hangar rent due"});
    const Fact second =
        h.ann.add(day("2024-01-01"), {}, facts::AircraftAdded{"ISLE-2", {}, {}, {}, false});
    const Journal journal = with(h.journal, {loose, second});
    CHECK(views::make_history_view(journal, {}, {}).rows.size() == 11);
    CHECK(views::make_history_view(journal, h.id(), {}).rows.size() == 9);
    CHECK(views::make_history_view(journal, second.id, {}).rows.size() == 1);
}

TEST_CASE("a disagreement is put as a question with its sides and what is in use",
          "[views][question]") {
    Hangar h;
    const Fact first = h.ann.correct(h.reading, support::reads(1650));
    const Fact second = h.ben.correct(h.reading, support::reads(1700));
    const Fact low = h.read(h.ben, "2024-06-20", 1400);
    const auto questions = [&](const std::vector<Fact>& more) {
        const Journal journal = with(h.journal, more);
        return views::make_questions(timeline::replay(journal, h.id(), h.today).questions);
    };
    const auto versions = questions({first, second});
    REQUIRE(versions.size() == 1);
    CHECK(base::say(versions[0].what, {}) == "A record was changed in two ways.");
    CHECK(base::say(versions[0].in_use, {}) ==
          "Until you choose, the value that gives less life is in use.");
    REQUIRE(versions[0].sides.size() == 2);
    CHECK(base::say(versions[0].sides[0].value, {}) == "Reading 170.0 h");
    CHECK(base::say(versions[0].sides[1].value, {}) == "Reading 165.0 h");
    CHECK(base::say(versions[0].sides[0].told_by, {}) ==
          "Tester ben, written 14 Nov 2023 at 22:22 UTC on device ben");
    const auto falling = questions({low});
    REQUIRE(falling.size() == 1);
    CHECK(base::say(falling[0].what, {}) == "A later reading is lower than an earlier one.");
    CHECK(base::say(falling[0].in_use, {}) == "Until you choose, the higher total is in use.");
    const auto undone = questions(
        {h.ann.correct(h.work, support::renews({h.check.id}, 11'210)), h.ben.withdraw(h.work)});
    REQUIRE(undone.size() == 1);
    CHECK(base::say(undone[0].in_use, {}) == "Until you choose, it counts as not done.");
}

TEST_CASE("the reading pad knows the meter and what it showed last", "[views][log]") {
    Hangar h;
    const auto log = [&](const Journal& journal) {
        return views::make_log_view(
            views::assess(timeline::replay(journal, h.id(), h.today), h.today));
    };
    const views::LogView read = log(h.journal);
    CHECK(read.has_meter);
    CHECK(base::say(read.meter_name, {}) == "Collective meter");
    CHECK(base::say(read.last, {}) == "Last: 160.0 on 1 Jun 2024");
    const Fact fresh =
        h.ann.add(day("2024-06-10"),
                  {h.id()},
                  facts::MeterFitted{{}, {}, base::tenths(5), base::hours(1165), {}});
    const views::LogView changed = log(with(h.journal, {fresh}));
    CHECK(base::say(changed.meter_name, {}) == "hour meter");
    CHECK(base::say(changed.last, {}) == "Last: 0.5 on 10 Jun 2024");
    const views::LogView none = log(support::journal_of({h.aircraft}));
    CHECK_FALSE(none.has_meter);
    CHECK(base::say(none.last, {}) == "No meter is recorded");
}

TEST_CASE("cautions name what to look at", "[views][cautions]") {
    Hangar h;
    const auto cautions = [&](const Journal& journal, const char* today) {
        std::string out;
        const auto view = views::make_aircraft_view(
            views::assess(timeline::replay(journal, h.id(), day(today)), day(today)));
        for (const base::Message& one : view.cautions)
            out += base::say(one, {}) + '\n';
        return out;
    };
    CHECK(cautions(h.journal, "2024-07-16").empty());
    CHECK(cautions(h.journal, "2024-07-17") == "The last reading is 46 days old.\n");
    const Fact work = h.ann.write(day("2024-06-10"), {h.id()}, support::renews({h.check.id}, -1));
    CHECK(cautions(with(h.journal, {work}), "2024-07-01") ==
          "Check: its total time at the work is an estimate.\n");
    const Fact bare = h.ann.correct(h.check_limit, support::limit(100, 12));
    CHECK(cautions(with(h.journal, {bare}), "2024-07-01") ==
          "A limit has no source. Check the approved maintenance data.\n");
}
