// The reserve: deposits, what should be there, ways to close the gap, shares.
#include "engine/budget/reserve.hpp"

#include "tests/budget/lines.hpp"

#include <numeric>
#include <random>

#include "engine/budget/growth.hpp"

using namespace twoclocks;
using namespace twoclocks::budget;
using support::day;

namespace {

/// 250,000 in eight years, four years after the overhaul; nothing is earned.
ReserveAsked asked() {
    ReserveAsked out;
    out.today = day("2026-01-01");
    out.since = day("2022-01-01");
    out.due = day("2034-01-01");
    out.goal = 250'000'00;
    out.hand = 60'000'00;
    out.flown = base::hours(400);
    out.to_fly = base::hours(800);
    out.life = base::hours(2'200);
    return out;
}

}  // namespace

TEST_CASE("without interest the reserve grows evenly with the months", "[budget][reserve]") {
    const ReserveWorked out = work_out(asked());
    CHECK(out.months_gone == 48);
    CHECK(out.months_left == 96);
    // By hand: 250,000 x 48 / 144 = 83,333.33..., up.
    CHECK(*out.should_be == 83'333'34);
    CHECK(*out.shortfall == 23'333'34);
    CHECK(*out.once == 190'000'00);
    CHECK(*out.monthly == 1'979'17);  // 190,000 / 96
    // 96 months of it over 800 h: 1,979.17 x 96 / 800 = 237.5004.
    CHECK(*out.hourly == 237'51);
    CHECK(*out.at_the_end == 190'000'00);
}

TEST_CASE("by the hour alone it falls short where the calendar binds", "[budget][reserve]") {
    ReserveAsked in = asked();
    // Common practice, no source: 250,000 / 2,200 h = 113.636 an hour.
    ReserveWorked out = work_out(in);
    CHECK(*out.linear_hour == 113'64);
    // By hand: 1,200 h of 2,200 are flown by the day; 250,000 - 1,200 x 113.64 = 113,632.
    CHECK(*out.linear_short == 113'632'00);
    in.to_fly = base::hours(1'800);
    out = work_out(in);
    CHECK(*out.linear_short == 0);
    in.life.reset();
    out = work_out(in);
    CHECK(!out.linear_hour);
}

TEST_CASE("what is set aside now comes to so much by the day", "[budget][reserve]") {
    ReserveAsked in = asked();
    CHECK(!work_out(in).will_be);
    in.month = 1'000'00;
    CHECK(*work_out(in).will_be == 156'000'00);  // 60,000 + 96 x 1,000
    in.hour = 50'00;
    // 800 h x 50 = 40,000 over 96 months: 416.66 a month, cut.
    CHECK(*work_out(in).will_be == 195'999'36);
}

TEST_CASE("no month left, no day, no goal, more than enough: a plain answer each",
          "[budget][reserve]") {
    ReserveAsked in = asked();
    in.due = day("2026-01-20");
    ReserveWorked out = work_out(in);
    CHECK(out.months_left == 0);
    CHECK(!out.monthly);
    CHECK(!out.hourly);
    CHECK(*out.once == 190'000'00);
    in.due = day("2025-01-01");
    out = work_out(in);
    CHECK(out.months_left == 0);
    CHECK(*out.should_be == 250'000'00);
    in.due.reset();
    CHECK(!work_out(in).should_be);
    in = asked();
    in.goal.reset();
    CHECK(!work_out(in).monthly);
    in = asked();
    in.since.reset();
    CHECK(!work_out(in).should_be);
    CHECK(work_out(in).monthly);
    in = asked();
    in.hand.reset();
    CHECK(work_out(in).should_be);
    CHECK(!work_out(in).shortfall);
    CHECK(!work_out(in).once);
    in = asked();
    in.hand = 300'000'00;
    out = work_out(in);
    CHECK(*out.monthly == 0);
    CHECK(*out.once == 0);
    CHECK(*out.at_the_end == 0);
    CHECK(*out.shortfall < 0);
    CHECK(!monthly_deposit(1, 0, -1, 12));
    CHECK(!grown_to(1, 0, -1, 12));
    CHECK(!needed_today(1, -1.5, 12));
    CHECK(!monthly_deposit(base::most_minor_units, -base::most_minor_units, 1, 1));
}

TEST_CASE("a hundred thousand splits: the shares are the sum", "[budget][reserve]") {
    CHECK(in_shares(100, {333, 333, 334}) == std::vector<std::int64_t>{33, 33, 34});
    CHECK(in_shares(1, {500, 500}) == std::vector<std::int64_t>{1, 0});
    std::mt19937_64 random{7'000};
    for (std::int32_t way = 0; way < 100'000; ++way) {
        const auto sum = static_cast<std::int64_t>(random() % 1'000'000'000'000);
        std::vector<std::int32_t> shares;
        std::int32_t left = facts::whole_permille;
        while (left > 0) {
            const auto share =
                1 + static_cast<std::int32_t>(random() % static_cast<std::uint64_t>(left));
            shares.push_back(share);
            left -= share;
        }
        const std::vector<std::int64_t> out = in_shares(sum, shares);
        REQUIRE(std::accumulate(out.begin(), out.end(), std::int64_t{0}) == sum);
        for (std::size_t place = 0; place < out.size(); ++place) {
            const std::int64_t exact = sum / 1'000 * shares[place];
            REQUIRE(out[place] >= exact);
            REQUIRE(out[place] <= exact + 1'000 + 1);
        }
    }
}

TEST_CASE("with more months the deposit falls, with more interest too", "[budget][reserve]") {
    std::int64_t before = base::most_minor_units;
    for (std::int32_t months = 1; months <= 240; ++months) {
        const auto deposit = monthly_deposit(250'000'00, 10'000'00, 0.003, months);
        REQUIRE(deposit);
        REQUIRE(*deposit <= before);
        before = *deposit;
        // Deposits of that size make the goal, and never much more than a cent a month too much.
        const auto made = grown_to(10'000'00, *deposit, 0.003, months);
        REQUIRE(*made >= 250'000'00 - 1);
        if (*deposit > 0) REQUIRE(*made <= 250'000'00 + 2 * months);
    }
    for (std::int32_t permille = 0; permille < 100; ++permille)
        REQUIRE(*monthly_deposit(1'000'000, 0, monthly_rate(permille + 1), 60) <=
                *monthly_deposit(1'000'000, 0, monthly_rate(permille), 60));
}
