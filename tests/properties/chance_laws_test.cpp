// Paths of the hours ahead: the same in any slices, in order, and as sure as they say.
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/random.hpp"

#include <algorithm>
#include <cmath>
#include <iostream>
#include <numbers>
#include <string>
#include <vector>

#include "engine/base/hash.hpp"
#include "engine/forecast/flight_paths.hpp"

using namespace twoclocks;
using forecast::DaysBy;
using forecast::FlightPaths;
using forecast::FlyingModel;
using forecast::MonthFlown;
using forecast::PathsAsked;
using support::day;
using support::Random;

namespace {

double unit(Random& random) {
    constexpr std::int64_t steps = 1'000'000'000;
    return (static_cast<double>(random.between(0, steps - 1)) + 0.5) / static_cast<double>(steps);
}

double normal(Random& random) {
    const double radius = std::sqrt(-2 * std::log(unit(random)));
    return radius * std::cos(2 * std::numbers::pi * unit(random));
}

/// An invented aircraft: a level that strays from year to year, a season, and months that stray.
class Flown {
  public:
    explicit Flown(Random& random)
        : random_(random),
          level_(std::log(50 + 350 * unit(random))),
          season_(0.6 * unit(random)),
          year_spread_(0.35 * unit(random)),
          month_spread_(0.15 + 0.5 * unit(random)),
          peak_(12 * unit(random)) {}

    std::int64_t seconds_in(std::int32_t month) {
        level_ += year_spread_ / std::sqrt(12.0) * normal(random_);
        const double turn = 2 * std::numbers::pi * (month - peak_) / 12;
        const double strays = std::exp(month_spread_ * normal(random_));
        return static_cast<std::int64_t>(std::exp(level_) * 300 * (1 + season_ * std::cos(turn)) *
                                         strays);
    }

  private:
    Random& random_;
    double level_;
    double season_;
    double year_spread_;
    double month_spread_;
    double peak_;
};

/// First day of a month.
base::Date first_of(std::int32_t month) {
    const auto date = base::from_civil({1970 + month / 12, month % 12 + 1, 1});
    REQUIRE(date);
    return date.value();
}

constexpr std::int32_t january_2015 = 45 * 12;

FlyingModel plain_model(double year_hours) {
    FlyingModel model;
    model.pattern.basis = forecast::PatternBasis::level;
    model.pattern.year_seconds = year_hours * 3600;
    model.pattern.share.fill(1.0 / 12);
    model.ratios.assign(12, 1.0);
    return model;
}

}  // namespace

TEST_CASE("without straying a path is the sum that a person makes", "[forecast][chance]") {
    // 1,200 h a year from 31 January 2024: 100 h in February, the other 50 h in 15.5 days of March.
    FlightPaths paths{{plain_model(1200), day("2024-01-31"), {}, {base::hours(150)}, 1}};
    CHECK(paths.draw(5) == false);
    for (const std::int32_t days : paths.days_to(0))
        CHECK(base::print_date(base::add_days(day("2024-01-31"), days)) == "2024-03-15");
    // Out of service to the tenth: 100 h of March on 22 days of it, the half of them by the 20th.
    timeline::Spell out;
    out.from = day("2024-03-01");
    out.until = day("2024-03-10");
    FlightPaths later{{plain_model(1200), day("2024-01-31"), {out}, {base::hours(150)}, 1}};
    (void)later.draw(1);
    // 22 of 31 days of service, 70.97 h: 50 h take 15.5 of them, the sixteenth is 25 March.
    CHECK(base::print_date(base::add_days(day("2024-01-31"), later.days_to(0).front())) ==
          "2024-03-24");
    // Never back: what was flown before it went is all.
    timeline::Spell gone;
    gone.from = day("2024-02-15");
    FlightPaths never{{plain_model(1200), day("2024-01-31"), {gone}, {base::hours(150)}, 1}};
    (void)never.draw(1);
    CHECK(never.days_to(0).front() == forecast::never_days);
}

TEST_CASE("nothing flown is never, nothing left is today", "[forecast][chance]") {
    FlightPaths paths{{plain_model(0), day("2024-01-31"), {}, {base::hours(1), base::hours(0)}, 1}};
    CHECK(paths.draw(forecast::path_count));
    const DaysBy never = forecast::days_by(paths.days_to(0));
    CHECK(never.early == forecast::never_days);
    CHECK(forecast::days_by(paths.days_to(1)).late == 0);
    CHECK(forecast::days_by({}).early == forecast::never_days);
}

