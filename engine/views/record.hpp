// One record in words.
#pragma once

#include "engine/timeline/state.hpp"
#include "engine/views/views.hpp"

namespace twoclocks::views {

/// What a record says, in one line.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message record_what(const facts::Body& body);

/// The second line: whose, where, at what total.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message record_detail(const facts::Body& body);

/// Every field of a record in words, one line each.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> record_lines(const facts::Fact& fact);

/// What a record says of its subject, one line a field: of a correction, what it puts in place.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Message> told_lines(const facts::Body& body);

/// Who wrote a record and when.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message told_by(const facts::Fact& fact);

/// Who, when to the minute, and on which device: to tell two records apart.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] base::Message told_by_device(const facts::Fact& fact);

/// What a person sees of a device's random name.
/// Units: none. Range: 6 letters. Errors: none. Source: our choice.
[[nodiscard]] std::string short_device(std::string_view device);

}  // namespace twoclocks::views
