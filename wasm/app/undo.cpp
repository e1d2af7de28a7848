#include "wasm/app/undo.hpp"

#include <memory>
#include <optional>
#include <utility>

#include "engine/base/message.hpp"

namespace twoclocks::canvas {
namespace {

using facts::Body;
using facts::Correction;
using facts::Fact;
using facts::Journal;
using facts::Withdrawal;

/// The record that a correction or withdrawal replaced, null for other kinds.
[[nodiscard]] const Fact* replaced(const Journal& journal, const Fact& fact) {
    const facts::Ref* ref = nullptr;
    if (const auto* correction = std::get_if<Correction>(&fact.body.fields))
        ref = &correction->replaces;
    if (const auto* withdrawal = std::get_if<Withdrawal>(&fact.body.fields))
        ref = &withdrawal->withdraws;
    if (ref == nullptr) return nullptr;
    for (const Fact* other : journal.with_id(ref->id)) {
        if (facts::names(*ref, *other)) return other;
    }
    return nullptr;
}

/// What a record says is true; null when it takes something back.
[[nodiscard]] std::shared_ptr<const Body> says(const Fact& fact) {
    if (const auto* correction = std::get_if<Correction>(&fact.body.fields))
        return correction->instead;
    if (std::holds_alternative<Withdrawal>(fact.body.fields)) return nullptr;
    return std::make_shared<const Body>(fact.body);
}

[[nodiscard]] facts::Fields taking_back(const Journal& journal, const Fact& fact) {
    const std::string why{base::pattern(base::Word::reason_taken_back)};
    const facts::Ref ref = facts::ref_to(journal, fact);
    const Fact* before = replaced(journal, fact);
    const std::shared_ptr<const Body> instead = before == nullptr ? nullptr : says(*before);
    if (instead != nullptr) return Correction{ref, why, instead};
    return Withdrawal{ref, why};
}

}  // namespace

std::vector<Fact> take_back(const std::vector<base::Id>& saved,
                            const Journal& journal,
                            base::Date today,
                            Signer& signer) {
    std::vector<Fact> out;
    for (const base::Id& id : saved) {
        const auto same = journal.with_id(id);
        if (same.empty()) continue;
        const Fact& fact = *same.front();
        Body body{today, fact.body.about, taking_back(journal, fact), {}};
        // Nothing stands in for an answer: it is given once more.
        const auto* correction = std::get_if<Correction>(&body.fields);
        if (correction != nullptr &&
            std::holds_alternative<facts::Answer>(correction->instead->fields))
            body = Body{*correction->instead};
        out.push_back(signer.sign(signer.new_id(), std::move(body), journal));
    }
    return out;
}

}  // namespace twoclocks::canvas
