// One record of the journal, and every kind of it.
//
// A fact is never edited and never deleted: a correction replaces it and says why, a withdrawal
// takes it back and says why. What a fact is about stands in `about`: the aircraft first, then the
// meter or item. The id of each of them is the id of the fact that added it. A fact about a part
// names the part first, then what it is fitted to; work names the aircraft first.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "engine/base/date.hpp"
#include "engine/base/id.hpp"
#include "engine/facts/aircraft_facts.hpp"
#include "engine/facts/care_facts.hpp"
#include "engine/facts/cash_facts.hpp"
#include "engine/facts/cost_facts.hpp"
#include "engine/facts/json.hpp"
#include "engine/facts/part_facts.hpp"
#include "engine/facts/plan_facts.hpp"
#include "engine/facts/sale_facts.hpp"

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
                            CostTerms,
                            Core,
                            CoreStep,
                            PayTerm,
                            Payment,
                            Balance,
                            ReserveTerms,
                            Holder,
                            ItemPrice,
                            ClosingPoint>;

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
