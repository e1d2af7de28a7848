#include "engine/base/id.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::base {
namespace {

constexpr std::string_view hex_digits = "0123456789abcdef";
constexpr std::size_t id_length = 36;
constexpr std::size_t digits_a_half = 16;
constexpr std::uint64_t version_7 = 0x7000U;
constexpr std::uint64_t version_bits_below = 0x0FFFU;
constexpr std::uint64_t variant_2 = 0x8000'0000'0000'0000U;
constexpr std::uint64_t variant_bits_below = 0x3FFF'FFFF'FFFF'FFFFU;

[[nodiscard]] bool is_dash_place(std::size_t place) {
    return place == 8 || place == 13 || place == 18 || place == 23;
}

/// 16 and more is no digit.
[[nodiscard]] std::uint64_t digit_value(char sign) {
    if (sign >= '0' && sign <= '9') return static_cast<std::uint64_t>(sign - '0');
    if (sign >= 'a' && sign <= 'f') return static_cast<std::uint64_t>(sign - 'a') + 10U;
    return 16;
}

}  // namespace

Id make_id(std::int64_t wall_ms, std::uint64_t random_a, std::uint64_t random_b) {
    constexpr std::int64_t most_ms = (std::int64_t{1} << 48) - 1;
    const auto ms = static_cast<std::uint64_t>(std::clamp<std::int64_t>(wall_ms, 0, most_ms));
    return {ms << 16U | version_7 | (random_a & version_bits_below),
            variant_2 | (random_b & variant_bits_below)};
}

std::int64_t made_at_ms(Id id) {
    return static_cast<std::int64_t>(id.high >> 16U);
}

Result<Id> parse_id(std::string_view text) {
    const auto refuse = [&] { return trouble(Trouble::id_malformed, {excerpt_arg(text)}); };
    if (text.size() != id_length) return refuse();
    std::array<std::uint64_t, 2> halves{};
    std::size_t digits = 0;
    for (std::size_t place = 0; place < id_length; ++place) {
        if (is_dash_place(place)) {
            if (text[place] != '-') return refuse();
            continue;
        }
        const std::uint64_t value = digit_value(text[place]);
        if (value >= hex_digits.size()) return refuse();
        std::uint64_t& half = halves[digits / digits_a_half];
        half = half << 4U | value;
        ++digits;
    }
    return Id{halves[0], halves[1]};
}

std::string print_id(Id id) {
    std::string out;
    out.reserve(id_length);
    for (unsigned digit = 0; digit < 32; ++digit) {
        if (is_dash_place(out.size())) out += '-';
        const std::uint64_t half = digit < 16 ? id.high : id.low;
        out += hex_digits[half >> (60U - 4U * (digit % 16U)) & 15U];
    }
    return out;
}

}  // namespace twoclocks::base
