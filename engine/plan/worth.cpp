#include "engine/plan/worth.hpp"

#include <algorithm>

#include "engine/base/permille.hpp"
#include "engine/plan/by_route.hpp"
#include "engine/plan/moment.hpp"

namespace twoclocks::plan {
namespace {

using base::Money;

constexpr std::int32_t days_a_year = 365;

[[nodiscard]] std::optional<Money> shared(const Money& sum, std::int64_t parts) {
    return parts > 0 ? std::optional{base::divided(sum, parts, base::MoneyRound::up)}
                     : std::nullopt;
}

/// What an hour and a month are worth where nobody said: the sum over those of the limit.
/// Calendar work keeps the hours: its sum buys none.
void reckon_life(const limits::ItemDue& item, bool keeps_hours, Worth& worth) {
    if (!worth.sum) return;
    for (const limits::ClockDue& clock : item.clocks) {
        if (clock.clock == facts::Clock::hours && !worth.hour && !keeps_hours) {
            worth.hours_of_limit = clock.limit_hours.seconds / base::hours(1).seconds;
            worth.hour = shared(*worth.sum, worth.hours_of_limit);
        }
        if (clock.clock == facts::Clock::calendar && !worth.month) {
            worth.months_of_limit = clock.limit_months;
            worth.month = shared(*worth.sum, clock.limit_months);
        }
    }
}

[[nodiscard]] double units(const std::optional<Money>& money) {
    return money ? static_cast<double>(money->minor_units) : 0;
}

}  // namespace

std::optional<Worth> worth_of(const facts::PlanCosts& costs,
                              const timeline::PlanState& records,
                              const limits::ItemDue& item) {
    if (!costs.lost_day) return std::nullopt;
    Worth out;
    out.currency = costs.lost_day->currency;
    out.lost = *costs.lost_day;
    // Records that disagree may be in two currencies: only amounts in that of a day count.
    const auto alike = [&](const std::optional<Money>& money) {
        return money && money->currency == out.currency ? money : std::nullopt;
    };
    out.saved = alike(costs.saved_day).value_or(out.money(0));
    out.sum = alike(costs.sum);
    const facts::Route* route = chosen_route(records);
    if (!out.sum && route != nullptr) out.sum = alike(route->price);
    out.hour = alike(costs.life_hour);
    out.month = alike(costs.life_month);
    out.interest = costs.interest_permille.value_or(0);
    reckon_life(item, records.terms.work == facts::PlanWork::calendar_work, out);
    return out;
}

bool weighs_life(const Worth& worth, const limits::ItemDue& item) {
    return std::all_of(item.clocks.begin(), item.clocks.end(), [&](const auto& clock) {
        if (clock.clock == facts::Clock::hours) return !clock.known || worth.hour.has_value();
        return clock.clock != facts::Clock::calendar || worth.month.has_value();
    });
}

InductionCosts costs_of(const Worth& worth) {
    return {units(worth.standing()),
            units(worth.hour),
            units(worth.month),
            units(worth.sum) * worth.interest / base::whole_permille / days_a_year};
}

LifeLeft left_of(const limits::ItemDue& item, const RunOut& run_out, const Terms& terms) {
    LifeLeft out;
    if (const limits::ClockDue* hours = hours_of(item)) {
        const auto left = static_cast<double>(hours->left.seconds);
        out.hours = std::max(left, 0.0) / static_cast<double>(base::hours(1).seconds);
    }
    if (run_out.calendar) out.calendar_day = *run_out.calendar - terms.margin_days;
    return out;
}

std::int64_t early_day_cost(const Worth& worth, const LifeLeft& left, std::int32_t limit) {
    const auto day = static_cast<float>(limit);
    const Draws one_way{{day}, {-1e9F}};
    // Nothing is given up on the day of the limit; a day before it, a day of what ends it.
    return std::max<std::int64_t>(induction_on(one_way, costs_of(worth), left, limit - 1).cost(),
                                  0);
}

const limits::ClockDue* hours_of(const limits::ItemDue& item) {
    const auto found = std::find_if(item.clocks.begin(), item.clocks.end(), [](const auto& clock) {
        return clock.clock == facts::Clock::hours && clock.known;
    });
    return found == item.clocks.end() ? nullptr : &*found;
}

}  // namespace twoclocks::plan
