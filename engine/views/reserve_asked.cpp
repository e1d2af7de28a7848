#include "engine/views/reserve_asked.hpp"

#include <algorithm>

#include "engine/budget/growth.hpp"
#include "engine/views/cash_view.hpp"
#include "engine/views/money_estimate.hpp"

namespace twoclocks::views {
namespace {

using base::Date;
using budget::ReserveAsked;
using facts::Clock;

[[nodiscard]] const limits::ClockDue* clock_of(const Assessed& aircraft, Clock clock) {
    const limits::ItemDue* item = overhaul_of(aircraft);
    if (item == nullptr) return nullptr;
    for (const limits::ClockDue& one : item->clocks)
        if (one.clock == clock && one.known) return &one;
    return nullptr;
}

/// The day on which the limit is expected.
[[nodiscard]] std::optional<Date> due_day(const Assessed& aircraft) {
    if (aircraft.overhaul < 0) return std::nullopt;
    return aircraft.projections[static_cast<std::size_t>(aircraft.overhaul)].likely;
}

[[nodiscard]] std::optional<base::FlightTime> to_fly(const Assessed& aircraft, Date due) {
    const timeline::AircraftState& state = aircraft.state;
    if (state.usage.empty()) return std::nullopt;
    const base::FlightTime then = forecast::totals_to_come(state, aircraft.ahead, due).likely;
    return then < state.usage.back().total ? base::FlightTime{} : then - state.usage.back().total;
}

[[nodiscard]] Goal goal_of(const Assessed& aircraft,
                           const budget::Setting& setting,
                           std::optional<Date> due,
                           base::Problems& faults) {
    Goal out;
    const timeline::MoneyState& money = aircraft.state.money;
    if (!money.reserve.goal) {
        const budget::Estimate estimate =
            estimate_of(aircraft, asked_of(aircraft), setting.days, 0);
        if (has_sum(estimate) && estimate.missing == 0) out.sum = estimate.net.likely;
        return out;
    }
    out.is_recorded = true;
    const auto before = budget::in_home(*money.reserve.goal, setting, base::MoneyRound::up, faults);
    if (!before || !due) return out;
    out.before = *before;
    const std::int32_t days = std::max(0, base::days_between(*money.reserve_on, *due));
    out.sum = budget::grown(*before, money.reserve.goal_rise_permille.value_or(0), days);
    return out;
}

[[nodiscard]] ReserveAsked asked_by(const Reserve& reserve,
                                    std::optional<std::int64_t> hand,
                                    base::Problems& faults) {
    const Assessed& aircraft = reserve.aircraft;
    const facts::ReserveTerms& terms = reserve.records().reserve;
    ReserveAsked out;
    out.today = aircraft.today;
    out.goal = reserve.goal.sum;
    out.hand = hand;
    out.due = due_day(aircraft);
    out.interest_permille = terms.interest_permille.value_or(0);
    if (const limits::ClockDue* calendar = clock_of(aircraft, Clock::calendar))
        out.since = calendar->anchor_on;
    if (const limits::ClockDue* hours = clock_of(aircraft, Clock::hours)) {
        out.flown = hours->used;
        out.life = hours->limit_hours;
    }
    if (out.due) out.to_fly = to_fly(aircraft, *out.due);
    const auto amount = [&](const std::optional<base::Money>& said) {
        return said ? budget::in_home(*said, reserve.setting, base::MoneyRound::down, faults)
                    : std::nullopt;
    };
    out.hour = amount(terms.hour);
    out.month = amount(terms.month);
    return out;
}

}  // namespace

Reserve make_reserve(const Assessed& aircraft, const Living& living, base::Problems& faults) {
    Reserve out{aircraft, budget::setting_of(aircraft.state, aircraft.today, pay_days(living))};
    out.goal = goal_of(aircraft, out.setting, due_day(aircraft), faults);
    out.asked = asked_by(out, in_hand(aircraft, out.setting, faults), faults);
    out.worked = budget::work_out(out.asked);
    return out;
}

}  // namespace twoclocks::views
