// The reserve of an aircraft, from its records and its plan to what it is worked out by.
#pragma once

#include "engine/base/message_args.hpp"
#include "engine/budget/from_records.hpp"
#include "engine/budget/reserve.hpp"
#include "engine/views/plan_lived.hpp"

namespace twoclocks::views {

/// Where the sum to be reached comes from.
struct Goal {
    std::optional<std::int64_t> sum{};  // on the day
    bool is_recorded{false};
    std::int64_t before{0};  // as recorded, before it rises
};

/// What the page is put together from.
struct Reserve {
    const Assessed& aircraft;
    budget::Setting setting;
    Goal goal{};
    budget::ReserveAsked asked{};
    budget::ReserveWorked worked{};

    [[nodiscard]] base::Arg money(std::optional<std::int64_t> minor_units) const {
        return minor_units ? base::money_arg({*minor_units, setting.home})
                           : base::word_arg(base::Word::not_known);
    }

    [[nodiscard]] const timeline::MoneyState& records() const { return aircraft.state.money; }
};

/// Gathers and works it out.
/// Units: minor units, days. Errors: `faults` where an amount has no rate. Source: our choice.
[[nodiscard]] Reserve make_reserve(const Assessed& aircraft,
                                   const Living& living,
                                   base::Problems& faults);

}  // namespace twoclocks::views
