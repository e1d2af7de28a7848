// What is recorded of a part with a serial number. Its id is the id of the fact that added it; a
// fact about a part names the part first, then what it is fitted to.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/base/count.hpp"
#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"

namespace twoclocks::facts {

/// What the papers or the person who took it off say of a part. The later in the list, the worse.
enum class PartCondition : std::uint8_t {
    made_new,
    overhauled,
    repaired,
    inspected,
    as_removed,
    unknown,
    unserviceable
};

/// A part joins the record, with what its papers say on that day.
struct PartAdded {
    std::string part_number;
    std::string serial;
    std::string name;
    std::string chapter;
    std::optional<base::FlightTime> tsn;  // time since new; missing is unknown
    std::optional<base::FlightTime> tso;  // time since overhaul
    std::optional<base::Count> overhauls;
    std::optional<base::Count> landings;  // since new
    std::optional<base::Count> starts;
    std::optional<base::Date> manufactured;
    std::optional<base::Date> cured;
    std::optional<base::Date> shipped;
    PartCondition condition{PartCondition::unknown};
    std::string papers;           // release certificate, tag, back-to-birth record
    bool history_unknown{false};  // no life is left of what is limited by life
    std::string owner;
    std::optional<base::Date> lent_until;  // it is somebody else's and goes back on this day
};

/// About the part and its host, an aircraft or a part.
struct PartFitted {
    std::string position;
    std::optional<base::FlightTime> host_total;  // total time, or TSN of a part
    std::optional<base::FlightTime> tsn;         // of the part, as its card has it
    std::optional<base::Count> host_landings;
    std::optional<base::Count> host_starts;
    std::string reference;
};

/// About the part and its host.
struct PartRemoved {
    std::optional<base::FlightTime> host_total;
    std::optional<base::Count> host_landings;
    std::optional<base::Count> host_starts;
    PartCondition condition{PartCondition::as_removed};
    std::string why;
    bool temporarily{false};  // to reach something else, and to go back where it was
};

struct PartScrapped {
    std::string proof;  // how it was destroyed, and who saw it
};

/// A part changes its place or its hands while it is fitted to nothing.
struct PartMoved {
    std::string place;
    std::string owner;    // empty: as before
    std::string lent_to;  // empty: with us
    std::optional<base::Date> return_by;
    std::string why;
};

/// The maker's zero-time rebuild: time since new starts again, by the maker's document.
struct PartRebuilt {
    std::string document;
    std::optional<base::FlightTime> host_total;  // where it was done without taking the part off
    std::string done_by;
    std::string place;
};

}  // namespace twoclocks::facts
