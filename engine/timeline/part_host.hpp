// What a part is fitted to, as far as hours go.
#pragma once

#include "engine/timeline/parts.hpp"

namespace twoclocks::timeline {

/// While a part was on an aircraft: from which total, at which count of its own, and for how long.
struct HostStretch {
    base::Id aircraft;
    base::FlightTime from;
    base::FlightTime gained;
    base::FlightTime count;
};

/// Hours of a host over its life. An aircraft counts its total time; a part its own count, which
/// `offsets` turn into its time since new.
struct HostLine {
    bool is_part{false};
    bool is_whole{true};       // false: hours are missing, so nothing can be said
    bool is_estimated{false};  // some of it is
    bool is_disputed{false};   // records of a part disagree: so may what it had counted by a day
    UsageSeries series;        // what nobody disputes
    base::FlightTime now;
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
    std::vector<PartOffset> offsets;
    std::vector<HostStretch> stretches;  // of a part
};

/// A total in the host's count, and whether it is an estimate. No value is unknown.
struct HostTotal {
    std::optional<base::FlightTime> count;
    bool estimated{false};
};

/// The line of an aircraft, and of a part.
/// Units: hours. Errors: none. Source: our choice.
[[nodiscard]] HostLine line_of(const AircraftState& aircraft);

/// As above.
/// Units: hours. Errors: none. Source: our choice.
[[nodiscard]] HostLine line_of(const PartState& part);

/// The count where a total was recorded. Of versions of which one lacks the total, the lesser of
/// the recorded and the estimated for `least_total`, the greater for `greatest_total`.
/// Units: hours. Errors: none. Source: our choice, a part is safe with more hours.
[[nodiscard]] HostTotal least_total(const HostLine& line,
                                    const std::optional<base::FlightTime>& recorded,
                                    bool one_lacks_it,
                                    base::Date on);

/// The count of an assembly when the aircraft that it was on had a total; nothing when it was not
/// on it then, or when that is an estimate or disputed.
/// Units: hours. Errors: none. Source: our choice, an assembly gains what its aircraft flies.
[[nodiscard]] std::optional<base::FlightTime> count_on(const HostLine& line,
                                                       base::Id aircraft,
                                                       base::FlightTime total);

/// The other of the two.
/// Units: hours. Errors: none. Source: as above.
[[nodiscard]] HostTotal greatest_total(const HostLine& line,
                                       const std::optional<base::FlightTime>& recorded,
                                       bool one_lacks_it,
                                       base::Date on);

/// The host's own figure of a count on a day: total time, or time since new where it is known.
/// Units: hours. Errors: none. Source: our choice.
[[nodiscard]] std::optional<base::FlightTime> own_total(
    const HostLine& line, const std::optional<base::FlightTime>& count, base::Date on);

}  // namespace twoclocks::timeline
