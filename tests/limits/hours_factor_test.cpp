// Kinds of flying that use limits in hours faster than they are flown.
#include "engine/limits/hours_factor.hpp"

#include "tests/support/stored.hpp"

#include "engine/forecast/projection.hpp"

using namespace twoclocks;
using facts::FlownAs;
using facts::HoursFactor;
using facts::Operation;
using support::day;
using support::Stored;

namespace {

struct Sprayer : Stored {
    facts::Fact factor(std::int32_t thousandths, const char* on = "2024-01-01") {
        return keep(ann.write(day(on), {id()}, sprays(thousandths)));
    }

    [[nodiscard]] static HoursFactor sprays(std::int32_t thousandths) {
        return {Operation::agricultural, thousandths, "Letter 7", {}};
    }

    facts::Fact flown(const char* on, std::int64_t tenths) {
        return keep(ann.write(
            day(on), {id()}, FlownAs{Operation::agricultural, {}, base::tenths(tenths), {}}));
    }

    /// Of the check's 100 h, 60.0 h are left when nothing is flown of a kind.
    [[nodiscard]] std::int64_t left_tenths(const facts::Fact& of) const {
        const limits::ItemDue one = due(of);
        return limits::clock_of(one, facts::Clock::hours)->left.seconds / 360;
    }
};

}  // namespace

TEST_CASE("hours of a kind use a limit by their factor, from its last work on",
          "[limits][factor]") {
    Sprayer s;
    s.flown("2024-05-01", 100);
    CHECK(s.left_tenths(s.check) == 600);  // no document says more
    s.factor(1500);
    CHECK(s.left_tenths(s.check) == 550);
    CHECK(s.left_tenths(s.overhaul) == 10'350);
    CHECK(s.total_tenths() == 11'600);
    s.flown("2024-04-01", 20);  // the day of the work: may have been after it
    CHECK(s.left_tenths(s.check) == 540);
    s.flown("2024-03-31", 20);  // the day before
    CHECK(s.left_tenths(s.check) == 540);
    CHECK(s.left_tenths(s.overhaul) == 10'330);
    const limits::ItemDue due = s.due(s.check);
    const limits::ClockDue* hours = limits::clock_of(due, facts::Clock::hours);
    CHECK(hours->left + hours->used == hours->limit_hours);
    CHECK(hours->extra == base::hours(6));
    CHECK(hours->due_total - hours->left == base::hours(1160));
}

TEST_CASE("no more hours of a kind count than were flown", "[limits][factor]") {
    Sprayer s;
    s.factor(2000);
    s.flown("2024-05-01", 400);
    CHECK(s.left_tenths(s.check) == 200);
    s.flown("2024-05-02", 10);  // 40.0 h were flown since the check
    CHECK(s.left_tenths(s.check) == 200);
}

TEST_CASE("of several kinds the one that uses the most fills the hours first", "[limits][factor]") {
    Sprayer s;
    s.factor(1500);
    s.keep(s.ann.write(
        day("2024-01-01"), {s.id()}, HoursFactor{Operation::external_load, 3000, "Letter 8", {}}));
    s.flown("2024-05-01", 300);
    s.keep(s.ann.write(
        day("2024-05-02"), {s.id()}, FlownAs{Operation::external_load, {}, base::hours(20), {}}));
    // 20 h at 3 and 20 h at 1.5 of the 40 h flown: 40 h and 10 h more.
    CHECK(s.left_tenths(s.check) == 100);
}

TEST_CASE("the last factor of a kind stands, and an item's own before the aircraft's",
          "[limits][factor]") {
    Sprayer s;
    s.flown("2024-05-01", 100);
    s.factor(2000);
    s.factor(1200, "2024-03-01");
    CHECK(s.left_tenths(s.check) == 580);
    s.factor(9000, "2024-07-02");  // from tomorrow on
    CHECK(s.left_tenths(s.check) == 580);
    s.keep(s.ann.write(day("2024-03-01"), s.with(s.check), Sprayer::sprays(3000)));
    CHECK(s.left_tenths(s.check) == 400);
    CHECK(s.left_tenths(s.overhaul) == 10'380);
}

TEST_CASE("what is used is rounded up to the second", "[limits][factor]") {
    Sprayer s;
    s.factor(1001);
    s.keep(s.ann.write(day("2024-05-01"),
                       {s.id()},
                       FlownAs{Operation::agricultural, {}, base::FlightTime{1}, {}}));
    const limits::ItemDue due = s.due(s.check);
    CHECK(limits::clock_of(due, facts::Clock::hours)->extra == base::FlightTime{1});
}

TEST_CASE("the early day takes all flying as the kind that used the most", "[limits][factor]") {
    const auto early = [](std::int32_t thousandths) {
        Sprayer s;
        s.flown("2024-05-01", 10);
        s.factor(thousandths);
        const auto state = s.state();
        const auto ahead = forecast::flying_ahead(state);
        const auto early_day = forecast::project(s.due(s.overhaul), state, ahead, s.today).early;
        CAPTURE(thousandths);
        REQUIRE(early_day);
        return *early_day;
    };
    CHECK(base::days_between(early(3000), early(2000)) > 0);
    CHECK(base::days_between(early(2000), early(1000)) > 0);
}

TEST_CASE("ordinary flying counts as flown, and a factor of 1 changes nothing",
          "[limits][factor]") {
    Sprayer s;
    s.factor(1000);
    s.flown("2024-05-01", 100);
    CHECK(s.left_tenths(s.check) == 600);
}
