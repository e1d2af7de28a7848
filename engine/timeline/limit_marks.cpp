#include "engine/timeline/limit_marks.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/base/order.hpp"

namespace twoclocks::timeline {
namespace {

/// The item that a limit or a permit is about.
[[nodiscard]] ItemState* subject(std::vector<ItemState>& items, const facts::Body& body) {
    if (body.about.size() < 2) return nullptr;
    const auto found = std::find_if(items.begin(), items.end(), [&](const ItemState& item) {
        return item.id == body.about[1];
    });
    return found == items.end() ? nullptr : &*found;
}

/// An open record about work or a limit, in any of its versions.
void mark_disputed(const Record& record, base::Id overhauled, std::vector<ItemState>& items) {
    if (!record.open) return;
    for (const Head& head : record.heads) {
        if (head.body == nullptr) continue;
        if (const auto* work = std::get_if<facts::WorkDone>(&head.body->fields)) {
            for (const facts::Renewal& renewal : work->renews) {
                for (ItemState& item : items) {
                    if (!is_renewed_by(renewal, item, overhauled)) continue;
                    item.disputed = item.work_disputed = true;
                    item.disputed_works.push_back({head.body->on, work->total});
                }
            }
        }
        if (std::holds_alternative<facts::LimitSet>(head.body->fields)) {
            ItemState* item = subject(items, *head.body);
            if (item != nullptr) item->disputed = true;
        }
    }
}

/// Every version of every limit of a disputed item: an answer may leave any of them in force.
void gather_versions(const Record& record, std::vector<ItemState>& items) {
    for (const Head& head : record.heads) {
        const auto* limit =
            head.body == nullptr ? nullptr : std::get_if<facts::LimitSet>(&head.body->fields);
        ItemState* item = limit == nullptr ? nullptr : subject(items, *head.body);
        if (item != nullptr && item->disputed) item->limit_versions.push_back(*limit);
    }
}

void fold_permit(const Record& record, base::Date today, std::vector<ItemState>& items) {
    const auto* permit = std::get_if<facts::Permit>(&record.in_use.fields);
    if (record.withdrawn || permit == nullptr || record.in_use.on > today) return;
    ItemState* item = subject(items, record.in_use);
    if (item != nullptr) item->permits.push_back({*permit, record.in_use.on, record.root});
}

}  // namespace

bool is_renewed_by(const facts::Renewal& renewal, const ItemState& item, base::Id overhauled) {
    const bool of_its_part = !overhauled.empty() && renewal.item == overhauled;
    return renewal.item == item.id || (of_its_part && item.role == facts::ItemRole::overhaul);
}

void fold_limit_marks(const std::vector<Record>& records,
                      base::Id overhauled,
                      base::Date today,
                      std::vector<ItemState>& items,
                      std::vector<Caution>& cautions) {
    for (const Record& record : records)
        mark_disputed(record, overhauled, items);
    for (const Record& record : records) {
        gather_versions(record, items);
        fold_permit(record, today, items);
    }
    for (ItemState& item : items) {
        base::sort_stably(item.permits,
                          [](const auto& left, const auto& right) { return left.on < right.on; });
        const bool is_out_of_place = item.limit && item.limit->tolerance.overfly_hours &&
                                     item.role != facts::ItemRole::inspection;
        if (!is_out_of_place) continue;
        cautions.push_back(
            {base::Trouble::overfly_not_inspection, {base::text_arg(item.name)}, item.limit_fact});
    }
}

}  // namespace twoclocks::timeline
