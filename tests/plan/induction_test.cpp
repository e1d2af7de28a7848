// The cheapest day to go in: by hand, against the newsvendor rule, and against every single day.
#include "engine/plan/induction.hpp"

#include "catch_amalgamated.hpp"

#include <algorithm>
#include <random>

using namespace twoclocks;
using plan::Draws;
using plan::Induction;
using plan::InductionCosts;
using plan::InductionDay;
using plan::LifeLeft;

TEST_CASE("one way, by hand", "[plan][induction]") {
    // The limit in 100 days, all is ready in 40, 200 h are left: two hours a day.
    const Draws draws{{100}, {40}};
    const InductionCosts costs{500, 30, 0, 7};
    const LifeLeft left{200, {}};
    const auto on = [&](std::int32_t day) { return plan::induction_on(draws, costs, left, day); };
    // Before it is ready it goes in on day 40: 60 days or 120 h early, 120 x 30 = 3,600 and
    // 60 x 7 = 420.
    for (const std::int32_t day : {0, 20, 40}) {
        CHECK(on(day).unused == 3'600);
        CHECK(on(day).early == 420);
        CHECK(on(day).standing == 0);
    }
    CHECK(on(70).cost() == 60 * 30 + 30 * 7);
    CHECK(on(100).cost() == 0);
    CHECK(on(110).standing == 5'000);
    CHECK(on(110).unused == 0);
    CHECK(plan::cheapest_induction(draws, costs, left).best.day == 100);
}

TEST_CASE("ready after the limit, it stands until then whatever day was meant",
          "[plan][induction]") {
    const Draws draws{{10}, {50}};
    const Induction found = plan::cheapest_induction(draws, {100, 1, 1, 1}, {10, {}});
    CHECK(found.best.day == 0);
    CHECK(found.best.standing == 40 * 100);
    CHECK(found.best.unused == 0);
}

TEST_CASE("where the calendar stops it, months count and hours do not", "[plan][induction]") {
    // 73 days are 2.4 months of a twelfth of 365 days: 2.4 x 1,000 = 2,400.
    const Draws draws{{73}, {0}};
    const InductionDay first = plan::induction_on(draws, {0, 50, 1'000, 0}, {300, 73}, 0);
    CHECK(first.unused == 2'400);
    // The same limit a day before the calendar's is one of hours: all 300 of them.
    CHECK(plan::induction_on(draws, {0, 50, 1'000, 0}, {300, 74}, 0).unused == 300 * 50);
}

TEST_CASE("the cheapest day is the share of early over early and late cost",
          "[plan][induction][outside]") {
    // The newsvendor rule of operations research textbooks (from memory): with a cost a day for too
    // late and one for too early, the day not exceeded by early / (early + late) of all limits.
    // Limits 201 to 1,200, equally likely; 365 / 12 days a month, so 36.5 x 1,000 a month is 1,200
    // a day.
    Draws draws;
    for (int limit = 201; limit <= 1'200; ++limit) {
        draws.limits.push_back(static_cast<float>(limit));
        draws.readies.push_back(0);
    }
    const LifeLeft calendar{0, 0};
    for (const double late : {400.0, 1'200.0, 3'600.0}) {
        const Induction found = plan::cheapest_induction(draws, {late, 0, 36'500, 0}, calendar);
        const double share = 1'200.0 / (1'200.0 + late);
        CAPTURE(late, found.best.day);
        CHECK(found.best.day == Catch::Approx(200 + share * 1'000).margin(1));
    }
}

TEST_CASE("no day is cheaper than the one that is found", "[plan][induction]") {
    std::mt19937 random{7};
    const auto draw = [&](int below) {
        return static_cast<int>(random() % static_cast<unsigned>(below));
    };
    for (int round = 0; round < 60; ++round) {
        Draws draws;
        const int middle = 20 + draw(180);
        for (int way = 0; way < 50; ++way) {
            draws.limits.push_back(static_cast<float>(middle + draw(100)));
            draws.readies.push_back(static_cast<float>(draw(250)));
        }
        const InductionCosts costs{static_cast<double>(draw(900)),
                                   static_cast<double>(draw(300)),
                                   static_cast<double>(draw(3'000)),
                                   static_cast<double>(draw(60))};
        const LifeLeft left{static_cast<double>(1 + draw(200)), middle + draw(120)};
        const Induction found = plan::cheapest_induction(draws, costs, left);
        std::int64_t least = found.best.cost();
        for (std::int32_t day = 0; day <= 400; ++day)
            least = std::min(least, plan::induction_on(draws, costs, left, day).cost());
        // Days are looked at one by one up to 200, and every second beyond.
        CAPTURE(round, found.best.day);
        CHECK(static_cast<double>(found.best.cost()) <= static_cast<double>(least) * 1.001 + 1);
    }
}

TEST_CASE("a day that is flown at a loss is best spent standing", "[plan][induction]") {
    // Nobody has to fly: where a day of flying costs more than it brings, standing gains, and the
    // cheapest day is the last looked at.
    const Draws draws{{30}, {0}};
    const Induction found = plan::cheapest_induction(draws, {-10, 5, 0, 0}, {30, {}});
    CHECK(found.best.day == 30 + 56);
    CHECK(found.best.standing < 0);
}
