#include "engine/limits/due.hpp"

#include <algorithm>
#include <array>

#include "engine/facts/interval.hpp"
#include "engine/limits/clock_due.hpp"
#include "engine/limits/directive_due.hpp"

namespace twoclocks::limits {
namespace {

using base::Date;
using base::FlightTime;
using facts::Clock;
using timeline::ItemState;

/// What each clock of an item counts now. A clock that was renewed counts its repeat, or nothing
/// more where there is none; before any compliance the initial interval counts by itself. Between
/// the two, and while records disagree whether work was done, no clock is left out.
[[nodiscard]] facts::Interval interval_now(const Bearer& bearer, const ItemState& item) {
    constexpr std::array all{Clock::hours, Clock::calendar, Clock::landings, Clock::starts};
    const facts::Interval repeat = repeat_of(*item.limit);
    const bool doubt = in_doubt(bearer, item);
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

[[nodiscard]] std::vector<ClockDue> clocks_of(const Bearer& bearer,
                                              const ItemState& item,
                                              const facts::Interval& interval,
                                              Date today) {
    std::vector<ClockDue> out;
    if (interval.hours) out.push_back(hours_clock(bearer, item, *interval.hours));
    if (interval.months || interval.days)
        out.push_back(calendar_clock(bearer, item, interval, today));
    if (interval.landings) out.push_back(landings_clock(bearer, item, *interval.landings));
    if (interval.starts) out.push_back(starts_clock(bearer, item, *interval.starts));
    for (ClockDue& clock : out) {
        clock.is_first = renewal(item, clock.clock) == nullptr &&
                         !is_empty(part(item.limit->first, clock.clock));
    }
    return out;
}

/// Which clock counts. While records disagree about work, and with it about which clocks still
/// count, the later of too many would promise more than the answer.
[[nodiscard]] facts::Combine combine_of(const Bearer& bearer, const ItemState& item) {
    const facts::LimitSet& limit = *item.limit;
    const bool always_all = !limit.once && same_clocks(initial_of(limit), repeat_of(limit));
    if (!always_all && in_doubt(bearer, item)) return facts::Combine::sooner;
    return limit.combine.value_or(facts::Combine::sooner);
}

/// A cap is one end for all compliances, and nothing is allowed past it.
[[nodiscard]] ClockDue as_cap(ClockDue clock) {
    clock.is_first = false;
    clock.tolerance = clock.overfly = FlightTime{0};
    clock.tolerance_days = 0;
    return clock;
}

/// What storage says of the calendar of an item, beside its interval.
void put_storage(ItemDue& due, const CountedItem& counted, Date today) {
    for (ClockDue& clock : due.clocks) {
        if (clock.clock != Clock::calendar) continue;
        clock.by_storage = counted.by_storage;
        const bool by_storage =
            counted.by_storage == ByStorage::began && clock.counts_from == CountsFrom::anchor;
        if (by_storage) clock.anchor_fact = counted.fact;
    }
    if (!counted.due_on) return;
    due.combine = facts::Combine::sooner;
    ClockDue by;
    by.clock = Clock::calendar;
    by.by_storage = counted.by_storage;
    by.counts_from = CountsFrom::anchor;
    by.known = true;
    by.anchor_fact = counted.fact;
    by.anchor_on = counted.began;
    by.due_on = *counted.due_on;
    by.days_left = base::days_between(today, by.due_on);
    const auto same = std::find_if(due.clocks.begin(), due.clocks.end(), [](const auto& clock) {
        return clock.clock == Clock::calendar;
    });
    if (same == due.clocks.end()) {
        due.clocks.push_back(by);
    } else if (!same->known || by.due_on < same->due_on) {
        by.anchor_on = same->known ? same->anchor_on : by.due_on;
        *same = by;
    }
}

/// A check on return is due by a day, whatever its interval.
[[nodiscard]] bool is_on_return(const CountedItem& counted) {
    return counted.by_storage == ByStorage::stored || counted.by_storage == ByStorage::back;
}

void count(ItemDue& due, const Bearer& bearer, const ItemState& item, Date today) {
    due.combine = combine_of(bearer, item);
    due.clocks = clocks_of(bearer, item, interval_now(bearer, item), today);
    due.complied = due.once && due.clocks.empty();
    if (!due.complied) due.caps = clocks_of(bearer, item, item.limit->cap, today);
    for (ClockDue& cap : due.caps)
        cap = as_cap(cap);
}

[[nodiscard]] std::vector<ItemDue> due_of(const Bearer& bearer,
                                          const std::vector<ItemState>& items,
                                          Date today) {
    std::vector<ItemDue> out;
    for (const ItemState& item : items) {
        out.push_back(item.directive ? directive_due(bearer, item, today)
                                     : plain_due(bearer, item, today));
    }
    return out;
}

}  // namespace

ItemDue plain_due(const Bearer& bearer, const ItemState& item, Date today) {
    ItemDue due;
    due.item = item.id;
    due.name = item.name;
    due.role = item.role;
    if (!item.limit) return due;
    due.limit_class = item.limit->limit_class;
    due.source = item.limit->source;
    due.revision = item.limit->revision;
    due.limit_fact = item.limit_fact;
    due.once = item.limit->once;
    if (!due.once) due.again = repeat_of(*item.limit);
    due.tolerance_source = item.limit->tolerance.source;
    due.in_force = item.limit->in_force.value_or(facts::InForce::always);
    const CountedItem counted = counted_item(bearer, item, today);
    due.asleep = counted.asleep;
    due.may_be_stored = counted.may_be_stored;
    due.is_stored = counted.is_stored;
    if (due.asleep) return due;
    if (!is_on_return(counted))
        count(due, bearer, counted.changed ? *counted.changed : item, today);
    put_storage(due, counted, today);
    return due;
}

std::vector<ItemDue> due_items(const timeline::AircraftState& state, Date today) {
    return due_of(bearer_of(state), state.items, today);
}

std::vector<ItemDue> due_items(const timeline::PartState& part, Date today) {
    std::vector<ItemDue> out = due_of(bearer_of(part), part.items, today);
    for (ItemDue& due : out)
        due.part = {
            part.id, part.name.empty() ? part.part_number : part.name, part.serial, part.position};
    return out;
}

Date occurrence(Date anchor, std::int32_t months, std::int32_t times, base::CalendarRule rule) {
    constexpr std::int32_t most_times = 1000;
    constexpr std::int32_t most_months = 12 * (base::latest_year - base::earliest_year);
    const std::int32_t bounded_times = std::clamp(times, 1, most_times);
    const std::int32_t bounded_months = std::clamp(months, 1, most_months);
    return base::add_months(anchor, bounded_months * bounded_times, rule);
}

std::optional<FlightTime> total_time(const timeline::AircraftState& state) {
    if (state.usage.empty()) return std::nullopt;
    return state.usage.back().total;
}

}  // namespace twoclocks::limits
