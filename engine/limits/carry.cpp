#include "engine/limits/carry.hpp"

#include <algorithm>

#include "engine/base/permille.hpp"
#include "engine/facts/interval.hpp"

namespace twoclocks::limits {
namespace {

using base::Date;
using base::FlightTime;
using facts::Clock;
using facts::LimitSet;
using timeline::ItemState;
using timeline::Renewed;

using base::whole_permille;

/// A point on the axis of one clock: seconds of total time, or a day number.
using Point = std::int64_t;

/// How one clock of one limit carries over.
struct Rule {
    bool from_due{false};
    FlightTime overfly;
};

struct Step {
    Point from{0};
    Point past{0};
    Carried carried{Carried::none};
};

/// Every renewal of a clock, oldest first.
[[nodiscard]] std::vector<Renewed> renewals(const ItemState& item, Clock clock) {
    const auto place = static_cast<std::size_t>(clock);
    std::vector<Renewed> out = item.earlier[place];
    if (item.renewed[place]) out.push_back(*item.renewed[place]);
    return out;
}

/// A directive repeats from each compliance, whatever its tolerance says.
[[nodiscard]] Rule rule_of(const LimitSet& limit, facts::ItemRole role) {
    const bool from_due = limit.tolerance.carry_over == facts::CarryOver::from_due &&
                          limit.limit_class != facts::LimitClass::directive;
    return {from_due, overfly_of(limit, role)};
}

/// Where work done at a point counts from, when it was due at another after some interval.
[[nodiscard]] Step step(
    const Rule& rule, Point done, std::optional<Point> due, Point interval, Point tolerance) {
    if (!due) return {done, 0, Carried::none};
    const Point past = done - *due;
    if (rule.overfly.seconds > 0 && past > 0 && past < interval)
        return {*due, past, Carried::excess};
    const bool within = -tolerance <= past && past <= tolerance;
    if (rule.from_due && within && past != 0) return {*due, 0, Carried::due_point};
    return {done, 0, Carried::none};
}

/// The versions of its limit that may be in force: one, unless records disagree.
[[nodiscard]] std::vector<LimitSet> versions_of(const ItemState& item) {
    std::vector<LimitSet> out = item.limit_versions;
    if (item.limit) out.push_back(*item.limit);
    return out;
}

[[nodiscard]] FlightTime longest_hours(const LimitSet& limit) {
    const FlightTime first = limit.first.hours.value_or(FlightTime{0});
    return std::max(first, limit.hours.value_or(FlightTime{0}));
}

/// The most days that an interval of a limit can have.
[[nodiscard]] std::int32_t longest_days(const LimitSet& limit) {
    constexpr std::int32_t longest_month_days = 31;
    std::int32_t out = 0;
    for (const facts::Interval& interval : {limit.first, repeat_of(limit)}) {
        out = std::max(out, interval.months.value_or(0) * longest_month_days);
        out = std::max(out, interval.days.value_or(0));
    }
    return out;
}

/// How much earlier than the work its interval may count from, over all that may be in force.
[[nodiscard]] FlightTime hours_slack(const ItemState& item) {
    FlightTime out;
    for (const LimitSet& limit : versions_of(item)) {
        const Rule rule = rule_of(limit, item.role);
        const FlightTime longest = longest_hours(limit);
        if (rule.from_due) out = std::max(out, tolerance_hours(limit, longest));
        if (rule.overfly.seconds > 0) out = std::max(out, longest);
    }
    return out;
}

[[nodiscard]] std::int32_t days_slack(const ItemState& item) {
    std::int32_t out = 0;
    for (const LimitSet& limit : versions_of(item)) {
        if (rule_of(limit, item.role).from_due)
            out = std::max(out, tolerance_days(limit, longest_days(limit)));
    }
    return out;
}

}  // namespace

std::optional<HoursFrom> hours_from(const Bearer& bearer, const ItemState& item) {
    const std::vector<Renewed> works = renewals(item, Clock::hours);
    if (works.empty() || !works.back().total) return std::nullopt;
    const LimitSet& limit = *item.limit;
    const FlightTime done = *works.back().total;
    if (in_doubt(bearer, item)) {
        const FlightTime slack = hours_slack(item);
        const FlightTime from = std::max(std::min(done, FlightTime{0}), done - slack);
        const bool is_earlier =
            slack.seconds > 0 || (bearer.is_part && works.back().total_estimated);
        return HoursFrom{from, done, {}, is_earlier ? Carried::doubt : Carried::none};
    }
    const Rule rule = rule_of(limit, item.role);
    std::optional<Point> due;
    std::optional<FlightTime> interval = initial_of(limit).hours;
    if (limit.anchor_total && interval) due = (*limit.anchor_total + *interval).seconds;
    Step last;
    for (const Renewed& work : works) {
        if (work.total) {
            const FlightTime length = interval.value_or(FlightTime{0});
            last = step(rule,
                        work.total->seconds,
                        due,
                        length.seconds,
                        tolerance_hours(limit, length).seconds);
        }
        interval = limit.hours;
        due = work.total && interval ? std::optional{last.from + interval->seconds} : std::nullopt;
    }
    return HoursFrom{{last.from}, done, {last.past}, last.carried};
}

std::optional<DayFrom> day_from(const Bearer& bearer, const ItemState& item) {
    const std::vector<Renewed> works = renewals(item, Clock::calendar);
    if (works.empty()) return std::nullopt;
    const LimitSet& limit = *item.limit;
    const Date done = works.back().on;
    if (in_doubt(bearer, item)) {
        const std::int32_t slack = days_slack(item);
        return DayFrom{
            base::add_days(done, -slack), done, slack > 0 ? Carried::doubt : Carried::none};
    }
    const Rule rule{rule_of(limit, item.role).from_due, {}};
    std::optional<Date> from = limit.anchor_on;
    facts::Interval interval = part(initial_of(limit), Clock::calendar);
    Step last;
    for (const Renewed& work : works) {
        std::optional<Point> due;
        std::int32_t length = 0;
        if (from && !is_empty(interval)) {
            const Date end = calendar_end(*from, interval, limit.rule);
            due = end.day_number;
            length = base::days_between(*from, end);
        }
        last = step(rule, work.on.day_number, due, length, tolerance_days(limit, length));
        from = Date{static_cast<std::int32_t>(last.from)};
        interval = part(repeat_of(limit), Clock::calendar);
    }
    return DayFrom{*from, done, last.carried};
}

Date day_in_dispute(Date anchor, const ItemState& item) {
    for (const timeline::DisputedWork& work : item.disputed_works)
        anchor = std::min(anchor, work.on);
    return anchor;
}

std::optional<FlightTime> hours_in_dispute(FlightTime from,
                                           const ItemState& item,
                                           const std::optional<Date>& since) {
    for (const timeline::DisputedWork& work : item.disputed_works) {
        const bool is_later = since && work.on >= *since;
        if (!work.total && !is_later && !since) return std::nullopt;
        // Work of before is not what an interval counts from.
        if (work.total && (is_later || !since)) from = std::min(from, *work.total);
    }
    return from;
}

bool in_doubt(const Bearer& bearer, const ItemState& item) {
    if (item.disputed) return true;
    if (!bearer.is_asked_about) return false;
    // An estimate rests on readings, and some of them are disputed.
    const std::vector<Renewed> works = renewals(item, Clock::hours);
    return std::any_of(
        works.begin(), works.end(), [](const Renewed& work) { return work.total_estimated; });
}

Date calendar_end(Date from, const facts::Interval& interval, base::CalendarRule rule) {
    if (!interval.months) return base::add_days(from, interval.days.value_or(0));
    const Date by_months = base::add_months(from, *interval.months, rule);
    return interval.days ? std::min(by_months, base::add_days(from, *interval.days)) : by_months;
}

FlightTime tolerance_hours(const LimitSet& limit, FlightTime interval) {
    const facts::Tolerance& tolerance = limit.tolerance;
    if (limit.limit_class == facts::LimitClass::airworthiness_limitation) return {};
    std::optional<FlightTime> out = tolerance.hours;
    if (tolerance.permille) {
        FlightTime share{interval.seconds * *tolerance.permille / whole_permille};
        if (tolerance.cap_hours) share = std::min(share, *tolerance.cap_hours);
        out = out ? std::min(*out, share) : share;
    }
    return out.value_or(FlightTime{0});
}

std::int32_t tolerance_days(const LimitSet& limit, std::int32_t interval_days) {
    const facts::Tolerance& tolerance = limit.tolerance;
    if (limit.limit_class == facts::LimitClass::airworthiness_limitation) return 0;
    std::optional<std::int32_t> out = tolerance.days;
    if (tolerance.permille) {
        std::int64_t share = std::int64_t{interval_days} * *tolerance.permille / whole_permille;
        if (tolerance.cap_days) share = std::min<std::int64_t>(share, *tolerance.cap_days);
        const auto days = static_cast<std::int32_t>(share);
        out = out ? std::min(*out, days) : days;
    }
    return out.value_or(0);
}

FlightTime overfly_of(const LimitSet& limit, facts::ItemRole role) {
    const bool belongs =
        role == facts::ItemRole::inspection && limit.limit_class == facts::LimitClass::programme;
    return belongs ? limit.tolerance.overfly_hours.value_or(FlightTime{0}) : FlightTime{0};
}

}  // namespace twoclocks::limits
