#include "engine/timeline/entry.hpp"

#include "engine/base/message_args.hpp"

namespace twoclocks::timeline {
namespace {

using base::Date;
using base::FlightTime;
using base::Problem;
using base::Trouble;

[[nodiscard]] Problem at_field(const char* field, Trouble code, std::vector<base::Arg> args) {
    Problem problem = base::trouble(code, std::move(args));
    problem.field = field;
    return problem;
}

[[nodiscard]] bool too_fast(const UsagePoint& from, const UsagePoint& to) {
    constexpr std::int64_t seconds_per_day = 24 * base::seconds_per_hour;
    const std::int64_t days = base::days_between(from.on, to.on) + 1;
    return (to.total - from.total).seconds > days * seconds_per_day;
}

}  // namespace

const MeterState* meter_in_use(const AircraftState& state) {
    return state.meters.empty() ? nullptr : &state.meters.back();
}

base::Problems check_reading(const AircraftState& state, FlightTime reads, Date on, Date today) {
    const MeterState* meter = meter_in_use(state);
    if (meter == nullptr) return {at_field("reads", Trouble::entry_no_meter, {})};
    if (on > today) return {at_field("date", Trouble::entry_day_ahead, {base::day_arg(on)})};
    if (on < meter->fitted_on) {
        return {at_field("date", Trouble::entry_before_meter, {base::day_arg(meter->fitted_on)})};
    }
    const UsagePoint entered{on, reads - meter->reads + meter->total, {}};
    const FlightTime offset = meter->total - meter->reads;
    for (const UsagePoint& point : state.usage) {
        const base::Arg shown = base::hours_used_arg(point.total - offset);
        if (point.on <= on && point.on >= meter->fitted_on && point.total > entered.total) {
            return {at_field("reads", Trouble::entry_falls, {shown, base::day_arg(point.on)})};
        }
        if (point.on > on && point.total < entered.total) {
            return {at_field("reads", Trouble::entry_above_later, {shown, base::day_arg(point.on)})};
        }
        const bool fast = point.on <= on ? too_fast(point, entered) : too_fast(entered, point);
        if (fast) return {at_field("reads", Trouble::entry_too_fast, {shown, base::day_arg(point.on)})};
    }
    return {};
}

}  // namespace twoclocks::timeline
