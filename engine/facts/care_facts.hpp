// What is recorded of directives, of what happened to an aircraft, of wear, and of how it is used.
//
// The hard questions.
//   Who decides whether a directive applies? A person. What its serials and part number say is
//   shown beside the decision; while neither is known, what is due is not known.
//   What does an event stop? The aircraft, and every part it names, until work renews the event
//   for each of them.
//   Does wear extend a limit? Never. It only shows when the wear limit itself comes near.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/id.hpp"
#include "engine/facts/limit_fact.hpp"

namespace twoclocks::facts {

/// Whether a directive concerns what it is recorded on, as a person decided.
enum class Applicability : std::uint8_t { unknown, applies, not_applicable };

/// What an item of class directive rests on. About the aircraft or part, then the item.
struct Directive {
    std::string number;
    std::string revision;
    std::string issuer;
    std::optional<base::Date> effective_on;  // the first interval counts from here
    std::string serials;                     // "1001-1234, 1240"; empty: all
    std::string part_number;                 // applies where such a part is fitted; empty: any
    Applicability applies{Applicability::unknown};
    std::string applies_why;
    bool before_flight{false};         // to be complied with before further flight
    bool credit{false};                // earlier work on what it replaces counts as compliance
    std::vector<base::Id> replaces{};  // items it supersedes
    std::vector<base::Id> ended_by{};  // items whose work is its terminating action
};

/// Another way to comply that the authority approved. About the aircraft or part, then the item.
struct AlternativeMeans {
    std::string issuer;
    std::string reference;
    std::string method;
    Interval interval{};  // instead of the repeat; empty: as the directive has it
    std::optional<base::FlightTime> grace_hours;
    std::optional<std::int32_t> grace_days;
    std::optional<base::Date> until;  // last day it holds
};

/// What happened.
enum class EventKind : std::uint8_t {
    hard_landing,
    overspeed,
    overtemperature,
    overtorque,
    sudden_stoppage,
    vibration,
    lightning,
    other
};

/// Something that calls for an inspection before the next flight. About the aircraft, then the
/// parts it may have hurt. Work that renews this fact's id signs it for what the work is about.
struct Event {
    EventKind happened{EventKind::other};
    std::string found;  // as reported: values, for how long
    std::optional<base::FlightTime> total;
    std::string source;  // document that says what to inspect
    std::string revision;
};

/// Which side of a wear limit is sound.
enum class WearSense : std::uint8_t { at_most, at_least };

/// Most thousandths of a unit that a wear value can be.
inline constexpr std::int32_t most_wear_thousandths = 2'000'000'000;

/// The value an item on condition may wear to. About the aircraft or part, then the item.
struct WearLimit {
    std::int32_t limit_thousandths{0};
    std::string unit;
    WearSense sense{WearSense::at_most};
    std::string source;
    std::string revision;
};

/// A measured value. About the aircraft or part, then the item.
struct Wear {
    std::int32_t value_thousandths{0};
    std::string unit;
    std::optional<base::FlightTime> total;  // total time of the aircraft
    std::string done_by;
    std::string reference;
};

/// Why the hours of a meter are not what it shows.
enum class AdjustReason : std::uint8_t { dead, rolled_over, other };

/// Hours that a meter did not count: from this day on they are added to what it shows. About the
/// aircraft, then the meter.
struct MeterAdjusted {
    AdjustReason reason{AdjustReason::other};
    base::FlightTime hours;
    base::FlightTime reads;  // what it shows from then on
    std::string source;      // flight log, maker's letter
    std::string why;
};

/// Kinds of flying that may use life at different speed.
enum class Operation : std::uint8_t {
    ordinary,
    agricultural,
    external_load,
    training,
    emergency,
    other
};

/// How much faster a kind of flying uses hours limits. About the aircraft: all its hours limits,
/// or the aircraft and an item.
struct HoursFactor {
    Operation operation{Operation::other};
    std::int32_t factor_thousandths{1000};  // 1000 is as flown
    std::string source;
    std::string revision;
};

/// Hours of a kind of flying in the days from `from` to the day of the record. About the aircraft.
struct FlownAs {
    Operation operation{Operation::other};
    std::optional<base::Date> from;  // missing: that day alone
    base::FlightTime hours;
    std::string why;
};

}  // namespace twoclocks::facts
