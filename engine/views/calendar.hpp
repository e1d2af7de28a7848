// Days of an aircraft for a calendar: RFC 5545, whole days, each with an alarm.
//
// The hard questions.
//   What does a second file do? It updates: an entry keeps its name, and its sequence is the number
//   of records, which never falls.
//   Which day? The earliest that can be: a limit that hours end is shown on its early day, and says
//   what is expected.
#pragma once

#include <string>
#include <vector>

#include "engine/base/region.hpp"
#include "engine/views/plan_lived.hpp"

namespace twoclocks::views {

/// One day.
struct CalendarDay {
    std::string key;  // unique and lasting
    base::Date on;
    base::Message what;
    std::vector<base::Message> more;
    std::int32_t alarm_days{0};  // before it
};

/// Limits, order and booking, cores and points of the closing list, soonest first.
/// Units: days. Errors: what has no day is not there. Source: our choice.
[[nodiscard]] std::vector<CalendarDay> calendar_days(const Assessed& aircraft,
                                                     const Living& living);

/// As a file.
/// Units: milliseconds since 1970 for the stamp. Errors: none.
/// Source: RFC 5545: CRLF, lines folded at 75 octets, VALUE=DATE, DTEND the day after.
[[nodiscard]] std::string print_calendar(const std::vector<CalendarDay>& days,
                                         std::int64_t wall_ms,
                                         std::int64_t sequence,
                                         const base::Region& region);

}  // namespace twoclocks::views
