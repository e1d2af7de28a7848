// Tabulated values of the normal distribution.
#include "catch_amalgamated.hpp"

#include <cmath>

#include "engine/base/real.hpp"

using namespace twoclocks::base;

TEST_CASE("the normal distribution meets its table", "[outside][real]") {
    // Source: Abramowitz and Stegun, table 26.1. [M], each digit confirmed with math.erfc of
    // Python 3.11 [L]
    struct Row {
        double z;
        double below;
    };

    for (const Row& row : {Row{0.00, 0.500000000000000},
                           Row{0.50, 0.691462461274013},
                           Row{1.00, 0.841344746068543},
                           Row{1.96, 0.975002104851780},
                           Row{2.00, 0.977249868051821},
                           Row{3.00, 0.998650101968370},
                           Row{4.00, 0.999968328758167},
                           Row{5.00, 0.999999713348428}}) {
        CAPTURE(row.z);
        CHECK(std::abs(normal_cdf(row.z) - row.below) < 1e-13);
        CHECK(std::abs(normal_cdf(-row.z) - (1 - row.below)) < 1e-13);
    }
}

TEST_CASE("far tails keep their leading digits", "[outside][real]") {
    // Computed with math.erfc of Python 3.11. [L]
    CHECK(std::abs(normal_cdf(-5) / 2.866515718791946e-07 - 1) < 1e-12);
    CHECK(std::abs(normal_cdf(-8) / 6.220960574271819e-16 - 1) < 1e-12);
}

TEST_CASE("the chance of two printed networks comes out", "[outside][real]") {
    // P1: mean 24, variance 5, chance of 28 or less: 0.9633 by the printed table [S], 0.963181
    // exact.
    CHECK(std::abs(normal_cdf((28.0 - 24.0) / std::sqrt(5.0)) - 0.963181) < 5e-7);
    // P2: mean 50.8333, variance 11.19444, chance of 55 or less: 0.893496. [S + L]
    CHECK(std::abs(normal_cdf((55.0 - 305.0 / 6.0) / std::sqrt(403.0 / 36.0)) - 0.893496) < 5e-7);
}

TEST_CASE("shares of the normal distribution lie where tables have them", "[outside][real]") {
    // Source: Abramowitz and Stegun, table 26.5 (from memory): x for Q = 0.1, 0.05, 0.025, 0.01.
    CHECK(std::abs(normal_quantile(0.9) - 1.28155) < 5e-6);
    CHECK(std::abs(normal_quantile(0.95) - 1.64485) < 5e-6);
    CHECK(std::abs(normal_quantile(0.975) - 1.95996) < 5e-6);
    CHECK(std::abs(normal_quantile(0.99) - 2.32635) < 5e-6);
    CHECK(std::abs(normal_quantile(0.5)) < 1e-10);
    CHECK(std::abs(normal_quantile(0.1) + normal_quantile(0.9)) < 1e-10);
}
