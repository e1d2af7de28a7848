#include "engine/forecast/months.hpp"

#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/random.hpp"

#include <string>
#include <vector>

#include "engine/base/date.hpp"

using namespace twoclocks;
using forecast::MonthFlown;
using support::day;
using timeline::Spell;
using timeline::UsageSeries;

namespace {

struct DatedPoint {
    const char* on;
    std::int64_t hours;
};

std::vector<MonthFlown> months_of(const std::vector<DatedPoint>& points,
                                  const std::vector<Spell>& spells = {}) {
    UsageSeries usage;
    for (const DatedPoint& point : points)
        usage.push_back({day(point.on), base::hours(point.hours), {}});
    return forecast::monthly_hours(usage, spells);
}

std::int64_t hours_in(const MonthFlown& month) {
    REQUIRE(month.flown.seconds % 3600 == 0);
    return month.flown.seconds / 3600;
}

}  // namespace

TEST_CASE("hours between two readings are spread evenly over the days after the first",
          "[forecast][months]") {
    // By hand: 50 days after 11 January 2024 up to 1 March, an hour each: 20, 29 and 1.
    const auto months = months_of({{"2024-01-11", 100}, {"2024-03-01", 150}});
    REQUIRE(months.size() == 3);
    CHECK(months[0].month == 54 * 12);
    CHECK(hours_in(months[0]) == 20);
    CHECK(months[0].covered_days == 20);
    CHECK_FALSE(months[0].whole());
    CHECK(hours_in(months[1]) == 29);
    CHECK(months[1].month_days == 29);
    CHECK(months[1].whole());
    CHECK(hours_in(months[2]) == 1);
    CHECK_FALSE(months[2].whole());
}

TEST_CASE("nothing is flown on the days out of service, unless on all of them",
          "[forecast][months]") {
    Spell february;
    february.from = day("2024-02-01");
    february.until = day("2024-02-15");
    // 50 days less 14: 36 days, an hour each.
    const auto months = months_of({{"2024-01-11", 100}, {"2024-03-01", 136}}, {february});
    CHECK(hours_in(months[0]) == 20);
    CHECK(hours_in(months[1]) == 15);
    CHECK(months[1].out_days == 14);
    CHECK(months[1].whole());
    Spell always;
    always.from = day("2024-01-01");
    const auto flown = months_of({{"2024-01-11", 100}, {"2024-03-01", 150}}, {always});
    CHECK(hours_in(flown[1]) == 29);
    CHECK(flown[1].out_days == 29);
}

TEST_CASE("one reading, none, or several of one day give what they can", "[forecast][months]") {
    CHECK(months_of({}).empty());
    CHECK(months_of({{"2024-01-11", 100}}).empty());
    CHECK(months_of({{"2024-01-11", 100}, {"2024-01-11", 104}}).empty());
    // The last reading of the first day is where it begins; one more on the last day counts there.
    const auto months = months_of(
        {{"2024-01-10", 90}, {"2024-01-10", 100}, {"2024-01-12", 104}, {"2024-01-12", 109}});
    REQUIRE(months.size() == 1);
    CHECK(hours_in(months[0]) == 9);
    CHECK(months[0].covered_days == 2);
}

TEST_CASE("months of every length and leap year are whole on their last day",
          "[forecast][months]") {
    const auto months = months_of({{"2023-12-31", 0}, {"2025-12-31", 7310}});
    const std::int32_t lengths[]{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31,
                                 31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    REQUIRE(months.size() == 24);
    for (std::size_t place = 0; place < months.size(); ++place) {
        CHECK(months[place].month_days == lengths[place]);
        CHECK(months[place].whole());
        CHECK(hours_in(months[place]) == 10 * lengths[place]);  // 731 days, ten hours each
        CHECK(forecast::season_of(months[place].month) == static_cast<std::int32_t>(place % 12));
    }
}

TEST_CASE("the months add up to what was flown, to the second", "[forecast][months]") {
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        support::Random random{seed};
        UsageSeries usage{{day("2021-03-05"), {random.between(0, 9'000'000)}, {}}};
        for (std::int64_t readings = random.between(1, 40); readings > 0; --readings) {
            const auto days = static_cast<std::int32_t>(random.between(1, 200));
            usage.push_back({base::add_days(usage.back().on, days),
                             {usage.back().total.seconds + random.between(0, 999'999)},
                             {}});
        }
        std::vector<Spell> spells;
        for (std::int64_t count = random.between(0, 3); count > 0; --count) {
            Spell spell;
            spell.from = base::add_days(day("2021-03-05"),
                                        static_cast<std::int32_t>(random.between(0, 900)));
            spell.until =
                base::add_days(spell.from, static_cast<std::int32_t>(random.between(1, 300)));
            spells.push_back(spell);
        }
        std::int64_t flown = 0;
        std::int32_t covered = 0;
        std::int32_t last = 0;
        for (const MonthFlown& month : forecast::monthly_hours(usage, spells)) {
            CAPTURE(seed, month.month);
            REQUIRE((last == 0 || month.month == last + 1));
            REQUIRE(month.flown.seconds >= 0);
            REQUIRE(month.covered_days <= month.month_days);
            last = month.month;
            flown += month.flown.seconds;
            covered += month.covered_days;
        }
        CHECK(flown == (usage.back().total - usage.front().total).seconds);
        CHECK(covered == base::days_between(usage.front().on, usage.back().on));
    }
}
