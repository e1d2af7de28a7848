#include "engine/views/route_cost.hpp"

namespace twoclocks::views {
namespace {

using base::Money;

[[nodiscard]] Money plus(Money left, Money right) {
    return {left.minor_units + right.minor_units, left.currency};
}

[[nodiscard]] Money share(Money of, std::int32_t permille) {
    constexpr std::int64_t whole = 1'000;
    return base::divided({of.minor_units * permille, of.currency}, whole, base::MoneyRound::up);
}

}  // namespace

std::optional<RouteCost> cost_of(const facts::Route& route) {
    if (!route.price) return std::nullopt;
    RouteCost out;
    out.price = *route.price;
    out.freight = {0, out.price.currency};
    if (route.freight) {
        out.freight_apart = route.freight->currency != out.price.currency;
        if (!out.freight_apart) out.freight = *route.freight;
    }
    out.duty = share(out.price, route.duty_permille.value_or(0));
    const bool is_taxed =
        route.tax != facts::TaxCase::none && route.tax != facts::TaxCase::reverse_charge;
    out.tax_known =
        !is_taxed || (route.tax != facts::TaxCase::unknown && route.tax_permille.has_value());
    out.needs_freight = route.carriage == facts::Carriage::crated && !route.freight;
    out.needs_duty = route.by == facts::RouteBy::abroad && !route.duty_permille;
    const Money before_tax = plus(plus(out.price, out.freight), out.duty);
    out.tax = share(before_tax, is_taxed ? route.tax_permille.value_or(0) : 0);
    out.pay_first = plus(before_tax, out.tax);
    out.borne = route.tax == facts::TaxCase::recoverable ? before_tax : out.pay_first;
    return out;
}

}  // namespace twoclocks::views
