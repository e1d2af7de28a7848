#include "engine/limits/due.hpp"

#include <algorithm>

namespace twoclocks::limits {
namespace {

using base::Date;
using base::FlightTime;
using facts::Clock;
using timeline::AircraftState;
using timeline::ItemState;
using timeline::Renewed;

[[nodiscard]] const Renewed* renewal(const ItemState& item, Clock clock) {
    const std::optional<Renewed>& renewed = item.renewed[static_cast<std::size_t>(clock)];
    return renewed ? &*renewed : nullptr;
}

/// An anchor with where it came from.
template <class T>
struct Anchored {
    std::optional<T> value;
    CountsFrom from{CountsFrom::unknown};
    base::Id fact;
    bool estimated{false};
};

[[nodiscard]] Anchored<Date> calendar_anchor(const AircraftState& state, const ItemState& item) {
    if (const Renewed* work = renewal(item, Clock::calendar))
        return {work->on, CountsFrom::work, work->fact, false};
    if (item.limit->anchor_on)
        return {item.limit->anchor_on, CountsFrom::anchor, item.limit_fact, false};
    if (state.manufactured) return {state.manufactured, CountsFrom::assumed, state.id, false};
    return {};
}

[[nodiscard]] Anchored<FlightTime> hours_anchor(const ItemState& item) {
    if (const Renewed* work = renewal(item, Clock::hours); work != nullptr && work->total) {
        return {work->total, CountsFrom::work, work->fact, work->total_estimated};
    }
    if (item.limit->anchor_total)
        return {item.limit->anchor_total, CountsFrom::anchor, item.limit_fact, false};
    return {FlightTime{0}, CountsFrom::assumed, item.limit_fact, false};
}

[[nodiscard]] ClockDue calendar_clock(const AircraftState& state,
                                      const ItemState& item,
                                      Date today) {
    ClockDue out;
    out.clock = Clock::calendar;
    out.limit_months = *item.limit->months;
    const Anchored<Date> anchor = calendar_anchor(state, item);
    out.counts_from = anchor.from;
    out.anchor_fact = anchor.fact;
    out.known = anchor.value.has_value();
    if (!out.known) return out;
    out.anchor_on = *anchor.value;
    out.due_on = base::add_months(out.anchor_on, out.limit_months, item.limit->rule);
    out.days_left = base::days_between(today, out.due_on);
    return out;
}

[[nodiscard]] ClockDue hours_clock(const AircraftState& state, const ItemState& item) {
    ClockDue out;
    out.clock = Clock::hours;
    out.limit_hours = *item.limit->hours;
    const Anchored<FlightTime> anchor = hours_anchor(item);
    const std::optional<FlightTime> total = total_time(state);
    out.counts_from = anchor.from;
    out.anchor_fact = anchor.fact;
    out.estimated = anchor.estimated;
    out.known = total.has_value();
    if (!out.known) return out;
    // An anchor above the total cannot be: it must not give more life than the whole limit.
    out.anchor_total = std::min(*anchor.value, *total);
    out.due_total = out.anchor_total + out.limit_hours;
    out.used = *total - out.anchor_total;
    out.left = out.limit_hours - out.used;
    return out;
}

[[nodiscard]] ClockDue count_clock(Clock clock,
                                   base::Count limit,
                                   const std::optional<base::Count>& now,
                                   const Anchored<base::Count>& anchor) {
    ClockDue out;
    out.clock = clock;
    out.limit_count = limit;
    out.counts_from = anchor.from;
    out.anchor_fact = anchor.fact;
    out.known = now.has_value() && anchor.value.has_value();
    if (!out.known) return out;
    out.anchor_count = std::min(*anchor.value, *now);
    out.left_count = limit - (*now - out.anchor_count);
    return out;
}

[[nodiscard]] Anchored<base::Count> count_anchor(const Renewed* work,
                                                 const std::optional<base::Count>& at_work,
                                                 const std::optional<base::Count>& anchor,
                                                 base::Id limit_fact) {
    if (work != nullptr && at_work) return {at_work, CountsFrom::work, work->fact, false};
    if (anchor) return {anchor, CountsFrom::anchor, limit_fact, false};
    return {base::Count{0}, CountsFrom::assumed, limit_fact, false};
}

[[nodiscard]] std::vector<ClockDue> clocks_of(const AircraftState& state,
                                              const ItemState& item,
                                              Date today) {
    std::vector<ClockDue> out;
    const facts::LimitSet& limit = *item.limit;
    if (limit.hours) out.push_back(hours_clock(state, item));
    if (limit.months) out.push_back(calendar_clock(state, item, today));
    if (limit.landings) {
        const Renewed* work = renewal(item, Clock::landings);
        const auto at_work = work != nullptr ? work->landings : std::nullopt;
        out.push_back(
            count_clock(Clock::landings,
                        *limit.landings,
                        state.landings,
                        count_anchor(work, at_work, limit.anchor_landings, item.limit_fact)));
    }
    if (limit.starts) {
        const Renewed* work = renewal(item, Clock::starts);
        const auto at_work = work != nullptr ? work->starts : std::nullopt;
        out.push_back(
            count_clock(Clock::starts,
                        *limit.starts,
                        state.starts,
                        count_anchor(work, at_work, limit.anchor_starts, item.limit_fact)));
    }
    return out;
}

}  // namespace

bool ClockDue::passed() const {
    if (!known) return false;
    switch (clock) {
        case Clock::hours:
            return left.seconds < 0;
        case Clock::calendar:
            return days_left < 0;
        case Clock::landings:
        case Clock::starts:
            return left_count.value < 0;
    }
    return false;
}

bool ItemDue::mandatory() const {
    return limit_class != facts::LimitClass::recommended;
}

std::vector<ItemDue> due_items(const AircraftState& state, Date today) {
    std::vector<ItemDue> out;
    for (const ItemState& item : state.items) {
        ItemDue& due = out.emplace_back();
        due.item = item.id;
        due.name = item.name;
        due.role = item.role;
        if (!item.limit) continue;
        due.limit_class = item.limit->limit_class;
        due.source = item.limit->source;
        due.revision = item.limit->revision;
        due.limit_fact = item.limit_fact;
        due.clocks = clocks_of(state, item, today);
    }
    return out;
}

Date occurrence(Date anchor, std::int32_t months, std::int32_t times, base::CalendarRule rule) {
    constexpr std::int32_t most_times = 1000;
    constexpr std::int32_t most_months = 12 * (base::latest_year - base::earliest_year);
    const std::int32_t bounded_times = std::clamp(times, 1, most_times);
    const std::int32_t bounded_months = std::clamp(months, 1, most_months);
    return base::add_months(anchor, bounded_months * bounded_times, rule);
}

const ClockDue* clock_of(const ItemDue& item, Clock clock) {
    for (const ClockDue& due : item.clocks) {
        if (due.clock == clock) return &due;
    }
    return nullptr;
}

std::optional<FlightTime> total_time(const AircraftState& state) {
    if (state.usage.empty()) return std::nullopt;
    return state.usage.back().total;
}

}  // namespace twoclocks::limits
