#include "engine/limits/due.hpp"

#include <algorithm>
#include <array>

#include "engine/facts/interval.hpp"

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
    if (item.limit->anchor_on)
        return {item.limit->anchor_on, CountsFrom::anchor, item.limit_fact, false};
    if (state.manufactured) return {state.manufactured, CountsFrom::assumed, state.id, false};
    return {};
}

[[nodiscard]] Anchored<FlightTime> hours_anchor(const ItemState& item) {
    if (item.limit->anchor_total)
        return {item.limit->anchor_total, CountsFrom::anchor, item.limit_fact, false};
    return {FlightTime{0}, CountsFrom::assumed, item.limit_fact, false};
}

/// Where the calendar of an item counts from, into its clock.
void start_calendar(ClockDue& out, const AircraftState& state, const ItemState& item) {
    if (const std::optional<DayFrom> from = day_from(state, item)) {
        out.counts_from = CountsFrom::work;
        out.anchor_fact = renewal(item, Clock::calendar)->fact;
        out.known = true;
        out.anchor_on = from->from;
        out.done_on = from->done;
        out.carried = from->carried;
        return;
    }
    const Anchored<Date> anchor = calendar_anchor(state, item);
    out.counts_from = anchor.from;
    out.anchor_fact = anchor.fact;
    out.known = anchor.value.has_value();
    if (out.known) out.anchor_on = *anchor.value;
}

[[nodiscard]] ClockDue calendar_clock(const AircraftState& state,
                                      const ItemState& item,
                                      const facts::Interval& interval,
                                      Date today) {
    ClockDue out;
    out.clock = Clock::calendar;
    out.limit_months = interval.months.value_or(0);
    out.limit_days = interval.days.value_or(0);
    start_calendar(out, state, item);
    if (!out.known) return out;
    out.due_on = calendar_end(out.anchor_on, interval, item.limit->rule);
    out.days_left = base::days_between(today, out.due_on);
    out.tolerance_days = tolerance_days(*item.limit, base::days_between(out.anchor_on, out.due_on));
    return out;
}

/// Where the hours of an item count from, into its clock. An anchor above the total cannot be: it
/// must not give more life than the whole limit. A due point above it can: the work was early.
void start_hours(ClockDue& out,
                 const AircraftState& state,
                 const ItemState& item,
                 const std::optional<FlightTime>& total) {
    if (const std::optional<HoursFrom> from = hours_from(state, item)) {
        out.counts_from = CountsFrom::work;
        out.anchor_fact = renewal(item, Clock::hours)->fact;
        out.estimated = renewal(item, Clock::hours)->total_estimated;
        const bool can_be = total && from->done <= *total;
        out.anchor_total = can_be || !total ? from->from : std::min(from->from, *total);
        out.done_total = from->done;
        out.past_at_work = from->past;
        out.carried = from->carried;
        return;
    }
    const Anchored<FlightTime> anchor = hours_anchor(item);
    out.counts_from = anchor.from;
    out.anchor_fact = anchor.fact;
    out.anchor_total = total ? std::min(*anchor.value, *total) : *anchor.value;
}

