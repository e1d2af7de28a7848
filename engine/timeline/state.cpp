#include "engine/timeline/state.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"
#include "engine/timeline/usage.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::Trouble;

constexpr std::int64_t ms_per_day = 24LL * 60 * 60 * 1000;

[[nodiscard]] bool has_safe_side(const facts::Fields& fields) {
    return !std::holds_alternative<facts::AircraftAdded>(fields) &&
           !std::holds_alternative<facts::AircraftChanged>(fields) &&
           !std::holds_alternative<facts::ItemAdded>(fields) &&
           !std::holds_alternative<facts::UnknownKind>(fields);
}

void fold_question(const Record& record, AircraftState& state) {
    if (!record.open) return;
    Question question;
    question.root = record.root;
    const bool one_id = std::all_of(record.heads.begin(), record.heads.end(), [&](const Head& head) {
        return head.fact->id == record.heads.front().fact->id;
    });
    question.kind = one_id ? QuestionKind::same_id : QuestionKind::versions;
    for (const Head& head : record.heads) question.sides.push_back(head.fact);
    if (!record.withdrawn) question.in_use = record.in_use;
    question.no_safe_side = !has_safe_side(record.in_use.fields) && !record.withdrawn;
    state.questions.push_back(std::move(question));
}

void fold_cautions(const Record& record, Date today, AircraftState& state) {
    const std::int64_t far_ahead = (static_cast<std::int64_t>(today.day_number) + 2) * ms_per_day;
    if (record.first->stamp.wall_ms > far_ahead) {
        state.cautions.push_back({Trouble::stamp_far_ahead, {base::day_arg(record.first->body.on)}, record.root});
    }
    if (std::holds_alternative<facts::UnknownKind>(record.first->body.fields)) ++state.unknown_records;
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
    const auto found = std::find_if(state.items.begin(), state.items.end(),
                                    [&](const ItemState& item) { return item.id == body.about[1]; });
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
        if (changed != nullptr && record->in_use.on <= today) state.registration = changed->registration;
    }
}

void fold_items(const std::vector<const Record*>& records, Date today, AircraftState& state) {
    for (const Record* record : records) {
        if (const auto* item = std::get_if<facts::ItemAdded>(&record->in_use.fields)) {
            state.items.push_back({record->root, item->name, item->role, item->chapter, std::nullopt, {}, {}});
        }
    }
    for (const Record* record : records) {
        ItemState* item = find_item(state, record->in_use);
        if (item == nullptr || record->in_use.on > today) continue;
        if (const auto* changed = std::get_if<facts::ItemChanged>(&record->in_use.fields)) item->name = changed->name;
        if (const auto* limit = std::get_if<facts::LimitSet>(&record->in_use.fields)) {
            item->limit = *limit;
            item->limit_fact = record->root;
        }
    }
}

/// The last total recorded on or before a day: not more than the true one, so a limit falls due earlier.
[[nodiscard]] std::optional<base::FlightTime> total_by(const UsageSeries& usage, Date on) {
    std::optional<base::FlightTime> out;
    for (const UsagePoint& point : usage) {
        if (point.on <= on) out = point.total;
    }
    return out;
}

void renew(ItemState& item, const facts::Renewal& renewal, const Renewed& renewed) {
    constexpr std::array all{facts::Clock::hours, facts::Clock::calendar, facts::Clock::landings,
                             facts::Clock::starts};
    for (const facts::Clock clock : all) {
        const bool named = renewal.clocks.empty() || std::find(renewal.clocks.begin(), renewal.clocks.end(), clock) !=
                                                         renewal.clocks.end();
        if (named) item.renewed[static_cast<std::size_t>(clock)] = renewed;
    }
}

void fold_work(const Record& record, const facts::WorkDone& work, Date today, AircraftState& state) {
    const Date on = record.in_use.on;
    if (on > today) {
        state.cautions.push_back({Trouble::work_ahead, {base::day_arg(on)}, record.root});
        return;
    }
    Renewed renewed{on, work.total, false, work.landings, work.starts, record.root};
    if (!renewed.total) {
        renewed.total = total_by(state.usage, on);
        renewed.total_estimated = renewed.total.has_value();
    }
    for (const facts::Renewal& renewal : work.renews) {
        for (ItemState& item : state.items) {
            if (item.id == renewal.item) renew(item, renewal, renewed);
        }
    }
}

void fold_rest(const std::vector<const Record*>& records, Date today, AircraftState& state) {
    for (const Record* record : records) {
        const facts::Body& body = record->in_use;
        if (const auto* work = std::get_if<facts::WorkDone>(&body.fields)) fold_work(*record, *work, today, state);
        if (const auto* spell = std::get_if<facts::OutOfService>(&body.fields)) {
            state.spells.push_back({body.on, spell->until, spell->why, record->root});
        }
        const auto* plan = std::get_if<facts::UsagePlanned>(&body.fields);
        if (plan != nullptr && body.on <= today) {
            state.plan = StatedPlan{plan->month, plan->why, body.on, record->root};
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
        fold_cautions(record, today, state);
    }
    const std::vector<const Record*> sorted = by_day(records);
    fold_identity(sorted, today, state);
    fold_usage(records, today, state);
    fold_items(sorted, today, state);
    fold_rest(sorted, today, state);
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
