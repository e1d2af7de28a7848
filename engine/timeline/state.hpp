// What the facts add up to on a day: the state of every aircraft.
//
// The hard questions.
//   A meter that falls: both readings are kept, the higher total stands until a person answers.
//   A reading dated after today: it counts (used is never understated) and a caution says so.
//   Work dated after today: it has not been done.
//   Work without the total time: unknown to the record; the last total recorded on or before that
// day
//   that nobody disputes serves planning only and is marked as an estimate.
//   An anchor nobody knows: the earliest it could be, marked as assumed.
//   Flying recorded in a spell that has no end: the spell has ended, by that day at the latest.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "engine/facts/journal.hpp"
#include "engine/timeline/directive_state.hpp"
#include "engine/timeline/event_state.hpp"
#include "engine/timeline/money_state.hpp"
#include "engine/timeline/plan_state.hpp"
#include "engine/timeline/renewed.hpp"
#include "engine/timeline/resolve.hpp"
#include "engine/timeline/storage_state.hpp"
#include "engine/timeline/use_state.hpp"
#include "engine/timeline/wear_state.hpp"

namespace twoclocks::timeline {

/// Total time on a day, and the fact that says so.
struct UsagePoint {
    base::Date on;
    base::FlightTime total;
    base::Id fact;
};

/// Total time over the life, never falling, sorted by day.
using UsageSeries = std::vector<UsagePoint>;

/// A meter: when it read `reads`, the aircraft's total was `total`. What it did not count comes on
/// top, see meter_adjust.hpp.
struct MeterState {
    base::Id id;
    std::string name;
    facts::MeterDrive drive{facts::MeterDrive::other};
    base::Date fitted_on;
    base::FlightTime reads;
    base::FlightTime total;
    std::optional<base::FlightTime> last_reads;
    std::optional<base::Date> last_on;
    std::vector<MeterAdjustment> adjusted{};  // by day
};

/// Leave to fly past a limit, from a day on.
struct PermitState {
    facts::Permit permit;
    base::Date on;
    base::Id fact;
};

/// One version of work in dispute.
struct DisputedWork {
    base::Date on;
    std::optional<base::FlightTime> total;
};

/// An item with its limit in force and its last renewals, one a clock (index: facts::Clock).
struct ItemState {
    base::Id id;
    std::string name;
    facts::ItemRole role{facts::ItemRole::other};
    std::string chapter;
    std::optional<facts::LimitSet> limit;
    base::Id limit_fact;
    std::array<std::optional<Renewed>, clock_count> renewed;
    std::array<std::vector<Renewed>, clock_count> earlier{};  // those before the last, in order
    bool disputed{false};                           // records about its work or its limit disagree
    std::vector<facts::LimitSet> limit_versions{};  // then: all that an answer may leave in force
    std::vector<PermitState> permits{};             // oldest first
    std::optional<WearState> wear{};                // measured, or limited by wear
    bool work_disputed{false};                      // of `disputed`: whether or when it was done
    std::optional<DirectiveState> directive{};      // what it rests on, or is superseded by
    std::vector<DisputedWork> disputed_works{};     // where `work_disputed`
};

/// Days out of service, `until` not included; no end is not known yet. A spell recorded without an
/// end that was flown in ends on the day the flying was recorded: then `flown_by` is that day too.
struct Spell {
    base::Date from;
    std::optional<base::Date> until;
    std::string why;
    base::Id fact;
    std::optional<base::Date> flown_by{};
    bool stored{false};  // in storage, and nobody disputes it
};

/// Hours of each month of the year, January first.
using MonthlyHours = std::array<base::FlightTime, 12>;

/// Usage a person stated for the time ahead. While records disagree: of those by the month and of
/// those that name every month the most that any of them plans, zero where there are none.
struct StatedPlan {
    base::FlightTime month;
    std::string why;
    base::Date on;
    base::Id fact;
    bool disputed{false};
    std::optional<MonthlyHours> by_month{};  // then `month` is their mean, unless disputed
};

/// Which work renews what, as a document has it.
struct WorkRuleState {
    base::Id id;
    std::string name;
    std::vector<facts::Renewal> renews;  // while records disagree: what all of them renew
    std::string source;
    std::string revision;
    bool disputed{false};
    base::Id version{};  // the fact that says so, the first of them while records disagree
};

enum class QuestionKind : std::uint8_t {
    same_id,   // one id, two contents
    versions,  // a record was changed in two ways
    falling,   // a later reading is lower
    too_fast   // more than 24 hours a day between two readings
};

/// One way of answering: a fact, and others that say the same.
struct Side {
    facts::Fact fact;
    std::vector<facts::Fact> same;
};

/// Facts that cannot all be right, waiting for a person.
struct Question {
    QuestionKind kind{};
    base::Id root;  // the record, for same_id and versions
    std::vector<Side> sides;
    std::optional<facts::Body> in_use;  // the safer value; none when it is that nothing happened
    bool no_safe_side{false};           // the aircraft shows unknown
};

/// Something to look at that stops nothing.
struct Caution {
    base::Trouble code{};
    std::vector<base::Arg> args;
    base::Id fact;
};

struct AircraftState {
    base::Id id;
    std::string registration;
    std::string type;
    std::string serial;
    std::optional<base::Date> manufactured;
    bool invented{false};
    bool withdrawn{false};
    std::vector<MeterState> meters;  // oldest first; the last is the one to read
    UsageSeries usage;
    UsageSeries certain;   // of it, what no open question touches: for estimates
    UsageSeries recorded;  // every total that a record names, also those that fall, by day
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
    std::vector<ItemState> items;
    std::vector<Spell> spells;
    std::optional<StatedPlan> plan;
    std::vector<WorkRuleState> work_rules{};  // by day; of one name the last
    std::vector<Question> questions;
    std::vector<Caution> cautions;
    std::int32_t unknown_records{0};   // written by a newer version: what is due is not known
    std::vector<EventState> events{};  // that stop it, oldest first
    StorageState storage{};
    UseState use{};
    PlanState campaign{};
    MoneyState money{};
};

/// State of one aircraft on a day.
/// Units: as fact.hpp. Errors: none; what does not add up is a question or a caution.
/// Source: common practice, no source, for total time through meter changes.
[[nodiscard]] AircraftState replay(const facts::Journal& journal,
                                   base::Id aircraft,
                                   base::Date today);

/// State of every aircraft on a day, in order of id, without those that were withdrawn.
/// Units: as fact.hpp. Errors: none. Source: our choice.
[[nodiscard]] std::vector<AircraftState> replay_fleet(const facts::Journal& journal,
                                                      base::Date today);

}  // namespace twoclocks::timeline
