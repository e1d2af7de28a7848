// Parts that several whys are put together from.
#pragma once

#include "engine/views/assess.hpp"

namespace twoclocks::views {

/// Ends a why with one more line, which rests on a fact or on none.
/// Units: none. Errors: none. Source: our choice.
inline void add(Why& why, base::Word word, std::vector<base::Arg> args = {}) {
    why.lines.push_back({{word, std::move(args)}, {}, false});
}

/// Ends a why with the line that puts its figures together.
/// Units: none. Errors: none. Source: our choice.
inline void add_sum(Why& why,
                    base::Word word,
                    std::vector<base::Arg> args,
                    std::optional<base::Id> fact = {}) {
    why.lines.push_back({{word, std::move(args)}, fact, true});
}

/// As above.
/// Units: none. Errors: none. Source: our choice.
inline void add(Why& why, base::Word word, std::vector<base::Arg> args, base::Id fact) {
    why.lines.push_back({{word, std::move(args)}, fact, false});
}

/// How an exact figure is shown elsewhere; nothing when every term is a whole tenth already.
/// Units: seconds. Errors: none. Source: our choice.
void add_rounding(
    Why& why, base::FlightTime exact, base::HoursForm form, base::Arg shown, base::Word rounded);

/// Explains the hours of a limit: the limit, the total, where it counts from, and their sum. All of
/// them are written in one form that loses nothing, so that the sum adds up as it is printed.
/// Units: seconds. Errors: none. Source: our choice.
void explain_hours(Why& why,
                   const Assessed& aircraft,
                   const limits::ItemDue& item,
                   const limits::ClockDue& clock);

}  // namespace twoclocks::views
