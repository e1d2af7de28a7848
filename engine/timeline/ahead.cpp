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

/// The mean of a year, cut to the second.
[[nodiscard]] base::FlightTime mean_of(const MonthlyHours& months) {
    std::int64_t seconds = 0;
    for (const base::FlightTime month : months)
        seconds += month.seconds;
    return {seconds / static_cast<std::int64_t>(months.size())};
}

[[nodiscard]] StatedPlan stated_by(const Record& record, const facts::UsagePlanned& plan) {
    StatedPlan out{plan.month, plan.why, record.in_use.on, record.root};
    const auto& named = plan.by_month;
    if (std::none_of(named.begin(), named.end(), [](const auto& one) { return one.has_value(); }))
        return out;
    out.by_month.emplace();
    for (std::size_t month = 0; month < named.size(); ++month)
        (*out.by_month)[month] = named[month].value_or(plan.month);
    out.month = mean_of(*out.by_month);
    return out;
}

/// Of a plan that stands and one in dispute the most of each kind; the words are of the greater.
[[nodiscard]] StatedPlan the_most(const std::optional<StatedPlan>& before, StatedPlan more) {
    StatedPlan out = before && before->month > more.month ? *before : more;
    std::vector<StatedPlan> both{std::move(more)};
    if (before) both.push_back(*before);
    out.month = {};
    for (const StatedPlan& one : both) {
        if (!one.by_month || one.disputed) out.month = std::max(out.month, one.month);
        if (!one.by_month) continue;
        MonthlyHours months = out.by_month.value_or(*one.by_month);
        for (std::size_t month = 0; month < months.size(); ++month)
            months[month] = std::max(months[month], (*one.by_month)[month]);
        out.by_month = months;
    }
    out.disputed = true;
    return out;
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
            if (!open) {
                since = record->in_use.on;
                state.plan = stated_by(*record, *plan);
            } else if (!since || may_begin_by(*record, *since)) {
                state.plan = the_most(state.plan, stated_by(*record, *plan));
            }
        }
    }
}

}  // namespace twoclocks::timeline
