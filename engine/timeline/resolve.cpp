#include "engine/timeline/resolve.hpp"

#include <algorithm>
#include <iterator>
#include <map>

#include "engine/timeline/safer.hpp"

namespace twoclocks::timeline {
namespace {

using facts::Answer;
using facts::Correction;
using facts::Fact;
using facts::Journal;
using facts::Ref;
using facts::Withdrawal;

[[nodiscard]] bool changes_another(const Fact& fact) {
    const facts::Fields& fields = fact.body.fields;
    return std::holds_alternative<Correction>(fields) ||
           std::holds_alternative<Withdrawal>(fields) || std::holds_alternative<Answer>(fields);
}

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

/// Collects the heads below the given versions.
void collect_heads(const Journal& journal,
                   std::vector<const Fact*> versions,
                   std::vector<Head>& heads) {
    std::vector<const Fact*> seen;
    while (!versions.empty()) {
        const Fact* fact = versions.back();
        versions.pop_back();
        if (std::find(seen.begin(), seen.end(), fact) != seen.end()) continue;
        seen.push_back(fact);
        const std::vector<const Fact*> next = replacements(journal, *fact);
        if (next.empty()) heads.push_back({fact, body_of(*fact)});
        versions.insert(versions.end(), next.begin(), next.end());
    }
    std::sort(heads.begin(), heads.end(), [](const Head& left, const Head& right) {
        return comes_before(*left.fact, *right.fact);
    });
}

void settle(Record& record) {
    std::vector<const facts::Body*> bodies;
    for (const Head& head : record.heads) {
        if (head.body != nullptr) bodies.push_back(head.body);
    }
    const bool one_takes_it_back = bodies.size() < record.heads.size();
    record.open = record.heads.size() > 1 && !bodies.empty();
    const std::optional<facts::Body> in_use = safer(bodies, one_takes_it_back);
    record.withdrawn = !in_use.has_value();
    if (in_use) record.in_use = *in_use;
}

[[nodiscard]] Record make_record(const Journal& journal,
                                 const Verdicts& verdicts,
                                 base::Id root,
                                 const std::vector<const Fact*>& versions) {
    Record record;
    record.root = root;
    record.first = versions.front();
    collect_heads(journal, versions, record.heads);
    const auto dropped = [&](const Head& head) { return verdicts.drops(*head.fact); };
    record.heads.erase(std::remove_if(record.heads.begin(), record.heads.end(), dropped),
                       record.heads.end());
    settle(record);
    return record;
}

/// Adds the first versions that a fact goes back to: facts that stand for themselves, and
/// corrections whose own first version is not here.
void collect_roots(const Journal& journal, const Fact& fact, std::vector<const Fact*>& roots) {
    std::vector<const Fact*> left{&fact};
    std::vector<const Fact*> seen;
    while (!left.empty()) {
        const Fact* one = left.back();
        left.pop_back();
        if (std::find(seen.begin(), seen.end(), one) != seen.end()) continue;
        seen.push_back(one);
        if (!changes_another(*one)) roots.push_back(one);
        const auto* correction = std::get_if<Correction>(&one->body.fields);
        if (correction == nullptr) continue;
        const std::vector<const Fact*> same = journal.with_id(correction->replaces.id);
        const auto named = [&](const Fact* other) { return names(correction->replaces, *other); };
        if (std::none_of(same.begin(), same.end(), named)) roots.push_back(one);
        std::copy_if(same.begin(), same.end(), std::back_inserter(left), named);
    }
}

[[nodiscard]] base::Id root_id(const Fact& fact) {
    const auto* correction = std::get_if<Correction>(&fact.body.fields);
    return correction != nullptr ? correction->replaces.id : fact.id;
}

[[nodiscard]] bool is_about(const facts::Body& body, base::Id aircraft) {
    return std::find(body.about.begin(), body.about.end(), aircraft) != body.about.end();
}

/// A correction may move a record to another aircraft: it counts where its heads say, and where it
/// was first when they take it back.
[[nodiscard]] bool concerns(const Record& record, base::Id aircraft) {
    bool any_body = false;
    for (const Head& head : record.heads) {
        if (head.body == nullptr) continue;
        any_body = true;
        if (is_about(*head.body, aircraft)) return true;
    }
    return !any_body && is_about(record.first->body, aircraft);
}

}  // namespace

Verdicts::Verdicts(const Journal& journal, base::Id aircraft) {
    for (const Fact* fact : journal.about(aircraft)) {
        const auto* answer = std::get_if<Answer>(&fact->body.fields);
        if (answer == nullptr || is_silenced(journal, *fact)) continue;
        const bool all_here = std::all_of(answer->keeps.begin(),
                                          answer->keeps.end(),
                                          [&](const Ref& ref) { return is_here(journal, ref); });
        if (!all_here) continue;
        kept_.insert(kept_.end(), answer->keeps.begin(), answer->keeps.end());
        for (const Ref& ref : answer->settles) {
            const bool keeps =
                std::find(answer->keeps.begin(), answer->keeps.end(), ref) != answer->keeps.end();
            if (!keeps) dropped_.push_back(ref);
        }
    }
}

bool Verdicts::drops(const Fact& fact) const {
    const auto named = [&](const Ref& ref) { return names(ref, fact); };
    return std::any_of(dropped_.begin(), dropped_.end(), named) &&
           std::none_of(kept_.begin(), kept_.end(), named);
}

std::vector<Record> resolve(const Journal& journal, base::Id aircraft) {
    const Verdicts verdicts{journal, aircraft};
    std::map<base::Id, std::vector<const Fact*>> versions;
    std::vector<base::Id> order;
    for (const Fact* fact : journal.about(aircraft)) {
        std::vector<const Fact*> roots;
        collect_roots(journal, *fact, roots);
        for (const Fact* root : roots) {
            std::vector<const Fact*>& same = versions[root_id(*root)];
            if (same.empty()) order.push_back(root_id(*root));
            if (std::find(same.begin(), same.end(), root) == same.end()) same.push_back(root);
        }
    }
    std::vector<Record> out;
    for (const base::Id& root : order) {
        std::vector<const Fact*>& same = versions[root];
        std::sort(same.begin(), same.end(), [](const Fact* left, const Fact* right) {
            return comes_before(*left, *right);
        });
        Record record = make_record(journal, verdicts, root, same);
        if (concerns(record, aircraft)) out.push_back(std::move(record));
    }
    return out;
}

}  // namespace twoclocks::timeline