TEST_CASE("slices change nothing, and more hours never come sooner", "[forecast][chance]") {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        Random random{seed};
        FlyingModel model = plain_model(static_cast<double>(random.between(20, 900)));
        for (double& ratio : model.ratios)
            ratio = 2 * unit(random);
        model.year_spread = 0.4 * unit(random);
        const PathsAsked asked{model,
                               day("2024-05-17"),
                               {},
                               {base::hours(900), base::hours(10), base::hours(90)},
                               seed};
        FlightPaths whole{asked};
        CHECK(whole.draw(forecast::path_count));
        FlightPaths sliced{asked};
        while (!sliced.draw(static_cast<std::int32_t>(random.between(1, 90)))) {
        }
        CHECK(sliced.drawn() == forecast::path_count);
        for (std::size_t target = 0; target < 3; ++target)
            CHECK(whole.days_to(target) == sliced.days_to(target));
        for (std::size_t path = 0; path < whole.days_to(0).size(); ++path) {
            REQUIRE(whole.days_to(1)[path] <= whole.days_to(2)[path]);
            REQUIRE(whole.days_to(2)[path] <= whole.days_to(0)[path]);
        }
    }
}

TEST_CASE("the paths are the same to the day on every build", "[forecast][chance]") {
    std::string days;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        Random random{seed};
        FlyingModel model = plain_model(static_cast<double>(random.between(20, 900)));
        for (double& ratio : model.ratios)
            ratio = static_cast<double>(random.between(0, 2000)) / 1000;
        model.year_spread = 0.25;
        model.level_spread = 0.125;
        FlightPaths paths{
            {model, day("2024-05-17"), {}, {base::hours(40), base::hours(700)}, seed}};
        (void)paths.draw(forecast::path_count);
        for (std::size_t target = 0; target < 2; ++target) {
            for (const std::int32_t one : paths.days_to(target))
                days += std::to_string(one) + ' ';
        }
    }
    // Written down once from the native build; wasm has to come to the same.
    CHECK(base::crc32c(days) == 0xE5D7CB35U);
}

TEST_CASE("of a thousand invented histories the band of eight tenths holds eight tenths",
          "[properties][chance]") {
    constexpr std::int32_t histories = 1000;
    constexpr std::int32_t paths_each = 200;
    std::int32_t inside = 0;
    std::int32_t before = 0;
    for (std::uint64_t seed = 1; seed <= histories; ++seed) {
        Random random{seed};
        Flown flown{random};
        const auto known = static_cast<std::int32_t>(random.between(18, 72));
        std::vector<MonthFlown> months;
        for (std::int32_t month = january_2015; month < january_2015 + known; ++month) {
            const std::int32_t days = base::days_between(first_of(month), first_of(month + 1));
            months.push_back({month, {flown.seconds_in(month)}, days, days, 0});
        }
        const base::Date last = base::add_days(first_of(january_2015 + known), -1);
        const FlyingModel model = forecast::flying_model(months, std::nullopt);
        // Half a year to three years ahead, by its own level.
        const double years = 0.5 + 2.5 * unit(random);
        const auto target = static_cast<std::int64_t>(model.pattern.year_seconds * years);
        FlightPaths paths{{model, last, {}, {{target}}, seed}};
        (void)paths.draw(paths_each);
        const DaysBy band = forecast::days_by(paths.days_to(0));
        // What came: the same even growth within a month.
        std::int64_t total = 0;
        std::int32_t month = january_2015 + known;
        std::int64_t next = flown.seconds_in(month);
        while (total + next < target && month < january_2015 + known + 360) {
            total += next;
            next = flown.seconds_in(++month);
        }
        const std::int32_t days = base::days_between(first_of(month), first_of(month + 1));
        const std::int32_t came = base::days_between(last, first_of(month)) +
                                  static_cast<std::int32_t>((target - total) * days / next) - 1;
        inside += band.early <= came && came <= band.late ? 1 : 0;
        before += came < band.early ? 1 : 0;
    }
    std::cerr << "# chance: of " << histories << " histories the band held " << inside << ", "
              << before << " came earlier\n";
    CHECK(inside >= 750);
    CHECK(inside <= 850);
    CHECK(before <= 125);
}
