// Which version of each record holds: corrections, withdrawals and answers, worked out.
//
// The hard question: which record wins when two people changed the same one on two phones? None by
// itself. Order is by which id replaces which, never by clocks: a head is a version that nothing
// replaces. One head is settled, and so are several that say the same. Heads that say different
// things are an open question; until a person answers, every quantity takes the value that gives
// less life (see safer.hpp). An answer counts once all it keeps is here, for every aircraft that
// what it settles is about; two answers that disagree leave the question open.
#pragma once

#include <vector>

#include "engine/facts/journal.hpp"

namespace twoclocks::timeline {

/// A version that nothing replaces. `body` is null when the version is a withdrawal.
struct Head {
    const facts::Fact* fact{nullptr};
    const facts::Body* body{nullptr};
};

/// One record with all its versions.
struct Record {
    base::Id root;  // id of the first version: also the id of a meter or item it added
    const facts::Fact* first{nullptr};
    std::vector<Head> heads;  // after answers
    bool open{false};         // heads that do not agree
    bool withdrawn{false};    // settled, and taken back
    facts::Body in_use;       // the single head, or the safer of several; unset when withdrawn
};

/// True when two heads say the same: both take the record back, or their bodies are equal.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool agree(const Head& left, const Head& right);

/// Answers in force that settle or keep a fact: all they keep is here, and neither a withdrawal nor
/// a later answer has silenced them.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<const facts::Fact*> answers_on(const facts::Journal& journal,
                                                         const facts::Fact& fact);

/// True when one of these references names a fact.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool any_names(const std::vector<facts::Ref>& refs, const facts::Fact& fact);

/// Ids of the records that a fact is a version of, sorted; none for an answer.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<base::Id> roots_of(const facts::Journal& journal,
                                             const facts::Fact& fact);

/// The latest day that a version of a record names.
/// Units: days. Errors: none. Source: our choice.
[[nodiscard]] base::Date latest_day(const Record& record);

/// Every record about an aircraft or a part, in order of its first version.
/// Units: none. Errors: none, a cycle of corrections is never reached. Source: our choice.
[[nodiscard]] std::vector<Record> resolve(const facts::Journal& journal, base::Id aircraft);

/// The same about any of several subjects, each record once.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Record> resolve(const facts::Journal& journal,
                                          const std::vector<base::Id>& subjects);
/// One record by the id of its first version, with every fact that bears the id, whatever each is
/// about. Without heads when there is none.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Record resolve_one(const facts::Journal& journal, base::Id root);

}  // namespace twoclocks::timeline
