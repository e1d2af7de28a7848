// Which version of each record holds: corrections, withdrawals and answers, worked out.
//
// The hard question: which record wins when two people changed the same one on two phones? None by
// itself. Order is by which id replaces which, never by clocks: a head is a version that nothing
// replaces. One head is settled. Several heads are an open question; until a person answers, every
// quantity takes the value that gives less life (see safer.hpp). An answer counts once all it
// keeps is
// here; two answers that disagree leave the question open.
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
    bool open{false};         // more than one head, not all of them withdrawals
    bool withdrawn{false};    // settled, and taken back
    facts::Body in_use;       // the single head, or the safer of several; unset when withdrawn
};

/// Answers about one aircraft, and which versions they drop.
class Verdicts {
  public:
    Verdicts(const facts::Journal& journal, base::Id aircraft);
    /// True when an answer drops this version and no other answer keeps it.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] bool drops(const facts::Fact& fact) const;

  private:
    std::vector<facts::Ref> dropped_;
    std::vector<facts::Ref> kept_;
};

/// Every record about an aircraft, in order of its first version.
/// Units: none. Errors: none, a cycle of corrections is never reached. Source: our choice.
[[nodiscard]] std::vector<Record> resolve(const facts::Journal& journal, base::Id aircraft);

}  // namespace twoclocks::timeline
