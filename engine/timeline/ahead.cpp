#include "engine/timeline/ahead.hpp"

#include <algorithm>

#include "engine/base/message_args.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::FlightTime;

/// The least that the total may have been at the end of a day, as far as is recorded.
[[nodiscard]] std::optional<FlightTime> stood_at(const AircraftState& state, Date on) {
    std::optional<FlightTime> out;
    for (const UsagePoint& point : state.certain) {
        if (point.on <= on) out = point.total;
    }
    if (out) return out;
    for (const UsagePoint& point : state.recorded) {
        if (point.on <= on) out = out ? std::min(*out, point.total) : point.total;
    }
    return out;
}

/// The first day after another on which a higher total was recorded.
[[nodiscard]] std::optional<Date> flown_after(const AircraftState& state, Date from) {
    std::optional<FlightTime> stood = stood_at(state, from);
    for (const UsagePoint& point : state.recorded) {
        if (point.on <= from) continue;
        if (stood && point.total > *stood) return point.on;
        if (!stood) stood = point.total;
    }
    return std::nullopt;
}

void fold_spell(const Record& record, const facts::OutOfService& spell, AircraftState& state) {
    Spell out{record.in_use.on, spell.until, spell.why, record.root};
    out.stored = spell.stored && !record.open;
    std::optional<Date> open_from;
    for (const Head& head : record.heads) {
        const auto* one =
            head.body == nullptr ? nullptr : std::get_if<facts::OutOfService>(&head.body->fields);
        if (one == nullptr || one->until) continue;
        open_from = open_from ? std::min(*open_from, head.body->on) : head.body->on;
    }
    const std::optional<Date> flown = open_from ? flown_after(state, *open_from) : std::nullopt;
    if (flown && (!out.until || *flown < *out.until)) {
        out.until = out.flown_by = flown;
        state.cautions.push_back({base::Trouble::spell_flown,
                                  {base::day_arg(*open_from), base::day_arg(*flown)},
                                  record.root});
    }
    state.spells.push_back(std::move(out));
}

[[nodiscard]] bool may_begin_by(const Record& record, Date since) {
    return std::any_of(record.heads.begin(), record.heads.end(), [&](const Head& head) {
        return head.body != nullptr && head.body->on >= since;
    });
}

}  // namespace

void fold_spells(const std::vector<const Record*>& records, AircraftState& state) {
    for (const Record* record : records) {
        const auto* spell = std::get_if<facts::OutOfService>(&record->in_use.fields);
        if (spell != nullptr) fold_spell(*record, *spell, state);
    }
}

void fold_plan(const std::vector<const Record*>& records, Date today, AircraftState& state) {
    std::optional<Date> since;
    for (const bool open : {false, true}) {
        for (const Record* record : records) {
            const auto* plan = std::get_if<facts::UsagePlanned>(&record->in_use.fields);
            if (plan == nullptr || record->open != open || record->in_use.on > today) continue;
            StatedPlan stated{plan->month, plan->why, record->in_use.on, record->root, open};
            if (!open) {
                since = stated.on;
                state.plan = std::move(stated);
            } else if (!since || may_begin_by(*record, *since)) {
                const bool most = !state.plan || stated.month >= state.plan->month;
                if (most) state.plan = std::move(stated);
                state.plan->disputed = true;
            }
        }
    }
}

}  // namespace twoclocks::timeline
