// The standard library's functions are good to the last bit or two, so they serve as the measure
// here; in the engine they are banned, because the last bit differs from build to build.
#include "engine/base/real.hpp"

#include "catch_amalgamated.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>
#include <string>

#include "engine/base/hash.hpp"

using namespace twoclocks::base;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
constexpr double smallest = std::numeric_limits<double>::denorm_min();

/// Irregular steps, so that no table of nice values is all that is tried.
double step_from(double low, double high, int step, int steps) {
    return low + (high - low) * (step + 0.37) / steps;
}

double relative_error(double ours, double theirs) {
    return std::abs(ours - theirs) / std::abs(theirs);
}

void add_bits(std::string& bytes, double value) {
    char bits[sizeof value];
    std::memcpy(bits, &value, sizeof value);
    bytes.append(bits, sizeof value);
}

}  // namespace

TEST_CASE("exp is within 1e-14 of the library's", "[base][real]") {
    double worst = 0;
    for (int step = 0; step < 20'000; ++step) {
        const double x = step_from(-700, 700, step, 20'000);
        const double near = step_from(-2, 2, step, 20'000);
        worst = std::max(worst, relative_error(exp_fixed(x), std::exp(x)));
        worst = std::max(worst, relative_error(exp_fixed(near), std::exp(near)));
    }
    CHECK(worst < 1e-14);
    CHECK(exp_fixed(0) == 1);
}

TEST_CASE("exp is held at both ends and has a value for everything", "[base][real]") {
    CHECK(exp_fixed(701) == exp_fixed(700));
    CHECK(exp_fixed(infinite) == exp_fixed(700));
    CHECK(exp_fixed(-701) == exp_fixed(-700));
    CHECK(exp_fixed(-infinite) == exp_fixed(-700));
    CHECK(exp_fixed(no_number) == exp_fixed(-700));
    CHECK(exp_fixed(-700) > 0);
    CHECK(std::isfinite(exp_fixed(700)));
}

TEST_CASE("log is within 1e-14 of the library's", "[base][real]") {
    double worst = 0;
    for (int step = 0; step < 20'000; ++step) {
        for (const double x : {step_from(0, 3, step, 20'000),
                               step_from(0, 1e6, step, 20'000),
                               std::exp(step_from(-700, 700, step, 20'000))}) {
            const double error = std::abs(log_fixed(x) - std::log(x));
            worst = std::max(worst, error / std::max(1.0, std::abs(std::log(x))));
        }
    }
    CHECK(worst < 1e-14);
    CHECK(log_fixed(1) == 0);
}

TEST_CASE("log has a value for everything", "[base][real]") {
    CHECK(log_fixed(0) == -700);
    CHECK(log_fixed(-1) == -700);
    CHECK(log_fixed(-infinite) == -700);
    CHECK(log_fixed(no_number) == -700);
    CHECK(std::abs(log_fixed(smallest) - std::log(smallest)) < 1e-11);
    CHECK(std::abs(log_fixed(infinite) - std::log(std::numeric_limits<double>::max())) < 1e-11);
}

TEST_CASE("log undoes exp", "[base][real]") {
    for (int step = 0; step < 1'000; ++step) {
        const double x = step_from(-690, 690, step, 1'000);
        CHECK(std::abs(log_fixed(exp_fixed(x)) - x) < 1e-11);
    }
}

TEST_CASE("the normal distribution is within 1e-13 of the library's", "[base][real]") {
    double worst = 0;
    double worst_tail = 0;
    for (int step = 0; step < 20'000; ++step) {
        const double z = step_from(-10, 10, step, 20'000);
        const double theirs = 0.5 * std::erfc(-z / std::sqrt(2.0));
        worst = std::max(worst, std::abs(normal_cdf(z) - theirs));
        if (z < -3) worst_tail = std::max(worst_tail, relative_error(normal_cdf(z), theirs));
    }
    CHECK(worst < 1e-13);
    CHECK(worst_tail < 1e-12);
}

TEST_CASE("the normal distribution has halves, ends and never falls", "[base][real]") {
    CHECK(normal_cdf(0) == 0.5);
    CHECK(normal_cdf(40) == 1);
    CHECK(normal_cdf(-40) == 0);
    CHECK(normal_cdf(infinite) == 1);
    CHECK(normal_cdf(-infinite) == 0);
    double before = 0;
    std::int32_t falls = 0;
    for (int step = 0; step < 8'000; ++step) {
        const double z = -4 + step * 0.001;
        const double now = normal_cdf(z);
        if (now <= before) ++falls;
        if (std::abs(now + normal_cdf(-z) - 1) > 1e-15) ++falls;
        before = now;
    }
    CHECK(falls == 0);
    // Where the series hands over to the fraction.
    CHECK(normal_cdf(std::nextafter(3.0, 4.0)) >= normal_cdf(3.0));
    CHECK(normal_cdf(std::nextafter(-3.0, -4.0)) <= normal_cdf(-3.0));
}

TEST_CASE("sine and cosine are within 1e-12 of the library's", "[base][real]") {
    double worst = 0;
    for (int step = 0; step < 50'000; ++step) {
        for (const double x :
             {step_from(-1000, 1000, step, 50'000), step_from(-4, 4, step, 50'000)}) {
            worst = std::max(worst, std::abs(sin_fixed(x) - std::sin(x)));
            worst = std::max(worst, std::abs(cos_fixed(x) - std::cos(x)));
        }
    }
    CHECK(worst < 1e-12);
    CHECK(sin_fixed(0) == 0);
    CHECK(cos_fixed(0) == 1);
}

TEST_CASE("sine and cosine are held at a million and have a value for everything", "[base][real]") {
    CHECK(std::abs(sin_fixed(1e6) - std::sin(1e6)) < 1e-9);
    CHECK(std::abs(cos_fixed(-1e6) - std::cos(-1e6)) < 1e-9);
    for (const double wild : {2e6, 1e300, infinite}) {
        CHECK(sin_fixed(wild) == sin_fixed(1e6));
        CHECK(cos_fixed(-wild) == cos_fixed(-1e6));
    }
    CHECK(sin_fixed(no_number) == sin_fixed(-1e6));
}

TEST_CASE("real functions give the same bits on every build", "[base][real]") {
    std::string bytes;
    for (int step = 0; step < 2'000; ++step) {
        add_bits(bytes, exp_fixed(step_from(-700, 700, step, 2'000)));
        add_bits(bytes, log_fixed(step_from(0, 1e4, step, 2'000)));
        add_bits(bytes, normal_cdf(step_from(-9, 9, step, 2'000)));
        add_bits(bytes, sin_fixed(step_from(-1e4, 1e4, step, 2'000)));
        add_bits(bytes, cos_fixed(step_from(-1e4, 1e4, step, 2'000)));
    }
    CHECK(print_hex(sha256(bytes)) ==
          "c354371edb12362d207001cf269f11f935a7c85fb0956e4a41a9a72acd7da319");
}
