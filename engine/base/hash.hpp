// Fingerprints: SHA-256 for facts and journals, CRC-32C for what is stored on this device.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace twoclocks::base {

using Sha256 = std::array<std::uint8_t, 32>;

/// SHA-256 of bytes.
/// Units: bytes. Errors: none. Source: FIPS 180-4.
[[nodiscard]] Sha256 sha256(std::string_view bytes);

/// Lower-case hexadecimal.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::string print_hex(const Sha256& digest);

/// CRC-32C (Castagnoli), initial and final value inverted; pass the last result to go on.
/// Units: bytes. Errors: none. Source: RFC 3720 section 12.1 and its appendix B.4.
[[nodiscard]] std::uint32_t crc32c(std::string_view bytes, std::uint32_t so_far = 0);

}  // namespace twoclocks::base
