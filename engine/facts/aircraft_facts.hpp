// What is recorded of an aircraft itself: its papers, limits, meters, items, work and flying.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/count.hpp"
#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/id.hpp"
#include "engine/facts/json.hpp"
#include "engine/facts/limit_fact.hpp"

namespace twoclocks::facts {

/// How strictly a limit holds. Recommended warns and never stops; the others stop.
enum class LimitClass : std::uint8_t {
    airworthiness_limitation,
    directive,
    programme,
    recommended
};

/// What a limit counts.
enum class Clock : std::uint8_t { hours, calendar, landings, starts };

/// What an item is for.
enum class ItemRole : std::uint8_t { overhaul, inspection, component, other };

/// Where an hour meter takes its hours from. They disagree with each other, so the record says
/// which.
enum class MeterDrive : std::uint8_t { collective, oil_pressure, tachometer, electrical, other };

/// What the calendar of an item that was never renewed counts from.
enum class Anchor : std::uint8_t {
    manufacture,
    cure,
    shipment,
    first_airworthiness,
    first_fit,
    release,
    overhaul,
    unknown
};

struct AircraftAdded {
    std::string registration;
    std::string type;
    std::string serial;
    std::optional<base::Date> manufactured;
    bool invented{false};  // an example: shown as one everywhere
};

struct AircraftChanged {
    std::string registration;
    std::string why;
};

struct LimitSet {
    LimitClass limit_class{LimitClass::programme};
    std::optional<base::FlightTime> hours;
    std::optional<std::int32_t> months;
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
    base::CalendarRule rule{base::CalendarRule::exact};
    Anchor anchor{Anchor::unknown};
    std::optional<base::Date> anchor_on;
    std::optional<base::FlightTime> anchor_total;
    std::optional<base::Count> anchor_landings;
    std::optional<base::Count> anchor_starts;
    std::string source;  // document, empty: source not given
    std::string revision;
    std::optional<std::int32_t> days{};  // calendar days, instead of months
    Interval first{};                    // any: the first compliance counts by these alone
    bool once{false};                    // complied with means nothing is left to do
    std::optional<Combine> combine{};    // missing: the sooner
    Interval cap{};                      // but not after, whatever the clocks combine to
    Tolerance tolerance{};
    std::optional<InForce> in_force{};  // missing: always
};

/// A meter with its offset: when it read `reads`, the aircraft's total time was `total`.
struct MeterFitted {
    std::string name;
    MeterDrive drive{MeterDrive::other};
    base::FlightTime reads;
    base::FlightTime total;
    std::string why;
};

struct Reading {
    base::FlightTime reads;
    std::optional<base::Count> landings;  // total since new, as the logbook has it
    std::optional<base::Count> starts;
};

struct ItemAdded {
    std::string name;
    ItemRole role{ItemRole::other};
    std::string chapter;
};

struct ItemChanged {
    std::string name;
    std::string why;
};

/// Which item a work renews, and which of its clocks; none named is all of them.
struct Renewal {
    base::Id item;
    std::vector<Clock> clocks;
    std::vector<std::pair<std::string, Json>> extra{};  // fields this version does not know, by key
};

struct WorkDone {
    std::string what;
    std::vector<Renewal> renews;
    std::optional<base::FlightTime> total;  // the aircraft's total time; missing is unknown
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
    std::string place;
    std::string done_by;
    std::string reference;
};

/// Months as a file names them, January first.
inline constexpr std::array<std::string_view, 12> month_keys{"january",
                                                             "february",
                                                             "march",
                                                             "april",
                                                             "may",
                                                             "june",
                                                             "july",
                                                             "august",
                                                             "september",
                                                             "october",
                                                             "november",
                                                             "december"};

struct UsagePlanned {
    base::FlightTime month;  // hours a month, of those that by_month does not name
    std::string why;
    std::array<std::optional<base::FlightTime>, 12> by_month{};  // January first
};

/// Which work renews what, by an approved document: work done under it copies its renewals.
struct WorkRule {
    std::string name;
    std::vector<Renewal> renews;
    std::string source;
    std::string revision;
};

struct OutOfService {
    std::optional<base::Date> until;  // first day back; missing is not known yet
    std::string why;
    bool stored{false};  // preserved by the document below: storage checks count
    std::string source{};
    std::string revision{};
};

}  // namespace twoclocks::facts
