#include "engine/timeline/safer.hpp"

#include <algorithm>

#include "engine/facts/interval.hpp"
#include "engine/timeline/safer_cash.hpp"

namespace twoclocks::timeline {
namespace {

using facts::Body;
using timeline::join;  // of what is planned: a name here would hide it

/// Names have no safe side and stay as they were; an unknown day of manufacture stays unknown.
void join(facts::AircraftAdded& into, const facts::AircraftAdded& other) {
    into.manufactured = least_anchor(into.manufactured, other.manufactured);
}

void join(facts::Reading& into, const facts::Reading& other) {
    into.reads = std::max(into.reads, other.reads);
    into.landings = greatest(into.landings, other.landings);
    into.starts = greatest(into.starts, other.starts);
}

/// A tolerance that one of them lacks is none. Which way a carry-over is safer depends on the work:
/// limits/carry.hpp counts from the earliest point while records disagree.
void join(facts::Tolerance& into, const facts::Tolerance& other) {
    into.hours = least_anchor(into.hours, other.hours);
    into.days = least_anchor(into.days, other.days);
    into.permille = least_anchor(into.permille, other.permille);
    into.cap_hours = least(into.cap_hours, other.cap_hours);
    into.cap_days = least(into.cap_days, other.cap_days);
    into.overfly_hours = least_anchor(into.overfly_hours, other.overfly_hours);
}

/// What a limit holds beside its repeat interval. "Whichever is later" stands only where both say
/// so of the same clocks: of different ones the sooner is the one that never gives more life.
void join_settings(facts::LimitSet& into, const facts::LimitSet& other) {
    const facts::Interval initial = lesser(initial_of(into), initial_of(other));
    const bool any_first = !is_empty(into.first) || !is_empty(other.first);
    const bool both_later = into.combine == facts::Combine::later &&
                            other.combine == facts::Combine::later &&
                            same_clocks(repeat_of(into), repeat_of(other)) &&
                            same_clocks(initial_of(into), initial_of(other));
    if (!both_later) into.combine = std::nullopt;
    if (any_first) into.first = initial;
    into.once = into.once && other.once;
    into.cap = lesser(into.cap, other.cap);
    into.days = least(into.days, other.days);
    const facts::InForce mine = into.in_force.value_or(facts::InForce::always);
    if (mine != other.in_force.value_or(facts::InForce::always)) into.in_force = std::nullopt;
    join(into.tolerance, other.tolerance);
}

void join(facts::LimitSet& into, const facts::LimitSet& other) {
    join_settings(into, other);
    into.limit_class = std::min(into.limit_class, other.limit_class);
    into.hours = least(into.hours, other.hours);
    into.months = least(into.months, other.months);
    into.landings = least(into.landings, other.landings);
    into.starts = least(into.starts, other.starts);
    if (other.rule == base::CalendarRule::exact) into.rule = base::CalendarRule::exact;
    into.anchor_on = least_anchor(into.anchor_on, other.anchor_on);
    into.anchor_total = least_anchor(into.anchor_total, other.anchor_total);
    into.anchor_landings = least_anchor(into.anchor_landings, other.anchor_landings);
    into.anchor_starts = least_anchor(into.anchor_starts, other.anchor_starts);
}

void join(facts::MeterFitted& into, const facts::MeterFitted& other) {
    const base::FlightTime offset = std::max(into.total - into.reads, other.total - other.reads);
    into.total = std::max(into.total, other.total);
    into.reads = into.total - offset;
}

/// The clocks that both renewals renew; an empty list stands for all.
[[nodiscard]] std::optional<facts::Renewal> common(const facts::Renewal& left,
                                                   const facts::Renewal& right) {
    if (left.clocks.empty()) return right;
    if (right.clocks.empty()) return left;
    facts::Renewal out{left.item, {}};
    for (const facts::Clock clock : left.clocks) {
        const bool both =
            std::find(right.clocks.begin(), right.clocks.end(), clock) != right.clocks.end();
        if (both) out.clocks.push_back(clock);
    }
    if (out.clocks.empty()) return std::nullopt;
    return out;
}

[[nodiscard]] std::vector<facts::Renewal> common(const std::vector<facts::Renewal>& left,
                                                 const std::vector<facts::Renewal>& right) {
    std::vector<facts::Renewal> both;
    for (const facts::Renewal& mine : left) {
        for (const facts::Renewal& theirs : right) {
            if (mine.item != theirs.item) continue;
            if (const auto renewal = common(mine, theirs)) both.push_back(*renewal);
        }
    }
    return both;
}

void join(facts::WorkRule& into, const facts::WorkRule& other) {
    into.renews = common(into.renews, other.renews);
}

void join(facts::WorkDone& into, const facts::WorkDone& other) {
    into.renews = common(into.renews, other.renews);
    into.total = least(into.total, other.total);
    into.landings = least_anchor(into.landings, other.landings);
    into.starts = least_anchor(into.starts, other.starts);
}

void join(facts::UsagePlanned& into, const facts::UsagePlanned& other) {
    into.month = std::max(into.month, other.month);
}

void join(facts::OutOfService& into, const facts::OutOfService& other) {
    into.until = least(into.until, other.until);
    into.stored = into.stored && other.stored;
}

void join(facts::MeterAdjusted& into, const facts::MeterAdjusted& other) {
    into.hours = std::max(into.hours, other.hours);
    into.reads = std::max(into.reads, other.reads);
    if (into.reason != other.reason) into.reason = facts::AdjustReason::other;
}

void join(facts::HoursFactor& into, const facts::HoursFactor& other) {
    into.factor_thousandths = std::max(into.factor_thousandths, other.factor_thousandths);
}

void join(facts::FlownAs& into, const facts::FlownAs& other) {
    into.hours = std::max(into.hours, other.hours);
}

void join(facts::Permit& into, const facts::Permit& other) {
    into.hours = least(into.hours, other.hours);
    into.until = least(into.until, other.until);
}

/// The greater of two values; where one is missing the sum it feeds is not known.
template <class T>
[[nodiscard]] std::optional<T> greatest_known(const std::optional<T>& left,
                                              const std::optional<T>& right) {
    if (!left || !right) return std::nullopt;
    return std::max(*left, *right);
}

void join(facts::PartAdded& into, const facts::PartAdded& other) {
    into.tsn = greatest_known(into.tsn, other.tsn);
    into.tso = greatest_known(into.tso, other.tso);
    into.overhauls = greatest_known(into.overhauls, other.overhauls);
    into.landings = greatest_known(into.landings, other.landings);
    into.starts = greatest_known(into.starts, other.starts);
    into.manufactured = least_anchor(into.manufactured, other.manufactured);
    into.cured = least_anchor(into.cured, other.cured);
    into.shipped = least_anchor(into.shipped, other.shipped);
    into.condition = std::max(into.condition, other.condition);
    into.history_unknown = into.history_unknown || other.history_unknown;
    into.lent_until = least(into.lent_until, other.lent_until);
}

void join(facts::PartFitted& into, const facts::PartFitted& other) {
    into.host_total = least(into.host_total, other.host_total);
    into.tsn = greatest(into.tsn, other.tsn);
    into.host_landings = least_anchor(into.host_landings, other.host_landings);
    into.host_starts = least_anchor(into.host_starts, other.host_starts);
}

void join(facts::PartRemoved& into, const facts::PartRemoved& other) {
    into.host_total = greatest(into.host_total, other.host_total);
    into.host_landings = greatest_known(into.host_landings, other.host_landings);
    into.host_starts = greatest_known(into.host_starts, other.host_starts);
    into.condition = std::max(into.condition, other.condition);
    into.temporarily = into.temporarily && other.temporarily;
}

void join(facts::PartMoved& into, const facts::PartMoved& other) {
    into.return_by = least(into.return_by, other.return_by);
}

void join(facts::PartRebuilt& into, const facts::PartRebuilt& other) {
    into.host_total = least(into.host_total, other.host_total);
}

/// Earliest is safer where an interval starts here; a parked spell, a permit, a shelf and hours
/// that may have been flown after some work are safer late.
[[nodiscard]] bool later_start_is_safer(const facts::Fields& fields) {
    return std::holds_alternative<facts::OutOfService>(fields) ||
           std::holds_alternative<facts::Permit>(fields) ||
           std::holds_alternative<facts::PartRemoved>(fields) ||
           std::holds_alternative<facts::FlownAs>(fields) ||
           std::holds_alternative<facts::PlanStep>(fields);
}

/// Kinds that a withdrawal beside them undoes until answered: without them there is less life.
[[nodiscard]] bool safer_undone(const facts::Fields& fields) {
    return std::holds_alternative<facts::WorkDone>(fields) ||
           std::holds_alternative<facts::WorkRule>(fields) ||
           std::holds_alternative<facts::OutOfService>(fields) ||
           std::holds_alternative<facts::Permit>(fields) ||
           std::holds_alternative<facts::PlanStep>(fields) ||
           std::holds_alternative<facts::Note>(fields) ||
           std::holds_alternative<facts::PartRemoved>(fields) ||
           std::holds_alternative<facts::PartRebuilt>(fields);
}

void join_bodies(Body& into, const Body& other) {
    into.on = later_start_is_safer(into.fields) ? std::max(into.on, other.on)
                                                : std::min(into.on, other.on);
    if (into.fields.index() != other.fields.index()) return;
    std::visit(
        [&](auto& mine) {
            using Kind = std::remove_reference_t<decltype(mine)>;
            if constexpr (requires(Kind & left, const Kind& right) { join(left, right); }) {
                join(mine, *std::get_if<Kind>(&other.fields));
            }
        },
        into.fields);
}

}  // namespace

std::optional<Body> safer(const std::vector<const Body*>& bodies, bool one_takes_it_back) {
    if (bodies.empty()) return std::nullopt;
    Body out = *bodies.front();
    if (one_takes_it_back && safer_undone(out.fields)) return std::nullopt;
    for (const Body* body : bodies)
        join_bodies(out, *body);
    return out;
}

}  // namespace twoclocks::timeline
