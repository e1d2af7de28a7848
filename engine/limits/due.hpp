// What is due, at which hours and on which day, and why.
//
// A limit may hold hours, calendar months or days, and counts; the item is due at the sooner of
// them, or at the later where the limit says so, and in no case past its cap. Each clock counts
// from its last renewal, or from the anchor its limit names. Remaining plus used is the limit,
// exactly. A calendar limit runs through its day: on the day itself there are 0 days left, and the
// next day it is passed.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/limits/carry.hpp"
#include "engine/limits/directive_standing.hpp"
#include "engine/limits/in_force.hpp"

namespace twoclocks::limits {

/// Where a clock counts from.
enum class CountsFrom : std::uint8_t {
    work,     // a recorded renewal
    anchor,   // the anchor the limit names
    assumed,  // unknown, so the earliest it could be
    unknown   // nothing to count from
};

/// One clock of one item.
struct ClockDue {
    facts::Clock clock{facts::Clock::hours};
    CountsFrom counts_from{CountsFrom::unknown};
    bool known{false};      // figures below hold
    bool estimated{false};  // the total at the renewal is an estimate: for planning only
    base::Id anchor_fact;
    base::Date anchor_on;           // calendar
    base::Date due_on;              // calendar
    std::int32_t limit_months{0};   // calendar
    std::int32_t days_left{0};      // calendar; negative when passed
    base::FlightTime anchor_total;  // hours
    base::FlightTime limit_hours;   // hours
    base::FlightTime due_total;     // hours
    base::FlightTime used;          // hours
    base::FlightTime left;          // hours; negative when flown past
    base::Count anchor_count;       // landings, starts
    base::Count limit_count;
    base::Count left_count;
    std::int32_t limit_days{0};             // calendar; beside months, the sooner of both
    bool is_first{false};                   // the first interval, which differs from the repeat
    Carried carried{Carried::none};         // why it does not count from when the work was done
    base::FlightTime done_total;            // hours: total at the last work, where carried says so
    base::Date done_on;                     // calendar: day of the last work, likewise
    base::FlightTime past_at_work;          // hours: the excess before the last work
    base::FlightTime tolerance;             // hours that may be flown past, not part of `left`
    std::int32_t tolerance_days{0};         // calendar days likewise
    base::FlightTime overfly;               // hours that may be flown past on the way to it
    HoursIn hours_in{HoursIn::total_time};  // hours: what the totals above count in
    bool part_estimated{false};             // hours: those of the part are an estimate
    bool no_life_left{false};               // nobody knows the life of the part
    facts::Anchor anchor{facts::Anchor::unknown};  // calendar: the day of the part it counts from
    bool from_rebuild{false};                      // calendar: which was the maker's rebuild
    base::FlightTime extra;                        // hours: of `used`, more than was flown
    std::int32_t most_thousandths{1000};           // hours: an hour flown used so many at most
    ByStorage by_storage{ByStorage::none};         // calendar: what storage has to do with it

    /// True when the clock is past its limit.
    /// Units: none. Errors: none. Source: our choice; see the head of this file for the calendar.
    [[nodiscard]] bool passed() const;
};

/// The part that a limit hangs on, as people call it. Without an id: it hangs on the aircraft.
struct OnPart {
    base::Id id;
    std::string name;  // or its number
    std::string serial;
    std::string position;  // where it is now; empty on a shelf
};

/// One item with all its clocks.
struct ItemDue {
    base::Id item;
    std::string name;
    facts::ItemRole role{facts::ItemRole::other};
    facts::LimitClass limit_class{facts::LimitClass::programme};
    std::vector<ClockDue> clocks;  // empty: no limit is recorded
    std::string source;
    std::string revision;
    base::Id limit_fact;
    facts::Combine combine{facts::Combine::sooner};
    std::vector<ClockDue> caps;  // but not after these, whatever the clocks combine to
    bool once{false};            // no repeat
    facts::Interval again{};     // what it counts after the next work; empty: what it counts now
    bool complied{false};        // once, and done: nothing is left to do
    std::string tolerance_source;
    OnPart part{};
    facts::InForce in_force{facts::InForce::always};  // as the limit in force says
    bool asleep{false};         // it counts in storage or after it, and asks for nothing now
    bool may_be_stored{false};  // a check in storage, or one that records disagree about
    bool is_stored{false};      // nobody disputes it: it stops no flight, it is due where it stands
    std::optional<DirectiveDue> directive{};  // where it rests on one, or one names it

    /// True when the item is past its limit: any of its clocks, or all that are known where the
    /// later counts, or any cap. A clock that is not known extends nothing.
    /// Units: none. Errors: none. Source: common practice, no source.
    [[nodiscard]] bool passed() const;

    /// True when every figure that the limit needs is known.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] bool all_known() const;

    /// The clock that binds by the share of its interval that is left: the least of all, or the
    /// greatest where the later counts, and then a cap that has less. Without a rate there are no
    /// dates to compare; forecast::project says which binds by date. Null when none is known.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] const ClockDue* binding() const;

    /// True when the limit stops the aircraft: every class but recommended.
    /// Units: none. Errors: none. Source: common practice, no source.
    [[nodiscard]] bool mandatory() const;
};

/// Every item of an aircraft with its clocks on a day.
/// Units: seconds, days, counts. Errors: none; what cannot be known is marked unknown.
/// Source: intervals run from completion (14 CFR 91.409(b) for work done early); anchors, common
/// practice.
[[nodiscard]] std::vector<ItemDue> due_items(const timeline::AircraftState& state,
                                             base::Date today);

/// Every item that hangs on a part with its clocks on a day, wherever the part is.
/// Units: seconds, days, counts. Errors: none; what cannot be known is marked unknown.
/// Source: bearer.hpp; US Army TB 1-1500-341-01 for time since new at an overhaul.
[[nodiscard]] std::vector<ItemDue> due_items(const timeline::PartState& part, base::Date today);

/// The day that comes `times` intervals after an anchor. Programme intervals add from their anchor
/// and
/// never chain: two months from 31 January is 31 March, though one month is 29 February.
/// Units: months. Range: times 1 to 1,000. Errors: none. Source: our choice, see date.hpp.
[[nodiscard]] base::Date occurrence(base::Date anchor,
                                    std::int32_t months,
                                    std::int32_t times,
                                    base::CalendarRule rule);

/// True when hours were flown past what the rule of an inspection allows on the way to it: by now,
/// or before its last work.
/// Units: none. Errors: none. Source: 14 CFR 91.409(b).
[[nodiscard]] bool overflown(const ClockDue& clock);

/// The clock of an item with this name, if it has one.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] const ClockDue* clock_of(const ItemDue& item, facts::Clock clock);

/// Total time of an aircraft: the highest recorded.
/// Units: seconds. Errors: none. Source: our choice, used is never understated.
[[nodiscard]] std::optional<base::FlightTime> total_time(const timeline::AircraftState& state);

}  // namespace twoclocks::limits
