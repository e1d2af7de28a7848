#include "engine/timeline/hours_use.hpp"

#include "engine/base/order.hpp"

#include <algorithm>
#include <utility>

namespace twoclocks::timeline {
namespace {

using base::Date;
using facts::HoursFactor;

/// What a factor is of: an item, or the whole aircraft.
[[nodiscard]] base::Id item_in(const facts::Body& body) {
    return body.about.size() > 1 ? body.about[1] : base::Id{};
}

[[nodiscard]] FactorState* find_factor(UseState& use, facts::Operation kind, base::Id item) {
    const auto found =
        std::find_if(use.factors.begin(), use.factors.end(), [&](const FactorState& factor) {
            return factor.kind == kind && factor.item == item;
        });
    return found == use.factors.end() ? nullptr : &*found;
}

/// The last of one kind and subject stands, by day, then by first version.
void fold_settled(const std::vector<Record>& records, Date today, UseState& use) {
    std::vector<const Record*> sorted;
    for (const Record& record : records) {
        const bool counts = !record.open && !record.withdrawn && record.in_use.on <= today &&
                            std::holds_alternative<HoursFactor>(record.in_use.fields);
        if (counts) sorted.push_back(&record);
    }
    base::sort_stably(sorted, [](const Record* left, const Record* right) {
        return left->in_use.on < right->in_use.on;
    });
    for (const Record* record : sorted) {
        const auto* said = std::get_if<HoursFactor>(&record->in_use.fields);
        const base::Id item = item_in(record->in_use);
        const FactorState factor{
            said->operation, item, said->factor_thousandths, said->source, record->root};
        if (FactorState* known = find_factor(use, said->operation, item)) {
            *known = factor;
        } else {
            use.factors.push_back(factor);
        }
    }
}

/// A version that may be in force never makes a factor lower.
void raise(FactorState said, UseState& use) {
    FactorState* known = find_factor(use, said.kind, said.item);
    if (known == nullptr) {
        use.factors.push_back(std::move(said));
    } else if (said.thousandths > known->thousandths) {
        *known = std::move(said);
    }
}

/// Every version of a factor in dispute. An item's own factor may be the one of the aircraft again
/// when its record is taken back.
void fold_disputed(const std::vector<Record>& records, UseState& use) {
    std::vector<FactorState> versions;
    for (const Record& record : records) {
        for (const Head& head : record.heads) {
            const auto* said =
                head.body == nullptr ? nullptr : std::get_if<HoursFactor>(&head.body->fields);
            if (!record.open || said == nullptr) continue;
            versions.push_back({said->operation,
                                item_in(*head.body),
                                said->factor_thousandths,
                                said->source,
                                record.root});
        }
    }
    use.disputed = use.disputed || !versions.empty();
    for (const FactorState& version : versions)
        raise(version, use);
    for (const FactorState& version : versions) {
        const FactorState* all = find_factor(use, version.kind, {});
        if (version.item.empty() || all == nullptr) continue;
        FactorState as_all = *all;
        as_all.item = version.item;
        raise(std::move(as_all), use);
    }
}

void fold_flown(const Record& record, UseState& use) {
    const auto* flown = std::get_if<facts::FlownAs>(&record.in_use.fields);
    if (record.withdrawn || flown == nullptr) return;
    FlownState out{{}, flown->hours, latest_day(record), record.root};
    for (const Head& head : record.heads) {
        const auto* one =
            head.body == nullptr ? nullptr : std::get_if<facts::FlownAs>(&head.body->fields);
        if (one == nullptr) continue;
        const auto known = std::find(out.kinds.begin(), out.kinds.end(), one->operation);
        if (known == out.kinds.end()) out.kinds.push_back(one->operation);
    }
    use.disputed = use.disputed || record.open;
    use.flown.push_back(std::move(out));
}

}  // namespace

void fold_hours_use(const std::vector<Record>& records, Date today, AircraftState& state) {
    fold_settled(records, today, state.use);
    fold_disputed(records, state.use);
    for (const Record& record : records)
        fold_flown(record, state.use);
}

}  // namespace twoclocks::timeline
