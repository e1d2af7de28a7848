#include "engine/base/scaled.hpp"

#include <cassert>

namespace twoclocks::base {
namespace {

/// A whole number of 128 bits, from 0 up, in two halves.
struct Wide {
    std::uint64_t high{0};
    std::uint64_t low{0};
};

/// The product of two, by halves of 32 bits as at school.
[[nodiscard]] Wide product(std::uint64_t left, std::uint64_t right) {
    constexpr std::uint64_t half = 32;
    constexpr std::uint64_t mask = 0xFFFF'FFFF;
    const std::uint64_t low = (left & mask) * (right & mask);
    const std::uint64_t cross = (left >> half) * (right & mask) + (low >> half);
    const std::uint64_t other = (left & mask) * (right >> half) + (cross & mask);
    return {(left >> half) * (right >> half) + (cross >> half) + (other >> half),
            (other << half) | (low & mask)};
}

/// A quotient and what is left; no quotient where it would not fit.
struct Divided {
    std::optional<std::uint64_t> quotient;
    std::uint64_t rest{0};
};

/// Bit by bit: 128 steps, and nobody waits for them.
[[nodiscard]] Divided divide(Wide whole, std::uint64_t by) {
    if (whole.high >= by) return {};
    constexpr std::int32_t bits = 64;
    std::uint64_t rest = whole.high;
    std::uint64_t quotient = 0;
    for (std::int32_t bit = bits - 1; bit >= 0; --bit) {
        rest = (rest << 1U) | ((whole.low >> static_cast<std::uint32_t>(bit)) & 1U);
        quotient <<= 1U;
        if (rest < by) continue;
        rest -= by;
        quotient |= 1U;
    }
    return {quotient, rest};
}

[[nodiscard]] bool is_beyond(std::int64_t minor_units) {
    return minor_units > most_minor_units || minor_units < -most_minor_units;
}

}  // namespace

std::int64_t power_of_ten(std::int32_t exponent) {
    constexpr std::int64_t ten = 10;
    std::int64_t out = 1;
    for (std::int32_t at = 0; at < exponent; ++at)
        out *= ten;
    return out;
}

std::optional<Money> scaled(Money amount, std::int64_t times, std::int64_t over, MoneyRound round) {
    assert(times >= 0 && over > 0);
    const bool is_less = amount.minor_units < 0;
    const auto size =
        static_cast<std::uint64_t>(is_less ? -amount.minor_units : amount.minor_units);
    const auto by = static_cast<std::uint64_t>(over);
    const auto [quotient, rest] = divide(product(size, static_cast<std::uint64_t>(times)), by);
    if (!quotient || *quotient > static_cast<std::uint64_t>(most_minor_units)) return std::nullopt;
    // Away from zero for one sign is toward it for the other.
    const bool is_half = rest > by - rest || (rest == by - rest && !is_less);
    const bool grows = rest > 0 && ((round == MoneyRound::up && !is_less) ||
                                    (round == MoneyRound::down && is_less) ||
                                    (round == MoneyRound::half_up && is_half));
    const std::int64_t out = static_cast<std::int64_t>(*quotient) + (grows ? 1 : 0);
    if (is_beyond(out)) return std::nullopt;
    return Money{is_less ? -out : out, amount.currency};
}

std::optional<Money> plus(Money left, Money right) {
    assert(left.currency == right.currency);
    const std::int64_t sum = left.minor_units + right.minor_units;
    if (is_beyond(sum)) return std::nullopt;
    return Money{sum, left.currency};
}

}  // namespace twoclocks::base
