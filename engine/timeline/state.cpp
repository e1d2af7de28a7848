#include "engine/timeline/state.hpp"

#include <algorithm>
#include <map>

#include "engine/base/message_args.hpp"
#include "engine/timeline/ahead.hpp"
#include "engine/timeline/limit_marks.hpp"
#include "engine/timeline/question.hpp"
#include "engine/timeline/safer.hpp"
#include "engine/timeline/usage.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::Trouble;

constexpr std::int64_t ms_per_day = 24LL * 60 * 60 * 1000;

/// Every record that a device far ahead of today wrote about the aircraft: first versions,
/// corrections, withdrawals and answers.
void fold_stamps(const facts::Journal& journal, Date today, AircraftState& state) {
    const std::int64_t far_ahead = (static_cast<std::int64_t>(today.day_number) + 2) * ms_per_day;
    for (const facts::Fact* fact : journal.about(state.id)) {
        if (fact->stamp.wall_ms <= far_ahead) continue;
        state.cautions.push_back(
            {Trouble::stamp_far_ahead, {base::day_arg(fact->body.on)}, fact->id});
    }
}

void count_newer(const Record& record, AircraftState& state) {
    const bool newer = std::any_of(record.heads.begin(), record.heads.end(), [](const Head& head) {
        return head.body != nullptr &&
               std::holds_alternative<facts::UnknownKind>(head.body->fields);
    });
    if (newer) ++state.unknown_records;
}

/// Records in the order they are true for: day, then first version.
[[nodiscard]] std::vector<const Record*> by_day(const std::vector<Record>& records) {
    std::vector<const Record*> out;
    for (const Record& record : records) {
        if (!record.withdrawn) out.push_back(&record);
    }
    std::stable_sort(out.begin(), out.end(), [](const Record* left, const Record* right) {
        return left->in_use.on < right->in_use.on;
    });
    return out;
}

[[nodiscard]] ItemState* find_item(AircraftState& state, const facts::Body& body) {
    if (body.about.size() < 2) return nullptr;
    const auto found =
        std::find_if(state.items.begin(), state.items.end(), [&](const ItemState& item) {
            return item.id == body.about[1];
        });
    return found == state.items.end() ? nullptr : &*found;
}

void fold_identity(const std::vector<const Record*>& records, Date today, AircraftState& state) {
    for (const Record* record : records) {
        const facts::Fields& fields = record->in_use.fields;
        if (const auto* added = std::get_if<facts::AircraftAdded>(&fields)) {
            if (record->root != state.id) continue;
            state.withdrawn = false;
            state.registration = added->registration;
            state.type = added->type;
            state.serial = added->serial;
            state.manufactured = added->manufactured;
            state.invented = added->invented;
        }
    }
    for (const Record* record : records) {
        const auto* changed = std::get_if<facts::AircraftChanged>(&record->in_use.fields);
        if (changed != nullptr && record->in_use.on <= today)
            state.registration = changed->registration;
    }
}

/// The strictest of a limit in force and one that records disagree about. An anchor that one of
/// them
/// lacks is the earlier of the other's and the manufacture.
void tighten(ItemState& item, const Record& record, const std::optional<Date>& manufactured) {
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
    if (!item.limit->anchor_on && manufactured && earliest && *earliest < *manufactured) {
        item.limit->anchor_on = earliest;
    }
}

[[nodiscard]] Date latest_day(const Record& record) {
    Date out = record.in_use.on;
    for (const Head& head : record.heads) {
        if (head.body != nullptr) out = std::max(out, head.body->on);
    }
    return out;
}

/// The last limit of each item, tightened by those that are disputed and may be later than it.
void fold_limits(const std::vector<const Record*>& records, Date today, AircraftState& state) {
    std::map<base::Id, Date> in_force_since;
    for (const bool open : {false, true}) {
        for (const Record* record : records) {
            const auto* limit = std::get_if<facts::LimitSet>(&record->in_use.fields);
            ItemState* item = limit == nullptr ? nullptr : find_item(state, record->in_use);
            if (item == nullptr || record->open != open || record->in_use.on > today) continue;
            if (!open) {
                item->limit = *limit;
                item->limit_fact = record->root;
                in_force_since[item->id] = record->in_use.on;
                continue;
            }
            const auto since = in_force_since.find(item->id);
            if (since != in_force_since.end() && latest_day(*record) < since->second) continue;
            tighten(*item, *record, state.manufactured);
        }
    }
}

