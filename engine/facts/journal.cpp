#include "engine/facts/journal.hpp"

#include <algorithm>

#include "engine/base/hash.hpp"
#include "engine/base/order.hpp"
#include "engine/facts/parse.hpp"
#include "engine/facts/print.hpp"

namespace twoclocks::facts {
namespace {

[[nodiscard]] bool before(const Fact* left, const Fact* right) {
    return comes_before(*left, *right);
}

[[nodiscard]] std::vector<base::Id> targets(const Body& body) {
    if (const auto* correction = std::get_if<Correction>(&body.fields))
        return {correction->replaces.id};
    if (const auto* withdrawal = std::get_if<Withdrawal>(&body.fields))
        return {withdrawal->withdraws.id};
    std::vector<base::Id> out;
    if (const auto* answer = std::get_if<Answer>(&body.fields)) {
        for (const auto* refs : {&answer->settles, &answer->keeps}) {
            for (const Ref& ref : *refs)
                out.push_back(ref.id);
        }
    }
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
}

/// What a fact concerns, and what a correction puts in its place does.
[[nodiscard]] std::vector<base::Id> subjects(const Body& body) {
    std::vector<base::Id> out = subjects_of(body);
    if (const auto* correction = std::get_if<Correction>(&body.fields);
        correction && correction->instead) {
        const std::vector<base::Id> instead = subjects_of(*correction->instead);
        out.insert(out.end(), instead.begin(), instead.end());
    }
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
}

/// Ids of facts that are of a kind in one of their versions, in order of id.
template <class Kind, class Index>
[[nodiscard]] std::vector<base::Id> ids_of(const Index& by_id, const std::deque<Fact>& facts) {
    std::vector<base::Id> out;
    for (const auto& [id, places] : by_id) {
        for (const std::int32_t place : places) {
            const Fields& fields = facts[static_cast<std::size_t>(place)].body.fields;
            if (!std::holds_alternative<Kind>(fields)) continue;
            out.push_back(id);
            break;
        }
    }
    return out;
}

}  // namespace

bool comes_before(const Fact& left, const Fact& right) {
    if (earlier(left.stamp, right.stamp)) return true;
    if (earlier(right.stamp, left.stamp)) return false;
    if (left.id != right.id) return left.id < right.id;
    if (&left == &right) return false;
    return print_fact(left) < print_fact(right);
}

bool holds(const Fact& here, const Fact& told) {
    if (here.id != told.id) return false;
    const bool is_handed_without = told.by.empty() && !here.by.empty();
    if (!is_handed_without) return print_fact(here) == print_fact(told);
    Fact signed_alike = told;
    signed_alike.by = here.by;
    return print_fact(here) == print_fact(signed_alike);
}

bool Journal::add(Fact fact) {
    std::vector<std::int32_t>& same_id = by_id_[fact.id];
    for (const std::int32_t place : same_id) {
        Fact& here = facts_[static_cast<std::size_t>(place)];
        if (holds(here, fact)) return false;
        if (!holds(fact, here)) continue;
        here.by = std::move(fact.by);
        return true;
    }
    const auto place = static_cast<std::int32_t>(facts_.size());
    same_id.push_back(place);
    for (const base::Id& subject : subjects(fact.body))
        by_subject_[subject].push_back(place);
    for (const base::Id& target : targets(fact.body))
        by_target_[target].push_back(place);
    facts_.push_back(std::move(fact));
    return true;
}

std::vector<const Fact*> Journal::pick(const Index& index, base::Id id) const {
    std::vector<const Fact*> out;
    const auto found = index.find(id);
    if (found == index.end()) return out;
    for (const std::int32_t place : found->second)
        out.push_back(&facts_[static_cast<std::size_t>(place)]);
    base::sort_stably(out, before);
    return out;
}

std::vector<const Fact*> Journal::about(base::Id subject) const {
    return pick(by_subject_, subject);
}

std::vector<const Fact*> Journal::with_id(base::Id id) const {
    return pick(by_id_, id);
}

std::vector<const Fact*> Journal::naming(base::Id id) const {
    return pick(by_target_, id);
}

std::vector<const Fact*> Journal::in_order() const {
    std::vector<const Fact*> out;
    for (const Fact& fact : facts_)
        out.push_back(&fact);
    base::sort_stably(out, before);
    return out;
}

std::vector<base::Id> Journal::aircraft() const {
    return ids_of<AircraftAdded>(by_id_, facts_);
}

std::vector<base::Id> Journal::parts() const {
    return ids_of<PartAdded>(by_id_, facts_);
}

bool Journal::id_is_shared(base::Id id) const {
    const auto found = by_id_.find(id);
    return found != by_id_.end() && found->second.size() > 1;
}

Journal merge(const Journal& left, const Journal& right) {
    Journal out = left;
    for (const Fact& fact : right.facts())
        out.add(fact);
    return out;
}

std::string print_journal(const Journal& journal) {
    std::string out = print_header() + '\n';
    for (const Fact* fact : journal.in_order())
        out += print_fact(*fact) + '\n';
    return out;
}

std::string fingerprint(const Journal& journal) {
    return base::print_hex(base::sha256(print_journal(journal)));
}

Ref ref_to(const Journal& journal, const Fact& fact) {
    return {fact.id, journal.id_is_shared(fact.id) ? content_of(fact) : 0};
}

bool names(const Ref& ref, const Fact& fact) {
    if (ref.id != fact.id) return false;
    if (ref.content == 0 || ref.content == content_of(fact)) return true;
    if (fact.by.empty()) return false;
    // Whoever had it without its signature named it by that.
    Fact handed_without = fact;
    handed_without.by.clear();
    return ref.content == content_of(handed_without);
}

Stamp next_stamp(const Stamp& latest_seen, std::int64_t wall_ms, std::string device) {
    const bool seen_is_usable = latest_seen.wall_ms <= wall_ms + far_ahead_ms;
    if (!seen_is_usable || wall_ms > latest_seen.wall_ms) return {wall_ms, 0, std::move(device)};
    if (latest_seen.tick == INT32_MAX) return {latest_seen.wall_ms + 1, 0, std::move(device)};
    return {latest_seen.wall_ms, latest_seen.tick + 1, std::move(device)};
}

Stamp latest_stamp(const Journal& journal, std::int64_t wall_ms) {
    Stamp latest;
    for (const Fact& fact : journal.facts()) {
        const bool usable = fact.stamp.wall_ms <= wall_ms + far_ahead_ms;
        if (usable && earlier(latest, fact.stamp)) latest = fact.stamp;
    }
    return latest;
}

}  // namespace twoclocks::facts
