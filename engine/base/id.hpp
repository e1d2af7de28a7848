// Names of facts and of what they are about: UUID version 7, made from a time and random bits that
// are passed in.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "engine/base/problem.hpp"

namespace twoclocks::base {

/// 128 bits, ordered as they print.
struct Id {
    std::uint64_t high{0};
    std::uint64_t low{0};
    auto operator<=>(const Id&) const = default;

    [[nodiscard]] bool empty() const { return high == 0 && low == 0; }
};

/// Makes a UUIDv7: 48 bits of milliseconds, version 7, variant 2, and 74 random bits, the low 12 of
/// `random_a` and the low 62 of `random_b`.
/// Units: milliseconds since 1970-01-01T00:00Z. Range: 0 to 2^48-1, clamped. Errors: none.
/// Source: RFC 9562 section 5.7.
[[nodiscard]] Id make_id(std::int64_t wall_ms, std::uint64_t random_a, std::uint64_t random_b);

/// Milliseconds that the id was made at.
/// Units: milliseconds since 1970-01-01T00:00Z. Errors: none. Source: RFC 9562 section 5.7.
[[nodiscard]] std::int64_t made_at_ms(Id id);

/// Reads the 36 character form in lower case.
/// Units: none. Errors: id_malformed. Source: RFC 9562 section 4.
[[nodiscard]] Result<Id> parse_id(std::string_view text);

/// Prints the 36 character form in lower case.
/// Units: none. Errors: none. Source: RFC 9562 section 4.
[[nodiscard]] std::string print_id(Id id);

}  // namespace twoclocks::base
