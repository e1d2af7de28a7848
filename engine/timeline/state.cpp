#include "engine/timeline/state.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/timeline/ahead.hpp"
#include "engine/timeline/campaign.hpp"
#include "engine/timeline/cash.hpp"
#include "engine/timeline/directives.hpp"
#include "engine/timeline/events.hpp"
#include "engine/timeline/hours_use.hpp"
#include "engine/timeline/items.hpp"
#include "engine/timeline/limit_marks.hpp"
#include "engine/timeline/money.hpp"
#include "engine/timeline/question.hpp"
#include "engine/timeline/storage.hpp"
#include "engine/timeline/usage.hpp"
#include "engine/timeline/wear.hpp"
#include "engine/timeline/work_rules.hpp"

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

/// The last total recorded on or before a day: not more than the true one, so a limit falls due
/// earlier.
[[nodiscard]] std::optional<base::FlightTime> total_by(const UsageSeries& usage, Date on) {
    std::optional<base::FlightTime> out;
    for (const UsagePoint& point : usage) {
        if (point.on <= on) out = point.total;
    }
    return out;
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
    fold_items(sorted, aircraft, state.manufactured, today, state.items);
    for (const Record* record : sorted) {
        const auto* work = std::get_if<facts::WorkDone>(&record->in_use.fields);
        if (work != nullptr) fold_work(*record, *work, today, state);
    }
    fold_limit_marks(records, {}, today, state.items, state.cautions);
    fold_wear(records, today, state.items);
    fold_directives(journal, records, today, state);
    fold_events(journal, records, today, state);
    fold_spells(sorted, state);
    fold_storage(records, state);
    fold_hours_use(records, today, state);
    fold_plan(sorted, today, state);
    fold_campaign(sorted, today, state);
    fold_money(sorted, today, last_overhaul(state), state);
    fold_cash(sorted, today, last_overhaul(state), state);
    fold_work_rules(sorted, today, state);
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