[[nodiscard]] ClockDue hours_clock(const AircraftState& state,
                                   const ItemState& item,
                                   FlightTime interval) {
    ClockDue out;
    out.clock = Clock::hours;
    out.limit_hours = interval;
    const std::optional<FlightTime> total = total_time(state);
    start_hours(out, state, item, total);
    out.known = total.has_value();
    if (!out.known) return out;
    out.due_total = out.anchor_total + out.limit_hours;
    out.used = *total - out.anchor_total;
    out.left = out.limit_hours - out.used;
    out.tolerance = tolerance_hours(*item.limit, interval);
    out.overfly = overfly_of(*item.limit, item.role);
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

/// What each clock of an item counts now. A clock that was renewed counts its repeat, or nothing
/// more where there is none; before any compliance the initial interval counts by itself. Between
/// the two, and while records disagree whether work was done, no clock is left out.
[[nodiscard]] facts::Interval interval_now(const AircraftState& state, const ItemState& item) {
    constexpr std::array all{Clock::hours, Clock::calendar, Clock::landings, Clock::starts};
    const facts::Interval repeat = repeat_of(*item.limit);
    const bool doubt = in_doubt(state, item);
    const bool begun = std::any_of(
        all.begin(), all.end(), [&](Clock clock) { return renewal(item, clock) != nullptr; });
    facts::Interval out;
    for (const Clock clock : all) {
        const facts::Interval again = part(repeat, clock);
        const facts::Interval first = part(item.limit->first, clock);
        if (renewal(item, clock) != nullptr) {
            if (!item.limit->once) out = lesser(out, again);
        } else if (doubt) {
            out = lesser(out, lesser(first, again));
        } else if (begun) {
            out = lesser(out, is_empty(first) ? again : first);
        } else {
            out = lesser(out, part(initial_of(*item.limit), clock));
        }
    }
    return out;
}

[[nodiscard]] ClockDue landings_clock(const AircraftState& state,
                                      const ItemState& item,
                                      base::Count interval) {
    const Renewed* work = renewal(item, Clock::landings);
    const auto at_work = work != nullptr ? work->landings : std::nullopt;
    return count_clock(Clock::landings,
                       interval,
                       state.landings,
                       count_anchor(work, at_work, item.limit->anchor_landings, item.limit_fact));
}

[[nodiscard]] ClockDue starts_clock(const AircraftState& state,
                                    const ItemState& item,
                                    base::Count interval) {
    const Renewed* work = renewal(item, Clock::starts);
    const auto at_work = work != nullptr ? work->starts : std::nullopt;
    return count_clock(Clock::starts,
                       interval,
                       state.starts,
                       count_anchor(work, at_work, item.limit->anchor_starts, item.limit_fact));
}

[[nodiscard]] std::vector<ClockDue> clocks_of(const AircraftState& state,
                                              const ItemState& item,
                                              const facts::Interval& interval,
                                              Date today) {
    std::vector<ClockDue> out;
    if (interval.hours) out.push_back(hours_clock(state, item, *interval.hours));
    if (interval.months || interval.days)
        out.push_back(calendar_clock(state, item, interval, today));
    if (interval.landings) out.push_back(landings_clock(state, item, *interval.landings));
    if (interval.starts) out.push_back(starts_clock(state, item, *interval.starts));
    for (ClockDue& clock : out) {
        clock.is_first = renewal(item, clock.clock) == nullptr &&
                         !is_empty(part(item.limit->first, clock.clock));
    }
    return out;
}

/// Which clock counts. While records disagree about work, and with it about which clocks still
/// count, the later of too many would promise more than the answer.
[[nodiscard]] facts::Combine combine_of(const AircraftState& state, const ItemState& item) {
    const facts::LimitSet& limit = *item.limit;
    const bool always_all = !limit.once && same_clocks(initial_of(limit), repeat_of(limit));
    if (!always_all && in_doubt(state, item)) return facts::Combine::sooner;
    return limit.combine.value_or(facts::Combine::sooner);
}

/// A cap is one end for all compliances, and nothing is allowed past it.
[[nodiscard]] ClockDue as_cap(ClockDue clock) {
    clock.is_first = false;
    clock.tolerance = clock.overfly = FlightTime{0};
    clock.tolerance_days = 0;
    return clock;
}

}  // namespace

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
        due.combine = combine_of(state, item);
        due.once = item.limit->once;
        due.tolerance_source = item.limit->tolerance.source;
        due.clocks = clocks_of(state, item, interval_now(state, item), today);
        due.complied = due.once && due.clocks.empty();
        if (!due.complied) due.caps = clocks_of(state, item, item.limit->cap, today);
        for (ClockDue& cap : due.caps)
            cap = as_cap(cap);
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

std::optional<FlightTime> total_time(const AircraftState& state) {
    if (state.usage.empty()) return std::nullopt;
    return state.usage.back().total;
}

}  // namespace twoclocks::limits
