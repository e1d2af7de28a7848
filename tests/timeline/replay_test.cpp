#include "catch_amalgamated.hpp"
#include "tests/support/hangar.hpp"

#include <string>
#include <vector>

#include "engine/limits/due.hpp"
#include "engine/timeline/state.hpp"

using namespace twoclocks;
using facts::Fact;
using support::day;
using support::Hangar;
using timeline::AircraftState;

namespace {

AircraftState replayed(const Hangar& hangar, const std::vector<Fact>& more = {}) {
    facts::Journal journal = hangar.journal;
    for (const Fact& fact : more)
        journal.add(fact);
    return timeline::replay(journal, hangar.id(), hangar.today);
}

std::string usage_of(const AircraftState& state) {
    std::string out;
    for (const timeline::UsagePoint& point : state.usage) {
        out += base::print_date(point.on).substr(5) + '=' +
               base::print_tenths(point.total, base::Round::down) + ' ';
    }
    return out;
}

}  // namespace

TEST_CASE("total time is the meter and its offset, and what work names", "[timeline][total]") {
    const Hangar h;
    const AircraftState state = replayed(h);
    CHECK(usage_of(state) == "01-01=1000.0 03-01=1100.0 04-01=1120.0 06-01=1160.0 ");
    CHECK(state.certain.size() == state.usage.size());
    CHECK(state.registration == "ISLE-1");
    REQUIRE(state.meters.size() == 1);
    CHECK(state.meters.front().last_reads == base::tenths(1600));
    CHECK(state.meters.front().last_on == day("2024-06-01"));
    CHECK(state.questions.empty());
    CHECK(state.cautions.empty());
}

TEST_CASE("a total that falls is no point of the life", "[timeline][total]") {
    Hangar h;
    facts::Journal journal = h.journal;
    journal.add(h.read(h.ben, "2024-06-20", 1400));
    const AircraftState state = timeline::replay(journal, h.id(), h.today);
    CHECK(usage_of(state) == "01-01=1000.0 03-01=1100.0 04-01=1120.0 06-01=1160.0 ");
    CHECK(state.certain.size() == 3);
    REQUIRE(state.questions.size() == 1);
    CHECK(state.questions.front().kind == timeline::QuestionKind::falling);
    CHECK(state.questions.front().sides.size() == 2);
    CHECK(state.questions.front().sides.front().fact.id == h.reading.id);
}

TEST_CASE("one wrong reading does not make the next one a question", "[timeline][total]") {
    Hangar h;
    const AircraftState state =
        replayed(h, {h.read(h.ben, "2024-06-10", 100), h.read(h.ben, "2024-06-11", 1605)});
    REQUIRE(state.questions.size() == 1);
    CHECK(state.questions.front().kind == timeline::QuestionKind::falling);
}

TEST_CASE("the last meter is the one fitted on the latest day", "[timeline][meter]") {
    Hangar h;
    const Fact later = h.ann.add(
        day("2024-05-01"), {h.id()}, facts::MeterFitted{"C", {}, {}, base::hours(1130), {}});
    const Fact earlier = h.ann.add(
        day("2024-04-15"), {h.id()}, facts::MeterFitted{"B", {}, {}, base::hours(1125), {}});
    const AircraftState state = replayed(h, {later, earlier});
    REQUIRE(state.meters.size() == 3);
    CHECK(state.meters.back().name == "C");
    CHECK(state.meters[1].name == "B");
}

TEST_CASE("which meter was read is recorded and meters never mix", "[timeline][meter]") {
    Hangar h;
    const facts::MeterFitted fitted{
        "Tachometer", facts::MeterDrive::tachometer, base::tenths(5000), base::hours(1160), {}};
    const Fact second = h.ann.add(day("2024-06-02"), {h.id()}, fitted);
    const Fact reading = h.ann.write(day("2024-06-20"), h.with(second), support::reads(5100));
    const AircraftState state = replayed(h, {second, reading});
    CHECK(limits::total_time(state) == base::tenths(11'700));
    CHECK(state.meters.front().last_reads == base::tenths(1600));
    CHECK(state.meters.back().last_reads == base::tenths(5100));
    CHECK(state.meters.back().drive == facts::MeterDrive::tachometer);
}

TEST_CASE("the higher of two readings of one day is the last", "[timeline][meter]") {
    Hangar h;
    const AircraftState state =
        replayed(h, {h.read(h.ann, "2024-06-20", 1620), h.read(h.ben, "2024-06-20", 1610)});
    CHECK(state.meters.front().last_reads == base::tenths(1620));
    CHECK(state.questions.empty());
}

TEST_CASE("names change on their day and not before", "[timeline][names]") {
    Hangar h;
    const auto changed = [&](const char* on) {
        return replayed(h,
                        {h.ann.write(day(on), {h.id()}, facts::AircraftChanged{"ISLE-2", {}}),
                         h.ann.write(day(on), h.with(h.check), facts::ItemChanged{"100 h", {}})});
    };
    CHECK(changed("2024-07-01").registration == "ISLE-2");
    CHECK(changed("2024-07-01").items.back().name == "100 h");
    CHECK(changed("2024-07-02").registration == "ISLE-1");
    CHECK(changed("2024-07-02").items.back().name == "Check");
}

TEST_CASE("plans hold from their day and spells are all kept", "[timeline][plan]") {
    Hangar h;
    const auto plan = [&](const char* on, std::int64_t hours) {
        return h.ann.write(day(on), {h.id()}, facts::UsagePlanned{base::hours(hours), {}});
    };
    const Fact spell =
        h.ann.write(day("2024-11-01"), {h.id()}, facts::OutOfService{day("2025-03-01"), "Winter"});
    const AircraftState state = replayed(
        h, {plan("2024-06-01", 10), plan("2024-07-01", 12), plan("2024-07-02", 20), spell});
    REQUIRE(state.plan.has_value());
    CHECK(state.plan->month == base::hours(12));
    REQUIRE(state.spells.size() == 1);
    CHECK(state.spells.front().until == day("2025-03-01"));
}

TEST_CASE("the fleet has every aircraft but those taken back", "[timeline][fleet]") {
    Hangar h;
    facts::Journal journal = h.journal;
    const Fact second =
        h.ann.add(day("2024-01-01"), {}, facts::AircraftAdded{"ISLE-2", {}, {}, {}, false});
    journal.add(second);
    CHECK(timeline::replay_fleet(journal, h.today).size() == 2);
    journal.add(h.ann.withdraw(second));
    REQUIRE(timeline::replay_fleet(journal, h.today).size() == 1);
    CHECK(timeline::replay_fleet(journal, h.today).front().registration == "ISLE-1");
}

TEST_CASE("counts are the highest recorded, wherever they stand", "[timeline][counts]") {
    Hangar h;
    facts::Reading reading = support::reads(1610);
    reading.landings = base::Count{500};
    reading.starts = base::Count{90};
    facts::WorkDone work = support::renews({h.check.id}, -1);
    work.landings = base::Count{520};
    const AircraftState state = replayed(h,
                                         {h.ann.write(day("2024-06-10"), h.with(h.meter), reading),
                                          h.ann.write(day("2024-06-11"), {h.id()}, work)});
    CHECK(state.landings == base::Count{520});
    CHECK(state.starts == base::Count{90});
}
