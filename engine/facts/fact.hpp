// One record of the journal, and every kind of it.
//
// A fact is never edited and never deleted: a correction replaces it and says why, a withdrawal
// takes it back and says why. What a fact is about stands in `about`: the aircraft first, then the
// meter or item. The id of each of them is the id of the fact that added it. A fact about a part
// names the part first, then what it is fitted to; work names the aircraft first.
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "engine/base/count.hpp"
#include "engine/base/date.hpp"
#include "engine/base/flight_time.hpp"
#include "engine/base/id.hpp"
#include "engine/facts/care_facts.hpp"
#include "engine/facts/cost_facts.hpp"
#include "engine/facts/json.hpp"
#include "engine/facts/limit_fact.hpp"
#include "engine/facts/part_facts.hpp"
#include "engine/facts/plan_facts.hpp"

namespace twoclocks::facts {

/// When and where a fact was written down: hybrid logical clock. Ordered by wall, tick, device.
struct Stamp {
    std::int64_t wall_ms{0};
    std::int32_t tick{0};
    std::string device;
};

/// Names a fact, or one of two facts that bear the same id with different content.
struct Ref {
    base::Id id;
    std::uint64_t content{
        0};  // first 8 bytes of the content's SHA-256; 0 when the id alone is plain
    auto operator<=>(const Ref&) const = default;
};

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

struct Note {
    std::string text;
};

struct Body;

/// Replaces one record by another and says why.
struct Correction {
    Ref replaces;
    std::string why;
    std::shared_ptr<const Body> instead;
};

/// Takes one record back, with everything it had replaced, and says why.
struct Withdrawal {
    Ref withdraws;
    std::string why;
};

/// A person's answer to an open question: of the records it settles, those it keeps.
struct Answer {
    std::vector<Ref> settles;
    std::vector<Ref> keeps;
    std::string why;
};

/// Written by a newer version: kept and printed back, never understood.
struct UnknownKind {
    std::string kind;
};

using Fields = std::variant<UnknownKind,
                            AircraftAdded,
                            AircraftChanged,
                            LimitSet,
                            MeterFitted,
                            Reading,
                            ItemAdded,
                            ItemChanged,
                            WorkDone,
                            UsagePlanned,
                            OutOfService,
                            Note,
                            Correction,
                            Withdrawal,
                            Answer,
                            Permit,
                            PartAdded,
                            PartFitted,
                            PartRemoved,
                            PartScrapped,
                            PartMoved,
                            PartRebuilt,
                            Directive,
                            AlternativeMeans,
                            Event,
                            WearLimit,
                            Wear,
                            MeterAdjusted,
                            WorkRule,
                            HoursFactor,
                            FlownAs,
                            PlanTask,
                            PlanStep,
                            PlanTerms,
                            Closed,
                            Route,
                            PlanCosts,
                            PlanKept,
                            CostLine,
                            PriceList,
                            ExchangeRate,
                            CostTerms>;

/// What a fact says: the day it is true for, what it is about, its own fields.
struct Body {
    base::Date on;
    std::vector<base::Id> about;
    Fields fields;
    std::vector<std::pair<std::string, Json>> extra;  // fields this version does not know, by key
};

/// A body with its name and its signature.
struct Fact {
    base::Id id;
    Stamp stamp;
    std::string by;
    Body body;
};

/// Order of two stamps: wall, tick, device.
/// Units: none. Errors: none. Source: our choice, hybrid logical clock order with the device as
/// last resort.
[[nodiscard]] bool earlier(const Stamp& left, const Stamp& right);

/// The word of a kind as it stands in the file: reading, work, correction.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::string_view kind_name(const Fields& fields);

/// What a fact concerns: all it is about, and every item that a work renews. Sorted, each once.
/// Units: none. Errors: none. Source: our choice, an overhauled part is found by its own id.
[[nodiscard]] std::vector<base::Id> subjects_of(const Body& body);

/// The aircraft a fact is about, or the part where a part stands first; empty if none.
/// Units: none. Errors: none. Source: our choice, the aircraft stands first.
[[nodiscard]] base::Id aircraft_of(const Body& body);

}  // namespace twoclocks::facts
