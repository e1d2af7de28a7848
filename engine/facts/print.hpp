// Canonical printing: keys in a fixed order, no spaces, then the fields we do not know by key.
// Parse then
// print gives the same bytes, on every build.
#pragma once

#include <string>

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// One fact as one line of JSON, without the line feed.
/// Units: seconds for times, days as YYYY-MM-DD. Errors: none. Source: journal.schema.json.
[[nodiscard]] std::string print_fact(const Fact& fact);

/// The first 8 bytes of the SHA-256 of a fact's line: tells two bodies under one id apart. Never 0.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::uint64_t content_of(const Fact& fact);

/// True when two bodies print the same: day, subjects, kind and every field.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool say_the_same(const Body& left, const Body& right);

/// A reference in text: the id, and `/` with 16 hexadecimal digits when content tells bodies apart.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::string print_ref(const Ref& ref);

}  // namespace twoclocks::facts
