// Paths of hours against the time at which a Brownian motion with drift first meets a level: 300 h
// left, 25 h a month, strayed by 8 h in a month, by the square root of the months in several.
// [L] computed with two general-purpose libraries (inverse Gaussian distribution), printed here to
// their digits: mean 12 months, P(10) 0.0266505, P(12) 0.5183873; 5, 50 and 95 of a hundred by
// 10.267977, 11.949053 and 13.905806 months.
#include "catch_amalgamated.hpp"
#include "tests/support/pen.hpp"
#include "tests/support/random.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "engine/base/real.hpp"
#include "engine/forecast/flight_paths.hpp"

using namespace twoclocks;
using forecast::FlyingModel;

namespace {

constexpr double hours_left = 300;
constexpr double hours_a_month = 25;
constexpr double month_strays = 8;

/// Chance that the level is met by so many months: Schroedinger 1915, as in Johnson, Kotz and
/// Balakrishnan, Continuous Univariate Distributions, vol. 1, chapter 15 (from memory).
double met_by(double months) {
    const double root = month_strays * std::sqrt(months);
    return base::normal_cdf((hours_a_month * months - hours_left) / root) +
           base::exp_fixed(2 * hours_a_month * hours_left / (month_strays * month_strays)) *
               base::normal_cdf(-(hours_a_month * months + hours_left) / root);
}

/// The months by which the level is met with a chance.
double months_for(double chance) {
    double low = 1;
    double high = 40;
    for (int halving = 0; halving < 80; ++halving) {
        const double middle = (low + high) / 2;
        (met_by(middle) < chance ? low : high) = middle;
    }
    return low;
}

/// Months that stray by a normal share of the mean, in no order.
FlyingModel model() {
    FlyingModel out;
    out.pattern.basis = forecast::PatternBasis::level;
    out.pattern.year_seconds = 12 * hours_a_month * 3600;
    out.pattern.share.fill(1.0 / 12);
    constexpr std::size_t count = 4000;
    for (std::size_t place = 0; place < count; ++place) {
        const double chance = (static_cast<double>(place) + 0.5) / count;
        double low = -6;
        double high = 6;
        for (int halving = 0; halving < 60; ++halving) {
            const double middle = (low + high) / 2;
            (base::normal_cdf(middle) < chance ? low : high) = middle;
        }
        out.ratios.push_back(1 + low * month_strays / hours_a_month);
    }
    support::Random random{1};
    for (std::size_t place = count - 1; place > 0; --place) {
        const auto other = random.between(0, static_cast<std::int64_t>(place));
        std::swap(out.ratios[place], out.ratios[static_cast<std::size_t>(other)]);
    }
    return out;
}

}  // namespace

TEST_CASE("the closed form of a first passage, to the printed digits", "[outside][chance]") {
    CHECK(std::fabs(met_by(10) - 0.0266505) < 0.00000005);
    CHECK(std::fabs(met_by(12) - 0.5183873) < 0.00000005);
    CHECK(std::fabs(months_for(0.05) - 10.267977) < 0.0000005);
    CHECK(std::fabs(months_for(0.50) - 11.949053) < 0.0000005);
    CHECK(std::fabs(months_for(0.95) - 13.905806) < 0.0000005);
}

TEST_CASE("the ways of flying meet it when the closed form says", "[outside][chance]") {
    const FlyingModel strays_by_month = model();
    const forecast::FlightPaths paths{strays_by_month};
    std::vector<double> months;
    for (std::int32_t path = 0; path < forecast::path_count; ++path) {
        double flown = 0;
        double month = 0;
        for (const double factor : paths.follow(path)) {
            const double here = hours_a_month * factor;
            if (flown + here >= hours_left) {
                month += (hours_left - flown) / here;
                break;
            }
            flown += here;
            month += 1;
        }
        months.push_back(month);
    }
    std::sort(months.begin(), months.end());
    const auto months_at = [&](std::size_t hundredths) {
        return months[(months.size() - 1) * hundredths / 100];
    };
    // Three hundred ways are sure of a quantile to about two tenths of a month.
    CHECK(std::fabs(months_at(5) - months_for(0.05)) < 0.35);
    CHECK(std::fabs(months_at(50) - months_for(0.50)) < 0.2);
    CHECK(std::fabs(months_at(95) - months_for(0.95)) < 0.4);
    const auto by_ten = static_cast<double>(
        std::count_if(months.begin(), months.end(), [&](double one) { return one <= 10; }));
    // 0.0266505 of three hundred, three standard deviations of a count.
    const double expected = 0.0266505 * forecast::path_count;
    CHECK(std::fabs(by_ten - expected) < 3 * std::sqrt(expected));
}
