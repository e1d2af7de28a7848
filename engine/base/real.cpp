#include "engine/base/real.hpp"

#include <cstdint>
#include <limits>

namespace twoclocks::base {
namespace {

// A constant in two parts: the high part has 33 bits, so that a whole number up to 20 bits times it
// is exact; the low part is the rest of it.
constexpr double ln_2_high = 0.693147180369123816490;
constexpr double ln_2_low = 1.90821492927058770002e-10;
constexpr double half_pi_high = 1.57079632673412561417;
constexpr double half_pi_low = 6.07710050650619224932e-11;
constexpr double sqrt_half = 0.70710678118654752440;
constexpr double bound = 700;
constexpr double most_angle = 1e6;
constexpr double most_finite = std::numeric_limits<double>::max();

/// Nearest whole number, halves away from zero.
[[nodiscard]] double nearest(double x) {
    return static_cast<double>(static_cast<std::int64_t>(x < 0 ? x - 0.5 : x + 0.5));
}

/// What is not a number goes to the low end.
[[nodiscard]] double held(double x, double low, double high) {
    if (!(x > low)) return low;
    return x < high ? x : high;
}

/// x times 2 to the k, exact within the range used here.
[[nodiscard]] double scale(double x, std::int64_t k) {
    double step = k < 0 ? 0.5 : 2.0;
    for (std::uint64_t left = static_cast<std::uint64_t>(k < 0 ? -k : k); left > 0; left >>= 1U) {
        if ((left & 1U) != 0) x *= step;
        step *= step;
    }
    return x;
}

struct Turn {
    double rest;
    std::int64_t quarter;
};

/// Takes whole quarter turns away; what is left lies within an eighth of a turn.
[[nodiscard]] Turn reduce(double x) {
    const double angle = held(x, -most_angle, most_angle);
    const double quarters = nearest(angle / (half_pi_high + half_pi_low));
    const double rest = (angle - quarters * half_pi_high) - quarters * half_pi_low;
    return {rest, static_cast<std::int64_t>(quarters) & 3};
}

[[nodiscard]] double sine_series(double x) {
    double term = x;
    double sum = x;
    for (int n = 2; n < 24; n += 2) {
        term *= -x * x / (n * (n + 1));
        sum += term;
    }
    return sum;
}

[[nodiscard]] double cosine_series(double x) {
    double term = 1;
    double sum = 1;
    for (int n = 1; n < 24; n += 2) {
        term *= -x * x / (n * (n + 1));
        sum += term;
    }
    return sum;
}

[[nodiscard]] double quarter_value(std::int64_t quarter, double x) {
    switch (quarter & 3) {
        case 0:
            return sine_series(x);
        case 1:
            return cosine_series(x);
        case 2:
            return -sine_series(x);
        default:
            return -cosine_series(x);
    }
}

[[nodiscard]] double density(double z) {
    constexpr double one_over_root_two_pi = 0.39894228040143267794;
    return one_over_root_two_pi * exp_fixed(-z * z / 2);
}

}  // namespace

double exp_fixed(double x) {
    const double power = held(x, -bound, bound);
    const double k = nearest(power / (ln_2_high + ln_2_low));
    const double rest = (power - k * ln_2_high) - k * ln_2_low;
    double term = 1;
    double sum = 1;
    for (int n = 1; n <= 20; ++n) {
        term *= rest / n;
        sum += term;
    }
    return scale(sum, static_cast<std::int64_t>(k));
}

double log_fixed(double x) {
    if (!(x > 0)) return -bound;
    std::int64_t k = 0;
    double mantissa = held(x, 0, most_finite);
    while (mantissa >= 2 * sqrt_half) {
        mantissa /= 2;
        ++k;
    }
    while (mantissa < sqrt_half) {
        mantissa *= 2;
        --k;
    }
    const double s = (mantissa - 1) / (mantissa + 1);
    double power = s;
    double sum = 0;
    for (int n = 1; n < 44; n += 2) {
        sum += power / n;
        power *= s * s;
    }
    const auto whole = static_cast<double>(k);
    return whole * ln_2_high + (2 * sum + whole * ln_2_low);
}

double normal_cdf(double z) {
    constexpr double series_to = 3;
    constexpr double all = 39;
    if (z > all) return 1;
    if (z < -all) return 0;
    const double size = z < 0 ? -z : z;
    if (size <= series_to) {
        double term = size;
        double sum = size;
        for (int n = 3; n < 160; n += 2) {
            term *= size * size / n;
            sum += term;
        }
        const double half = density(size) * sum;
        return z < 0 ? 0.5 - half : 0.5 + half;
    }
    double fraction = size;
    for (int n = 160; n > 0; --n)
        fraction = size + n / fraction;
    const double tail = density(size) / fraction;
    return z < 0 ? tail : 1 - tail;
}

double normal_quantile(double share) {
    double low = -6;
    double high = 6;
    constexpr int halvings = 40;
    for (int halving = 0; halving < halvings; ++halving) {
        const double middle = (low + high) / 2;
        (normal_cdf(middle) < share ? low : high) = middle;
    }
    return (low + high) / 2;
}

double sin_fixed(double x) {
    const Turn turn = reduce(x);
    return quarter_value(turn.quarter, turn.rest);
}

double cos_fixed(double x) {
    const Turn turn = reduce(x);
    return quarter_value(turn.quarter + 1, turn.rest);
}

}  // namespace twoclocks::base
