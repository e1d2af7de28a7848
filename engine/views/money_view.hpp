// The estimate of an aircraft's overhaul in words.
#pragma once

#include "engine/views/money.hpp"
#include "engine/views/plan_lived.hpp"

namespace twoclocks::views {

/// The whole page, by the route that is chosen; the campaign that was lived through gives the days
/// on which things are paid, and that of each route those by it, in their order.
/// Units: money, days. Errors: `missing`, `faults`, `notes` of each row. Source: our choice.
[[nodiscard]] MoneyView make_money_view(const Assessed& aircraft,
                                        const Living& living,
                                        const std::vector<const Living*>& routes);

/// The same, each lived through at once.
/// Units: money, days. Errors: as above. Source: our choice.
[[nodiscard]] MoneyView make_money_view(const Assessed& aircraft);

/// Every "why?" of the page: gross, what comes back, net.
/// Units: none. Errors: none. Source: our choice.
[[nodiscard]] std::vector<Why> whys_of(const MoneyView& view);

}  // namespace twoclocks::views
