#include "engine/timeline/heads.hpp"

#include <algorithm>

#include "engine/base/order.hpp"
#include "engine/facts/print.hpp"
#include "engine/timeline/safer.hpp"

namespace twoclocks::timeline {
namespace {

using facts::Answer;
using facts::Correction;
using facts::Fact;
using facts::Journal;
using facts::Ref;
using facts::Withdrawal;

/// What a correction or withdrawal names; nothing for other kinds.
[[nodiscard]] const Ref* replaced_by(const Fact& fact) {
    if (const auto* correction = std::get_if<Correction>(&fact.body.fields))
        return &correction->replaces;
    if (const auto* withdrawal = std::get_if<Withdrawal>(&fact.body.fields))
        return &withdrawal->withdraws;
    return nullptr;
}

[[nodiscard]] const facts::Body* body_of(const Fact& fact) {
    if (const auto* correction = std::get_if<Correction>(&fact.body.fields))
        return correction->instead.get();
    if (std::holds_alternative<Withdrawal>(fact.body.fields)) return nullptr;
    return &fact.body;
}

[[nodiscard]] bool is_here(const Journal& journal, const Ref& ref) {
    const std::vector<const Fact*> same = journal.with_id(ref.id);
    return std::any_of(
        same.begin(), same.end(), [&](const Fact* fact) { return names(ref, *fact); });
}

/// Versions that replace or take back this one.
[[nodiscard]] std::vector<const Fact*> replacements(const Journal& journal, const Fact& fact) {
    std::vector<const Fact*> out;
    for (const Fact* other : journal.naming(fact.id)) {
        const Ref* ref = replaced_by(*other);
        if (ref != nullptr && names(*ref, fact)) out.push_back(other);
    }
    return out;
}

/// An answer that a later answer settles, or that was withdrawn, no longer speaks.
[[nodiscard]] bool is_silenced(const Journal& journal, const Fact& answer) {
    for (const Fact* other : journal.naming(answer.id)) {
        const Ref* ref = replaced_by(*other);
        if (ref != nullptr && names(*ref, answer)) return true;
        const auto* later = std::get_if<Answer>(&other->body.fields);
        if (later == nullptr || other == &answer) continue;
        for (const Ref& settled : later->settles) {
            if (names(settled, answer)) return true;
        }
    }
    return false;
}

/// Two corrections of one version that put the same in its place.
[[nodiscard]] bool is_twin(const Fact& left, const Fact& right) {
    const auto* one = std::get_if<Correction>(&left.body.fields);
    const auto* other = std::get_if<Correction>(&right.body.fields);
    return &left != &right && one != nullptr && other != nullptr && one->instead &&
           other->instead && one->replaces == other->replaces &&
           say_the_same(*one->instead, *other->instead);
}

/// Collects the heads below the given versions. What replaces a version replaces its twins too:
/// whoever corrected it need not have known that somebody else had written the same.
void collect_heads(const Journal& journal,
                   std::vector<const Fact*> versions,
                   std::vector<Head>& heads) {
    std::vector<const Fact*> seen;
    std::vector<const Fact*> replaced;
    while (!versions.empty()) {
        const Fact* fact = versions.back();
        versions.pop_back();
        if (std::find(seen.begin(), seen.end(), fact) != seen.end()) continue;
        seen.push_back(fact);
        const std::vector<const Fact*> next = replacements(journal, *fact);
        if (next.empty()) heads.push_back({fact, body_of(*fact)});
        if (!next.empty()) replaced.push_back(fact);
        versions.insert(versions.end(), next.begin(), next.end());
    }
    const auto twin_is_replaced = [&](const Head& head) {
        return std::any_of(replaced.begin(), replaced.end(), [&](const Fact* other) {
            return is_twin(*head.fact, *other);
        });
    };
    heads.erase(std::remove_if(heads.begin(), heads.end(), twin_is_replaced), heads.end());
    base::sort_stably(heads, [](const Head& left, const Head& right) {
        return comes_before(*left.fact, *right.fact);
    });
}

void settle(Record& record) {
    std::vector<const facts::Body*> bodies;
    for (const Head& head : record.heads) {
        if (head.body != nullptr) bodies.push_back(head.body);
    }
    const bool one_takes_it_back = bodies.size() < record.heads.size();
    const auto says_the_same = [&](const Head& head) { return agree(head, record.heads.front()); };
    record.open = record.heads.size() > 1 &&
                  !std::all_of(record.heads.begin() + 1, record.heads.end(), says_the_same);
    const std::optional<facts::Body> in_use = safer(bodies, one_takes_it_back);
    record.withdrawn = !in_use.has_value();
    if (in_use) record.in_use = *in_use;
}

/// What an answer says of a version it says of its twins, but for those that an answer keeps.
void drop_answered(const Journal& journal, std::vector<Head>& heads) {
    std::vector<const Fact*> dropped;
    std::vector<const Fact*> kept;
    for (const Head& head : heads) {
        bool is_dropped = false;
        bool is_kept = false;
        for (const Fact* fact : answers_on(journal, *head.fact)) {
            const auto& answer = *std::get_if<Answer>(&fact->body.fields);
            const bool keeps = any_names(answer.keeps, *head.fact);
            is_kept = is_kept || keeps;
            is_dropped = is_dropped || !keeps;
        }
        if (is_kept) kept.push_back(head.fact);
        if (is_dropped && !is_kept) dropped.push_back(head.fact);
    }
    const auto goes = [&](const Head& head) {
        if (std::find(kept.begin(), kept.end(), head.fact) != kept.end()) return false;
        return std::any_of(dropped.begin(), dropped.end(), [&](const Fact* other) {
            return other == head.fact || is_twin(*other, *head.fact);
        });
    };
    heads.erase(std::remove_if(heads.begin(), heads.end(), goes), heads.end());
}

}  // namespace

bool changes_another(const Fact& fact) {
    const facts::Fields& fields = fact.body.fields;
    return std::holds_alternative<Correction>(fields) ||
           std::holds_alternative<Withdrawal>(fields) || std::holds_alternative<Answer>(fields);
}

Record make_record(const Journal& journal,
                   base::Id root,
                   const std::vector<const Fact*>& versions) {
    Record record;
    record.root = root;
    record.first = versions.front();
    collect_heads(journal, versions, record.heads);
    drop_answered(journal, record.heads);
    settle(record);
    return record;
}

std::vector<const Fact*> answers_on(const Journal& journal, const Fact& fact) {
    std::vector<const Fact*> out;
    for (const Fact* other : journal.naming(fact.id)) {
        const auto* answer = std::get_if<Answer>(&other->body.fields);
        if (answer == nullptr || is_silenced(journal, *other)) continue;
        if (!any_names(answer->settles, fact) && !any_names(answer->keeps, fact)) continue;
        const bool all_here = std::all_of(answer->keeps.begin(),
                                          answer->keeps.end(),
                                          [&](const Ref& ref) { return is_here(journal, ref); });
        if (all_here) out.push_back(other);
    }
    return out;
}

}  // namespace twoclocks::timeline
