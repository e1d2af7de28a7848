// The book goes on: limits, work and names that two people change, and what is not all here yet.
#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <optional>
#include <string>

#include "engine/limits/due.hpp"

using namespace twoclocks;
using base::Date;
using facts::Fact;
using facts::Journal;
using support::day;
using support::Hangar;
using support::renews;
using timeline::AircraftState;

namespace {

const limits::ItemDue& item_of(const std::vector<limits::ItemDue>& items, base::Id id) {
    for (const limits::ItemDue& item : items) {
        if (item.item == id) return item;
    }
    FAIL("the item is not there");
    return items.front();
}

/// Hours left in tenths and the day the calendar ends, of the check.
std::string check_of(const Hangar& hangar, const AircraftState& state) {
    const auto items = limits::due_items(state, hangar.today);
    const limits::ItemDue& item = item_of(items, hangar.check.id);
    const auto* hours = limits::clock_of(item, facts::Clock::hours);
    const auto* calendar = limits::clock_of(item, facts::Clock::calendar);
    std::string out = hours == nullptr ? "no hours" : std::to_string(hours->left.seconds / 360);
    return out + ' ' + (calendar == nullptr ? "no day" : base::print_date(calendar->due_on));
}

struct KindCase {
    const char* name;
    void (*write)(Hangar&, Journal& ann, Journal& ben);
    std::size_t questions;
    const char* check;  // tenths left, day due
};

facts::WorkDone on_clock(const Hangar& hangar, facts::Clock clock, std::int64_t total_tenths) {
    facts::WorkDone out = renews({hangar.check.id}, total_tenths);
    out.renews.front().clocks = {clock};
    return out;
}

const KindCase work_and_limits[] = {
    {"nobody writes", [](Hangar&, Journal&, Journal&) {}, 0, "600 2025-04-01"},
    {"work at two totals: the lower",
     [](Hangar& h, Journal& ann, Journal& ben) {
         ann.add(h.ann.correct(h.work, renews({h.check.id}, 11'210)));
         ben.add(h.ben.correct(h.work, renews({h.check.id}, 11'150)));
     },
     1,
     "550 2025-04-01"},
    {"work on two days: the earlier",
     [](Hangar& h, Journal& ann, Journal& ben) {
         facts::Body moved = h.work.body;
         moved.on = day("2024-04-20");
         ann.add(h.ann.correct(h.work, moved));
         moved.on = day("2024-04-10");
         ben.add(h.ben.correct(h.work, moved));
     },
     1,
     "600 2025-04-10"},
    {"work corrected and withdrawn: not done, and its total still counts",
     [](Hangar& h, Journal& ann, Journal& ben) {
         ann.add(h.ann.correct(h.work, renews({h.check.id}, 11'700)));
         ben.add(h.ben.withdraw(h.work));
     },
     1,
     "-200 2025-01-01"},
    {"work that renews different clocks: only what both renew",
     [](Hangar& h, Journal& ann, Journal& ben) {
         ann.add(h.ann.correct(h.work, on_clock(h, facts::Clock::hours, 11'200)));
         ben.add(h.ben.correct(h.work, renews({h.check.id}, 11'200)));
     },
     1,
     "600 2025-01-01"},
    {"work with and without a total: the lower of it and the last reading before",
     [](Hangar& h, Journal& ann, Journal& ben) {
         ann.add(h.ann.correct(h.work, renews({h.check.id}, 11'200)));
         ben.add(h.ben.correct(h.work, renews({h.check.id}, -1)));
     },
     1,
     "400 2025-04-01"},
    {"work that one moves ahead of today: not done yet",
     [](Hangar& h, Journal& ann, Journal& ben) {
         facts::Body moved = h.work.body;
         moved.on = day("2024-07-02");
         ann.add(h.ann.correct(h.work, moved));
         ben.add(h.ben.correct(h.work, renews({h.check.id}, 11'200)));
     },
     1,
     "-100 2025-01-01"},
    {"a limit of 90 and of 80 hours: the shorter",
     [](Hangar& h, Journal& ann, Journal& ben) {
         ann.add(h.ann.correct(h.check_limit, support::limit(90, 12)));
         ben.add(h.ben.correct(h.check_limit, support::limit(80, 13)));
     },
     1,
     "400 2025-04-01"},
    {"a limit corrected and withdrawn: it stands",
     [](Hangar& h, Journal& ann, Journal& ben) {
         ann.add(h.ann.correct(h.check_limit, support::limit(90, 12)));
         ben.add(h.ben.withdraw(h.check_limit));
     },
     1,
     "500 2025-04-01"},
    {"a later limit in dispute is never longer than the one before it",
     [](Hangar& h, Journal& ann, Journal& ben) {
         const Fact later =
             h.ann.write(day("2024-05-01"), h.with(h.check), support::limit(200, 24));
         ann.add(later);
         ben.add(later);
         ann.add(h.ann.correct(later, support::limit(150, 24)));
         ben.add(h.ben.withdraw(later));
     },
     1,
     "600 2025-04-01"},
    {"two new limits: the later day's holds",
     [](Hangar& h, Journal& ann, Journal& ben) {
         ann.add(h.ann.write(day("2024-05-02"), h.with(h.check), support::limit(150, 12)));
         ben.add(h.ben.write(day("2024-05-01"), h.with(h.check), support::limit(50, 12)));
     },
     0,
     "1100 2025-04-01"},
    {"a limit for tomorrow does not hold today",
     [](Hangar& h, Journal& ann, Journal&) {
         ann.add(h.ann.write(day("2024-07-02"), h.with(h.check), support::limit(50, 12)));
     },
     0,
     "600 2025-04-01"},
};

}  // namespace

TEST_CASE("the book: work and limits that two people change", "[merge][work]") {
    for (const KindCase& one : work_and_limits) {
        CAPTURE(one.name);
        Hangar hangar;
        Journal ann = hangar.journal;
        Journal ben = hangar.journal;
        one.write(hangar, ann, ben);
        const AircraftState state =
            timeline::replay(facts::merge(ann, ben), hangar.id(), hangar.today);
        CHECK(state.questions.size() == one.questions);
        CHECK(check_of(hangar, state) == one.check);
        for (const timeline::Question& question : state.questions) {
            CHECK_FALSE(question.no_safe_side);
        }
    }
}

TEST_CASE("an answer waits until all that it keeps is here", "[merge][answer]") {
    Hangar h;
    const Fact from_ann = h.ann.correct(h.reading, support::reads(1650));
    const Fact from_ben = h.ben.correct(h.reading, support::reads(1700));
    const Fact answer =
        h.ben.answer(h.id(), {{from_ann.id, 0}, {from_ben.id, 0}}, {{from_ann.id, 0}});
    Journal ben = h.journal;
    ben.add(from_ben);
    ben.add(answer);
    const AircraftState before = timeline::replay(ben, h.id(), h.today);
    CHECK(limits::total_time(before) == base::tenths(11'700));
    ben.add(from_ann);
    const AircraftState after = timeline::replay(ben, h.id(), h.today);
    CHECK(limits::total_time(after) == base::tenths(11'650));
    CHECK(after.questions.empty());
}

TEST_CASE("names, kinds and aircraft that disagree have no safe side", "[merge][unknown]") {
    struct Row {
        const char* name;
        Fact first;
        Fact second;
        bool no_safe_side;
    };

    Hangar h;
    const facts::AircraftAdded other{"ISLE-7", {}, {}, {}, false};
    facts::Body elsewhere = h.reading.body;
    elsewhere.about = {h.id(), support::id_of(5)};
    for (const Row& row : {
             Row{"registration",
                 h.ann.correct(h.aircraft, other),
                 h.ben.withdraw(h.aircraft),
                 true},
             Row{"item",
                 h.ann.correct(h.check, facts::ItemAdded{"A", {}, {}}),
                 h.ben.correct(h.check, facts::ItemAdded{"B", {}, {}}),
                 true},
             Row{"kind",
                 h.ann.correct(h.reading, facts::Note{"Not a reading"}),
                 h.ben.correct(h.reading, support::reads(1650)),
                 true},
             Row{"meter",
                 h.ann.correct(h.reading, elsewhere),
                 h.ben.correct(h.reading, support::reads(1650)),
                 true},
             Row{"reading",
                 h.ann.correct(h.reading, support::reads(1640)),
                 h.ben.correct(h.reading, support::reads(1650)),
                 false},
         }) {
        CAPTURE(row.name);
        Journal joined = h.journal;
        joined.add(row.first);
        joined.add(row.second);
        const AircraftState state = timeline::replay(joined, h.id(), h.today);
        REQUIRE(state.questions.size() >= 1);
        CHECK(state.questions.front().no_safe_side == row.no_safe_side);
    }
}

TEST_CASE("a reading that is moved to another aircraft counts there and no longer here",
          "[merge][moved]") {
    Hangar h;
    Journal journal = h.journal;
    const Fact second =
        h.ann.add(day("2024-01-01"), {}, facts::AircraftAdded{"ISLE-2", {}, {}, {}, false});
    const Fact meter = h.ann.add(day("2024-01-01"), {second.id}, facts::MeterFitted{});
    facts::Body moved = h.reading.body;
    moved.about = {second.id, meter.id};
    for (const Fact& fact : {second, meter, h.ann.correct(h.reading, moved)})
        journal.add(fact);
    const AircraftState here = timeline::replay(journal, h.id(), h.today);
    const AircraftState there = timeline::replay(journal, second.id, h.today);
    CHECK(limits::total_time(here) == base::tenths(11'200));
    CHECK(limits::total_time(there) == base::tenths(1600));
    CHECK(here.cautions.empty());
    CHECK(here.questions.empty());
    CHECK(there.cautions.empty());
}

TEST_CASE("a correction stands alone until its first version comes", "[merge][order]") {
    Hangar h;
    const Fact correction = h.ann.correct(h.reading, support::reads(1650));
    Journal journal;
    for (const Fact& fact : h.journal.facts()) {
        if (fact.id != h.reading.id) journal.add(fact);
    }
    journal.add(correction);
    const AircraftState before = timeline::replay(journal, h.id(), h.today);
    CHECK(limits::total_time(before) == base::tenths(11'650));
    journal.add(h.reading);
    const AircraftState after = timeline::replay(journal, h.id(), h.today);
    CHECK(limits::total_time(after) == base::tenths(11'650));
    CHECK(after.questions.empty());
    CHECK(after.usage.size() == before.usage.size());
}

TEST_CASE("a record of a newer version is counted until it is taken back", "[merge][newer]") {
    Hangar h;
    const Fact newer = h.ben.write(day("2024-05-01"), {h.id()}, facts::UnknownKind{"vibration"});
    Journal journal = h.journal;
    journal.add(newer);
    CHECK(timeline::replay(journal, h.id(), h.today).unknown_records == 1);
    Journal taken_back = journal;
    taken_back.add(h.ann.withdraw(newer));
    CHECK(timeline::replay(taken_back, h.id(), h.today).unknown_records == 0);
    Journal corrected = h.journal;
    corrected.add(h.ben.correct(h.reading, facts::UnknownKind{"vibration"}));
    CHECK(timeline::replay(corrected, h.id(), h.today).unknown_records == 1);
}
