// Parts with serial numbers: where each is, what it has flown, and everything it was fitted to.
//
// The hard questions.
//   A part on the shelf: its hours stand, its calendar does not.
//   A part in an assembly: it flies when the assembly does, and keeps a life of its own.
//   A fit or removal without the host's total: unknown to the record. The least that the host may
//   have had at the fit, and the most at the removal, serve planning only and are marked.
//   Fitted in two places at once: the hours of both count until a person says which is wrong.
//   Unknown history: no life left of what is limited by life, and of nothing else; unknown time
//   since new with a certified time since overhaul is normal.
//   An overhaul: time since overhaul starts again and the count goes up by one. Time since new goes
//   on; only a rebuild by the maker, with its document, sets it to zero. Neither touches the parts
//   inside.
//   Limits that hang on a part: they count in its own time since new and go where it goes. Where
//   that is not known they count what is recorded, and only since work that is recorded too.
//   Several records of one day: by the total of their host, then as they were written, and a part
//   comes off before it goes on again.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/problem.hpp"
#include "engine/timeline/state.hpp"

namespace twoclocks::timeline {

enum class Whereabouts : std::uint8_t { shelf, fitted, lent, scrapped };

/// What the hours of limits on a part count in.
enum class PartHours : std::uint8_t {
    unknown,
    since_new,
    recorded  // its own count from 0: time since new is not known
};

/// A part on one host. Totals are the host's own: total time, or time since new of a part.
struct PartSpell {
    base::Date from;
    std::optional<base::Date> until;  // missing: still there
    base::Id host;
    bool host_is_part{false};
    std::string position;
    std::optional<base::FlightTime> from_total;
    std::optional<base::FlightTime> to_total;  // at the removal, or now
    bool from_estimated{false};
    bool to_estimated{false};
    std::optional<base::FlightTime> gained;  // missing: unknown
    std::optional<base::FlightTime>
        count;                 // the part's own at the fit; missing: papers came between
    bool temporarily{false};   // how it came off
    bool keeps_status{false};  // back on the same host with nothing flown meanwhile
    base::Id fit;
    base::Id removal;  // empty while it is there
};

/// Facts about a part that cannot all be right, or that nobody can count yet.
struct PartProblem {
    base::Trouble code{};
    std::vector<base::Arg> args;
    base::Severity severity{base::Severity::caution};
    std::vector<base::Id> facts;
};

/// From this day on, time since new is the part's own count plus this.
struct PartOffset {
    base::Date on;
    base::FlightTime tsn_less_count;
};

struct PartState {
    base::Id id;
    std::string part_number;
    std::string serial;
    std::string name;
    std::string chapter;
    Whereabouts whereabouts{Whereabouts::shelf};
    base::Id host;      // empty when it is fitted to nothing
    base::Id aircraft;  // the one it is on, by way of every assembly; empty when on none
    std::string position;
    std::string place;  // shelf, when it is fitted to nothing
    std::string owner;
    std::string lent_to;
    std::optional<base::Date> return_by;  // from whom has it on loan, or to its owner
    std::optional<base::Date> scrapped_on;
    std::string scrap_proof;
    facts::PartCondition condition{facts::PartCondition::unknown};
    std::string papers;
    bool history_unknown{false};  // no life left of what is limited by life
    std::optional<base::FlightTime> tsn;
    std::optional<base::FlightTime> tso;
    bool tsn_estimated{false};  // for planning, not for the record
    bool tso_estimated{false};
    base::FlightTime by_papers;  // tsn is this and what the spells gained, exactly
    std::optional<base::Count> overhaul_count;
    std::int32_t overhauls_recorded{0};
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
    std::optional<base::Date> manufactured;
    std::optional<base::Date> cured;
    std::optional<base::Date> shipped;
    std::optional<base::Date> first_fitted;
    std::optional<base::Date> overhauled_on;
    std::optional<base::Date> rebuilt_on;
    std::array<std::optional<Renewed>, clock_count> renewed;  // totals are the part's own
    PartHours hours_in{PartHours::unknown};
    std::optional<base::FlightTime> most_told{};  // the most since new that records in dispute tell
    std::vector<ItemState> items;                 // what hangs on it; totals count in `hours_in`
    std::vector<Caution> cautions;                // about those limits
    std::vector<PartSpell> spells;
    UsageSeries flown;                // its own count of hours from 0, for what is fitted to it
    bool flown_is_whole{true};        // false: hours are missing from the count
    std::vector<PartOffset> offsets;  // sorted by day
    std::vector<Question> questions;
    std::vector<PartProblem> problems;
    std::int32_t unknown_records{0};  // written by a newer version
    bool withdrawn{false};            // taken back, or never added
};

/// One part on a day. Looks at its facts, at those of its hosts and at nothing else.
/// Units: as fact.hpp. Errors: none; what does not add up is a problem or a question.
/// Source: common practice, no source: a used part keeps its own hours, removal freezes hours and
/// never the calendar; US Army TB 1-1500-341-01 for what an overhaul resets.
[[nodiscard]] PartState replay_part(const facts::Journal& journal, base::Id part, base::Date today);

/// Every part on a day, in order of id, without those that were withdrawn. Two that bear one part
/// number and serial are asked about here.
/// Units: as fact.hpp. Errors: none. Source: as above.
[[nodiscard]] std::vector<PartState> replay_parts(const facts::Journal& journal, base::Date today);

/// The parts on an aircraft on a day, also by way of an assembly, in order of id.
/// Units: as fact.hpp. Errors: none. Source: as above.
[[nodiscard]] std::vector<PartState> parts_of(const facts::Journal& journal,
                                              base::Id aircraft,
                                              base::Date today);

/// Aircraft whose figures a fact about this one, about this part or about what hangs on it may
/// change: those that ever shared a part with it, by way of any others. Sorted; of an aircraft it
/// is never empty.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Id> sharing_parts(const facts::Journal& journal, base::Id subject);

/// Hours of a part in what its limits count in; nothing when they are not known.
/// Units: hours. Errors: none. Source: our choice.
[[nodiscard]] std::optional<base::FlightTime> hours_of(const PartState& part);

/// What people call a part: its name or part number, and its serial.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::string part_label(const PartState& part);

}  // namespace twoclocks::timeline
