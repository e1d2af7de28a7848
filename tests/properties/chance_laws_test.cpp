// The hours ahead: the same on every build, in order, and as sure as they say.
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/random.hpp"

#include <cmath>
#include <cstring>
#include <iostream>
#include <numbers>
#include <string>
#include <vector>

#include "engine/base/hash.hpp"
#include "engine/forecast/flying_ahead.hpp"

using namespace twoclocks;
using forecast::FlyingModel;
using forecast::HoursCurve;
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

std::string bits_of(double number) {
    std::uint64_t bits = 0;
    static_assert(sizeof bits == sizeof number);
    std::memcpy(&bits, &number, sizeof bits);
    return std::to_string(bits);
}

/// The bits of a line, so that two builds can be told apart by one of them.
std::string bits_of(const HoursCurve& curve) {
    std::string out;
    for (const HoursCurve::Point& point : curve.points) {
        out += std::to_string(point.day) + ' ' + bits_of(point.seconds) + ' ';
    }
    return out + bits_of(curve.tail);
}

}  // namespace

TEST_CASE("the lines ahead are the same to the bit on every build", "[properties][chance]") {
    std::string bits;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        Random random{seed};
        timeline::AircraftState state;
        std::int64_t total = 0;
        for (std::int32_t month = 0; month < 40; ++month) {
            state.usage.push_back({first_of(january_2015 + month), base::tenths(total), {}});
            total += random.between(0, 400);
        }
        state.certain = state.usage;
        const forecast::FlyingAhead ahead = forecast::flying_ahead(state);
        for (const HoursCurve* curve : {&ahead.early, &ahead.likely, &ahead.late})
            bits += bits_of(*curve) + '\n';
    }
    // Written down once from the native build; wasm has to come to the same.
    CHECK(base::crc32c(bits) == 0xAB6955A0U);
}

TEST_CASE("a way strays about one, and every second one the other way", "[properties][chance]") {
    FlyingModel model;
    model.ratios.assign(12, 1.0);
    model.year_spread = 0.25;
    model.level_spread = 0.2;
    const forecast::FlightPaths paths{model};
    for (std::int32_t path = 0; path < forecast::path_count; path += 2) {
        const forecast::Factors one = paths.follow(path);
        const forecast::Factors other = paths.follow(path + 1);
        for (std::size_t month = 0; month < one.size(); ++month)
            REQUIRE(one[month] * other[month] == Catch::Approx(1).epsilon(1e-9));
    }
    model.level_spread = model.year_spread = 0;
    for (const double factor : forecast::FlightPaths{model}.follow(7))
        CHECK(factor == 1);
}

TEST_CASE("of a thousand invented histories the band of eight tenths holds eight tenths",
          "[properties][chance]") {
    constexpr std::int32_t histories = 1000;
    std::int32_t inside = 0;
    std::int32_t before = 0;
    for (std::uint64_t seed = 1; seed <= histories; ++seed) {
        Random random{seed};
        Flown flown{random};
        const auto known = static_cast<std::int32_t>(random.between(18, 72));
        timeline::AircraftState state;
        base::FlightTime all{0};
        for (std::int32_t month = january_2015; month <= january_2015 + known; ++month) {
            state.usage.push_back({base::add_days(first_of(month), -1), all, {}});
            if (month < january_2015 + known) all = all + base::FlightTime{flown.seconds_in(month)};
        }
        state.certain = state.usage;
        const forecast::FlyingAhead ahead = forecast::flying_ahead(state);
        // Half a year to three years ahead, by its own level.
        const double years = 0.5 + 2.5 * unit(random);
        const auto target = static_cast<std::int64_t>(ahead.model.pattern.year_seconds * years);
        const auto when = [&](const HoursCurve& curve) {
            const auto day = forecast::day_when(curve, 0, static_cast<double>(target));
            return day ? *day : INT32_MAX;
        };
        // What came: the same even growth within a month.
        std::int64_t total = 0;
        std::int32_t month = january_2015 + known;
        std::int64_t next = flown.seconds_in(month);
        while (total + next < target && month < january_2015 + known + 360) {
            total += next;
            next = flown.seconds_in(++month);
        }
        const std::int32_t days = base::days_between(first_of(month), first_of(month + 1));
        const std::int32_t came = base::days_between(ahead.from, first_of(month)) - 1 +
                                  static_cast<std::int32_t>((target - total) * days / next);
        inside += when(ahead.early) <= came && came <= when(ahead.late) ? 1 : 0;
        before += came < when(ahead.early) ? 1 : 0;
    }
    std::cerr << "# chance: of " << histories << " histories the band held " << inside << ", "
              << before << " came earlier\n";
    CHECK(inside >= 750);
    CHECK(inside <= 850);
    CHECK(before <= 125);
}
