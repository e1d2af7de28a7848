// Where a directive stands, as part of what is due. See directive_due.hpp.
#pragma once

#include <cstdint>
#include <optional>

#include "engine/base/date.hpp"
#include "engine/base/id.hpp"

namespace twoclocks::limits {

/// What a directive asks now.
enum class DirectiveStanding : std::uint8_t {
    open,           // to be done by its clocks
    before_flight,  // before further flight
    complied,       // done once, and nothing is left to do
    ended,          // by its terminating action
    superseded,
    not_here,  // does not apply here
    unknown    // nobody has decided whether it applies
};

/// A directive in what is due.
struct DirectiveDue {
    DirectiveStanding standing{DirectiveStanding::open};
    bool unsure{false};                 // records disagree, and by some what is due is not known
    bool stops_now{false};              // before further flight, and in effect
    std::optional<base::Id> means{};    // approved other way that the clocks count by
    std::optional<base::Date> ahead{};  // the day it takes effect, when that is to come
};

}  // namespace twoclocks::limits
