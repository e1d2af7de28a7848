// Rates between currencies, as somebody recorded them, and amounts turned by them.
//
// The hard questions.
//   A rate is used only in the direction in which it was recorded. The inverse of a rounded rate is
//   another rate: it would make or lose money.
//   Which rate? Of those from the one currency to the other the last by day that is not after the
//   day asked for; of one day the one recorded last. How old it is is told with it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/date.hpp"
#include "engine/base/money.hpp"
#include "engine/base/rate_figure.hpp"

namespace twoclocks::budget {

/// One rate of one day.
struct Rate {
    base::Currency from;
    base::Currency to;
    base::RateFigure figure;
    base::Date on;
    std::string said_by;
};

/// The amount in the other currency; nothing where it would be beyond what an amount can be.
/// Units: minor units of `to`. Range: an amount of the rate's `from`. Errors: none.
/// Source: ISO 4217 for the minor units; rounded once, as named.
[[nodiscard]] std::optional<base::Money> turned(base::Money amount,
                                                const Rate& rate,
                                                base::MoneyRound round);

/// The rate in use on a day; null where none was recorded in this direction.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] const Rate* rate_on(const std::vector<Rate>& rates,
                                  base::Currency from,
                                  base::Currency to,
                                  base::Date day);

}  // namespace twoclocks::budget
