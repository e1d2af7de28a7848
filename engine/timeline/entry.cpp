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
    const UsagePoint* before = nullptr;
    const UsagePoint* after = nullptr;
    for (const UsagePoint& point : state.usage) {
        if (point.on <= on) before = &point;
        if (point.on > on && after == nullptr) after = &point;
    }
    const auto refuse = [&](Trouble code, const UsagePoint& point) {
        return base::Problems{at_field(
            "reads", code, {base::hours_used_arg(point.total - offset), base::day_arg(point.on)})};
    };
    // The series never falls, so its neighbours on either side stand for all of it.
    if (before != nullptr && before->total > entered.total)
        return refuse(Trouble::entry_falls, *before);
    if (after != nullptr && after->total < entered.total)
        return refuse(Trouble::entry_above_later, *after);
    if (before != nullptr && too_fast(*before, entered))
        return refuse(Trouble::entry_too_fast, *before);
    if (after != nullptr && too_fast(entered, *after))
        return refuse(Trouble::entry_too_fast, *after);
    return {};
}

}  // namespace twoclocks::timeline
