#include "engine/timeline/entry.hpp"

#include "engine/base/message_args.hpp"
#include "engine/timeline/meter_adjust.hpp"

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

[[nodiscard]] bool too_fast(const UsagePoint& from,
                            const UsagePoint& to,
                            const std::vector<MeterState>& meters) {
    constexpr std::int64_t seconds_per_day = 24 * base::seconds_per_hour;
    const std::int64_t days = base::days_between(from.on, to.on) + 1;
    // Hours of their own day may have come after what else is recorded of it.
    const Date since = from.on == to.on ? base::add_days(from.on, -1) : from.on;
    const FlightTime at_once = uncounted_by(meters, to.on) - uncounted_by(meters, since);
    return (to.total - from.total - at_once).seconds > days * seconds_per_day;
}

/// How a figure between others is refused: in the figures of a meter, or of total time.
struct Wording {
    const char* field;
    const MeterState* meter;  // null: total time
    Trouble falls;
    Trouble above_later;
    bool after_its_day;  // what is recorded of the day itself was before it
};

/// Whether an entry fits between its neighbours. The series never falls, so the last before and
/// the first after stand for all of it.
[[nodiscard]] base::Problems refusals(const UsagePoint& entered,
                                      const AircraftState& state,
                                      const Wording& wording) {
    const UsagePoint* before = nullptr;
    const UsagePoint* after = nullptr;
    for (const UsagePoint& point : state.usage) {
        const bool earlier =
            point.on < entered.on || (wording.after_its_day && point.on == entered.on);
        if (earlier) before = &point;
        if (point.on > entered.on && after == nullptr) after = &point;
    }
    const auto refuse = [&](Trouble code, const UsagePoint& point) {
        const FlightTime shown = wording.meter == nullptr
                                     ? point.total
                                     : shown_at(*wording.meter, point.total, point.on);
        return base::Problems{
            at_field(wording.field, code, {base::hours_used_arg(shown), base::day_arg(point.on)})};
    };
    if (before != nullptr && before->total > entered.total) return refuse(wording.falls, *before);
    if (after != nullptr && after->total < entered.total)
        return refuse(wording.above_later, *after);
    if (before != nullptr && too_fast(*before, entered, state.meters))
        return refuse(Trouble::entry_too_fast, *before);
    if (after != nullptr && too_fast(entered, *after, state.meters))
        return refuse(Trouble::entry_too_fast, *after);
    return {};
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
    return refusals({on, total_of(*meter, reads, on), {}},
                    state,
                    {"reads", meter, Trouble::entry_falls, Trouble::entry_above_later, true});
}

base::Problems check_total(const AircraftState& state, FlightTime total, Date on) {
    return refusals(
        {on, total, {}},
        state,
        {"total", nullptr, Trouble::entry_total_falls, Trouble::entry_total_above_later, false});
}

}  // namespace twoclocks::timeline
