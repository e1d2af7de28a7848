// Where an interval counts from after work: when it was done, or the point it was due at.
//
// The hard questions.
//   Work inside the tolerance, with carry-over from the due point: the next interval counts from
//   there, so it may be longer or shorter than from completion. Outside: from completion.
//   Work flown past its limit on the way to the place of inspection: the excess counts in the next
//   interval. A whole interval or more past is a gap in the record, no excess: from completion.
//   Due points chain: each follows from the work before. The first follows from an anchor that
//   the limit names, never from one that is assumed.
//   Records that disagree about any of this: the earliest point it could be. Neither less nor more
//   tolerance, nor an earlier nor a later work before, is the safer one by itself.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/limits/bearer.hpp"

namespace twoclocks::limits {

/// Why an interval does not count from when the work was done.
enum class Carried : std::uint8_t {
    none,       // it does
    due_point,  // done within the tolerance
    excess,     // flown past its limit: the excess counts
    doubt       // records disagree: the earliest it could be
};

/// Where the hours of an item count from after its last work.
struct HoursFrom {
    base::FlightTime from;
    base::FlightTime done;
    base::FlightTime past;  // the excess: flown past the due point before the work
    Carried carried{Carried::none};
};

/// Where the calendar of an item counts from after its last work.
struct DayFrom {
    base::Date from;
    base::Date done;
    Carried carried{Carried::none};
};

/// Hours after the last work; nothing when no work with a total is recorded.
/// Units: seconds. Errors: none. Source: 14 CFR 91.409(b) for the excess; US Army TM 1-1500-328-23
/// for windows and the due point; carry-over differs by text, so it is a setting.
[[nodiscard]] std::optional<HoursFrom> hours_from(const Bearer& bearer,
                                                  const timeline::ItemState& item);

/// Calendar after the last work; nothing when none is recorded.
/// Units: days. Errors: none. Source: as hours_from.
[[nodiscard]] std::optional<DayFrom> day_from(const Bearer& bearer,
                                              const timeline::ItemState& item);

/// What an interval counts from, where work in dispute may be what it counts from instead: no
/// later than any version of it. Of hours, versions from the day `since` on, or all where that is
/// missing; nothing where such a version gives no total.
/// Units: days, seconds. Errors: none. Source: our choice, the safer of what an answer may leave.
[[nodiscard]] base::Date day_in_dispute(base::Date anchor, const timeline::ItemState& item);
[[nodiscard]] std::optional<base::FlightTime> hours_in_dispute(
    base::FlightTime from, const timeline::ItemState& item, const std::optional<base::Date>& since);

/// True when records disagree about what an item counts from.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool in_doubt(const Bearer& bearer, const timeline::ItemState& item);

/// The day a calendar interval ends; of months and days the sooner.
/// Units: months and days. Errors: none. Source: date.hpp.
[[nodiscard]] base::Date calendar_end(base::Date from,
                                      const facts::Interval& interval,
                                      base::CalendarRule rule);

/// How far off its due point work on an interval of hours may be done.
/// Units: seconds; a percentage rounds down. Errors: none; zero for airworthiness limitations.
/// Source: our choice, of an amount and a percentage the lesser.
[[nodiscard]] base::FlightTime tolerance_hours(const facts::LimitSet& limit,
                                               base::FlightTime interval);

/// How far off its due point work on a calendar interval may be done.
/// Units: days; a percentage rounds down. Errors: none; zero for airworthiness limitations.
/// Source: as above; US Army TM 1-1500-328-23 takes 1.4 days as 1.
[[nodiscard]] std::int32_t tolerance_days(const facts::LimitSet& limit, std::int32_t interval_days);

/// Hours that may be flown past an inspection to reach the place where it is done; zero for every
/// other role and class.
/// Units: seconds. Errors: none. Source: 14 CFR 91.409(b).
[[nodiscard]] base::FlightTime overfly_of(const facts::LimitSet& limit, facts::ItemRole role);

}  // namespace twoclocks::limits
