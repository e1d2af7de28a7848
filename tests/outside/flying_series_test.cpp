// The pattern of flying against published series. [L] was computed with a library and is printed
// here to its digits; [S] was read in the source named.
#include "tests/outside/flying_series.hpp"

#include "catch_amalgamated.hpp"

#include <algorithm>
#include <cmath>
#include <iostream>
#include <vector>

#include "engine/forecast/pattern.hpp"

using namespace twoclocks;
using forecast::FlyingPattern;
using forecast::MonthFlown;

namespace {

using Series = std::vector<double>;

template <class Values>
Series part(const Values& values, std::size_t from, std::size_t to) {
    return {values.begin() + static_cast<std::ptrdiff_t>(from),
            values.begin() + static_cast<std::ptrdiff_t>(to)};
}

/// Mean absolute error and root mean square error.
struct Errors {
    double mean{0};
    double root{0};
};

Errors errors_of(const Series& told, const Series& came) {
    REQUIRE(told.size() == came.size());
    Errors out;
    for (std::size_t place = 0; place < came.size(); ++place) {
        const double error = told[place] - came[place];
        out.mean += std::fabs(error) / static_cast<double>(came.size());
        out.root += error * error / static_cast<double>(came.size());
    }
    out.root = std::sqrt(out.root);
    return out;
}

/// A month in seconds as hours are told: the unit does not matter.
Series ours(const Series& known, std::int32_t first_month, std::size_t ahead) {
    constexpr std::int32_t any_month_days = 30;
    std::vector<MonthFlown> months;
    std::int32_t month = first_month;
    for (const double value : known) {
        MonthFlown one;
        one.month = month++;
        one.flown = {static_cast<std::int64_t>(value)};
        one.month_days = one.covered_days = any_month_days;
        months.push_back(one);
    }
    const FlyingPattern pattern = forecast::flying_pattern(months);
    Series out;
    for (std::size_t place = 0; place < ahead; ++place)
        out.push_back(forecast::expected_in(pattern, month++));
    return out;
}

constexpr std::int32_t january_1969 = -12;
constexpr std::int32_t january_1973 = 36;

bool agrees(double ours, double printed) {
    return std::fabs(ours - printed) < 0.000001;
}

}  // namespace

// [L] base R 4.2.2: the same month of the year before, 1984 after the years to 1983.
TEST_CASE("the distance driven, 1984 told at the end of 1983", "[outside][forecast]") {
    const Series known = part(outside::driven, 0, 180);
    const Series came = part(outside::driven, 180, 192);
    const Errors same_as_last_year = errors_of(part(outside::driven, 168, 180), came);
    CHECK(agrees(same_as_last_year.mean, 892.333333));
    CHECK(agrees(same_as_last_year.root, 1050.470133));
    const Errors told = errors_of(ours(known, january_1969, 12), came);
    // A quarter better than last year again.
    CHECK(told.mean < 0.76 * same_as_last_year.mean);
    std::cerr << "# driven: mean error " << told.mean << ", of last year again "
              << same_as_last_year.mean << '\n';
}

// [L] base R 4.2.2: the same month of the year before, over every month that has one.
TEST_CASE("accidents of 1974 to 1978, each year told at the end of the one before",
          "[outside][forecast]") {
    Series again;
    Series told;
    for (std::size_t year = 1; year < 6; ++year) {
        const Series known = part(outside::accidents, 0, 12 * year);
        const Series last = part(outside::accidents, 12 * (year - 1), 12 * year);
        again.insert(again.end(), last.begin(), last.end());
        const Series next = ours(known, january_1973, 12);
        told.insert(told.end(), next.begin(), next.end());
    }
    const Series came = part(outside::accidents, 12, 72);
    const Errors same_as_last_year = errors_of(again, came);
    CHECK(agrees(same_as_last_year.mean, 437.25));
    CHECK(agrees(same_as_last_year.root, 559.405354));
    const Errors mine = errors_of(told, came);
    CHECK(mine.mean < same_as_last_year.mean);
    std::cerr << "# accidents: mean error " << mine.mean << ", of last year again "
              << same_as_last_year.mean << '\n';
}

// [L] base R 4.2.2, HoltWinters with alpha 0.2, beta 0.02, gamma 0.1, additive: the data of this
// test are those of the data set, and a textbook method is at hand to compare with. Start values as
// there: the season and the straight trend of the first two years.
TEST_CASE("Holt-Winters on the distance driven, to the printed digit", "[outside][forecast]") {
    constexpr double alpha = 0.2;
    constexpr double beta = 0.02;
    constexpr double gamma = 0.1;
    constexpr std::size_t year = 12;
    const Series known = part(outside::driven, 0, 180);
    // Mean of a year about each month of the middle twelve, ends counted half.
    Series middle;
    Series season(year, 0);
    for (std::size_t at = 6; at < 18; ++at) {
        double sum = (known[at - 6] + known[at + 6]) / 2;
        for (std::size_t near = at - 5; near <= at + 5; ++near)
            sum += known[near];
        middle.push_back(sum / year);
        season[at % year] = known[at] - middle.back();
    }
    double mean_season = 0;
    double mean_middle = 0;
    for (std::size_t at = 0; at < year; ++at) {
        mean_season += season[at] / year;
        mean_middle += middle[at] / year;
    }
    for (double& one : season)
        one -= mean_season;
    double up = 0;
    double across = 0;
    constexpr double mean_place = 6.5;  // of 1 to 12
    for (std::size_t at = 0; at < year; ++at) {
        const double away = static_cast<double>(at) + 1 - mean_place;
        up += away * (middle[at] - mean_middle);
        across += away * away;
    }
    double slope = up / across;
    double level = mean_middle - slope * mean_place;
    for (std::size_t at = year; at < known.size(); ++at) {
        double& one = season[at % year];
        const double next = alpha * (known[at] - one) + (1 - alpha) * (level + slope);
        slope = beta * (next - level) + (1 - beta) * slope;
        one = gamma * (known[at] - next) + (1 - gamma) * one;
        level = next;
    }
    Series told;
    for (std::size_t ahead = 1; ahead <= year; ++ahead)
        told.push_back(level + static_cast<double>(ahead) * slope + season[ahead - 1]);
    CHECK(agrees(errors_of(told, part(outside::driven, 180, 192)).mean, 457.683956));
}
