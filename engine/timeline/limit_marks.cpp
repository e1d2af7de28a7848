#include "engine/timeline/limit_marks.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::timeline {
namespace {

[[nodiscard]] ItemState* item_with(AircraftState& state, base::Id id) {
    const auto found = std::find_if(state.items.begin(),
                                    state.items.end(),
                                    [&](const ItemState& item) { return item.id == id; });
    return found == state.items.end() ? nullptr : &*found;
}

[[nodiscard]] ItemState* subject(AircraftState& state, const facts::Body& body) {
    return body.about.size() < 2 ? nullptr : item_with(state, body.about[1]);
}

/// An open record about work or a limit, in any of its versions.
void mark_disputed(const Record& record, AircraftState& state) {
    if (!record.open) return;
    for (const Head& head : record.heads) {
        if (head.body == nullptr) continue;
        if (const auto* work = std::get_if<facts::WorkDone>(&head.body->fields)) {
            for (const facts::Renewal& renewal : work->renews) {
                ItemState* item = item_with(state, renewal.item);
                if (item != nullptr) item->disputed = true;
            }
        }
        if (std::holds_alternative<facts::LimitSet>(head.body->fields)) {
            ItemState* item = subject(state, *head.body);
            if (item != nullptr) item->disputed = true;
        }
    }
}

/// Every version of every limit of a disputed item: an answer may leave any of them in force.
void gather_versions(const Record& record, AircraftState& state) {
    for (const Head& head : record.heads) {
        const auto* limit =
            head.body == nullptr ? nullptr : std::get_if<facts::LimitSet>(&head.body->fields);
        ItemState* item = limit == nullptr ? nullptr : subject(state, *head.body);
        if (item != nullptr && item->disputed) item->limit_versions.push_back(*limit);
    }
}

void fold_permit(const Record& record, base::Date today, AircraftState& state) {
    const auto* permit = std::get_if<facts::Permit>(&record.in_use.fields);
    if (record.withdrawn || permit == nullptr || record.in_use.on > today) return;
    ItemState* item = subject(state, record.in_use);
    if (item != nullptr) item->permits.push_back({*permit, record.in_use.on, record.root});
}

}  // namespace

void fold_limit_marks(const std::vector<Record>& records, base::Date today, AircraftState& state) {
    for (const Record& record : records)
        mark_disputed(record, state);
    for (const Record& record : records) {
        gather_versions(record, state);
        fold_permit(record, today, state);
    }
    for (ItemState& item : state.items) {
        std::stable_sort(item.permits.begin(),
                         item.permits.end(),
                         [](const auto& left, const auto& right) { return left.on < right.on; });
        const bool is_out_of_place = item.limit && item.limit->tolerance.overfly_hours &&
                                     item.role != facts::ItemRole::inspection;
        if (!is_out_of_place) continue;
        state.cautions.push_back(
            {base::Trouble::overfly_not_inspection, {base::text_arg(item.name)}, item.limit_fact});
    }
}

}  // namespace twoclocks::timeline
