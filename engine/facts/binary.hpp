// Facts as bytes for the snapshot on this device: fast to read, never exchanged, versioned by its
// user.
// JSON is the exchange form and the fallback; this form is thrown away whenever it does not read
// cleanly.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

inline constexpr std::uint32_t binary_version = 10;

/// Fields by key that this version does not know.
using Extra = std::vector<std::pair<std::string, Json>>;

/// Appends one fact.
/// Units: bytes, little endian. Errors: none. Source: our choice.
void write_binary(const Fact& fact, std::string& out);

/// Takes one fact off the front of `in`.
/// Units: bytes. Range: never reads past the end, whatever the bytes. Errors: false, and `fact` is
/// undefined.
/// Source: our choice.
[[nodiscard]] bool read_binary(std::string_view& in, Fact& fact);

/// Appends fields that this version does not know, and takes them off.
/// Units: bytes. Errors: false when the bytes make no sense. Source: our choice.
void write_extra(const Extra& extra, std::string& out);
[[nodiscard]] bool read_extra(std::string_view& in, Extra& extra);

/// Appends a whole number, and takes one off; the same for a text. For those who frame facts.
/// Units: bytes. Errors: false when the bytes end early. Source: our choice.
void write_whole(std::int64_t number, std::string& out);
void write_text(std::string_view text, std::string& out);
[[nodiscard]] bool read_whole(std::string_view& in, std::int64_t& number);
[[nodiscard]] bool read_text(std::string_view& in, std::string& text);

}  // namespace twoclocks::facts
