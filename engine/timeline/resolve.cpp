#include "engine/timeline/resolve.hpp"

#include <algorithm>
#include <iterator>
#include <map>

#include "engine/base/order.hpp"
#include "engine/facts/print.hpp"
#include "engine/timeline/heads.hpp"

namespace twoclocks::timeline {
namespace {

using facts::Answer;
using facts::Correction;
using facts::Fact;
using facts::Journal;
using facts::Ref;
using facts::Withdrawal;

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

[[nodiscard]] bool is_about(const facts::Body& body, base::Id subject) {
    if (std::find(body.about.begin(), body.about.end(), subject) != body.about.end()) return true;
    const auto* work = std::get_if<facts::WorkDone>(&body.fields);
    return work != nullptr &&
           std::any_of(work->renews.begin(), work->renews.end(), [&](const auto& renewal) {
               return renewal.item == subject;
           });
}

/// A correction may move a record to another aircraft: it counts where its heads say, and where it
/// was first when they take it back.
[[nodiscard]] bool concerns(const Record& record, const std::vector<base::Id>& subjects) {
    const auto is_about_any = [&](const facts::Body& body) {
        return std::any_of(subjects.begin(), subjects.end(), [&](const base::Id& subject) {
            return is_about(body, subject);
        });
    };
    bool any_body = false;
    for (const Head& head : record.heads) {
        if (head.body == nullptr) continue;
        any_body = true;
        if (is_about_any(*head.body)) return true;
    }
    return !any_body && is_about_any(record.first->body);
}

}  // namespace

bool any_names(const std::vector<Ref>& refs, const Fact& fact) {
    return std::any_of(refs.begin(), refs.end(), [&](const Ref& ref) { return names(ref, fact); });
}

bool agree(const Head& left, const Head& right) {
    if (left.body == nullptr || right.body == nullptr) return left.body == right.body;
    return say_the_same(*left.body, *right.body);
}

std::vector<base::Id> roots_of(const Journal& journal, const Fact& fact) {
    // A withdrawal is a version of what it takes back.
    std::vector<const Fact*> starts{&fact};
    if (const auto* withdrawal = std::get_if<Withdrawal>(&fact.body.fields))
        starts = journal.with_id(withdrawal->withdraws.id);
    std::vector<const Fact*> roots;
    for (const Fact* start : starts)
        collect_roots(journal, *start, roots);
    std::vector<base::Id> out;
    for (const Fact* root : roots)
        out.push_back(root_id(*root));
    std::sort(out.begin(), out.end());
    out.erase(std::unique(out.begin(), out.end()), out.end());
    return out;
}

base::Date latest_day(const Record& record) {
    base::Date out = record.in_use.on;
    for (const Head& head : record.heads) {
        if (head.body != nullptr) out = std::max(out, head.body->on);
    }
    return out;
}

std::vector<Record> resolve(const Journal& journal, base::Id aircraft) {
    return resolve(journal, std::vector<base::Id>{aircraft});
}

std::vector<Record> resolve(const Journal& journal, const std::vector<base::Id>& subjects) {
    std::map<base::Id, std::vector<const Fact*>> versions;
    std::vector<base::Id> order;
    std::vector<const Fact*> roots;
    for (const base::Id& subject : subjects) {
        for (const Fact* fact : journal.about(subject))
            collect_roots(journal, *fact, roots);
    }
    for (const Fact* root : roots) {
        std::vector<const Fact*>& same = versions[root_id(*root)];
        if (same.empty()) order.push_back(root_id(*root));
        if (std::find(same.begin(), same.end(), root) == same.end()) same.push_back(root);
    }
    std::vector<Record> out;
    for (const base::Id& root : order) {
        std::vector<const Fact*>& same = versions[root];
        base::sort_stably(
            same, [](const Fact* left, const Fact* right) { return comes_before(*left, *right); });
        Record record = make_record(journal, root, same);
        if (concerns(record, subjects)) out.push_back(std::move(record));
    }
    if (subjects.size() < 2) return out;
    base::sort_stably(out, [](const Record& left, const Record& right) {
        return comes_before(*left.first, *right.first);
    });
    return out;
}

Record resolve_one(const Journal& journal, base::Id root) {
    std::vector<const Fact*> versions;
    for (const std::vector<const Fact*>& facts : {journal.with_id(root), journal.naming(root)}) {
        for (const Fact* fact : facts) {
            std::vector<const Fact*> roots;
            collect_roots(journal, *fact, roots);
            for (const Fact* one : roots) {
                const auto known = std::find(versions.begin(), versions.end(), one);
                if (root_id(*one) == root && known == versions.end()) versions.push_back(one);
            }
        }
    }
    base::sort_stably(
        versions, [](const Fact* left, const Fact* right) { return comes_before(*left, *right); });
    return versions.empty() ? Record{} : make_record(journal, root, versions);
}

}  // namespace twoclocks::timeline
