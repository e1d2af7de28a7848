// On which day it is cheapest to go in: standing past the limit costs, and so does life given up
// before it and money paid early.
//
// The hard questions.
//   What if it is to go in before all is ready? Then it flies on until all is; nobody grounds it to
//   wait.
//   What is given up? In a way in which hours stop it, the hours it would still have flown; where
//   the calendar does, the months. Never both: only the clock that runs out first has any worth.
//   Standing is counted from the limit to the day it goes in: the days in the shop are the same
//   whenever that is.
//   Every cost is a mean over all ways, rounded up.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/plan/campaign.hpp"

namespace twoclocks::plan {

/// What days, hours and money cost, in minor units of one currency.
struct InductionCosts {
    double standing_day{0};  // margin lost less flying not paid for; may be below 0
    double unused_hour{0};
    double unused_month{0};  // a twelfth of 365 days
    double early_day{0};     // interest on the sum
};

/// What is left today.
struct LifeLeft {
    double hours{0};
    std::optional<std::int32_t> calendar_day;  // of the limit less the margin, in days from today
};

/// One day to go in, and what that is expected to cost.
struct InductionDay {
    std::int32_t day{0};
    std::int64_t standing{0};
    std::int64_t unused{0};
    std::int64_t early{0};

    [[nodiscard]] std::int64_t cost() const { return standing + unused + early; }
};

/// The expected cost of one day to go in.
/// Units: minor units, days from today. Range: one way or more. Errors: none. Source: our choice.
[[nodiscard]] InductionDay induction_on(const Draws& draws,
                                        const InductionCosts& costs,
                                        const LifeLeft& left,
                                        std::int32_t day);

/// Days to go in from today on, evenly spread, and the cheapest of all days; of two the earlier.
struct Induction {
    std::vector<InductionDay> spread;
    InductionDay best;
};

/// Looks at days until the latest limit and eight weeks on, and at each day around the cheapest.
/// Units: minor units, days. Range: as above. Errors: none. Source: our choice.
[[nodiscard]] Induction cheapest_induction(const Draws& draws,
                                           const InductionCosts& costs,
                                           const LifeLeft& left);

}  // namespace twoclocks::plan
