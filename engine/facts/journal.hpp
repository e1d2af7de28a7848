// The journal: a set of facts that only grows.
//
// Merge is set union by id and content, so it is commutative, associative and idempotent and never
// loses a fact. Two facts with one id and different content are both kept; one without a signature
// is the one with it, handed over without. Order of arrival changes nothing: whoever reads goes
// through `in_order` or an index, both sorted by stamp, id, content.
#pragma once

#include <cstdint>
#include <deque>
#include <map>
#include <string>
#include <vector>

#include "engine/facts/fact.hpp"

namespace twoclocks::facts {

/// True when one fact comes before another in the canonical order: stamp, then id, then content.
/// Units: none. Errors: none. Source: our choice, a total order that no build can see differently.
[[nodiscard]] bool comes_before(const Fact& left, const Fact& right);

/// True when one fact says all that another does: it is the same to the byte, or but for a
/// signature that the other was handed over without.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool holds(const Fact& here, const Fact& told);

class Journal {
  public:
    /// Adds a fact; false when it was there already. One that is there without its signature gets
    /// it.
    /// Units: none. Errors: none. Source: our choice, set union.
    bool add(Fact fact);

    /// Facts in the order they came.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] const std::deque<Fact>& facts() const { return facts_; }

    /// Facts about an aircraft, meter, item or part, sorted by stamp, id, content.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] std::vector<const Fact*> about(base::Id subject) const;

    /// Every fact with this id; more than one is an open question.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] std::vector<const Fact*> with_id(base::Id id) const;

    /// Corrections, withdrawals and answers that name this id.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] std::vector<const Fact*> naming(base::Id id) const;

    /// All facts sorted by stamp, id, content.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] std::vector<const Fact*> in_order() const;

    /// Ids of all aircraft that were ever added, in order of id.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] std::vector<base::Id> aircraft() const;

    /// Ids of all parts that were ever added, in order of id.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] std::vector<base::Id> parts() const;

    /// True when a fact's id is borne by another fact too.
    /// Units: none. Errors: none. Source: our choice.
    [[nodiscard]] bool id_is_shared(base::Id id) const;

  private:
    using Index = std::map<base::Id, std::vector<std::int32_t>>;
    [[nodiscard]] std::vector<const Fact*> pick(const Index& index, base::Id id) const;

    std::deque<Fact> facts_;
    Index by_id_;
    Index by_subject_;
    Index by_target_;
};

/// The union of two journals.
/// Units: none. Errors: none. Source: our choice, set union by id and content.
[[nodiscard]] Journal merge(const Journal& left, const Journal& right);

/// Canonical export: header, then facts sorted by stamp, id, content. Same set of facts, same
/// bytes.
/// Units: bytes of UTF-8. Errors: none. Source: journal.schema.json.
[[nodiscard]] std::string print_journal(const Journal& journal);

/// SHA-256 of the canonical export, in hexadecimal: the journal's fingerprint.
/// Units: none. Errors: none. Source: FIPS 180-4.
[[nodiscard]] std::string fingerprint(const Journal& journal);

/// The reference that names this fact among all: by id, and by content where its id is shared.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] Ref ref_to(const Journal& journal, const Fact& fact);

/// True when a reference names this fact.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool names(const Ref& ref, const Fact& fact);

/// How far ahead of our wall time a stamp may be before it is flagged and no longer advances our
/// own.
inline constexpr std::int64_t far_ahead_ms = 24LL * 60 * 60 * 1000;

/// The stamp of the next fact written here: after everything seen that is not far ahead.
/// Units: milliseconds. Errors: none. Source: hybrid logical clocks, Kulkarni et al. 2014,
/// simplified.
[[nodiscard]] Stamp next_stamp(const Stamp& latest_seen, std::int64_t wall_ms, std::string device);

/// The latest stamp in a journal that is not far ahead of the wall time.
/// Units: milliseconds. Errors: none. Source: our choice.
[[nodiscard]] Stamp latest_stamp(const Journal& journal, std::int64_t wall_ms);

}  // namespace twoclocks::facts
