// A directive and what acts on it, as part of a state. See directives.hpp.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/facts/fact.hpp"
#include "engine/timeline/renewed.hpp"

namespace twoclocks::timeline {

/// What serials or a part number say of what a directive hangs on.
enum class Says : std::uint8_t { nothing, names_this, names_others };

/// A day that the first interval may count from, and hours that were surely flown by then.
struct DirectiveStart {
    std::optional<base::Date> on;  // missing: as the limit itself has it
    std::optional<base::FlightTime> hours;
};

/// An approved other way that may be in use.
struct MeansState {
    facts::AlternativeMeans means;
    base::Date on;
    base::Id fact;
};

/// Another directive of the same bearer.
struct OtherDirective {
    base::Id item;
    std::string name;  // its number, or what the item is called
};

/// Work that complied with a directive or ended it.
struct DirectiveWork {
    base::Date on;
    std::optional<base::FlightTime> total;
    bool total_estimated{false};
    std::string what;
    std::string reference;
    base::Id fact;
};

/// An item that rests on a directive, or that a directive names as superseded.
struct DirectiveState {
    bool told{false};  // false: no record of a directive is about it, others name it
    facts::Directive directive;
    base::Id fact;
    bool disputed{false};     // versions that may hold do not say the same
    bool may_be_none{false};  // an answer may leave the limit alone, or nothing else is recorded
    bool counts{true};        // by some version that may hold, or because a decision is doubted
    bool not_known{false};    // by some version nobody has decided
    bool sure{false};         // it applies by every version, in effect, and nothing speaks against
    bool doubted{false};      // serials or part number disagree with the decision
    Says serials{Says::nothing};
    Says number{Says::nothing};
    bool before_flight{false};
    std::vector<DirectiveStart> starts{};  // one, or every one that may be
    std::vector<Works> histories{};   // what counts as compliance: one, or every one that may be
    bool credited{false};             // some of that was done for what it supersedes
    std::vector<MeansState> means{};  // in use, or every one that may be
    bool means_in_doubt{false};       // none may be, too
    std::optional<MeansState> means_over{};  // the last that ended, where none is in use
    std::optional<OtherDirective> superseded_by{};
    std::vector<OtherDirective> claimed_by{};  // say so, but do not count
    bool in_ring{false};
    std::optional<DirectiveWork> ended_by{};
    bool end_disputed{false};
    std::optional<DirectiveWork> last{};  // compliance
};

}  // namespace twoclocks::timeline
