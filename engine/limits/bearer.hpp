// What a limit hangs on: an aircraft, or a part that carries the limit wherever it goes.
//
// The hard questions.
//   Which hours of a part: its time since new. While that is not known, what is recorded of it;
//   then a limit counts only from work that is recorded too. An overhaul with no work recorded
//   counts the papers' time since overhaul, and without that the time since new: never less.
//   History not known: no life is left of what is limited by life, and every hour recorded since
//   is past the limit. What records disagree about is unknown instead, until a person answers.
//   First fit: the first that is recorded, where the part had flown nothing before. Any other day
//   that is not known is that of manufacture, or else of cure: the earliest it could be.
#pragma once

#include <optional>

#include "engine/timeline/parts.hpp"

namespace twoclocks::limits {

/// What the hours of a limit count in.
enum class HoursIn : std::uint8_t {
    total_time,      // of the aircraft
    since_new,       // of the part
    since_overhaul,  // of the part, by its papers
    recorded         // of the part, since its records begin
};

/// A day that a calendar may count from.
struct BornOn {
    std::optional<base::Date> manufactured;
    std::optional<base::Date> cured;
    std::optional<base::Date> shipped;
    std::optional<base::Date> first_fitted;
    std::optional<base::Date> overhauled;
    std::optional<base::Date> rebuilt;
};

/// What limits need to know of what they hang on.
struct Bearer {
    base::Id id;
    bool is_part{false};
    HoursIn hours_in{HoursIn::total_time};
    std::optional<base::FlightTime> hours;           // now; nothing when not known
    std::optional<base::FlightTime> since_overhaul;  // of a part
    bool is_estimated{false};                        // the hours of a part are
    bool since_overhaul_estimated{false};
    std::optional<base::Count> landings;
    std::optional<base::Count> starts;
    BornOn born;
    bool is_asked_about{false};                 // it has open questions
    bool history_unknown{false};                // of a part, as its papers say
    base::FlightTime recorded;                  // hours that a part gained on its hosts here
    std::optional<base::FlightTime> most_told;  // of a part: the most that records in dispute tell
    std::optional<base::Date> recorded_on;      // and the day they do
    timeline::StorageState storage{};           // of an aircraft
    timeline::UseState use{};                   // of an aircraft
};

/// An aircraft as a bearer of limits: total time, its counts, its manufacture.
/// Units: as state.hpp. Errors: none. Source: our choice.
[[nodiscard]] Bearer bearer_of(const timeline::AircraftState& state);

/// A part as a bearer of limits: its own hours and counts, its own days.
/// Units: as parts.hpp. Errors: none. Source: common practice, no source: a used part keeps its own
/// hours, and one of unknown history has no life left.
[[nodiscard]] Bearer bearer_of(const timeline::PartState& part);

/// A day that the calendar of a limit counts from before any work, and which one it is.
struct AnchorDay {
    std::optional<base::Date> on;
    facts::Anchor anchor{facts::Anchor::unknown};
    bool is_assumed{false};  // the earliest it could be
    bool is_rebuild{false};  // the maker's rebuild began a new life
};

/// The day that a limit names, of those that the bearer knows.
/// Units: days. Errors: no day when none is known. Source: unknown is the earliest it could be.
[[nodiscard]] AnchorDay anchor_day(const Bearer& bearer, const facts::LimitSet& limit);

/// True when nothing is left of a clock because nobody knows the part's life: it is limited by
/// life, no work renewed it, and its history or its hours are not known.
/// Units: none. Errors: none. Source: common practice, no source.
[[nodiscard]] bool has_no_life_left(const Bearer& bearer,
                                    const timeline::ItemState& item,
                                    facts::Clock clock);

}  // namespace twoclocks::limits
