// Which serials a directive names, out of what a person wrote.
//
// The hard question: what of words that are no list, such as "1001 and up"? They are not read at
// all. What cannot be read says nothing, and then the decision of a person stands alone.
#pragma once

#include <string>
#include <string_view>

#include "engine/timeline/directive_state.hpp"

namespace twoclocks::timeline {

/// Whether a list such as "1001-1234, 1240" names a serial. A range has the same letters before
/// both its numbers.
/// Units: none. Errors: nothing is said where the list or the serial is empty, or where what can be
/// read does not name it and something cannot be read. Source: our choice.
[[nodiscard]] Says serials_say(std::string_view serials, std::string_view serial);

/// True when every part of a list can be read.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool are_readable(std::string_view serials);

}  // namespace twoclocks::timeline
