#include "engine/timeline/items.hpp"

#include <algorithm>
#include <map>

#include "engine/base/order.hpp"
#include "engine/timeline/safer.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;

/// The item of this bearer that a record is about.
[[nodiscard]] ItemState* find_item(std::vector<ItemState>& items,
                                   base::Id bearer,
                                   const facts::Body& body) {
    if (body.about.size() < 2 || body.about.front() != bearer) return nullptr;
    const auto found = std::find_if(items.begin(), items.end(), [&](const ItemState& item) {
        return item.id == body.about[1];
    });
    return found == items.end() ? nullptr : &*found;
}

/// The strictest of a limit in force and one that records disagree about. An anchor that one of
/// them lacks is the earlier of the other's and the earliest there can be.
void tighten(ItemState& item, const Record& record, const std::optional<Date>& earliest_day) {
    facts::Body in_force = record.in_use;
    if (item.limit) in_force.fields = *item.limit;
    const std::optional<facts::Body> both = safer({&record.in_use, &in_force}, false);
    std::optional<Date> earliest = item.limit ? item.limit->anchor_on : std::nullopt;
    for (const Head& head : record.heads) {
        const auto* limit =
            head.body == nullptr ? nullptr : std::get_if<facts::LimitSet>(&head.body->fields);
        if (limit == nullptr || !limit->anchor_on) continue;
        earliest = earliest ? std::min(*earliest, *limit->anchor_on) : *limit->anchor_on;
    }
    item.limit = *std::get_if<facts::LimitSet>(&both->fields);
    item.limit_fact = record.root;
    if (!item.limit->anchor_on && earliest_day && earliest && *earliest < *earliest_day)
        item.limit->anchor_on = earliest;
}

void fold_limits(const std::vector<const Record*>& records,
                 base::Id bearer,
                 const std::optional<Date>& earliest,
                 Date today,
                 std::vector<ItemState>& items) {
    std::map<base::Id, Date> in_force_since;
    for (const bool open : {false, true}) {
        for (const Record* record : records) {
            const auto* limit = std::get_if<facts::LimitSet>(&record->in_use.fields);
            ItemState* item = limit == nullptr ? nullptr : find_item(items, bearer, record->in_use);
            if (item == nullptr || record->open != open || record->in_use.on > today) continue;
            if (!open) {
                item->limit = *limit;
                item->limit_fact = record->root;
                in_force_since[item->id] = record->in_use.on;
                continue;
            }
            const auto since = in_force_since.find(item->id);
            if (since != in_force_since.end() && latest_day(*record) < since->second) continue;
            tighten(*item, *record, earliest);
        }
    }
}

/// A figure that the later work lacks stays that of the work before.
void take_over(std::optional<Renewed>& last, Renewed next) {
    if (last && !next.total) {
        next.total = last->total;
        next.total_estimated = last->total.has_value();
    }
    if (last && !next.landings) next.landings = last->landings;
    if (last && !next.starts) next.starts = last->starts;
    last = next;
}

}  // namespace

std::vector<const Record*> by_day(const std::vector<Record>& records) {
    std::vector<const Record*> out;
    for (const Record& record : records) {
        if (!record.withdrawn) out.push_back(&record);
    }
    base::sort_stably(out, [](const Record* left, const Record* right) {
        return left->in_use.on < right->in_use.on;
    });
    return out;
}

void fold_items(const std::vector<const Record*>& records,
                base::Id bearer,
                const std::optional<Date>& earliest,
                Date today,
                std::vector<ItemState>& items) {
    for (const Record* record : records) {
        const facts::Body& body = record->in_use;
        const auto* item = std::get_if<facts::ItemAdded>(&body.fields);
        if (item == nullptr || body.about.empty() || body.about.front() != bearer) continue;
        items.push_back({record->root, item->name, item->role, item->chapter, {}, {}, {}});
    }
    for (const Record* record : records) {
        ItemState* item = find_item(items, bearer, record->in_use);
        if (item == nullptr || record->in_use.on > today) continue;
        if (const auto* changed = std::get_if<facts::ItemChanged>(&record->in_use.fields))
            item->name = changed->name;
    }
    fold_limits(records, bearer, earliest, today, items);
}

void renew(ItemState& item, const facts::Renewal& renewal, const Renewed& renewed) {
    constexpr std::array all{
        facts::Clock::hours, facts::Clock::calendar, facts::Clock::landings, facts::Clock::starts};
    for (const facts::Clock clock : all) {
        const bool named =
            renewal.clocks.empty() ||
            std::find(renewal.clocks.begin(), renewal.clocks.end(), clock) != renewal.clocks.end();
        if (!named) continue;
        std::optional<Renewed>& last = item.renewed[static_cast<std::size_t>(clock)];
        if (last) item.earlier[static_cast<std::size_t>(clock)].push_back(*last);
        take_over(last, renewed);
    }
}

}  // namespace twoclocks::timeline
