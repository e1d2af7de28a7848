// What days, hours and months of an aircraft are worth, as somebody recorded it.
#pragma once

#include "engine/base/money.hpp"
#include "engine/limits/due.hpp"
#include "engine/plan/induction.hpp"

namespace twoclocks::plan {

/// Everything that costs of days rest on, in one currency.
struct Worth {
    base::Currency currency;
    std::optional<base::Money> sum;
    base::Money lost;
    base::Money saved;
    std::optional<base::Money> hour;
    std::optional<base::Money> month;
    std::int64_t hours_of_limit{0};  // where the hour is reckoned from the sum
    std::int32_t months_of_limit{0};
    std::int32_t interest{0};  // thousandths a year

    [[nodiscard]] base::Money money(std::int64_t minor_units) const {
        return {minor_units, currency};
    }

    /// A day standing: what is lost less what is not paid for; it may be a gain.
    [[nodiscard]] base::Money standing() const {
        return money(lost.minor_units - saved.minor_units);
    }
};

/// What these costs come to with the route and the work that are recorded; an hour and a month of
/// which nobody said anything are the sum over those of the limit. Nothing where a day of standing
/// has no cost: without it there is nothing to weigh.
/// Units: minor units. Errors: none. Source: our choice.
[[nodiscard]] std::optional<Worth> worth_of(const facts::PlanCosts& costs,
                                            const timeline::PlanState& records,
                                            const limits::ItemDue& item);

/// Whether every clock of the limit that may end it has a worth: else life would be given away.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] bool weighs_life(const Worth& worth, const limits::ItemDue& item);

/// The same for the reckoning.
/// Units: minor units a day, an hour, a month. Errors: none. Source: our choice.
[[nodiscard]] InductionCosts costs_of(const Worth& worth);

/// What is left of the overhaul life.
/// Units: hours, days. Errors: none. Source: our choice.
[[nodiscard]] LifeLeft left_of(const limits::ItemDue& item,
                               const RunOut& run_out,
                               const Terms& terms);

/// A day given up before the limit, if that comes on a day.
/// Units: minor units, days from today. Range: 0 and up. Errors: none. Source: our choice.
[[nodiscard]] std::int64_t early_day_cost(const Worth& worth,
                                          const LifeLeft& left,
                                          std::int32_t limit);

/// The clock of the hours that are left; null where they are not limited or not known.
/// Units: seconds. Errors: none. Source: our choice.
[[nodiscard]] const limits::ClockDue* hours_of(const limits::ItemDue& item);

}  // namespace twoclocks::plan
