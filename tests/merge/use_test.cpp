// What two people write about storage, hours not counted and kinds of flying: the safer side holds
// until somebody chooses.
#include "tests/support/stored.hpp"

#include <vector>

using namespace twoclocks;
using facts::AdjustReason;
using facts::Fact;
using facts::InForce;
using facts::MeterAdjusted;
using facts::Operation;
using support::day;
using support::Stored;

namespace {

MeterAdjusted dead(std::int64_t tenths) {
    return {AdjustReason::dead, base::tenths(tenths), base::tenths(1600), "Flight log", {}};
}

std::int64_t left_tenths(const Stored& s) {
    const limits::ItemDue due = s.due(s.check);
    return limits::clock_of(due, facts::Clock::hours)->left.seconds / 360;
}

/// Settles two facts for one of them.
void choose(Stored& s, const Fact& kept, const Fact& dropped) {
    s.keep(s.ann.answer(s.id(), {{kept.id, 0}, {dropped.id, 0}}, {{kept.id, 0}}));
}

}  // namespace

TEST_CASE("of hours not counted that people disagree about the most are in use",
          "[merge][adjust]") {
    Stored s;
    const Fact first = s.adjusted("2024-06-10", dead(50));
    const Fact more = s.keep(s.ann.correct(first, dead(80)));
    const Fact less = s.keep(s.ben.correct(first, dead(20)));
    CHECK(s.state().questions.size() == 1);
    CHECK(s.total_tenths() == 11'680);
    CHECK(left_tenths(s) == 520);
    choose(s, less, more);
    CHECK(s.state().questions.empty());
    CHECK(s.total_tenths() == 11'620);
}

TEST_CASE("hours not counted stay while one person takes them back", "[merge][adjust]") {
    Stored s;
    const Fact first = s.adjusted("2024-06-10", dead(50));
    const Fact changed = s.keep(s.ann.correct(first, dead(40)));
    const Fact gone = s.keep(s.ben.withdraw(first));
    CHECK(s.total_tenths() == 11'640);
    choose(s, gone, changed);
    CHECK(s.total_tenths() == 11'600);
}

TEST_CASE("no estimate rests on hours that people disagree about", "[merge][adjust]") {
    Stored s;
    const Fact first = s.adjusted("2024-06-10", dead(50));
    s.keep(s.read(s.ann, "2024-06-12", 1620));
    s.keep(s.ann.write(day("2024-06-15"), {s.id()}, support::renews({s.check.id}, -1)));
    CHECK(left_tenths(s) == 1000);
    s.keep(s.ann.correct(first, dead(80)));
    s.keep(s.ben.correct(first, dead(20)));
    CHECK(left_tenths(s) == 1000 - 100);  // from 1,160.0 h on 1 June, 1,170.0 h now
}

TEST_CASE("while storage is in dispute its checks count always", "[merge][storage]") {
    Stored s;
    const Fact turned = s.item(InForce::in_storage, 14);
    const Fact first = s.stored("2024-06-10");
    const Fact later = s.keep(
        s.ann.correct(first, support::body(day("2024-06-20"), {s.id()}, Stored::storage(nullptr))));
    const Fact gone = s.keep(s.ben.withdraw(first));
    CHECK(s.state().questions.size() == 1);
    CHECK(s.ends(turned) == "2024-01-15");  // from the day the limit names
    CHECK_FALSE(s.due(turned).is_stored);
    s.work(turned, "2024-06-15");
    CHECK(s.ends(turned) == "2024-06-29");
    choose(s, later, gone);
    CHECK(s.ends(turned) == "2024-07-04");
}

TEST_CASE("storage in dispute before the day a limit names counts from the earlier",
          "[merge][storage]") {
    Stored s;
    facts::LimitSet limit = Stored::counted(InForce::in_storage, 14);
    limit.anchor_on = day("2024-06-25");
    const Fact turned = s.keep(s.ann.add(
        day("2024-01-01"), {s.id()}, facts::ItemAdded{"Turn", facts::ItemRole::inspection, {}}));
    s.keep(s.ann.write(day("2024-01-01"), s.with(turned), limit));
    const Fact first = s.stored("2024-06-10");
    s.keep(s.ann.correct(first, Stored::storage("2024-08-01")));
    s.keep(s.ben.correct(first, Stored::storage("2024-09-01")));
    CHECK(s.ends(turned) == "2024-06-24");
}

TEST_CASE("a check on return is due by any storage that may have been", "[merge][storage]") {
    Stored s;
    const Fact back = s.item(InForce::on_return, 30);
    const Fact first = s.stored("2024-06-02");
    const Fact ended = s.keep(s.ann.correct(first, Stored::storage("2024-06-20")));
    const Fact gone = s.keep(s.ben.withdraw(first));
    CHECK(s.ends(back) == "2024-01-31");
    s.work(back, "2024-06-20");
    CHECK(s.ends(back) == "2024-07-20");  // done for the one; the other way it counts always
    choose(s, gone, ended);
    CHECK(s.ends(back) == "asleep");
}

TEST_CASE("a limit that may count always does until somebody chooses", "[merge][storage]") {
    Stored s;
    const Fact turned = s.keep(s.ann.add(
        day("2024-01-01"), {s.id()}, facts::ItemAdded{"Turn", facts::ItemRole::inspection, {}}));
    const Fact set = s.keep(
        s.ann.write(day("2024-01-01"), s.with(turned), Stored::counted(InForce::in_storage, 14)));
    const Fact stays = s.keep(s.ann.correct(set, Stored::counted(InForce::in_storage, 20)));
    const Fact always = s.keep(s.ben.correct(set, Stored::counted(InForce::always, 30)));
    CHECK(s.ends(turned) == "2024-01-21");
    choose(s, stays, always);
    CHECK(s.ends(turned) == "asleep");
}

TEST_CASE("of factors and hours of a kind in dispute what uses the most is in use",
          "[merge][factor]") {
    Stored s;
    const auto says = [](std::int32_t thousandths) {
        return facts::HoursFactor{Operation::agricultural, thousandths, "Letter 7", {}};
    };
    const Fact factor = s.keep(s.ann.write(day("2024-01-01"), {s.id()}, says(1500)));
    const Fact flown =
        s.keep(s.ann.write(day("2024-03-30"),
                           {s.id()},
                           facts::FlownAs{Operation::agricultural, {}, base::hours(10), {}}));
    CHECK(left_tenths(s) == 600);  // flown before the check was done
    const Fact twice = s.keep(s.ann.correct(factor, says(2000)));
    const Fact less = s.keep(s.ben.correct(factor, says(1200)));
    const Fact after = s.keep(s.ann.correct(
        flown,
        support::body(day("2024-05-01"),
                      {s.id()},
                      facts::FlownAs{Operation::agricultural, {}, base::hours(8), {}})));
    const Fact gone = s.keep(s.ben.withdraw(flown));
    CHECK(s.state().questions.size() == 2);
    CHECK(left_tenths(s) == 520);
    choose(s, less, twice);
    CHECK(left_tenths(s) == 584);
    choose(s, gone, after);
    CHECK(left_tenths(s) == 600);
}

TEST_CASE("an item's own factor in dispute is never below the aircraft's", "[merge][factor]") {
    Stored s;
    s.keep(s.ann.write(day("2024-01-01"),
                       {s.id()},
                       facts::HoursFactor{Operation::agricultural, 3000, "Letter 7", {}}));
    s.keep(s.ann.write(day("2024-05-01"),
                       {s.id()},
                       facts::FlownAs{Operation::agricultural, {}, base::hours(10), {}}));
    const facts::HoursFactor own{Operation::agricultural, 1500, "Letter 8", {}};
    const Fact mine = s.keep(s.ann.write(day("2024-01-01"), s.with(s.check), own));
    CHECK(left_tenths(s) == 550);
    s.keep(s.ann.correct(mine, facts::HoursFactor{Operation::agricultural, 1200, "Letter 8", {}}));
    s.keep(s.ben.withdraw(mine));
    CHECK(left_tenths(s) == 400);
}
