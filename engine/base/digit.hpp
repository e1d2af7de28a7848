// The ten digits, whatever the region.
#pragma once

namespace twoclocks::base {

/// Whether a byte of UTF-8 is a digit of ASCII.
/// Units: none. Errors: none. Source: RFC 5234, appendix B.1, DIGIT.
[[nodiscard]] constexpr bool is_digit(char sign) {
    return sign >= '0' && sign <= '9';
}

}  // namespace twoclocks::base
