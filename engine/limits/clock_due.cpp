#include "engine/limits/clock_due.hpp"

#include <algorithm>

#include "engine/limits/hours_factor.hpp"

namespace twoclocks::limits {
namespace {

using base::Date;
using base::FlightTime;
using facts::Clock;
using timeline::ItemState;
using timeline::Renewed;

/// An anchor with where it came from.
template <class T>
struct Anchored {
    std::optional<T> value;
    CountsFrom from{CountsFrom::unknown};
    base::Id fact;
};

/// Where the calendar of an item counts from, into its clock.
void start_calendar(ClockDue& out, const Bearer& bearer, const ItemState& item) {
    if (const std::optional<DayFrom> from = day_from(bearer, item)) {
        out.counts_from = CountsFrom::work;
        out.anchor_fact = renewal(item, Clock::calendar)->fact;
        out.known = true;
        out.anchor_on = from->from;
        out.done_on = from->done;
        out.carried = from->carried;
        return;
    }
    const AnchorDay anchor = anchor_day(bearer, *item.limit);
    out.known = anchor.on.has_value();
    if (!out.known) return;
    out.anchor_on = day_in_dispute(*anchor.on, item);
    out.counts_from = anchor.is_assumed ? CountsFrom::assumed : CountsFrom::anchor;
    out.anchor_fact = item.limit->anchor_on ? item.limit_fact : bearer.id;
    out.anchor = anchor.anchor;
    out.from_rebuild = anchor.is_rebuild;
}

/// Of a life that nobody knows nothing was left when its records begin. Where records disagree
/// about the part it may have ended before: how long ago is not known.
void end_calendar(ClockDue& out, const Bearer& bearer, Date today) {
    if (!out.known && bearer.is_asked_about) return;
    const Date begins = bearer.recorded_on.value_or(today);
    out.no_life_left = true;
    if (!out.known) {
        out.anchor_on = begins;
        out.counts_from = CountsFrom::assumed;
        out.anchor_fact = bearer.id;
    }
    out.due_on = out.known ? std::min(out.due_on, begins) : begins;
    out.known = true;
    out.days_left = base::days_between(today, out.due_on);
}

/// The least hours that a limit says it counts from, in any version that may be in force.
[[nodiscard]] std::optional<FlightTime> least_anchor(const ItemState& item) {
    std::optional<FlightTime> out = item.limit->anchor_total;
    for (const facts::LimitSet& limit : item.limit_versions) {
        if (!limit.anchor_total) continue;
        out = out ? std::min(*out, *limit.anchor_total) : *limit.anchor_total;
    }
    return out;
}

/// The hours that a limit counts from before any work. An overhaul of a part whose papers disagree
/// may have been as long ago as the part is old; one whose limits disagree, as any of them says.
/// Work on a part that records disagree about may have been done before the anchor.
[[nodiscard]] std::optional<FlightTime> anchor_of(const Bearer& bearer, const ItemState& item) {
    const bool is_overhaul = bearer.is_part && item.role == facts::ItemRole::overhaul;
    if (is_overhaul && bearer.is_asked_about && !bearer.since_overhaul) return std::nullopt;
    if (bearer.is_part && item.work_disputed) return std::nullopt;
    const std::optional<FlightTime> anchor =
        is_overhaul && item.limit->anchor_total ? least_anchor(item) : item.limit->anchor_total;
    return anchor ? hours_in_dispute(*anchor, item, item.limit->anchor_on) : anchor;
}

/// Where the hours of an item count from, into its clock. An anchor above the total cannot be: it
/// must not give more life than the whole limit. A due point above it can: the work was early.
void start_hours(ClockDue& out, const Bearer& bearer, const ItemState& item) {
    const std::optional<FlightTime>& total = bearer.hours;
    if (const std::optional<HoursFrom> from = hours_from(bearer, item)) {
        out.counts_from = CountsFrom::work;
        out.anchor_fact = renewal(item, Clock::hours)->fact;
        out.estimated = renewal(item, Clock::hours)->total_estimated;
        const bool can_be = total && from->done <= *total;
        out.anchor_total = can_be || !total ? from->from : std::min(from->from, *total);
        out.anchor_total = hours_in_dispute(out.anchor_total, item, renewal(item, Clock::hours)->on)
                               .value_or(out.anchor_total);
        out.done_total = from->done;
        out.past_at_work = from->past;
        out.carried = from->carried;
        return;
    }
    const std::optional<FlightTime> anchor = anchor_of(bearer, item);
    out.counts_from = anchor ? CountsFrom::anchor : CountsFrom::assumed;
    out.anchor_fact = item.limit_fact;
    out.anchor_total = anchor.value_or(FlightTime{0});
    if (total) out.anchor_total = std::min(out.anchor_total, *total);
}

/// An overhaul of a part that no recorded work renewed counts by the papers' time since overhaul,
/// unless the limit names an anchor that leaves less.
[[nodiscard]] bool counts_by_papers(const Bearer& bearer, const ItemState& item) {
    const Renewed* work = renewal(item, Clock::hours);
    const bool is_overhaul = bearer.is_part && item.role == facts::ItemRole::overhaul;
    if (!is_overhaul || !bearer.since_overhaul || (work != nullptr && work->total)) return false;
    // An overhaul whose hours records disagree about may be longer ago than papers have it.
    if (work != nullptr && item.disputed && !bearer.hours) return false;
    const std::optional<FlightTime> anchor = least_anchor(item);
    if (!anchor || bearer.hours_in == HoursIn::recorded) return true;
    // While records disagree about time since new, the anchor may leave less: that is not known.
    return bearer.hours ? *bearer.hours - *anchor <= *bearer.since_overhaul
                        : !bearer.is_asked_about;
}

/// What is recorded of a part, or told of one of unknown history, says nothing of the time before:
/// only work since then does.
[[nodiscard]] bool counts_for_nothing(const Bearer& bearer, const ItemState& item) {
    const Renewed* work = renewal(item, Clock::hours);
    const bool no_work = work == nullptr || !work->total;
    return (bearer.hours_in == HoursIn::recorded || bearer.history_unknown) && no_work;
}

[[nodiscard]] ClockDue without_life(ClockDue out, const Bearer& bearer) {
    const FlightTime now = bearer.hours.value_or(bearer.recorded);
    out.known = out.no_life_left = true;
    out.counts_from = CountsFrom::assumed;
    out.anchor_fact = bearer.id;
    out.left = FlightTime{0} - bearer.recorded;
    if (bearer.hours && bearer.hours_in == HoursIn::since_new)
        out.left = std::min(out.left, out.limit_hours - *bearer.hours);
    // While records disagree about its hours it may have flown past its life before these begin.
    if (!bearer.hours && bearer.most_told)
        out.left = std::min(out.left, out.limit_hours - *bearer.most_told - bearer.recorded);
    out.used = out.limit_hours - out.left;
    out.due_total = now + out.left;
    out.anchor_total = out.due_total - out.limit_hours;
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
    if (work != nullptr && at_work) return {at_work, CountsFrom::work, work->fact};
    if (anchor) return {anchor, CountsFrom::anchor, limit_fact};
    return {base::Count{0}, CountsFrom::assumed, limit_fact};
}

/// Nothing is left of a count of a life that nobody knows.
[[nodiscard]] ClockDue end_count(ClockDue out, const Bearer& bearer, const ItemState& item) {
    if (!has_no_life_left(bearer, item, out.clock)) return out;
    out.no_life_left = true;
    out.left_count = out.known ? std::min(base::Count{0}, out.left_count) : base::Count{0};
    out.known = true;
    return out;
}

}  // namespace

const Renewed* renewal(const ItemState& item, Clock clock) {
    const std::optional<Renewed>& renewed = item.renewed[static_cast<std::size_t>(clock)];
    return renewed ? &*renewed : nullptr;
}

ClockDue hours_clock(const Bearer& bearer, const ItemState& item, FlightTime interval) {
    ClockDue out;
    out.clock = Clock::hours;
    out.limit_hours = interval;
    out.hours_in = bearer.hours_in;
    out.part_estimated = bearer.is_estimated;
    if (has_no_life_left(bearer, item, Clock::hours)) return without_life(out, bearer);
    Bearer counted = bearer;
    if (counts_by_papers(bearer, item)) {
        out.hours_in = HoursIn::since_overhaul;
        out.part_estimated = bearer.since_overhaul_estimated;
        out.counts_from = CountsFrom::anchor;
        out.anchor_fact = bearer.id;
        counted.hours = bearer.since_overhaul;
    } else {
        start_hours(out, bearer, item);
        if (counts_for_nothing(bearer, item)) counted.hours.reset();
    }
    out.known = counted.hours.has_value();
    if (!out.known) return out;
    const FlightTime flown = *counted.hours - out.anchor_total;
    const std::vector<FactorTerm> terms = factor_terms(bearer, item, flown);
    out.extra = extra_hours(terms);
    if (!terms.empty()) out.most_thousandths = terms.front().thousandths;
    out.used = flown + out.extra;
    out.left = out.limit_hours - out.used;
    out.due_total = *counted.hours + out.left;
    out.tolerance = tolerance_hours(*item.limit, interval);
    out.overfly = overfly_of(*item.limit, item.role);
    return out;
}

ClockDue calendar_clock(const Bearer& bearer,
                        const ItemState& item,
                        const facts::Interval& interval,
                        Date today) {
    ClockDue out;
    out.clock = Clock::calendar;
    out.limit_months = interval.months.value_or(0);
    out.limit_days = interval.days.value_or(0);
    start_calendar(out, bearer, item);
    if (out.known) {
        out.due_on = calendar_end(out.anchor_on, interval, item.limit->rule);
        out.days_left = base::days_between(today, out.due_on);
        out.tolerance_days =
            tolerance_days(*item.limit, base::days_between(out.anchor_on, out.due_on));
    }
    if (has_no_life_left(bearer, item, Clock::calendar)) end_calendar(out, bearer, today);
    return out;
}

ClockDue landings_clock(const Bearer& bearer, const ItemState& item, base::Count interval) {
    const Renewed* work = renewal(item, Clock::landings);
    const auto at_work = work != nullptr ? work->landings : std::nullopt;
    const auto anchor = count_anchor(work, at_work, item.limit->anchor_landings, item.limit_fact);
    return end_count(count_clock(Clock::landings, interval, bearer.landings, anchor), bearer, item);
}

ClockDue starts_clock(const Bearer& bearer, const ItemState& item, base::Count interval) {
    const Renewed* work = renewal(item, Clock::starts);
    const auto at_work = work != nullptr ? work->starts : std::nullopt;
    const auto anchor = count_anchor(work, at_work, item.limit->anchor_starts, item.limit_fact);
    return end_count(count_clock(Clock::starts, interval, bearer.starts, anchor), bearer, item);
}

}  // namespace twoclocks::limits
