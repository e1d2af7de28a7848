// What is due before the next flight if a stored aircraft comes back on a day.
//
// The hard question: what of it is worked out for that day? Calendars: they run on in storage.
// Hours and counts stand still until then. Checks in storage end with it; what is to be done on
// return is due until it is done within its interval before that day.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// The day a person is asked to start from: the first day back that is on record, or today.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] base::Date usual_return(const Assessed& aircraft);

/// The items that stop it on a day, those due within a month of it, and those nobody can tell of.
/// Units: days. Range: a day before today is today. Errors: none. Source: our choice.
[[nodiscard]] ReturnView make_return_view(const Assessed& aircraft, base::Date on);

/// Storage of an aircraft in words, newest first: since when, by which document, until when.
/// Units: none. Errors: none; nothing when it is not stored and is not going to be. Source: our
/// choice.
[[nodiscard]] std::vector<base::Message> storage_lines(const Assessed& aircraft);

/// Every "why?" of the rows, in their order.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Why> whys_of(const ReturnView& view);

}  // namespace twoclocks::views