void fold_items(const std::vector<const Record*>& records, Date today, AircraftState& state) {
    for (const Record* record : records) {
        if (const auto* item = std::get_if<facts::ItemAdded>(&record->in_use.fields)) {
            state.items.push_back(
                {record->root, item->name, item->role, item->chapter, std::nullopt, {}, {}});
        }
    }
    for (const Record* record : records) {
        ItemState* item = find_item(state, record->in_use);
        if (item == nullptr || record->in_use.on > today) continue;
        if (const auto* changed = std::get_if<facts::ItemChanged>(&record->in_use.fields))
            item->name = changed->name;
    }
    fold_limits(records, today, state);
}

/// The last total recorded on or before a day: not more than the true one, so a limit falls due
/// earlier.
[[nodiscard]] std::optional<base::FlightTime> total_by(const UsageSeries& usage, Date on) {
    std::optional<base::FlightTime> out;
    for (const UsagePoint& point : usage) {
        if (point.on <= on) out = point.total;
    }
    return out;
}

/// A figure that the later work lacks stays that of the work before: earlier, so never more life.
void take_over(std::optional<Renewed>& last, Renewed next) {
    if (last && !next.total) {
        next.total = last->total;
        next.total_estimated = last->total.has_value();
    }
    if (last && !next.landings) next.landings = last->landings;
    if (last && !next.starts) next.starts = last->starts;
    last = next;
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

[[nodiscard]] bool lacks_total(const Record& record) {
    return std::any_of(record.heads.begin(), record.heads.end(), [](const Head& head) {
        const auto* work =
            head.body == nullptr ? nullptr : std::get_if<facts::WorkDone>(&head.body->fields);
        return work != nullptr && !work->total;
    });
}

void fold_work(const Record& record,
               const facts::WorkDone& work,
               Date today,
               AircraftState& state) {
    const Date on = record.in_use.on;
    if (latest_day(record) > today) {
        state.cautions.push_back(
            {Trouble::work_ahead, {base::day_arg(latest_day(record))}, record.root});
        return;
    }
    Renewed renewed{on, work.total, false, work.landings, work.starts, record.root};
    if (lacks_total(record)) {
        const std::optional<base::FlightTime> estimate = total_by(state.certain, on);
        renewed.total_estimated = estimate && (!work.total || *estimate < *work.total);
        if (renewed.total_estimated || !estimate) renewed.total = estimate;
    }
    for (const facts::Renewal& renewal : work.renews) {
        for (ItemState& item : state.items) {
            if (item.id == renewal.item) renew(item, renewal, renewed);
        }
    }
}

}  // namespace

AircraftState replay(const facts::Journal& journal, base::Id aircraft, Date today) {
    AircraftState state;
    state.id = aircraft;
    state.withdrawn = true;
    const std::vector<Record> records = resolve(journal, aircraft);
    for (const Record& record : records) {
        fold_question(record, state);
        count_newer(record, state);
    }
    fold_stamps(journal, today, state);
    const std::vector<const Record*> sorted = by_day(records);
    fold_identity(sorted, today, state);
    fold_usage(records, today, state);
    fold_items(sorted, today, state);
    for (const Record* record : sorted) {
        const auto* work = std::get_if<facts::WorkDone>(&record->in_use.fields);
        if (work != nullptr) fold_work(*record, *work, today, state);
    }
    fold_limit_marks(records, today, state);
    fold_spells(sorted, state);
    fold_plan(sorted, today, state);
    return state;
}

std::vector<AircraftState> replay_fleet(const facts::Journal& journal, Date today) {
    std::vector<AircraftState> out;
    for (const base::Id& id : journal.aircraft()) {
        AircraftState state = replay(journal, id, today);
        if (!state.withdrawn) out.push_back(std::move(state));
    }
    return out;
}

}  // namespace twoclocks::timeline
