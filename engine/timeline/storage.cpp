#include "engine/timeline/storage.hpp"

#include "engine/base/order.hpp"

#include <algorithm>

namespace twoclocks::timeline {
namespace {

using base::Date;

/// The later of two ends; no end is the latest.
[[nodiscard]] std::optional<Date> later_end(const std::optional<Date>& left,
                                            const std::optional<Date>& right) {
    if (!left || !right) return std::nullopt;
    return std::max(*left, *right);
}

/// Storages that touch are one.
[[nodiscard]] std::vector<StorageSpell> joined(std::vector<StorageSpell> spells) {
    base::sort_stably(spells, [](const auto& left, const auto& right) {
        return left.from < right.from;
    });
    std::vector<StorageSpell> out;
    for (StorageSpell& spell : spells) {
        const bool touches = !out.empty() && (!out.back().until || *out.back().until >= spell.from);
        if (touches) {
            out.back().until = later_end(out.back().until, spell.until);
        } else {
            out.push_back(std::move(spell));
        }
    }
    return out;
}

/// Every way in which the versions of a record tell a storage.
void tell(const Record& record, std::vector<StorageSpell>& out) {
    for (const Head& head : record.heads) {
        const auto* one =
            head.body == nullptr ? nullptr : std::get_if<facts::OutOfService>(&head.body->fields);
        if (one == nullptr || !one->stored) continue;
        out.push_back({head.body->on, one->until, record.root, one->source, one->revision});
    }
}

void close(std::optional<Date>& until, Date from, Date on) {
    if (from < on && (!until || *until > on)) until = on;
}

}  // namespace

void fold_storage(const std::vector<Record>& records, AircraftState& state) {
    std::vector<StorageSpell> settled;
    for (const Record& record : records) {
        if (record.open) {
            tell(record, state.storage.in_question);
            continue;
        }
        const auto* stored = std::get_if<facts::OutOfService>(&record.in_use.fields);
        if (record.withdrawn || stored == nullptr || !stored->stored) continue;
        StorageSpell spell{
            record.in_use.on, stored->until, record.root, stored->source, stored->revision};
        for (const Spell& known : state.spells) {
            if (known.fact != record.root || !known.flown_by) continue;
            // What it was flown by may be one of the readings that are asked about.
            if (!state.questions.empty()) tell(record, state.storage.in_question);
            spell.until = known.until;
        }
        settled.push_back(std::move(spell));
    }
    state.storage.spells = joined(std::move(settled));
}

const StorageSpell* storage_on(const StorageState& storage, Date on) {
    const StorageSpell* last = last_storage(storage, on);
    return last != nullptr && (!last->until || *last->until > on) ? last : nullptr;
}

const StorageSpell* last_storage(const StorageState& storage, Date on) {
    const StorageSpell* out = nullptr;
    for (const StorageSpell& spell : storage.spells) {
        if (spell.from <= on) out = &spell;
    }
    return out;
}

AircraftState returned_on(AircraftState state, Date on) {
    for (Spell& spell : state.spells)
        close(spell.until, spell.from, on);
    for (StorageSpell& spell : state.storage.spells)
        close(spell.until, spell.from, on);
    for (StorageSpell& spell : state.storage.in_question)
        close(spell.until, spell.from, on);
    return state;
}

}  // namespace twoclocks::timeline
