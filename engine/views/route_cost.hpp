// What a route costs: its price, what the state takes of it, and what comes back.
#pragma once

#include <optional>

#include "engine/base/money.hpp"
#include "engine/facts/plan_facts.hpp"

namespace twoclocks::views {

/// Sums of one route, in the currency of its price.
struct RouteCost {
    base::Money price;
    base::Money freight;        // nothing where it is in another currency
    base::Money duty;           // on the price
    base::Money tax;            // on price, freight and duty
    base::Money pay_first;      // all of it
    base::Money borne;          // less the tax that comes back
    bool freight_apart{false};  // in another currency
    bool tax_known{false};
    bool needs_freight{false};  // crated, and nobody said what that costs
    bool needs_duty{false};     // from abroad, likewise

    /// Everything that belongs to it is known.
    [[nodiscard]] bool is_whole() const {
        return tax_known && !freight_apart && !needs_freight && !needs_duty;
    }
};

/// The sums of a route; nothing without a price. What nobody recorded is none here, and the sum not
/// whole. A tax of which nobody said who bears it is borne.
/// Units: minor units. Errors: none. Source: tax on the sum of price, freight and duty, as on
/// imports, common practice, no source; rounded up, for it is no invoice.
[[nodiscard]] std::optional<RouteCost> cost_of(const facts::Route& route);

}  // namespace twoclocks::views
